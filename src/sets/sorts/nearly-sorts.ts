/** What two or three words more would make a sort: a column of one word is none, and yet the week may be about it. */
import type { SortableWord } from '../../words/sortable-word.js'
import { type Division, divisionsBy } from './divide.js'
import { familiesFor } from './rank-sorts.js'
import { rate } from './rate.js'
import type { NearlySort } from './sort.js'
import type { BasisFamily } from './sort-basis.js'
import { closeTie, type SortKind, tieOf } from './weights.js'

export interface NearlySortsTask {
  readonly words: readonly SortableWord[]
  /** The sorts that there are already: what is nearly one must be better than the best of them. */
  readonly best: number
  readonly taken: readonly string[]
  /** As for advice: words that could be added, the most fitting first. */
  readonly toAdd: () => Iterable<SortableWord>
}

const fewest = 2
const mostLone = 2

/** The best one or none; the words to add with it. */
export function nearlySorts({ words, best, taken, toAdd }: NearlySortsTask): readonly NearlySort[] {
  const found = familiesFor(words)
    .filter(({ kind }) => isClose(kind))
    .flatMap(family => divisionsBy(family, words).map(division => ({ family, division })))
    .map(each => ({ ...each, score: scoreWith(each, words.length, best === 0 ? 2 : 3) }))
    .filter(
      ({ score, family, division }) => score > best && !taken.includes(family.basisOf(division.of).name),
    )
    .toSorted((a, b) => b.score - a.score)
  for (const { family, division } of found) {
    const nearly = filled({ family, division, words, toAdd })
    if (nearly !== undefined) return [nearly]
  }
  return []
}

/** Any word begins and ends with a letter, too. */
export function isClose(kind: SortKind): boolean {
  const { tie, anyWords } = tieOf(kind)
  return tie >= closeTie && anyWords !== true && kind !== 'one letter'
}

interface Candidate {
  readonly family: BasisFamily
  readonly division: Division
}

/**
 * Its score if the lone columns had three words; 0 where there is no lone column, no full one, or too little placed.
 * Where the words have no sort at all, two words are a full column.
 */
function scoreWith({ family, division }: Candidate, all: number, full: number): number {
  const sizes = [...division.columns.values()].map(column => column.length)
  const lone = sizes.filter(size => size === 1).length
  const placed = sizes.reduce((sum, size) => sum + size, 0)
  if (lone === 0 || lone > mostLone || lone === sizes.length || sizes.length > 4) return 0
  if (3 * placed < 2 * all || Math.max(...sizes) < full) return 0
  const rating = rate({
    kind: family.kind,
    sizes: sizes.map(size => (size === 1 ? 3 : size)),
    hasWithout: false,
    oddballs: division.several.size,
    outsiders: all - placed - division.several.size,
    isMarked: false,
    isFeature: false,
  })
  return rating.score
}

function filled({
  family,
  division,
  words,
  toAdd,
}: Candidate & Pick<NearlySortsTask, 'words' | 'toAdd'>): NearlySort | undefined {
  const basis = family.basisOf(division.of)
  const keys = new Set(division.columns.keys())
  const lone = [...division.columns]
    .filter(([, column]) => column.length === 1)
    .map(([key, [index = 0]]) => ({ key, word: words[index]!, found: [] as string[] }))
  for (const word of toAdd()) {
    if (lone.every(({ found }) => found.length === fewest)) break
    const own = family.placesOf(word).filter(({ of }) => of === division.of)
    const column = lone.find(({ key, found }) => found.length < fewest && own[0]?.column === key)
    if (own.every(each => each.column === own[0]!.column)) column?.found.push(word.text)
  }
  if (lone.some(({ found }) => found.length < fewest)) return undefined
  const add = lone
    .map(({ key, word, found }) => ({
      column: basis.titleOf?.(key, [word], keys) ?? key,
      has: word.text,
      words: found,
    }))
    .toSorted((a, b) => (a.has < b.has ? -1 : 1))
  const parts = add.map(
    ({ column, has, words: more }) => `${more.join(' and ')} to ${column}, where ${has} stands alone`,
  )
  return { name: basis.name, add, says: `Nearly a sort: ${basis.name}. Add ${parts.join('; ')}.` }
}
