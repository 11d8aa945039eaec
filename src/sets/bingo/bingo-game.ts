/**
 * Boards and calls by which a game lasts: one board alone wins first, after the middle of the words. Where the grid or
 * the list make that impossible, what the plan leaves open is changed, the least change first.
 */
import type { ColumnsAndRows } from '../../geometry.js'
import { keptOfLate } from '../../kept-of-late.js'
import { present, succeed } from '../../outcomes.js'
import { type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import { type Generator, generatorFor } from '../random.js'
import { arrangeForCalls, type RoundToHold, roundByChance } from './arrange-for-calls.js'
import type { Board } from './board.js'
import {
  afterMiddle,
  type CallOrder,
  type CallOrderWanted,
  callThatLastsWell,
  findCallOrder,
  tellOrder,
} from './call-order.js'
import { type BoardDeal, dealBoards } from './deal-boards.js'
import { dealPools, type Pool } from './deal-pools.js'
import { fewestCalls, gameOf } from './first-wins.js'
import type { WinRule } from './win-rule.js'

export interface BingoWanted extends ColumnsAndRows {
  readonly words: number
  /** For each of the pools. */
  readonly boards: number
  /** The words of those who play, where these are not the same for all; one pool of all words where left out. */
  readonly pools?: readonly Pool[]
  /** Whether the middle is free; where the plan is silent it is, unless the game would be over too soon. */
  readonly free?: boolean
  /** Where the plan is silent a line wins, unless the game would be over too soon. */
  readonly rule?: WinRule
  readonly winAt?: number
  readonly gap: number
  readonly rounds: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

export interface BingoGame {
  readonly deal: BoardDeal
  /** The calls of each round, one board the winner of one round at the most. */
  readonly rounds: readonly CallOrder[]
  /** What was changed for the game to last, in plain sentences. */
  readonly changes: readonly string[]
}

interface Setting {
  readonly free: boolean
  readonly rule: WinRule
}

/** A class and its groups have a few at a time. */
const GAMES_HELD = 6

const settledOfLate = keptOfLate<string, Outcome<BingoGame>>(GAMES_HELD)

/**
 * An error where the boards cannot be dealt; a warning where what the plan fixes makes a game that is over too soon. The words
 * are numbers here, so that the game of a list is that of every list as long: a program that holds a plan open while words are
 * typed looks for it once.
 */
export function settleBingo(wanted: BingoWanted): Outcome<BingoGame> {
  return settledOfLate(JSON.stringify(wanted), () => settledAnew(wanted))
}

function settledAnew(wanted: BingoWanted): Outcome<BingoGame> {
  const [first = { free: false, rule: 'line' }, ...others] = settingsOf(wanted)
  const plain = playedWith(wanted, first)
  if (!plain.ok || plain.value.isAsWanted) return plain
  const otherwise: Played[] = []
  for (const setting of others) {
    const played = playedWith(wanted, setting)
    if (!played.ok) continue
    if (played.value.isAsWanted)
      return succeed({ ...played.value, changes: changesFrom(first, setting) }, played.problems)
    otherwise.push(played.value)
  }
  return succeed(plain.value, [...plain.problems, tooSoon(wanted, plain.value, otherwise)])
}

/** As the plan has it, then with what it leaves open changed. */
function settingsOf({ columns, rows, free, rule }: BingoWanted): readonly Setting[] {
  const hasMiddle = columns % 2 === 1 && rows % 2 === 1
  const frees = hasMiddle ? (free === undefined ? [true, false] : [free]) : [false]
  const rules: readonly WinRule[] = rule === undefined ? ['line', 'two lines', 'full board'] : [rule]
  return rules.flatMap(each => frees.map(open => ({ free: open, rule: each })))
}

interface Played extends BingoGame, Setting {
  readonly isAsWanted: boolean
}

function playedWith(wanted: BingoWanted, { free, rule }: Setting): Outcome<Played> {
  const boardsWanted = { ...wanted, freeCentre: free }
  const dealt = wanted.pools === undefined ? dealBoards(boardsWanted) : dealPools(boardsWanted, wanted.pools)
  if (!dealt.ok) return dealt
  const { grid } = dealt.value
  const { words, seed, gap, winAt } = wanted
  const generator = generatorFor(seed, `${wanted.label}: places for calls`)
  let boards = dealt.value.boards
  const held: RoundToHold[] = []
  const orderWanted = (round: number): CallOrderWanted => ({
    ...{ boards, grid, words, rule, seed, gap },
    label: round === 1 ? wanted.label : `${wanted.label}: round ${round}`,
    notAgain: new Set(held.slice(0, round - 1).map(({ winner }) => winner)),
    ...present({ winAt }),
  })
  for (let round = 1; round <= wanted.rounds; round++) {
    const asked = orderWanted(round)
    const found = findCallOrder(asked)
    const moved = found.isAsWanted ? undefined : placesForCalls(asked, held, generator)
    boards = moved?.boards ?? boards
    held.push(moved?.round ?? roundOf(found, gap))
  }
  const rounds = held.map(({ callOrder }, index) => tellOrder(orderWanted(index + 1), callOrder))
  const deal = { ...dealt.value, boards }
  const isAsWanted = rounds.every(calls => calls.isAsWanted)
  return succeed({ deal, rounds, changes: [], free, rule, isAsWanted }, dealt.problems)
}

function roundOf({ callOrder, firstWin }: CallOrder, gap: number): RoundToHold {
  return { callOrder, call: firstWin.call, gap, winner: firstWin.boards[0]! }
}

/** Other orders of calls that are drawn for one call before it is given up: at a late call not every order can hold. */
const DRAWS_A_CALL = 5

function placesForCalls(
  wanted: CallOrderWanted,
  held: readonly RoundToHold[],
  generator: Generator,
): { readonly boards: readonly Board[]; readonly round: RoundToHold } | undefined {
  const { boards, grid, rule, words, winAt, gap, notAgain = new Set<number>() } = wanted
  const game = gameOf(wanted)
  const [early, well] = [Math.max(afterMiddle(words), fewestCalls(game)), callThatLastsWell(game)]
  const calls =
    winAt === undefined ? Array.from({ length: well - early + 1 }, (_, less) => well - less) : [winAt]
  for (const call of calls.flatMap(call => Array.from({ length: DRAWS_A_CALL }, () => call))) {
    const round = roundByChance({ words, boards, call, gap, notAgain }, generator)
    const arranged = round && arrangeForCalls({ boards, grid, rule, rounds: [...held, round] }, generator)
    if (round !== undefined && arranged !== undefined) return { boards: arranged, round }
  }
  return undefined
}

function changesFrom(first: Setting, setting: Setting): readonly string[] {
  const changed = [
    ...(first.free && !setting.free ? ['the boards have no free space'] : []),
    ...(first.rule === setting.rule ? [] : [`it takes ${nameOfRule[setting.rule]} to win, not one line`]),
  ]
  return [
    `So that the game lasts, ${changed.join(' and ')}; write ${keysOf(first, setting)} in the plan to have it otherwise.`,
  ]
}

function keysOf(first: Setting, setting: Setting): string {
  return [
    ...(first.free === setting.free ? [] : ['free: yes']),
    ...(first.rule === setting.rule ? [] : [`win: ${first.rule}`]),
  ].join(' and ')
}

const nameOfRule: Readonly<Record<WinRule, string>> = {
  line: 'one line',
  'two lines': 'two lines',
  corners: 'the four corners',
  'full board': 'a full board',
}

function tooSoon(wanted: BingoWanted, played: Played, otherwise: readonly Played[]): Problem {
  const { words, winAt, gap } = wanted
  const when =
    winAt === undefined
      ? `after the middle, at call ${afterMiddle(words)} of ${words} or later`
      : `at call ${winAt}`
  const behind = gap > 1 ? ` and ${gap} calls before the next` : ''
  const nearer = otherwise.filter(
    ({ rounds }) => winAt !== undefined && missOf(rounds, winAt) < missOf(played.rounds, winAt),
  )
  const best = nearer.reduce<Played | undefined>(
    (found, each) => (found && missOf(found.rounds, winAt!) <= missOf(each.rounds, winAt!) ? found : each),
    undefined,
  )
  return warningAt(
    wanted.place,
    `no order was found in which one board alone wins ${when}${behind}; the nearest: ${nearestOf(played.rounds)}`,
    [
      ...(best === undefined ? [] : [`With ${changedSettings(played, best)}: ${nearestOf(best.rounds)}.`]),
      `For a game that lasts, ${waysOut(wanted).join(', or ')}.`,
    ].join(' '),
  )
}

/** How far the worst round is from one winner alone at the call. */
function missOf(rounds: readonly CallOrder[], winAt: number): number {
  return Math.max(
    ...rounds.map(({ firstWin }) => Math.abs(firstWin.call - winAt) + 1000 * (firstWin.boards.length - 1)),
  )
}

function nearestOf(rounds: readonly CallOrder[]): string {
  const failed = rounds.findIndex(calls => !calls.isAsWanted)
  const { call, boards } = rounds[failed]!.firstWin
  const winners = boards.length === 1 ? 'one board' : `${boards.length} boards at once`
  return `${winners} at call ${call}${rounds.length > 1 ? ` in game ${failed + 1}` : ''}`
}

function changedSettings(from: Setting, to: Setting): string {
  return [
    ...(from.rule === to.rule ? [] : [`win: ${to.rule}`]),
    ...(from.free === to.free ? [] : [`free: ${to.free ? 'yes' : 'no'}`]),
  ].join(' and ')
}

function waysOut({ free, rule, rounds, gap, winAt }: BingoWanted): readonly string[] {
  return [
    ...(winAt === undefined ? [] : ['leave out win at']),
    ...(free === true ? ['write free: no'] : []),
    ...(rule === undefined || rule === 'full board' ? [] : ['write win: full board']),
    ...(rounds > 1 ? ['ask for fewer rounds'] : []),
    ...(gap > 1 ? ['ask for a smaller runner-up gap'] : []),
    'give more words or fewer boards',
  ]
}
