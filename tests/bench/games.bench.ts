/** What the searches for games find, and how long they take. */
import { settleBingo } from '../../src/sets/bingo/bingo-game.js'
import { dealBoards } from '../../src/sets/bingo/deal-boards.js'

const place = { file: 'bench.yaml' }
const five = { columns: 5, rows: 5, words: 30, place } as const

export interface PairSpreadRow {
  readonly seed: number
  /** On how many boards the rarest pair of words meets, and the commonest. */
  readonly least: number
  readonly most: number
  /** No deal can be more even: the mean, rounded down and up. */
  readonly bestLeast: number
  readonly bestMost: number
}

/** Twenty-five boards of 24 of 30 words: how evenly pairs of words meet. */
export function benchPairSpread(): readonly PairSpreadRow[] {
  const [boards, cells, words] = [25, 24, 30]
  const mean = (boards * cells * (cells - 1)) / (words * (words - 1))
  return [1, 2, 3, 4, 5].map(seed => {
    const dealt = dealBoards({ ...five, freeCentre: true, boards, seed, label: 'bench' })
    if (!dealt.ok) throw new Error('thirty words fill a board of 24')
    const { least, most } = dealt.value.meetings
    return { seed, least, most, bestLeast: Math.floor(mean), bestMost: Math.ceil(mean) }
  })
}

export interface WinnerRow {
  readonly winAt: number
  readonly foundAt: number
  readonly winners: number
  readonly processorMs: number
}

/** Thirty boards, one alone to win at the call: the whole deal, calls and odds among it. */
export function benchSingleWinner(): readonly WinnerRow[] {
  const settle = (winAt: number, seed: number) => {
    const game = settleBingo({
      ...five,
      boards: 30,
      free: true,
      rule: 'line',
      winAt,
      gap: 1,
      rounds: 1,
      seed,
      label: 'bench',
    })
    if (!game.ok) throw new Error('thirty words fill a board of 24')
    return game.value.rounds[0]!.firstWin
  }
  settle(10, 0)
  return Array.from({ length: 13 }, (_, index) => index + 8).map(winAt => {
    const cpu = process.cpuUsage()
    const { call, boards } = settle(winAt, 1)
    const { user, system } = process.cpuUsage(cpu)
    return { winAt, foundAt: call, winners: boards.length, processorMs: Math.round((user + system) / 1000) }
  })
}
