/**
 * Moves the words of boards to other cells so that one board alone wins at a call. Which words a board holds stays as
 * it was dealt; a child cannot see the difference, and a line across, down or from corner to corner can go on being what
 * wins where the order of calls alone could not make the game last.
 */
import { type Generator, shuffle } from '../random.js'
import { type Board, type BoardGrid, freeCell } from './board.js'
import { type Goals, goalsOf, type WinRule } from './win-rule.js'

export interface RoundToHold {
  /** Every word, in the order of the calls. */
  readonly callOrder: readonly number[]
  /** The call at which the winner wins. */
  readonly call: number
  /** Calls from the first win to the earliest second one. */
  readonly gap: number
  readonly winner: number
}

export interface ArrangementWanted {
  readonly boards: readonly Board[]
  readonly grid: BoardGrid
  readonly rule: WinRule
  /** All rounds that the boards are to hold to. */
  readonly rounds: readonly RoundToHold[]
}

/** Exchanges of two cells that are tried on a board before it is given up. */
const triesPerBoard = 600

/** The boards with as few exchanges as were found; undefined where a board has too few words that are called late. */
export function arrangeForCalls(
  { boards, grid, rule, rounds }: ArrangementWanted,
  generator: Generator,
): readonly Board[] | undefined {
  const table = { grid, ...goalsOf(rule, grid), calledAt: rounds.map(({ callOrder }) => callsOf(callOrder)) }
  const arranged: Board[] = []
  for (const [index, board] of boards.entries()) {
    const found = arrangeBoard(
      board,
      table,
      rounds.map(round => limitsOf(round, index)),
      generator,
    )
    if (found === undefined) return undefined
    arranged.push(found)
  }
  return arranged
}

interface Table extends Goals {
  readonly grid: BoardGrid
  /** For each round the call of each word. */
  readonly calledAt: readonly Int32Array[]
}

function arrangeBoard(
  board: Board,
  { grid, goals, needed, calledAt }: Table,
  limits: readonly Limits[],
  generator: Generator,
): Board | undefined {
  const cells = [...board.flat()]
  const free = freeCell(grid)
  const movable = [...cells.keys()].filter(cell => cell !== free)
  // The free space is covered from the start.
  const calls = calledAt.map(at => Int32Array.from(cells, word => (word === null ? 0 : at[word]!)))
  const missOfAll = (): number => {
    let miss = 0
    for (let round = 0; round < limits.length; round++)
      miss += missOf(goals, needed, calls[round]!, limits[round]!)
    return miss
  }
  let miss = missOfAll()
  for (let tries = 0; tries < triesPerBoard && miss > 0; tries++) {
    const one = movable[generator.below(movable.length)]!
    const other = movable[generator.below(movable.length)]!
    exchange(cells, one, other)
    for (const at of calls) exchange(at, one, other)
    const now = missOfAll()
    if (now <= miss) miss = now
    else {
      exchange(cells, one, other)
      for (const at of calls) exchange(at, one, other)
    }
  }
  return miss > 0 ? undefined : inRows(cells, grid)
}

/** How many goals are full too early, and how many too few in time. */
function missOf(
  goals: readonly (readonly number[])[],
  needed: number,
  calls: Int32Array,
  { notBy, by }: Limits,
): number {
  let early = 0
  let timely = 0
  for (const goal of goals) {
    let filledAt = 0
    for (const cell of goal) if (calls[cell]! > filledAt) filledAt = calls[cell]!
    if (filledAt <= notBy) early++
    if (filledAt <= by) timely++
  }
  return Math.max(0, early - (needed - 1)) + Math.max(0, by === 0 ? 0 : needed - timely)
}

interface Limits {
  /** The last call by which the board must not have won. */
  readonly notBy: number
  /** The call by which it must have won; 0 where it need not. */
  readonly by: number
}

function limitsOf({ call, gap, winner }: RoundToHold, board: number): Limits {
  return board === winner ? { notBy: call - 1, by: call } : { notBy: call + gap - 1, by: 0 }
}

function callsOf(callOrder: readonly number[]): Int32Array {
  const calledAt = new Int32Array(callOrder.length)
  callOrder.forEach((word, index) => {
    calledAt[word] = index + 1
  })
  return calledAt
}

function exchange<T>(cells: { [cell: number]: T }, one: number, other: number): void {
  ;[cells[one], cells[other]] = [cells[other]!, cells[one]!]
}

function inRows(cells: readonly (number | null)[], { columns, rows }: BoardGrid): Board {
  return Array.from({ length: rows }, (_, row) => cells.slice(row * columns, (row + 1) * columns))
}

/** Orders drawn, of which the one is kept that leaves each board the most words for later. */
const draws = 60

/** An order by chance and a winner that has not won before, for boards that are then arranged to hold to them. */
export function roundByChance(
  {
    words,
    boards,
    call,
    gap,
    notAgain,
  }: {
    readonly words: number
    readonly boards: readonly Board[]
    readonly call: number
    readonly gap: number
    readonly notAgain: ReadonlySet<number>
  },
  generator: Generator,
): RoundToHold | undefined {
  const open = [...boards.keys()].filter(board => !notAgain.has(board))
  const quiet = call + gap - 1
  if (open.length === 0 || quiet > words) return undefined
  const held = boards.map(board => board.flat().filter(word => word !== null))
  const all = Array.from({ length: words }, (_, word) => word)
  let callOrder: readonly number[] = all
  let most = -1
  for (let draw = 0; draw < draws; draw++) {
    const order = shuffle(all, generator)
    const isLate = new Uint8Array(words)
    for (const word of order.slice(quiet)) isLate[word] = 1
    const least = fewestOf(held, isLate)
    if (least > most) [callOrder, most] = [order, least]
  }
  return { callOrder, call, gap, winner: open[generator.below(open.length)]! }
}

/** How many of these words the board has that has the fewest. */
function fewestOf(boards: readonly (readonly number[])[], isOne: Uint8Array): number {
  let fewest = Infinity
  for (const board of boards) {
    let count = 0
    for (const word of board) count += isOne[word]!
    if (count < fewest) fewest = count
  }
  return fewest
}
