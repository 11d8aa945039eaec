import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { goalTable } from '../../../src/sets/bingo/called-words.js'
import { dealBoards } from '../../../src/sets/bingo/deal-boards.js'
import { firstWinFinder, gameOf } from '../../../src/sets/bingo/first-wins.js'
import { findWinner } from '../../../src/sets/bingo/late-winner.js'
import { winRules } from '../../../src/sets/bingo/win-rule.js'
import { generatorFor, shuffle } from '../../../src/sets/random.js'
import { plainFirstWin, plainWinner } from './plain-search.js'

const tables = fc.record({
  columns: fc.integer({ min: 2, max: 5 }),
  rows: fc.integer({ min: 2, max: 5 }),
  freeCentre: fc.boolean(),
  more: fc.integer({ min: 0, max: 8 }),
  boards: fc.integer({ min: 1, max: 12 }),
  rule: fc.constantFrom(...winRules),
  seed: fc.nat(),
})
type Table = typeof tables extends fc.Arbitrary<infer T> ? T : never

function gameAt({ columns, rows, freeCentre, more, boards, rule, seed }: Table) {
  const words = columns * rows + more
  const grid = { columns, rows, freeCentre }
  const dealt = dealBoards({ ...grid, words, boards, seed, label: 'b', place: { file: 'week.yaml' } })
  if (!dealt.ok) throw new Error('too few words')
  return gameOf({ boards: dealt.value.boards, grid, words, rule })
}

describe('what is asked of thousands of orders', () => {
  it('finds the words up to the first win that the plain search finds, by the same chance', () => {
    const round = fc.record({
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      gap: fc.integer({ min: 1, max: 3 }),
      notAgain: fc.uniqueArray(fc.nat(11), { maxLength: 3 }),
    })
    fc.assert(
      fc.property(tables, round, (table, { share, gap, notAgain }) => {
        const game = gameAt(table)
        const call = 1 + Math.floor(share * game.words)
        const wanted = { call, gap, notAgain: new Set(notAgain), steps: 40 }
        const [quick, plain] = [generatorFor(table.seed, 'calls'), generatorFor(table.seed, 'calls')]
        expect(findWinner({ ...wanted, table: goalTable(game) }, quick)).toEqual(
          plainWinner({ ...wanted, game }, plain),
        )
        // As much chance was used, so that what comes after is the same too.
        expect(quick.next()).toBe(plain.next())
      }),
      { numRuns: 150 },
    )
  })

  it('gives the first win and its winners as a game played through gives them', () => {
    fc.assert(
      fc.property(tables, table => {
        const game = gameAt(table)
        const firstWin = firstWinFinder(game)
        const generator = generatorFor(table.seed, 'orders')
        for (let order = 0; order < 5; order++) {
          const callOrder = shuffle([...Array(game.words).keys()], generator)
          expect(firstWin(callOrder)).toEqual(plainFirstWin(game, callOrder))
        }
      }),
      { numRuns: 100 },
    )
  })
})
