import { describe, expect, it } from 'vitest'
import type { BoardGrid } from '../../../src/sets/bingo/board.js'
import { chancesByCall, meanCall } from '../../../src/sets/bingo/exact-odds.js'
import { gameOf, winsOf } from '../../../src/sets/bingo/first-wins.js'
import type { WinRule } from '../../../src/sets/bingo/win-rule.js'
import { generatorFor, shuffle } from '../../../src/sets/random.js'

/** A board of this grid, its words counted from 0. */
function gameWith(grid: BoardGrid, rule: WinRule, words: number) {
  let word = 0
  const middle = grid.freeCentre ? (grid.columns * grid.rows - 1) / 2 : -1
  const board = Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.columns }, (_, column) =>
      row * grid.columns + column === middle ? null : word++,
    ),
  )
  const game = gameOf({ boards: [board], grid, words, rule })
  return { game, chances: chancesByCall({ goals: game.goals[0]!, needed: game.needed, words })! }
}

describe('the chance of one board', () => {
  it('has a mean that is the sum of the chances not to have won yet', () => {
    const { chances } = gameWith({ columns: 2, rows: 2, freeCentre: false }, 'full board', 4)
    expect(meanCall(chances)).toBe(4)
  })
  it('of four corners is that of four words among those called', () => {
    const { chances } = gameWith({ columns: 4, rows: 4, freeCentre: false }, 'corners', 20)
    expect(chances[10]!.value).toBeCloseTo((10 * 9 * 8 * 7) / (20 * 19 * 18 * 17), 12)
  })

  it('of a full board is none before the last of its words can have been called', () => {
    const { chances } = gameWith({ columns: 3, rows: 3, freeCentre: true }, 'full board', 10)
    expect([chances[7]!.value, chances[10]!.value]).toEqual([0, 1])
  })

  it.each<[WinRule, BoardGrid, number]>([
    ['line', { columns: 3, rows: 3, freeCentre: true }, 12],
    ['two lines', { columns: 3, rows: 3, freeCentre: true }, 12],
    ['two lines', { columns: 4, rows: 3, freeCentre: false }, 14],
  ])('of %s agrees with 20,000 games played through, within three standard errors', (rule, grid, words) => {
    const { game, chances } = gameWith(grid, rule, words)
    const generator = generatorFor(7, `${rule} ${words}`)
    const order = Array.from({ length: words }, (_, word) => word)
    const games = 20_000
    const byCall = Array.from({ length: words + 1 }, () => 0)
    for (let played = 0; played < games; played++) byCall[winsOf(game, shuffle(order, generator))[0]!]!++
    let won = 0
    for (const [call, { value }] of chances.entries()) {
      won += byCall[call]!
      const error = Math.sqrt((value * (1 - value)) / games)
      expect(Math.abs(won / games - value)).toBeLessThanOrEqual(3 * error + 1e-12)
    }
  })

  it('is left out where the goals have too many subsets', () => {
    const goals = Array.from({ length: 21 }, (_, goal) => [goal])
    expect(chancesByCall({ goals, needed: 1, words: 30 })).toBeUndefined()
  })
})
