/** `print:`, the things to print, each with a name of its own. */

import { fail, failWith, outcomeOf, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { tooMany } from '../most-entries.js'
import type { PrintItem } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import { fileSafeName } from '../values/names.js'
import { repetitions } from '../values/repetitions.js'
import { type Entry, misfit, type Reader, type TextEntry } from '../yaml/entry.js'
import type { ItemContext } from './item-keys.js'
import { printItemReader, type UnnamedItem } from './print-item.js'

const form = 'Write print: and under it a dash for each thing to print, such as - layout: word-cards.'

export function printListReader(context: ItemContext): ValueReader<readonly PrintItem[]> {
  const readItem = printItemReader(context)
  const takes: Takes = { kind: 'list', of: readItem.takes, alone: true, empty: false }
  return reading(takes, entry => readPrintList(entry, readItem, context))
}

function readPrintList(
  entry: Entry,
  readItem: Reader<UnnamedItem>,
  context: ItemContext,
): Outcome<readonly PrintItem[]> {
  if (entry.kind === 'text' && /[,;]/.test(entry.text)) return fail(severalInOnePlace(entry))
  const items = entry.kind === 'list' ? entry.items : entry.kind === 'text' ? [entry] : []
  if (items.length === 0) return misfit(entry, 'a list of things to print', form)
  const tooLong = tooMany('things to print', items, entry.place)
  if (tooLong.length > 0) return failWith(tooLong)
  const outcomes = items.map(readItem)
  const good = outcomes.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  const read = together(outcomes)
  const problems = [...read.problems, ...clashes(good, context.groups)]
  return read.ok ? outcomeOf(named(read.value, context.groups), problems) : failWith(problems)
}

/** `print: word-cards, key` */
function severalInOnePlace({ text, place }: TextEntry): Problem {
  const names = text.split(/\s*[,;]\s*/).filter(name => name !== '')
  const advice = `Put brackets round them: print: [${names.join(', ')}]; or write a dash and a name on each line.`
  return errorAt(place, `"${text}" is a list without its brackets`, advice)
}

/** The teacher's names stand; a layout printed twice without names becomes `word-cards` and `word-cards-2`. */
function named(items: readonly UnnamedItem[], groups: readonly string[]): readonly PrintItem[] {
  const taken = new Set(items.flatMap(({ name }) => (name ? folders(name.text, groups) : [])))
  return items.map(({ item, name }) => {
    const chosen = name ? fileSafeName(name.text) : unused(item.layout, taken, groups)
    for (const folder of folders(chosen, groups)) taken.add(folder)
    return { ...item, name: chosen, ...(name ? { givenName: name.text } : {}) }
  })
}

/** The name, or one with a number behind it: one whose folders no item of these fills. */
export function unusedItemName(
  name: string,
  items: readonly Pick<PrintItem, 'name'>[],
  groups: readonly string[],
): string {
  return unused(name, new Set(items.flatMap(item => folders(item.name, groups))), groups)
}

function unused(name: string, taken: ReadonlySet<string>, groups: readonly string[]): string {
  for (let number = 1; ; number += 1) {
    const candidate = number === 1 ? name : `${name}-${number}`
    if (!folders(candidate, groups).some(folder => taken.has(folder))) return candidate
  }
}

/** The folders that an item may fill: its own, and one for each group. Folded, since a file system may ignore case. */
function folders(name: string, groups: readonly string[]): readonly string[] {
  return [name, ...groups.map(group => `${name}-${group}`)].map(folder => foldName(folder))
}

/** Two items that the teacher gave names whose folders would be one. */
function clashes(items: readonly UnnamedItem[], groups: readonly string[]): readonly Problem[] {
  const names = items.flatMap(item => (item.name ? [item.name] : []))
  const all = names.flatMap(name => folders(name.text, groups).map(folder => ({ ...name, folder })))
  const advice = 'Give each item a name of its own; its files are called by it.'
  return repetitions(all, ({ folder }) => folder).flatMap(({ item, earlier, lines }) => {
    if (item.place === earlier.place) return []
    const message =
      foldName(item.text) === foldName(earlier.text)
        ? `the name "${item.text}" is used twice${lines}`
        : `the names "${earlier.text}" and "${item.text}" would fill one folder${lines}`
    return [errorAt(item.place, message, advice)]
  })
}
