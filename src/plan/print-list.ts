/** `print:`, the things to print, each with a name of its own. */
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { type Entry, misfit } from './entry.js'
import { fileSafeName, foldName } from './names.js'
import { andThen, outcomeOf, together } from './outcomes.js'
import type { PrintItem } from './plan.js'
import { type ItemContext, readPrintItem, type UnnamedItem } from './print-item.js'

const form = 'Write print: and under it a line for each thing to print, such as - layout: word-cards.'

export function readPrintList(entry: Entry, context: ItemContext): Outcome<readonly PrintItem[]> {
  if (entry.kind === 'map' || entry.kind === 'empty' || (entry.kind === 'list' && entry.items.length === 0)) {
    return misfit(entry, 'a list of things to print', form)
  }
  const items = entry.kind === 'list' ? entry.items : [entry]
  const read = together(items.map(item => readPrintItem(item, context)))
  return andThen(read, unnamed => outcomeOf(named(unnamed), repeatedNames(unnamed)))
}

/** The teacher's names stand; a layout printed twice without names becomes `word-cards` and `word-cards-2`. */
function named(items: readonly UnnamedItem[]): readonly PrintItem[] {
  const taken = new Set(items.flatMap(({ name }) => (name ? [identity(name.text)] : [])))
  return items.map(({ item, name }) => {
    if (name) return { ...item, name: fileSafeName(name.text) }
    const free = unused(item.layout, taken)
    taken.add(identity(free))
    return { ...item, name: free }
  })
}

function unused(name: string, taken: ReadonlySet<string>): string {
  for (let number = 1; ; number += 1) {
    const candidate = number === 1 ? name : `${name}-${number}`
    if (!taken.has(identity(candidate))) return candidate
  }
}

/** Two names that some file system takes for one. */
function identity(name: string): string {
  return foldName(fileSafeName(name))
}

function repeatedNames(items: readonly UnnamedItem[]): readonly Problem[] {
  const first = new Map<string, NonNullable<UnnamedItem['name']>>()
  return items.flatMap(({ name }) => {
    if (!name) return []
    const earlier = first.get(identity(name.text))
    if (!earlier) {
      first.set(identity(name.text), name)
      return []
    }
    const lines = `on line ${earlier.place.line} and on line ${name.place.line}`
    const message = `the name "${name.text}" is used twice, ${lines}`
    return [errorAt(name.place, message, 'Give each item a name of its own; its files are called by it.')]
  })
}
