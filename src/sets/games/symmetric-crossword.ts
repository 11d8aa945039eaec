/**
 * A crossword that is the same grid when it is turned by half a turn: for each word one of its length lies where the turn
 * takes it, or it lies on its own image. So the words are placed in pairs of one length about a centre, each crossing what
 * stands; a length of which there is an odd number gives one word to the centre, and the centre has room for one across and
 * one down. A search with a bounded number of steps, 1 to 50 ms. Few lists have such a grid, since a pair must agree with
 * what it crosses in two letters at once: of 420 lists by chance (6 to 14 familiar words of 3 to 8 letters) none; of 30
 * lists of seven words of five letters two, of 30 of words of three and five letters one.
 */
import { type Generator, shuffle } from '../random.js'
import { extentOf, type Placed, sidesOf, sizeOf } from './crossword-places.js'
import { type LetterField, letterField } from './letter-field.js'

export interface SymmetricWanted {
  /** In small letters, each once. */
  readonly words: readonly string[]
  readonly most: { readonly columns: number; readonly rows: number }
  /** No grid is larger than this, as `sizeOf` counts. */
  readonly mostSize: number
}

/** So many pairs are tried in all. */
const STEPS = 600
/** From one beginning. */
const STEPS_OF_ONE = 40
/** At each step the best so many pairs, one after the other. */
const BRANCHES = 3

/** The sum of the two rows, and of the two columns, that the half turn exchanges. */
interface Centre {
  readonly rows: number
  readonly columns: number
}

/** Every word placed, in a grid with a half-turn symmetry; undefined where the search finds none. */
export function packSymmetric(wanted: SymmetricWanted, generator: Generator): readonly Placed[] | undefined {
  const beginnings = shuffle(beginningsOf(wanted.words), generator)
  let steps = STEPS
  for (let round = 0; steps > 0 && beginnings.length > 0; round++) {
    const beginning = beginnings[round % beginnings.length]!
    if (round >= 3 * beginnings.length) return undefined
    const field = letterField()
    for (const place of beginning.placed) field.put(place)
    let own = Math.min(STEPS_OF_ONE, steps)
    const rest = wanted.words.filter(word => beginning.placed.every(place => place.word !== word))
    const found = grown(beginning.placed, rest)
    if (found !== undefined) return found

    function grown(placed: readonly Placed[], waiting: readonly string[]): readonly Placed[] | undefined {
      if (waiting.length === 0) return placed
      const pairs = pairsFor(placed, waiting, beginning.centre, field)
        .map(pair => ({ pair, cost: costOf([...placed, ...pair], field, pair) + generator.below(3) }))
        .filter(({ pair }) => hasRoom([...placed, ...pair], wanted))
        .toSorted((a, b) => a.cost - b.cost)
      for (const { pair } of pairs.slice(0, BRANCHES)) {
        if (own <= 0) return undefined
        own -= 1
        steps -= 1
        for (const place of pair) field.put(place)
        const whole = grown(
          [...placed, ...pair],
          waiting.filter(word => pair.every(place => place.word !== word)),
        )
        if (whole !== undefined) return whole
        for (const place of pair) field.take(place)
      }
      return undefined
    }
  }
  return undefined
}

interface Beginning {
  readonly placed: readonly Placed[]
  readonly centre: Centre
}

/** What may lie at the centre; the grid can be turned on its side afterwards, so a single word lies across. */
function beginningsOf(words: readonly string[]): readonly Beginning[] {
  const lengths = [...new Set(words.map(word => word.length))]
  const odd = lengths.filter(length => words.filter(word => word.length === length).length % 2 === 1)
  const [one, other] = odd
  const of = (length: number) => words.filter(word => word.length === length)
  if (odd.length > 2) return []
  if (one === undefined)
    return [...lengths.flatMap(length => crossed(of(length), of(length))), ...rings(words)]
  if (other === undefined)
    return of(one).map(word => ({
      placed: [{ word, row: 0, column: 0, down: false }],
      centre: { rows: 0, columns: word.length - 1 },
    }))
  return crossed(of(one), of(other))
}

/** A word across and one down, crossing in the middle of both. */
function crossed(across: readonly string[], down: readonly string[]): readonly Beginning[] {
  return across.flatMap(first =>
    down.flatMap((second): Beginning[] => {
      const [middle, half] = [(first.length - 1) / 2, (second.length - 1) / 2]
      if (first === second || first.length % 2 === 0 || second.length % 2 === 0) return []
      if (first[middle] !== second[half]) return []
      return [
        {
          placed: [
            { word: first, row: 0, column: 0, down: false },
            { word: second, row: -half, column: middle, down: true },
          ],
          centre: { rows: 0, columns: first.length - 1 },
        },
      ]
    }),
  )
}

/** So many pairs of words may stand across from one another at first: of ten words of one length, all. */
const PAIRS = 90

/** Two words across and two down round an empty centre, each of those down crossing both of those across. */
function rings(words: readonly string[]): readonly Beginning[] {
  const pairs = words.flatMap(word =>
    words.flatMap(other => (word !== other && word.length === other.length ? [[word, other] as const] : [])),
  )
  const tried = pairs.slice(0, PAIRS)
  return tried.flatMap(([upper, lower]) =>
    tried.flatMap(([left, right]): readonly Beginning[] => {
      if ([left, right].some(word => word === upper || word === lower)) return []
      return ringsOf({ upper, lower, left, right })
    }),
  )
}

interface Ring {
  readonly upper: string
  readonly lower: string
  readonly left: string
  readonly right: string
}

function ringsOf({ upper, lower, left, right }: Ring): readonly Beginning[] {
  const [last, end] = [upper.length - 1, left.length - 1]
  const found: Beginning[] = []
  for (let at = 0; at <= last; at++)
    for (let start = 0; start <= end; start++) {
      if (upper[at] !== left[start] || lower[last - at] !== right[end - start]) continue
      // The left word crosses the lower one so many rows down, and the right one the upper one likewise.
      for (let stop = start + 2; stop <= end; stop++)
        for (let foot = 0; foot <= last; foot++) {
          if (lower[foot] !== left[stop] || upper[last - foot] !== right[end - stop]) continue
          const height = stop - start
          const shift = at - foot
          const centre = { rows: height, columns: shift + last }
          const place = { word: left, row: -start, column: at, down: true }
          const turned = turnedBy(place, centre, right)
          if (Math.abs(turned.column - at) < 2) continue
          found.push({
            placed: [
              { word: upper, row: 0, column: 0, down: false },
              { word: lower, row: height, column: shift, down: false },
              place,
              turned,
            ],
            centre,
          })
        }
    }
  return found.filter(({ placed }) => isClean(placed))
}

/** Whether each can stand among the others. */
function isClean(placed: readonly Placed[]): boolean {
  const field = letterField()
  return placed.every(place => field.canStand(place) && field.put(place) === undefined)
}

/** Where half a turn takes a word, with another of its length there. */
function turnedBy({ word, row, column, down }: Placed, centre: Centre, other: string): Placed {
  const along = word.length - 1
  return {
    word: other,
    row: centre.rows - row - (down ? along : 0),
    column: centre.columns - column - (down ? 0 : along),
    down,
  }
}

type Pair = readonly [Placed, Placed]

/**
 * Every way to place two of the waiting words half a turn apart, each crossing what stands; of the two that are each
 * other's image, the first in order is placed.
 */
function pairsFor(
  placed: readonly Placed[],
  waiting: readonly string[],
  centre: Centre,
  field: LetterField,
): readonly Pair[] {
  return waiting.flatMap(word => {
    const others = waiting.filter(other => other > word && other.length === word.length)
    if (others.length === 0) return []
    return crossingPlaces(word, placed, field).flatMap(place => {
      field.put(place)
      const pairs = others.flatMap((other): Pair[] => {
        const turned = turnedBy(place, centre, other)
        return field.canStand(turned) ? [[place, turned]] : []
      })
      field.take(place)
      return pairs
    })
  })
}

/** Where the word can cross one that stands, touching no other; each place once. */
function crossingPlaces(word: string, placed: readonly Placed[], field: LetterField): readonly Placed[] {
  const found = new Map<string, Placed>()
  for (const other of placed)
    for (let at = 0; at < other.word.length; at++)
      for (let index = 0; index < word.length; index++) {
        if (word[index] !== other.word[at]) continue
        const down = !other.down
        const row = other.row + (other.down ? at : 0) - (down ? index : 0)
        const column = other.column + (other.down ? 0 : at) - (down ? 0 : index)
        const place = { word, row, column, down }
        if (field.canStand(place)) found.set(`${row} ${column} ${down}`, place)
      }
  return [...found.values()]
}

function costOf(placed: readonly Placed[], field: LetterField, pair: Pair): number {
  return sizeOf(extentOf(placed)) - 3 * pair.reduce((sum, place) => sum + field.crossedBy(place), 0)
}

function hasRoom(placed: readonly Placed[], { most, mostSize }: SymmetricWanted): boolean {
  const extent = extentOf(placed)
  const [height, width] = sidesOf(extent)
  return width <= most.columns && height <= most.rows && sizeOf(extent) <= mostSize
}
