/** Looks for an order of calls by which one board alone wins first, at the call that is wanted where that can be. */
import { type Generator, generatorFor, shuffle } from '../random.js'
import type { Board, BoardGrid } from './board.js'
import { goalTable } from './called-words.js'
import { type FirstWin, fewestCalls, firstWinFinder, type Game, gameOf, winsOf } from './first-wins.js'
import { findWinner } from './late-winner.js'
import type { WinRule } from './win-rule.js'

export interface CallOrderWanted {
  readonly boards: readonly Board[]
  readonly grid: BoardGrid
  /** How many words there are; all of them are called, so every board wins in the end. */
  readonly words: number
  readonly rule: WinRule
  readonly seed: number
  readonly label: string
  /** The call of the first win; where it is left out any call after the middle of the words will do. */
  readonly winAt?: number
  /** How many calls after the first winner the next one comes at the earliest. */
  readonly gap: number
  /** Boards that have won a round before and are not to win again. */
  readonly notAgain?: ReadonlySet<number>
}

export interface CallOrder {
  readonly rule: WinRule
  /** Indices of the words, in the order in which they are called. */
  readonly callOrder: readonly number[]
  /** For each board the call at which it first has a line. */
  readonly lines: readonly number[]
  /** For each board the call at which it wins by the rule. */
  readonly wins: readonly number[]
  /** For each board the call at which it is full. */
  readonly full: readonly number[]
  readonly firstWin: {
    readonly call: number
    /** Indices of the boards that win there; one, where the search succeeded. */
    readonly boards: readonly number[]
  }
  /** Whether one board alone wins, at a call that was wanted, with the gap behind it. */
  readonly isAsWanted: boolean
  readonly odds: OrderOdds
}

/** What random orders of these very boards give, counted over `orders` of them. */
export interface OrderOdds {
  readonly orders: number
  readonly withOneWinner: number
  readonly meanFirstCall: number
  readonly earliestFirstCall: number
  readonly latestFirstCall: number
}

const randomOrders = 500
/** Steps of the search for one call. Over 26 games of 9 to 25 cells 30,000 found 3 calls of 180 more than these. */
const stepsPerCall = 1_500
/** The share of the words after which a game has lasted well: our own judgement, no source. */
const lastsWell = 0.6

export function findCallOrder(wanted: CallOrderWanted): CallOrder {
  const generator = generatorFor(wanted.seed, `${wanted.label}: calls`)
  const game = gameOf(wanted)
  return tellOrder(wanted, searchCalls(wanted, game, generator) ?? fewestWinners(wanted, game, generator))
}

/** What comes of an order of calls: who wins when. */
export function tellOrder(wanted: CallOrderWanted, callOrder: readonly number[]): CallOrder {
  const game = gameOf(wanted)
  const wins = winsOf(game, callOrder)
  const call = Math.min(...wins)
  const boards = [...wins.keys()].filter(board => wins[board] === call)
  return {
    rule: wanted.rule,
    callOrder,
    lines: winsOf(gameOf({ ...wanted, rule: 'line' }), callOrder),
    wins,
    full: winsOf(gameOf({ ...wanted, rule: 'full board' }), callOrder),
    firstWin: { call, boards },
    isAsWanted: isAsWanted(wanted, wins, boards),
    odds: oddsOf(game, generatorFor(wanted.seed, `${wanted.label}: odds`)),
  }
}

function isAsWanted(
  { words, winAt, gap, notAgain }: CallOrderWanted,
  wins: readonly number[],
  [winner, ...others]: readonly number[],
): boolean {
  if (winner === undefined || others.length > 0 || notAgain?.has(winner) === true) return false
  const call = wins[winner]!
  const isInTime = winAt === undefined ? call >= afterMiddle(words) : call === winAt
  return isInTime && wins.every((win, board) => board === winner || win >= call + gap)
}

/** The call to aim at where the plan names none. */
export function callThatLastsWell(game: Game): number {
  const { words } = game
  return Math.max(afterMiddle(words), fewestCalls(game), Math.round(lastsWell * words))
}

/** The first call that counts as after the middle of the words. */
export function afterMiddle(words: number): number {
  return Math.floor(words / 2) + 1
}

function searchCalls(
  wanted: CallOrderWanted,
  game: Game,
  generator: Generator,
): readonly number[] | undefined {
  const { words, winAt, gap, notAgain = new Set<number>() } = wanted
  const table = goalTable(game)
  const at = (call: number): readonly number[] | undefined => {
    const start = findWinner({ table, call, gap, notAgain, steps: stepsPerCall }, generator)
    return start && [...start, ...shuffle(uncalled(words, start), generator)]
  }
  const nearest = (calls: readonly number[]): readonly number[] | undefined => {
    for (const call of calls) {
      const found = at(call)
      if (found !== undefined) return found
    }
    return undefined
  }
  if (winAt !== undefined) return nearest(byDistance(words, winAt))
  const middle = afterMiddle(words)
  // The earlier the call, the more sets of words there are by which no board has won yet.
  const early = Math.max(middle, fewestCalls(game))
  const soon = nearest([early, early + 1, early + 2].filter(call => call <= words))
  if (soon === undefined) return nearest(countDown(middle - 1))
  return nearest(countDown(callThatLastsWell(game)).filter(call => call > early + 2)) ?? soon
}

/** Where no board can win alone, as where two are alike: the random order by which the fewest win together. */
function fewestWinners({ winAt }: CallOrderWanted, game: Game, generator: Generator): readonly number[] {
  const order = Array.from({ length: game.words }, (_, word) => word)
  const wantedCall = winAt ?? afterMiddle(game.words)
  const worth = ({ call, winners }: FirstWin): number => winners * 1000 + Math.abs(call - wantedCall)
  const firstWin = firstWinFinder(game)
  let best = order
  let least = Infinity
  for (let tried = 0; tried < randomOrders; tried++) {
    const callOrder = shuffle(order, generator)
    const value = worth(firstWin(callOrder))
    if (value < least) [best, least] = [callOrder, value]
  }
  return best
}

function oddsOf(game: Game, generator: Generator): OrderOdds {
  const order = Array.from({ length: game.words }, (_, word) => word)
  const firstWin = firstWinFinder(game)
  const tries = Array.from({ length: randomOrders }, () => firstWin(shuffle(order, generator)))
  const calls = tries.map(({ call }) => call)
  return {
    orders: tries.length,
    withOneWinner: tries.filter(({ winners }) => winners === 1).length,
    meanFirstCall: calls.reduce((sum, call) => sum + call, 0) / calls.length,
    earliestFirstCall: Math.min(...calls),
    latestFirstCall: Math.max(...calls),
  }
}

function uncalled(words: number, called: readonly number[]): number[] {
  const gone = new Set(called)
  return Array.from({ length: words }, (_, word) => word).filter(word => !gone.has(word))
}

function countDown(from: number): readonly number[] {
  return Array.from({ length: Math.max(0, from) }, (_, index) => from - index)
}

/** 1 to `words`, the nearest to a call first, the later of two as near. */
function byDistance(words: number, call: number): readonly number[] {
  return countDown(words).toSorted((one, other) => Math.abs(one - call) - Math.abs(other - call))
}
