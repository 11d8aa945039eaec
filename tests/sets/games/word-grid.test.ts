import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dealWordGrid, wordGridBoards } from '../../../src/sets/games/word-grid.js'
import { generatorFor } from '../../../src/sets/random.js'
import { wordsByHand } from '../words-by-hand.js'

const any = fc.record({
  words: fc.integer({ min: 1, max: 20 }),
  columns: fc.integer({ min: 1, max: 11 }),
  rows: fc.integer({ min: 1, max: 8 }),
  line: fc.constantFrom('column' as const, 'row' as const, 'none' as const),
  seed: fc.integer(),
})

const deal = ({ seed, ...wanted }: Parameters<typeof dealWordGrid>[0] & { seed: number }) =>
  dealWordGrid(wanted, generatorFor(seed, 'grid'))

describe('words dealt over a grid', () => {
  it('are used equally often, give or take one', () => {
    fc.assert(
      fc.property(any, wanted => {
        const cells = deal(wanted)
        const counts = Array.from(
          { length: wanted.words },
          (_, word) => cells.filter(each => each === word).length,
        )
        expect(cells).toHaveLength(wanted.columns * wanted.rows)
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1)
      }),
    )
  })

  it('never stand twice side by side or slantwise, from ten words on', () => {
    fc.assert(
      fc.property(any, wanted => {
        const ten = { ...wanted, words: Math.max(10, wanted.words), line: 'none' as const }
        const cells = deal(ten)
        const alike: string[] = []
        for (let row = 0; row < ten.rows; row++)
          for (let column = 0; column < ten.columns; column++)
            for (const [down, across] of [
              [0, 1],
              [1, -1],
              [1, 0],
              [1, 1],
            ] as const) {
              if (column + across < 0 || column + across >= ten.columns || row + down >= ten.rows) continue
              const beside = (row + down) * ten.columns + column + across
              if (cells[beside] === cells[row * ten.columns + column]) alike.push(`${row} ${column}`)
            }
        expect(alike).toEqual([])
      }),
      { numRuns: 300 },
    )
  })

  it.each([
    ['column', 12, 6, 6],
    ['row', 12, 6, 6],
    ['column', 10, 11, 5],
  ] as const)(
    'stand once in each %s where the list has half as many again, over 300 seeds',
    (line, words, columns, rows) => {
      for (let seed = 0; seed < 300; seed++) {
        const cells = deal({ words, columns, rows, line, seed })
        const lineOf = (cell: number) => (line === 'column' ? cell % columns : Math.floor(cell / columns))
        const seen = new Set(cells.map((word, cell) => `${lineOf(cell)} ${word}`))
        expect(seen.size).toBe(cells.length)
      }
    },
  )

  it('are the same for the same seed and others on each board', () => {
    const wanted = {
      words: wordsByHand('reed', 'mud', 'pond', 'frog'),
      columns: 3,
      rows: 3,
      line: 'none',
      boards: 3,
      copies: 2,
      seed: 5,
      label: 'grid',
    } as const
    const boards = wordGridBoards(wanted)
    expect(boards.map(({ id }) => id)).toHaveLength(6)
    const texts = boards.map(board => board.words.map(word => word.text).join())
    expect(new Set(texts.slice(0, 3)).size).toBe(3)
    expect(texts.slice(3)).toEqual(texts.slice(0, 3))
    expect(wordGridBoards(wanted)).toEqual(boards)
  })
})
