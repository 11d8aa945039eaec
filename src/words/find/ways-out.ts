/** What would work where nothing fits: wishes to leave out or a number to change, with how many words fit then. */
import { type FindQuery, findWords, isCandidate } from './find-words.js'
import type { OfferedWord } from './offered-word.js'
import { meets } from './wishes.js'

export interface WayOut {
  readonly does: 'leave out' | 'take instead'
  /** As they are typed: `--sounds 4`. Two where no single one left out is enough. */
  readonly options: readonly string[]
  /** How many fit then. */
  readonly words: number
}

/** Wishes left out come first, those that give most words before the others. */
export function waysOut(query: FindQuery, offered: readonly OfferedWord[]): readonly WayOut[] {
  const single = partsOf(query).flatMap(part => waysBy(part, query, offered))
  if (single.length > 0) return inOrder(single)
  return inOrder(pairsOf(query).flatMap(part => waysBy(part, query, offered))).slice(0, mostPairs)
}

/** More would be no advice. */
const mostPairs = 3

function inOrder(ways: readonly WayOut[]): readonly WayOut[] {
  const rank = ({ does }: WayOut) => (does === 'leave out' ? 0 : 1)
  return ways.toSorted((a, b) => rank(a) - rank(b) || b.words - a.words)
}

/** A wish, or several, and the query without them. */
interface Part {
  readonly options: readonly string[]
  readonly without: (query: FindQuery) => FindQuery
  /** For a wish that names a number. */
  readonly number?: WishedNumber
}

interface WishedNumber {
  readonly name: string
  readonly wished: number
  readonly of: (word: OfferedWord) => number
}

function waysBy(
  { options, without, number }: Part,
  query: FindQuery,
  offered: readonly OfferedWord[],
): readonly WayOut[] {
  const left = without(query)
  const fitting = wordsFor(left, offered)
  if (fitting.length === 0) return []
  const isWish = partsOf(left).length > 0
  return [
    ...(isWish ? [{ does: 'leave out' as const, options, words: fitting.length }] : []),
    ...(number === undefined ? [] : [otherNumber(number, fitting)]),
  ]
}

/** The nearest number with which something fits; of two as near the one with more words. */
function otherNumber({ name, wished, of }: WishedNumber, fitting: readonly OfferedWord[]): WayOut {
  const counts = new Map<number, number>()
  for (const word of fitting) counts.set(of(word), (counts.get(of(word)) ?? 0) + 1)
  const [nearest = [wished, 0]] = [...counts].toSorted(
    ([a, ofA], [b, ofB]) => Math.abs(a - wished) - Math.abs(b - wished) || ofB - ofA,
  )
  return { does: 'take instead', options: [`--${name} ${nearest[0]}`], words: nearest[1] }
}

function pairsOf(query: FindQuery): readonly Part[] {
  const parts = partsOf(query)
  return parts.flatMap((first, index) =>
    parts.slice(index + 1).map(second => ({
      options: [...first.options, ...second.options],
      without: (whole: FindQuery) => second.without(first.without(whole)),
    })),
  )
}

/** The wishes one by one. A place says nothing without a pattern or letters to stand there. */
function partsOf(query: FindQuery): readonly Part[] {
  const { patterns = [], letters, place, sounds, syllables, level, readable, goesWith, like } = query
  const part = (wish: unknown, options: readonly string[], without: Part['without']): readonly Part[] =>
    wish === undefined ? [] : [{ options, without }]
  const options = (name: string, value: unknown) => (value === undefined ? [] : [`--${name} ${value}`])
  const [alone, placed] = [patterns.length + (letters === undefined ? 0 : 1) === 1, options('place', place)]
  return [
    ...patterns.map(name => ({
      options: [`--pattern ${name}`, ...(alone ? placed : [])],
      without: ({ patterns: all = [], ...rest }: FindQuery) =>
        placedOn({ ...rest, patterns: all.filter(other => other !== name) }),
    })),
    ...part(letters, [`--letters ${letters}`, ...(alone ? placed : [])], ({ letters: _letters, ...rest }) =>
      placedOn(rest),
    ),
    ...part(place, placed, ({ place: _place, ...rest }) => rest),
    ...numberPart(
      'sounds',
      sounds,
      word => word.soundCount,
      ({ sounds: _sounds, ...rest }) => rest,
    ),
    ...numberPart(
      'syllables',
      syllables,
      word => word.syllableCount,
      ({ syllables: _all, ...rest }) => rest,
    ),
    ...part(level, options('level', level), ({ level: _level, ...rest }) => rest),
    ...part(readable, ['--taught'], ({ readable: _readable, ...rest }) => rest),
    ...part(goesWith, ['--for'], ({ goesWith: _goesWith, ...rest }) => rest),
    ...part(like, options('like', like?.text), ({ like: _like, ...rest }) => rest),
  ]
}

function numberPart(
  name: string,
  wished: number | undefined,
  of: WishedNumber['of'],
  without: Part['without'],
): readonly Part[] {
  return wished === undefined
    ? []
    : [{ options: [`--${name} ${wished}`], without, number: { name, wished, of } }]
}

function placedOn(query: FindQuery): FindQuery {
  if ((query.patterns ?? []).length > 0 || query.letters !== undefined) return query
  const { place: _place, ...rest } = query
  return rest
}

function wordsFor(query: FindQuery, offered: readonly OfferedWord[]): readonly OfferedWord[] {
  if (query.like !== undefined)
    return findWords({ ...query, count: offered.length }, offered).map(({ word }) => word)
  return offered.filter(word => isCandidate(word, query) && meets(word, query))
}
