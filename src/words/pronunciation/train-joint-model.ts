import { align } from '../alignment/align.js'
import { soundsOf } from '../alignment/arpabet.js'
import { learnedTable } from '../alignment/graphemes.js'
import { spell } from '../alignment/spelling.js'
import {
  beginning,
  ending,
  type JointModel,
  type JointToken,
  keyOf,
  order,
  type RunCounts,
  tokenSpan,
} from './joint-model.js'

export interface Lesson {
  readonly word: string
  /** ARPABET with stress. */
  readonly pronunciation: string
}

/** Runs of four seen once are left out: they weigh much and tell little. */
const leastCountOfLongest = 2

/** Counts the runs of aligned graphemes in the lessons; a lesson that the grapheme table cannot explain is passed over. */
export function trainJointModel(lessons: Iterable<Lesson>): JointModel {
  const tokens: JointToken[] = [
    { letters: '', sounds: [] },
    { letters: '', sounds: [] },
  ]
  const idOf = new Map<string, number>()
  const counts = Array.from({ length: order }, () => new Map<number, number>())
  for (const lesson of lessons) {
    const aligned = alignedTokens(lesson)
    if (aligned === undefined) continue
    const run = new Array<number>(order - 1).fill(beginning)
    for (const token of aligned) {
      const name = `${token.letters} ${token.sounds.join(' ')}`
      let id = idOf.get(name)
      if (id === undefined) {
        id = tokens.push(token) - 1
        idOf.set(name, id)
      }
      run.push(id)
    }
    run.push(ending)
    countRuns(run, counts)
  }
  return { tokens, runs: counts.map((_, index) => sortedRuns(counts, index)) }
}

function alignedTokens({ word, pronunciation }: Lesson): readonly JointToken[] | undefined {
  const { letters, breaks } = spell(word)
  const stressed = pronunciation.split(' ')
  const { stretches } = align(learnedTable(), { letters, breaks, sounds: soundsOf(pronunciation) })
  if (stretches.some(stretch => stretch.irregular)) return undefined
  return stretches.map(({ start, end, from, to }) => ({
    letters: letters.slice(start, end),
    sounds: stressed.slice(from, to),
  }))
}

/** Every run that ends at a grapheme or at the word's end, and the beginnings that precede them. */
function countRuns(run: readonly number[], counts: readonly Map<number, number>[]): void {
  for (let length = 1; length <= order; length++) {
    const table = counts[length - 1]!
    for (let last = order - 2; last < run.length; last++) {
      const first = last - length + 1
      if (first < 0) continue
      const key = keyOf(run.slice(first, last + 1))
      table.set(key, (table.get(key) ?? 0) + 1)
    }
  }
}

function sortedRuns(counts: readonly Map<number, number>[], index: number): RunCounts {
  const followers = new Map<number, number>()
  const followed = new Map<number, number>()
  for (const [key, count] of counts[index + 1] ?? []) {
    const history = Math.floor(key / tokenSpan)
    followers.set(history, (followers.get(history) ?? 0) + 1)
    if (isKept(index + 1, count)) followed.set(history, (followed.get(history) ?? 0) + count)
  }
  const kept = [...counts[index]!].filter(([, count]) => isKept(index, count)).sort((a, b) => a[0] - b[0])
  return {
    keys: Float64Array.from(kept, ([key]) => key),
    counts: Uint32Array.from(kept, ([, count]) => count),
    followers: Uint32Array.from(kept, ([key]) => followers.get(key) ?? 0),
    followed: Uint32Array.from(kept, ([key]) => followed.get(key) ?? 0),
  }
}

function isKept(index: number, count: number): boolean {
  return index < order - 1 || count >= leastCountOfLongest
}
