import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { goalTable } from '../../../src/sets/bingo/called-words.js'
import { dealBoards } from '../../../src/sets/bingo/deal-boards.js'
import { gameOf } from '../../../src/sets/bingo/first-wins.js'
import { findWinner } from '../../../src/sets/bingo/late-winner.js'
import { type WinRule, winRules } from '../../../src/sets/bingo/win-rule.js'
import { generatorFor } from '../../../src/sets/random.js'
import { playedThrough } from './played-through.js'

interface Table {
  readonly side: number
  readonly words: number
  readonly boards: number
  readonly rule: WinRule
}

function search({ side, words, boards, rule }: Table, call: number, gap = 1, notAgain = new Set<number>()) {
  const dealt = dealBoards({
    columns: side,
    rows: side,
    freeCentre: false,
    words,
    boards,
    seed: 5,
    label: 'bingo',
    place: { file: 'week.yaml' },
  })
  if (!dealt.ok) throw new Error('too few words')
  const { boards: dealtBoards, grid } = dealt.value
  const table = goalTable(gameOf({ boards: dealtBoards, grid, words, rule }))
  const start = findWinner({ table, call, gap, notAgain, steps: 3000 }, generatorFor(1, 'calls'))
  if (start === undefined) return undefined
  const rest = Array.from({ length: words }, (_, word) => word).filter(word => !start.includes(word))
  return { start, wins: playedThrough(dealtBoards, grid, rule, [...start, ...rest]) }
}

const class5x5: Table = { side: 5, words: 32, boards: 30, rule: 'line' }

describe('the words called up to the first win', () => {
  it('let one board alone win at the call, by every rule, as a game played through shows', () => {
    const table = fc.record({
      side: fc.integer({ min: 2, max: 5 }),
      more: fc.integer({ min: 2, max: 12 }),
      boards: fc.integer({ min: 2, max: 20 }),
      rule: fc.constantFrom(...winRules),
      share: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    })
    fc.assert(
      fc.property(table, ({ side, more, boards, rule, share }) => {
        const words = side * side + more
        const call = Math.max(1, Math.round(share * words))
        const found = search({ side, words, boards, rule }, call)
        if (found === undefined) return
        const first = Math.min(...found.wins.map(win => win ?? Infinity))
        expect(first).toBe(call)
        expect(found.wins.filter(win => win === call)).toHaveLength(1)
      }),
      { numRuns: 60 },
    )
  })

  it.each([8, 12, 16, 18])('are found for a class of thirty at call %i', call =>
    expect(search(class5x5, call)).toBeDefined(),
  )

  it('keep the second winner away for the calls of the gap', () => {
    const found = search(class5x5, 12, 3)!
    const [first, second] = found.wins.map(win => win ?? Infinity).sort((one, other) => one - other)
    expect(first).toBe(12)
    expect(second).toBeGreaterThanOrEqual(15)
  })

  it('let no board win that has won before', () => {
    const before = new Set([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14])
    const found = search(class5x5, 12, 1, before)!
    expect(before.has(found.wins.indexOf(12))).toBe(false)
  })

  it('are not found where they cannot be: a line of five at call 4', () =>
    expect(search(class5x5, 4)).toBeUndefined())

  it('are not found past the last word', () => expect(search(class5x5, 33)).toBeUndefined())
})
