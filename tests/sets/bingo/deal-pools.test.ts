import { describe, expect, it } from 'vitest'
import type { Board } from '../../../src/sets/bingo/board.js'
import type { BoardDeal, BoardsWanted } from '../../../src/sets/bingo/deal-boards.js'
import { dealPools, type Pool } from '../../../src/sets/bingo/deal-pools.js'

const wanted: BoardsWanted = {
  columns: 3,
  rows: 3,
  freeCentre: false,
  words: 20,
  boards: 5,
  seed: 7,
  label: 'bingo',
  place: { file: 'marsh.yaml' },
}

const from = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index)
const reeds: Pool = { name: 'the class', words: from(0, 13) }
const otters: Pool = { name: 'Otters', words: from(8, 19) }

function dealt(wanted: BoardsWanted, pools: readonly Pool[]): BoardDeal {
  const deal = dealPools(wanted, pools)
  if (!deal.ok) throw new Error(deal.problems.map(({ message }) => message).join('\n'))
  return deal.value
}

const wordsOn = (board: Board) => board.flat().filter(word => word !== null)

describe('boards for children of different words', () => {
  it('hold words of their own pool alone, over 40 seeds', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const { boards } = dealt({ ...wanted, seed }, [reeds, otters])
      expect(boards).toHaveLength(10)
      for (const [index, board] of boards.entries()) {
        const pool = index < 5 ? reeds : otters
        const words = wordsOn(board)
        expect(words.filter(word => !pool.words.includes(word))).toEqual([])
        expect(new Set(words).size).toBe(9)
      }
    }
  })

  it('are not alike for two groups of the same words', () => {
    const large = { name: 'large print', words: [...reeds.words].reverse() }
    const { boards } = dealt(wanted, [reeds, otters, large])
    const held = [...boards.slice(0, 5), ...boards.slice(10)].map(board =>
      wordsOn(board)
        .toSorted((a, b) => a - b)
        .join(),
    )
    expect(new Set(held).size).toBe(10)
  })

  it('use the words of a pool as often as each other, give or take one', () => {
    const { uses } = dealt({ ...wanted, boards: 14 }, [reeds])
    expect(uses).toEqual({ least: 9, most: 9 })
  })

  it('are the same for the same seed', () => {
    expect(dealPools(wanted, [reeds, otters])).toEqual(dealPools(wanted, [reeds, otters]))
  })

  it('are refused with the name of whoever has too few words', () => {
    const few = { name: 'Otters', words: from(0, 5) }
    const { problems } = dealPools(wanted, [reeds, few])
    expect(problems.map(({ message }) => message)).toEqual([
      'Otters: a 3x3 board needs 9 words, and there are 6: 3 missing',
    ])
  })
})
