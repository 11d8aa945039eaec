import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { patternBingo } from '../../../src/sets/games/pattern-bingo.js'
import { winningLines } from '../../../src/sets/games/pattern-calls.js'
import type { PatternBingoWanted } from '../../../src/sets/games/pattern-shares.js'
import { wordByHand } from '../words-by-hand.js'

const kind = (title: string, count: number) => ({
  title,
  words: Array.from({ length: count }, (_, index) => wordByHand(`${title}${'abcdefghijklmnopqrst'[index]}`)),
})
const asked: PatternBingoWanted = {
  kinds: [kind('sh', 6), kind('th', 5), kind('ch', 4)],
  boards: 8,
  copies: 1,
  seed: 12,
  label: 'kinds',
  place: { file: 'week.yaml', line: 14, column: 5 },
}

function setOf(change: Partial<PatternBingoWanted> = {}) {
  const outcome = patternBingo({ ...asked, ...change })
  if (!outcome.ok) throw new Error(outcome.problems.map(({ message }) => message).join('; '))
  return outcome.value
}

/** Every line of a board, written out: rows, columns and, where it is square, both diagonals. */
function linesOf<T>(cells: readonly (readonly T[])[]): readonly (readonly T[])[] {
  const columns = cells[0]!.map((_, column) => cells.map(row => row[column]!))
  if (cells.length !== columns.length) return [...cells, ...columns].filter(line => line.length > 2)
  return [...cells, ...columns, cells.map((row, at) => row[at]!), cells.map((row, at) => row.at(-1 - at)!)]
}

describe('pattern bingo', () => {
  it('gives every board as many words of a kind as the kind is called, over 1,000 seeds', () => {
    for (let seed = 0; seed < 1000; seed++) {
      const { cards, deal } = setOf({ seed, boards: 2 })
      for (const { words } of cards)
        for (const title of ['sh', 'th', 'ch'])
          expect(words.filter(({ text }) => text.startsWith(title)).length).toBe(
            deal!.callOrder.filter(call => call === title).length,
          )
    }
  })

  it('has no two boards with the same words while there are others, and uses words evenly', () => {
    const { cards } = setOf()
    const hands = cards.map(({ words }) =>
      words
        .map(({ text }) => text)
        .toSorted()
        .join(),
    )
    expect(new Set(hands).size).toBe(8)
    const uses = asked.kinds.map(({ words }) =>
      words.map(word => cards.filter(card => card.words.includes(word)).length),
    )
    for (const counts of uses) expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(2)
  })

  it('has no line of one kind alone, which its first calls would decide', () => {
    const { cards } = setOf({ boards: 20 })
    for (const { cells } of cards)
      for (const line of linesOf(cells!))
        expect(
          new Set(line.flatMap(word => (word === null ? [] : [word.text.slice(0, 2)]))).size,
        ).toBeGreaterThan(1)
  })

  it('is won by lines of three on a board of two rows', () => {
    expect(winningLines({ columns: 3, rows: 2 })).toEqual([
      [0, 1, 2],
      [3, 4, 5],
    ])
    expect(winningLines({ columns: 2, rows: 2 })).toHaveLength(6)
  })

  it('tells the earliest call at which a board can have a line, each call covering one word', () => {
    fc.assert(
      fc.property(fc.integer(), seed => {
        const { cards, deal } = setOf({ seed, boards: 3 })
        for (const { id, cells } of cards) {
          const byTrial = deal!.callOrder.findIndex((_, last) => {
            const called = deal!.callOrder.slice(0, last + 1)
            return linesOf(cells!).some(line =>
              ['sh', 'th', 'ch'].every(
                title =>
                  line.filter(word => word?.text.startsWith(title)).length <=
                  called.filter(call => call === title).length,
              ),
            )
          })
          expect(deal!.wins.find(({ board }) => board === id)!.call).toBe(byTrial + 1)
        }
      }),
      { numRuns: 40 },
    )
  })

  it('takes the largest grid that is full but for its middle and leaves a fifth of the words off', () => {
    const gridOf = (counts: readonly number[]) => {
      const kinds = counts.map((count, index) => kind('abcd'[index]!, count))
      const [board] = setOf({ kinds, boards: 1 }).cards
      return `${board!.cells![0]!.length}x${board!.cells!.length}, ${board!.words.length} words`
    }
    expect(gridOf([6, 5, 4])).toBe('3x3, 8 words')
    expect(gridOf([10, 10, 10])).toBe('5x5, 24 words')
    expect(gridOf([8, 7, 5])).toBe('4x4, 16 words')
    expect(gridOf([9, 2])).toBe('3x3, 8 words')
    expect(gridOf([2, 2])).toBe('2x2, 4 words')
  })

  it('has as many of each kind as asked, with free spaces where that leaves some, none of them a line alone', () => {
    const { cards, deal, notes } = setOf({ grid: { columns: 4, rows: 4 }, answers: 4 })
    expect(cards[0]!.words).toHaveLength(12)
    expect(cards[0]!.cells!.flat().filter(cell => cell === null)).toHaveLength(4)
    for (const { call } of deal!.wins) expect(call).toBeGreaterThan(0)
    expect(notes![0]).toContain('4 of “sh”, 4 of “th”, 4 of “ch” and 4 free spaces')
  })

  it('says where boards differ by their places alone', () => {
    expect(
      setOf({ kinds: [kind('a', 4), kind('b', 4)], grid: { columns: 4, rows: 2 } }).notes!.join(' '),
    ).toContain('boards differ by their places alone')
  })

  it('is an error with fewer than two kinds, or with more answers than there are words', () => {
    const problem = (change: Partial<PatternBingoWanted>) =>
      patternBingo({ ...asked, ...change }).problems[0]!
    expect(problem({ kinds: [kind('sh', 9)] }).message).toBe(
      'the words make one kind to call, and a game needs two',
    )
    expect(problem({ answers: 6 })).toMatchObject({
      message: 'no board has 6 words of each of two kinds',
      advice: 'Write answers: 5 or less, or give more words.',
    })
    expect(problem({ answers: 5, grid: { columns: 3, rows: 3 } }).advice).toBe(
      'Write answers: 4 or less, or give more words or a larger grid.',
    )
  })
})
