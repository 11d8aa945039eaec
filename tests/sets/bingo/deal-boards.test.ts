import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type BoardsWanted, dealBoards } from '../../../src/sets/bingo/deal-boards.js'
import { binomial } from '../../../src/sets/bingo/subsets.js'

const place = { file: 'week.yaml', line: 9, column: 5 }
const asked = {
  columns: 5,
  rows: 5,
  freeCentre: true,
  words: 30,
  boards: 25,
  seed: 12,
  label: 'bingo',
  place,
}

function deal(wanted: BoardsWanted) {
  const outcome = dealBoards(wanted)
  if (!outcome.ok) throw new Error(outcome.problems.map(problem => problem.message).join('; '))
  return outcome.value
}

const wordsOf = (board: readonly (readonly (number | null)[])[]): number[] =>
  board
    .flat()
    .filter(word => word !== null)
    .sort((a, b) => a - b)

describe('dealing boards', () => {
  it('tells how often words stand on boards and meet there, of a thousand words as of ten', () => {
    const { uses, meetings } = deal({ ...asked, columns: 3, rows: 3, words: 1000, boards: 4 })
    expect([uses, meetings]).toEqual([
      { least: 0, most: 1 },
      { least: 0, most: 1 },
    ])
    const few = deal({ ...asked, columns: 3, rows: 3, words: 8, boards: 4 })
    expect([few.uses, few.meetings]).toEqual([
      { least: 4, most: 4 },
      { least: 4, most: 4 },
    ])
  })

  it('fills each board with different words, and leaves the middle free', () => {
    const { boards } = deal(asked)
    expect(boards).toHaveLength(25)
    for (const board of boards) {
      expect(board.map(row => row.length)).toEqual([5, 5, 5, 5, 5])
      expect(new Set(wordsOf(board)).size).toBe(24)
      expect(board[2]![2]).toBeNull()
    }
  })

  it('leaves no cell free on a grid without a middle', () => {
    expect(wordsOf(deal({ ...asked, columns: 4, rows: 4 }).boards[0]!)).toHaveLength(16)
  })

  // r = boards · size / words (check by counting): 25 · 24 / 30 = 20 and 25 · 16 / 20 = 20.
  it.each([
    { columns: 5, rows: 5, words: 30, uses: 20 },
    { columns: 4, rows: 4, words: 20, uses: 20 },
  ])('uses each of $words words on exactly $uses of 25 boards', ({ columns, rows, words, uses }) => {
    const { boards } = deal({ ...asked, columns, rows, words })
    const counts = new Array<number>(words).fill(0)
    for (const board of boards) for (const word of wordsOf(board)) counts[word]!++
    expect(counts).toEqual(new Array<number>(words).fill(uses))
  })

  it('is the same for the same seed, another for another', () => {
    expect(deal(asked).boards).toEqual(deal(asked).boards)
    expect(deal({ ...asked, seed: 13 }).boards).not.toEqual(deal(asked).boards)
  })

  it('keeps every promise on any grid', () => {
    const sizes = fc.record({
      columns: fc.integer({ min: 1, max: 5 }),
      rows: fc.integer({ min: 1, max: 5 }),
      freeCentre: fc.boolean(),
      more: fc.integer({ min: 0, max: 12 }),
      boards: fc.integer({ min: 1, max: 12 }),
      seed: fc.integer(),
    })
    fc.assert(
      fc.property(sizes, ({ columns, rows, freeCentre, more, boards, seed }) => {
        const free = freeCentre && columns % 2 === 1 && rows % 2 === 1
        const size = columns * rows - (free ? 1 : 0)
        fc.pre(size > 0)
        const words = size + more
        const dealt = deal({ columns, rows, freeCentre, words, boards, seed, label: 'any', place })
        const sets = dealt.boards.map(wordsOf)
        for (const set of sets) expect(new Set(set).size).toBe(size)
        const counts = Array.from(
          { length: words },
          (_, word) => sets.filter(set => set.includes(word)).length,
        )
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1)
        expect(dealt.uses).toEqual({ least: Math.min(...counts), most: Math.max(...counts) })
        const possible = binomial(words, size)
        const distinct = possible < BigInt(boards) ? Number(possible) : boards
        expect(new Set(sets.map(String)).size).toBe(distinct)
      }),
      { numRuns: 1000 },
    )
  })

  it('says so when every board must hold the same words, and arranges them differently', () => {
    const { boards, notes } = deal({ ...asked, words: 24 })
    expect(notes).toEqual([
      'Every board holds the same 24 words; the boards differ in where the words stand.',
    ])
    expect(new Set(boards.map(String)).size).toBe(25)
  })

  it('uses every arrangement before it repeats one', () => {
    const { boards, notes } = deal({ ...asked, columns: 2, rows: 2, words: 4, boards: 24 })
    expect(new Set(boards.map(String)).size).toBe(24)
    expect(notes).toHaveLength(1)
  })

  it('says so when there are fewer ways to fill a board than boards', () => {
    const { notes } = deal({ ...asked, columns: 3, rows: 3, freeCentre: false, words: 10 })
    expect(notes[0]).toContain('10 ways only')
  })

  it('says so when even the arrangements run out', () => {
    const { notes } = deal({ ...asked, columns: 1, rows: 2, words: 2, boards: 5 })
    expect(notes[1]).toBe('Only 2 different boards can be made; 3 are repeated.')
  })

  it('lets no word keep to the same place', () => {
    // 25 boards hold each word 20 times over 24 places: a word that stood twice at one place could be moved.
    const stands = new Map<string, number>()
    for (const board of deal(asked).boards) {
      board.flat().forEach((word, cell) => {
        if (word !== null) stands.set(`${word} at ${cell}`, (stands.get(`${word} at ${cell}`) ?? 0) + 1)
      })
    }
    expect(Math.max(...stands.values())).toBeLessThanOrEqual(2)
  })
})

describe('too few words for the grid', () => {
  it('is an error at its place that says how many are missing and what would fit', () => {
    expect(dealBoards({ ...asked, words: 17 })).toEqual({
      ok: false,
      problems: [
        {
          severity: 'error',
          place,
          message: 'a 5x5 board needs 24 words, and there are 17: 7 missing',
          advice: 'Add 7 more words, or ask for a 4x4 grid, which needs 16.',
        },
      ],
    })
  })

  it('refuses a board that is nothing but its free space', () => {
    const outcome = dealBoards({ ...asked, columns: 1, rows: 1 })
    expect(outcome.problems.map(problem => problem.message)).toEqual([
      'a 1x1 board with a free space holds no word',
    ])
  })

  it('speaks of one word as one', () => {
    const outcome = dealBoards({ ...asked, words: 23 })
    expect(outcome.problems[0]!.advice).toBe('Add 1 more word, or ask for a 5x4 grid, which needs 20.')
  })

  it('offers no grid where none fits', () => {
    const outcome = dealBoards({ ...asked, words: 1 })
    expect(outcome.problems[0]!.message).toBe('a 5x5 board needs 24 words, and there is 1: 23 missing')
    expect(outcome.problems[0]!.advice).toBe('Add 23 more words.')
  })
})
