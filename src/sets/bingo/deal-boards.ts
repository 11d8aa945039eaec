/** Deals boards: which words are on which board, and where. */
import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import { generatorFor } from '../random.js'
import { type Board, type BoardGrid, freeCell, wordsPerBoard } from './board.js'
import { chooseEvenSubsets } from './even-pairs.js'
import { arrangeEvenly } from './even-places.js'
import { binomial } from './subsets.js'

export interface BoardsWanted extends BoardGrid {
  /** How many words there are to deal from. */
  readonly words: number
  readonly boards: number
  readonly seed: number
  /** What the chance is for, so that each item has its own: its name, say. */
  readonly label: string
  /** Where in the plan the boards are asked for. */
  readonly place: Place
}

export interface BoardDeal {
  readonly grid: BoardGrid
  /** How many words were dealt from. */
  readonly words: number
  readonly boards: readonly Board[]
  /** On how many boards the rarest and the commonest word stand. */
  readonly uses: Spread
  /** On how many boards the rarest and the commonest pair of words meet. */
  readonly meetings: Spread
  /** What a teacher should know of the deal, in plain sentences. */
  readonly notes: readonly string[]
}

export interface Spread {
  readonly least: number
  readonly most: number
}

/**
 * Boards that are distinct as sets of words wherever there are enough subsets (otherwise distinct in their
 * arrangement), every word on equally many (± 1). An error where there are too few words for the grid.
 * Throws a RangeError where columns, rows or boards are not whole numbers of 1 or more.
 */
export function dealBoards(wanted: BoardsWanted): Outcome<BoardDeal> {
  for (const count of [wanted.columns, wanted.rows, wanted.boards]) {
    if (!Number.isInteger(count) || count < 1) throw new RangeError(`cannot deal boards by ${count}`)
  }
  const { columns, rows, freeCentre, words } = wanted
  const grid: BoardGrid = { columns, rows, freeCentre }
  const size = wordsPerBoard(grid)
  if (size === 0) return fail(noWordOnBoard(wanted))
  if (words < size) return fail(tooFewWords(wanted, size))

  const generator = generatorFor(wanted.seed, `${wanted.label}: boards`)
  const subsets = chooseEvenSubsets({ words, size, boards: wanted.boards }, generator)
  const arranged = arrangeEvenly(subsets, words, generator)
  const deal: BoardDeal = {
    grid,
    words,
    boards: arranged.map(board => layOut(board, grid)),
    uses: spread(countUses(subsets, words)),
    meetings: meetingsOf(subsets, words),
    notes: notesOn(wanted, size, arranged),
  }
  return succeed(deal)
}

function noWordOnBoard(wanted: BoardsWanted): Problem {
  return errorAt(
    wanted.place,
    'a 1x1 board with a free space holds no word',
    'Ask for a larger grid, or for one without a free space.',
  )
}

function tooFewWords(wanted: BoardsWanted, size: number): Problem {
  const missing = size - wanted.words
  const grid = `${wanted.columns}x${wanted.rows}`
  const fitting = largestFittingGrid(wanted)
  const more = `Add ${missing} more ${missing === 1 ? 'word' : 'words'}`
  return errorAt(
    wanted.place,
    `a ${grid} board needs ${size} words, and there ${wanted.words === 1 ? 'is' : 'are'} ${wanted.words}: ${missing} missing`,
    fitting === null
      ? `${more}.`
      : `${more}, or ask for a ${fitting.columns}x${fitting.rows} grid, which needs ${wordsPerBoard(fitting)}.`,
  )
}

/** The largest square grid that the words fill, or one a column wider than it is high where that holds more. */
function largestFittingGrid({ words, freeCentre }: BoardsWanted): BoardGrid | null {
  const sides = Array.from({ length: 9 }, (_, index) => index + 2)
  return (
    sides
      .flatMap(side => [
        { columns: side, rows: side, freeCentre },
        { columns: side + 1, rows: side, freeCentre },
      ])
      .filter(grid => wordsPerBoard(grid) <= words)
      .at(-1) ?? null
  )
}

function layOut(board: readonly number[], grid: BoardGrid): Board {
  const free = freeCell(grid)
  const cells: (number | null)[] = [...board]
  if (free !== null) cells.splice(free, 0, null)
  return Array.from({ length: grid.rows }, (_, row) =>
    cells.slice(row * grid.columns, (row + 1) * grid.columns),
  )
}

function notesOn(
  wanted: BoardsWanted,
  size: number,
  arranged: readonly (readonly number[])[],
): readonly string[] {
  const subsets = binomial(wanted.words, size)
  const notes: string[] = []
  if (wanted.boards > 1 && subsets === 1n) {
    notes.push(`Every board holds the same ${size} words; the boards differ in where the words stand.`)
  } else if (subsets < BigInt(wanted.boards)) {
    notes.push(
      `${wanted.words} words fill a board in ${subsets} ways only, so some boards hold the same words in other places.`,
    )
  }
  const distinct = new Set(arranged.map(String)).size
  if (distinct < wanted.boards) {
    notes.push(`Only ${distinct} different boards can be made; ${wanted.boards - distinct} are repeated.`)
  }
  return notes
}

function countUses(subsets: readonly (readonly number[])[], words: number): number[] {
  const uses = new Array<number>(words).fill(0)
  for (const subset of subsets) for (const word of subset) uses[word]!++
  return uses
}

/** Of thousands of words there are millions of pairs, and few of them meet: then only these are counted. */
function meetingsOf(subsets: readonly (readonly number[])[], words: number): Spread {
  const inOrder = subsets.map(subset => subset.toSorted((a, b) => a - b))
  return words > MANY_WORDS ? meetingsOfFew(inOrder, words) : meetingsOfAll(inOrder, words)
}

/** The table of their pairs takes a megabyte. */
const MANY_WORDS = 500

/** @param subsets each in ascending order */
function meetingsOfAll(subsets: readonly (readonly number[])[], words: number): Spread {
  const counts = new Int32Array(words * words)
  for (const subset of subsets)
    for (let first = 0; first < subset.length; first++)
      for (let second = first + 1; second < subset.length; second++)
        counts[subset[first]! * words + subset[second]!]!++
  const ofPairs: number[] = []
  for (let first = 0; first < words; first++)
    for (let second = first + 1; second < words; second++) ofPairs.push(counts[first * words + second]!)
  return spread(ofPairs)
}

function meetingsOfFew(subsets: readonly (readonly number[])[], words: number): Spread {
  const counts = new Map<number, number>()
  for (const subset of subsets)
    for (const [at, first] of subset.entries())
      for (const second of subset.slice(at + 1)) {
        const pair = first * words + second
        counts.set(pair, (counts.get(pair) ?? 0) + 1)
      }
  const met = spread([...counts.values()])
  return counts.size < (words * (words - 1)) / 2 ? { ...met, least: 0 } : met
}

function spread(counts: readonly number[]): Spread {
  const [first = 0, ...others] = counts
  return others.reduce<Spread>(
    ({ least, most }, count) => ({ least: Math.min(least, count), most: Math.max(most, count) }),
    { least: first, most: first },
  )
}
