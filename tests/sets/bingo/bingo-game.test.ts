import { describe, expect, it } from 'vitest'
import { type BingoWanted, settleBingo } from '../../../src/sets/bingo/bingo-game.js'
import type { Board } from '../../../src/sets/bingo/board.js'
import { dealBoards } from '../../../src/sets/bingo/deal-boards.js'
import { playedThrough } from './played-through.js'

const class5x5: BingoWanted = {
  columns: 5,
  rows: 5,
  words: 30,
  boards: 25,
  gap: 1,
  rounds: 1,
  seed: 12,
  label: 'bingo',
  place: { file: 'week.yaml', line: 9 },
}
const small: BingoWanted = { ...class5x5, columns: 3, rows: 3, words: 16, boards: 12 }

function settled(wanted: BingoWanted) {
  const outcome = settleBingo(wanted)
  if (!outcome.ok) throw new Error('no boards')
  const { deal, rounds, changes } = outcome.value
  const wins = rounds.map(({ rule, callOrder }) =>
    playedThrough(deal.boards, deal.grid, rule, callOrder).map(win => win ?? Infinity),
  )
  return { deal, rounds, changes, wins, problems: outcome.problems }
}

/** The call of the first win and who has it. */
function first(wins: readonly number[]) {
  const call = Math.min(...wins)
  return { call, boards: [...wins.keys()].filter(board => wins[board] === call) }
}

describe('a game that lasts', () => {
  it('is looked for once for lists as long', () => {
    expect(settleBingo({ ...class5x5 })).toBe(settleBingo({ ...class5x5 }))
    expect(settleBingo({ ...class5x5, seed: 13 })).not.toBe(settleBingo(class5x5))
  })

  it('has its free space and one line where that will do', () => {
    const { deal, rounds, changes, problems } = settled(class5x5)
    expect(deal.grid.freeCentre).toBe(true)
    expect(rounds[0]!.rule).toBe('line')
    expect(changes).toEqual([])
    expect(problems).toEqual([])
  })

  it.each([
    ['a class of 25 on 5x5', class5x5],
    ['twelve on 3x3', small],
    ['twenty-four on 3x3 from twelve words', { ...small, words: 12, boards: 24 }],
    ['twenty-four on 4x4 from twenty words', { ...class5x5, columns: 4, rows: 4, words: 20, boards: 24 }],
  ])('has one winner after the middle: %s', (_, wanted) => {
    const { wins, problems } = settled(wanted)
    const { call, boards } = first(wins[0]!)
    expect(boards).toHaveLength(1)
    expect(call).toBeGreaterThan(wanted.words / 2)
    expect(problems).toEqual([])
  })

  it('goes without the free space where that is enough, and says so', () => {
    const { deal, rounds, changes } = settled(small)
    expect(deal.grid.freeCentre).toBe(false)
    expect(rounds[0]!.rule).toBe('line')
    expect(changes).toEqual([
      'So that the game lasts, the boards have no free space; write free: yes in the plan to have it otherwise.',
    ])
  })

  it('asks for more than a line where the free space is wanted, and says so', () => {
    const { rounds, changes } = settled({ ...small, free: true })
    expect(rounds[0]!.rule).not.toBe('line')
    expect(changes[0]).toMatch(
      /^So that the game lasts, it takes (two lines|a full board) to win, not one line; write win: line in the plan to have it otherwise\.$/,
    )
  })

  it('moves words within their boards where no order alone will do, and keeps what each board holds', () => {
    const { deal } = settled({ ...class5x5, boards: 30, winAt: 20 })
    const dealt = dealBoards({ ...class5x5, boards: 30, freeCentre: true })
    const sorted = (board: Board) =>
      board
        .flat()
        .filter(word => word !== null)
        .sort((one, other) => one - other)
    expect(deal.boards.map(sorted)).toEqual(dealt.ok ? dealt.value.boards.map(sorted) : [])
    expect(deal.boards).not.toEqual(dealt.ok ? dealt.value.boards : [])
    expect(deal.boards.every(board => board[2]![2] === null)).toBe(true)
  })

  it('keeps what the plan fixes, and warns at its place where the game is then over too soon', () => {
    const { deal, rounds, problems } = settled({ ...small, free: true, rule: 'line' })
    expect(deal.grid.freeCentre).toBe(true)
    expect(rounds[0]!.rule).toBe('line')
    expect(problems).toHaveLength(1)
    expect(problems[0]).toMatchObject({ severity: 'warning', place: { file: 'week.yaml', line: 9 } })
    expect(problems[0]!.message).toMatch(
      /^no order was found in which one board alone wins after the middle, at call 9 of 16 or later; the nearest: one board at call \d$/,
    )
    expect(problems[0]!.advice).toBe(
      'For a game that lasts, write free: no, or write win: full board, or give more words or fewer boards.',
    )
  })

  it.each([8, 11, 14, 17, 20])('gives thirty children the first win at call %i, to one alone', winAt => {
    const { wins, rounds, problems } = settled({ ...class5x5, boards: 30, winAt })
    expect(first(wins[0]!)).toEqual({ call: winAt, boards: rounds[0]!.firstWin.boards })
    expect(rounds[0]!.firstWin.boards).toHaveLength(1)
    expect(rounds[0]!.rule).toBe('line')
    expect(problems).toEqual([])
  })

  it('keeps the runner-up away for the calls of the gap', () => {
    const { wins } = settled({ ...class5x5, gap: 3 })
    const [one, other] = [...wins[0]!].sort((a, b) => a - b)
    expect(other! - one!).toBeGreaterThanOrEqual(3)
  })

  it('tells the nearest to a call that cannot be had, and what would come nearer', () => {
    const { problems } = settled({ ...small, winAt: 15 })
    expect(problems[0]!.message).toContain('alone wins at call 15; the nearest: one board at call')
    expect(problems[0]!.advice).toMatch(/^With win: full board( and free: no)?: one board at call 14\. /)
  })

  it.each([8, 12, 17, 19, 20])('has one winner of thirty boards at call %i, whatever the seed', winAt => {
    for (const seed of [1, 2, 3, 4]) {
      const { wins } = settled({ ...class5x5, boards: 30, free: true, rule: 'line', winAt, seed })
      expect(first(wins[0]!)).toEqual({ call: winAt, boards: [expect.any(Number)] })
    }
  })

  it('gives several games from one set of boards, each to another board', () => {
    const { wins, problems } = settled({ ...class5x5, rounds: 4 })
    const winners = wins.map(first)
    expect(winners.every(({ boards }) => boards.length === 1)).toBe(true)
    expect(new Set(winners.map(({ boards }) => boards[0])).size).toBe(4)
    expect(winners.every(({ call }) => call > 15)).toBe(true)
    expect(problems).toEqual([])
  })

  it('is the same for the same seed', () =>
    expect(settled(class5x5).rounds[0]!.callOrder).toEqual(settled(class5x5).rounds[0]!.callOrder))
})
