/**
 * Moves the words of boards to other cells so that one board alone wins at a call. Which words a board holds stays as
 * it was dealt; a child cannot see the difference, and a line across, down or from corner to corner can go on being what
 * wins where the order of calls alone could not make the game last.
 */
import { type Generator, shuffle } from '../random.js'
import { type Board, type BoardGrid, freeCell } from './board.js'
import { goalsOf, type WinRule } from './win-rule.js'

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
  wanted: ArrangementWanted,
  generator: Generator,
): readonly Board[] | undefined {
  const arranged: Board[] = []
  for (const [index, board] of wanted.boards.entries()) {
    const found = arrangeBoard(board, index, wanted, generator)
    if (found === undefined) return undefined
    arranged.push(found)
  }
  return arranged
}

function arrangeBoard(
  board: Board,
  index: number,
  { grid, rule, rounds }: ArrangementWanted,
  generator: Generator,
): Board | undefined {
  const { goals, needed } = goalsOf(rule, grid)
  const limits = rounds.map(round => limitsOf(round, index))
  const cells = [...board.flat()]
  const free = freeCell(grid)
  const movable = [...cells.keys()].filter(cell => cell !== free)
  const missOfAll = (): number =>
    limits.reduce((sum, { calledAt, notBy, by }) => {
      const filledAt = goals.map(goal => Math.max(...goal.map(cell => calledAtCell(calledAt, cells[cell]))))
      const early = filledAt.filter(call => call <= notBy).length
      const timely = filledAt.filter(call => call <= by).length
      return sum + Math.max(0, early - (needed - 1)) + Math.max(0, by === 0 ? 0 : needed - timely)
    }, 0)
  let miss = missOfAll()
  for (let tries = 0; tries < triesPerBoard && miss > 0; tries++) {
    const [one, other] = [
      movable[generator.below(movable.length)]!,
      movable[generator.below(movable.length)]!,
    ]
    exchange(cells, one, other)
    const now = missOfAll()
    if (now <= miss) miss = now
    else exchange(cells, one, other)
  }
  return miss > 0 ? undefined : inRows(cells, grid)
}

interface Limits {
  readonly calledAt: ReadonlyMap<number, number>
  /** The last call by which the board must not have won. */
  readonly notBy: number
  /** The call by which it must have won; 0 where it need not. */
  readonly by: number
}

function limitsOf({ callOrder, call, gap, winner }: RoundToHold, board: number): Limits {
  const calledAt = new Map(callOrder.map((word, index) => [word, index + 1]))
  return board === winner
    ? { calledAt, notBy: call - 1, by: call }
    : { calledAt, notBy: call + gap - 1, by: 0 }
}

/** The free space is covered from the start. */
function calledAtCell(calledAt: ReadonlyMap<number, number>, word: number | null | undefined): number {
  return word === null || word === undefined ? 0 : calledAt.get(word)!
}

function exchange(cells: (number | null)[], one: number, other: number): void {
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
    const late = new Set(order.slice(quiet))
    const least = Math.min(...held.map(board => board.filter(word => late.has(word)).length))
    if (least > most) [callOrder, most] = [order, least]
  }
  return { callOrder, call, gap, winner: open[generator.below(open.length)]! }
}
