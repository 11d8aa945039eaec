/** What of a plan with problems can be read, so that the later stages' problems are told in the same go. */

import { succeed } from '../outcomes.js'
import type { Place } from '../problems.js'
import { printItemReader } from './items/print-item.js'
import type { Plan } from './plan.js'
import { planKeys } from './plan-keys.js'
import { groupsOf, itemContext, type PlanText, planFrom } from './read-plan.js'
import { classFileReader } from './settings/class-file.js'
import { settingsContext } from './settings/settings-context.js'
import { foldName } from './values/fold-name.js'
import type { WordEntries } from './words/list-words.js'
import { readWord } from './words/word-entry.js'
import { wordEntries } from './words/word-list.js'
import { sameWord } from './words/word-text.js'
import type { Entry, MapEntry, Pair, TextEntry } from './yaml/entry.js'
import { valueAt } from './yaml/keys.js'
import { yamlEntries } from './yaml/yaml-entries.js'

export interface ReadablePart {
  /** A word that is none keeps its place by a short stand-in, so that nobody is told of too few words who has enough. */
  readonly plan: Plan
  /** Places of the stand-ins, each the very place that the plan's word has. */
  readonly standIns: ReadonlySet<Place>
}

/** The plan without what is wrong in it; undefined where too little is left to go on with. */
export function readablePart(source: PlanText): ReadablePart | undefined {
  const root = yamlEntries(source.file, source.text)
  if (!root.ok || root.value?.kind !== 'map') return undefined
  const entries = wordEntries(valueAt(root.value, 'words') ?? root.value, settingsContext(source))
  if (!entries.ok) return undefined
  const { items, standIns } = readableWords(entries.value, source)
  const plan = planFrom(pruned(root.value, source, entries.value, items), source)
  return plan.ok ? { plan: plan.value, standIns } : undefined
}

function pruned(root: MapEntry, source: PlanText, words: WordEntries, readable: readonly Entry[]): MapEntry {
  const named = valueAt(root, 'class file')
  const classGroups = groupsOf(named && classFileReader(source)(named))
  const item = itemContext({ root, source, entries: succeed(words), classGroups })
  const readers = planKeys(source, item, classGroups)
  const readItem = printItemReader(item)
  const pairs = root.pairs.flatMap((pair): readonly Pair[] => {
    const key = foldName(pair.key).replaceAll('-', ' ')
    if (key === 'words') return [{ ...pair, value: { ...listOf(pair.value), items: readable } }]
    if (key === 'print') return [keeping(pair, entry => readItem(entry).ok)]
    const read = readers[key as keyof typeof readers]
    if (read === undefined) return []
    if (key === 'groups')
      return [keeping(pair, entry => readers.groups({ ...listOf(pair.value), items: [entry] }).ok)]
    return read(pair.value).ok ? [pair] : []
  })
  return { ...root, pairs }
}

function keeping(pair: Pair, isGood: (entry: Entry) => boolean): Pair {
  const list = listOf(pair.value)
  return { ...pair, value: { ...list, items: list.items.filter(isGood) } }
}

function listOf(entry: Entry) {
  return entry.kind === 'list' ? entry : ({ kind: 'list', place: entry.place, items: [entry] } as const)
}

/** Each once. */
function readableWords(
  { items }: WordEntries,
  source: PlanText,
): { readonly items: readonly Entry[]; readonly standIns: ReadonlySet<Place> } {
  const seen = new Set<string>()
  const standIns = new Set<Place>()
  const readable = items.flatMap(({ entry, file }, index): readonly Entry[] => {
    const read = readWord(entry, { ...settingsContext(source), file })
    if (!read.ok) {
      standIns.add(entry.place)
      return [standIn(entry, index)]
    }
    const key = sameWord(read.value.text)
    if (seen.has(key)) return []
    seen.add(key)
    return [entry]
  })
  return { items: readable, standIns }
}

/** `qa`, `qb`, …: short, and no two alike. */
function standIn({ place }: Entry, index: number): TextEntry {
  const letters = [...index.toString(26)].map(digit => String.fromCharCode(97 + Number.parseInt(digit, 26)))
  return { kind: 'text', text: `q${letters.join('')}`, place }
}
