/** Looks for an order of calls that gives one first winner, at the call the teacher asks for where that is possible. */
import { type Generator, generatorFor, shuffle } from '../random.js'
import type { Board, BoardGrid } from './board.js'
import { type FirstWin, firstWin, type Game, gameOf, winsOf } from './first-wins.js'

export interface CallOrderWanted {
  readonly boards: readonly Board[]
  readonly grid: BoardGrid
  /** How many words there are; all of them are called, so every board comes to a line. */
  readonly words: number
  readonly seed: number
  readonly label: string
  /** The call at which the first line is wanted, where it matters. */
  readonly winAt?: number
}

export interface CallOrder {
  /** Indices of the words, in the order in which they are called. */
  readonly callOrder: readonly number[]
  /** For each board the call at which it first has a line. */
  readonly wins: readonly number[]
  /** For each board the call at which it is full. */
  readonly full: readonly number[]
  readonly firstWin: {
    readonly call: number
    /** Indices of the boards that win there; one, where the search succeeded. */
    readonly boards: readonly number[]
  }
  readonly odds: OrderOdds
  /** What a caller should know, in plain sentences. */
  readonly notes: readonly string[]
}

/** What random orders of these very boards give, counted over `orders` of them. */
export interface OrderOdds {
  readonly orders: number
  readonly withOneWinner: number
  /** With one winner, at the call asked for; 0 where none was asked for. */
  readonly withOneWinnerAtCall: number
  readonly meanFirstCall: number
  readonly earliestFirstCall: number
  readonly latestFirstCall: number
}

const randomOrders = 500
const stepsPerStart = 1_500
const starts = 4
/** Below this mean number of calls a teacher is told that the game is short: our own judgement, no source. */
const shortGame = 4

export function findCallOrder(wanted: CallOrderWanted): CallOrder {
  const generator = generatorFor(wanted.seed, `${wanted.label}: calls`)
  const game = gameOf(wanted)
  const order = Array.from({ length: wanted.words }, (_, word) => word)
  const tries = Array.from({ length: randomOrders }, (): Try => {
    const callOrder = shuffle(order, generator)
    return { callOrder, ...firstWin(game, callOrder) }
  })
  const miss = (first: FirstWin): number => missOf(first, wanted.winAt)
  const better = (a: Try, b: Try): Try => (choiceOf(b, wanted.winAt) < choiceOf(a, wanted.winAt) ? b : a)
  let best = tries.reduce(better)
  const ranked = [...tries].sort((a, b) => miss(a) - miss(b))
  for (let start = 0; start < starts && miss(best) > 0; start++) {
    best = improve(game, ranked[start]!, miss, generator).reduce(better, best)
  }
  const wins = winsOf(game, best.callOrder)
  const call = Math.min(...wins)
  const firstBoards = [...wins.keys()].filter(board => wins[board] === call)
  const odds = oddsOf(tries, wanted.winAt)
  return {
    callOrder: best.callOrder,
    wins,
    full: wanted.boards.map(board => Math.max(...board.flat().map(word => calledAt(best.callOrder, word)))),
    firstWin: { call, boards: firstBoards },
    odds,
    notes: notesOn(wanted, call, firstBoards.length, odds),
  }
}

/** The free space is there from the start. */
function calledAt(callOrder: readonly number[], word: number | null): number {
  return word === null ? 0 : callOrder.indexOf(word) + 1
}

interface Try extends FirstWin {
  readonly callOrder: readonly number[]
}

/** What the search lowers, 0 when all is as wanted: first it nears the call, then it sheds winners. */
function missOf({ call, winners }: FirstWin, winAt: number | undefined): number {
  const off = winAt === undefined ? 0 : Math.abs(call - winAt)
  return off * 1000 + (winners - 1)
}

/** What decides between orders found: a single winner first of all, then the call, then how many share the win. */
function choiceOf(first: FirstWin, winAt: number | undefined): number {
  return missOf(first, winAt) + (first.winners > 1 ? 1_000_000 : 0)
}

/** Exchanges two calls at a time, one of them at or before the first win, and keeps what is no worse; all it kept. */
function improve(game: Game, start: Try, miss: (first: FirstWin) => number, generator: Generator): Try[] {
  const kept = [start]
  let current = start
  for (let step = 0; step < stepsPerStart && miss(current) > 0 && game.words > 1; step++) {
    const early = generator.below(Math.min(game.words, Math.max(1, current.call)))
    const other = (early + 1 + generator.below(game.words - 1)) % game.words
    const callOrder = [...current.callOrder]
    callOrder[early] = current.callOrder[other]!
    callOrder[other] = current.callOrder[early]!
    const changed: Try = { callOrder, ...firstWin(game, callOrder) }
    if (miss(changed) > miss(current)) continue
    if (miss(changed) < miss(current)) kept.push(changed)
    current = changed
  }
  return kept
}

function oddsOf(tries: readonly FirstWin[], winAt: number | undefined): OrderOdds {
  const calls = tries.map(order => order.call)
  const single = tries.filter(order => order.winners === 1)
  return {
    orders: tries.length,
    withOneWinner: single.length,
    withOneWinnerAtCall: single.filter(order => order.call === winAt).length,
    meanFirstCall: calls.reduce((sum, call) => sum + call, 0) / calls.length,
    earliestFirstCall: Math.min(...calls),
    latestFirstCall: Math.max(...calls),
  }
}

function notesOn(
  { winAt, boards }: CallOrderWanted,
  call: number,
  winners: number,
  odds: OrderOdds,
): readonly string[] {
  const notes: string[] = []
  if (winAt !== undefined && call !== winAt) {
    notes.push(
      `No order found gives the first line at call ${winAt}; the nearest found gives it at call ${call}.`,
    )
  }
  if (winners > 1)
    notes.push(`No order found gives a single first winner: ${winners} boards share the first line.`)
  if (boards.length > 1) {
    notes.push(
      `Shuffled by hand instead, the calls give a single first winner in about ${percent(odds.withOneWinner, odds.orders)} % of games; ` +
        `the first line comes at call ${odds.meanFirstCall.toFixed(1)} on average ` +
        `(${odds.orders} shuffled orders of these boards: calls ${odds.earliestFirstCall} to ${odds.latestFirstCall}).`,
    )
  }
  if (odds.meanFirstCall < shortGame) {
    notes.push(
      'That is a short game: play on for two lines or a full board, or deal from more words, or leave out the free space.',
    )
  }
  return notes
}

function percent(part: number, whole: number): string {
  return ((100 * part) / whole).toFixed(0)
}
