import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findCallOrder } from '../../../src/sets/bingo/call-order.js'
import { dealBoards } from '../../../src/sets/bingo/deal-boards.js'
import { replay } from './replay.js'

const fiveByFive = { columns: 5, rows: 5, freeCentre: true, words: 30, boards: 25 }

function callsFor(game: typeof fiveByFive, seed: number, winAt?: number) {
  const dealt = dealBoards({ ...game, seed, label: 'bingo', place: { file: 'week.yaml' } })
  if (!dealt.ok) throw new Error('too few words')
  const { boards, grid } = dealt.value
  const calls = findCallOrder({
    boards,
    grid,
    words: game.words,
    rule: 'line',
    gap: 1,
    seed,
    label: 'bingo',
    ...(winAt === undefined ? {} : { winAt }),
  })
  return { boards, grid, calls }
}

describe('the caller’s order', () => {
  it('calls every word once, so that each board comes to a line', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 24, max: 32 }), (seed, words) => {
        const { calls } = callsFor({ ...fiveByFive, words }, seed)
        expect([...calls.callOrder].sort((a, b) => a - b)).toEqual([...Array(words).keys()])
        expect(calls.wins.every(win => win >= 1 && win <= words)).toBe(true)
      }),
      { numRuns: 20 },
    )
  })

  it('tells the wins that a replay of the order finds', () => {
    const { boards, grid, calls } = callsFor(fiveByFive, 12)
    expect(calls.lines).toEqual(replay(boards, grid, calls.callOrder))
    expect(calls.wins).toEqual(calls.lines)
  })

  it.each([1, 2, 3, 4, 5])('gives one first winner after the middle of the words with seed %i', seed => {
    const { calls } = callsFor(fiveByFive, seed)
    expect(calls.isAsWanted).toBe(true)
    expect(calls.firstWin.call).toBeGreaterThan(15)
    const first = Math.min(...calls.wins)
    expect(calls.wins.filter(win => win === first)).toHaveLength(1)
    expect(calls.firstWin).toEqual({ call: first, boards: [calls.wins.indexOf(first)] })
  })

  it.each([8, 9, 10, 11, 12, 13, 14, 15, 16])(
    'gives one first winner at call %i when asked for it',
    winAt => {
      const { calls } = callsFor(fiveByFive, 12, winAt)
      expect([calls.firstWin.call, calls.firstWin.boards.length]).toEqual([winAt, 1])
    },
  )

  it('tells when each board is full', () => {
    const { boards, calls } = callsFor(fiveByFive, 12)
    const all = calls.callOrder
    boards.forEach((board, index) => {
      const held = board.flat().filter(word => word !== null)
      const called = all.slice(0, calls.full[index])
      expect(held.every(word => called.includes(word))).toBe(true)
      expect(held).toContain(called.at(-1))
    })
  })

  it('counts what shuffled orders of these boards give', () => {
    // 25 boards of 24 from 30 words: about 78 % of orders give a single first winner, the first line comes at call
    // 9.5 on average (simulated beforehand by another program). Of 500 orders, four standard errors are 7.4 % and, with
    // a deviation near 1.6, 0.3.
    const { odds } = callsFor(fiveByFive, 12, 10).calls
    expect(Math.abs(odds.withOneWinner / odds.orders - 0.78)).toBeLessThan(0.074)
    expect(Math.abs(odds.meanFirstCall - 9.539)).toBeLessThan(0.3)
  })

  it('would rather have one winner near the call asked for than a shared win at it', () => {
    const { calls } = callsFor(fiveByFive, 12, 30)
    expect(calls.isAsWanted).toBe(false)
    expect(calls.firstWin.boards).toHaveLength(1)
    expect(calls.firstWin.call).toBeGreaterThan(12)
  })

  it('takes the nearest call where the one asked for cannot be had', () => {
    // A line through the free centre holds four words: no order gives a line at call 3.
    const { calls } = callsFor(fiveByFive, 12, 3)
    expect(calls.firstWin.call).toBe(4)
    expect(calls.isAsWanted).toBe(false)
  })

  it('lets boards that cannot be told apart win together', () => {
    const twin = [[0, 1]]
    const calls = findCallOrder({
      boards: [twin, twin],
      grid: { columns: 2, rows: 1, freeCentre: false },
      words: 2,
      rule: 'line',
      gap: 1,
      seed: 1,
      label: 'bingo',
    })
    expect(calls.firstWin.boards).toEqual([0, 1])
    expect(calls.isAsWanted).toBe(false)
  })
})
