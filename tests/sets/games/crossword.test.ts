import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { crosswordRows, packCrossword } from '../../../src/sets/games/crossword.js'
import { generatorFor } from '../../../src/sets/random.js'
import { isOnePiece, runsIn } from './crossword-runs.js'

const week = ['marsh', 'heron', 'pond', 'thread', 'knot', 'shell', 'boat', 'frog', 'nest', 'crane']
const most = { columns: 14, rows: 14 }
const pack = (seed: number, words = week) => packCrossword({ words, most }, generatorFor(seed, 'crossword'))

const seeds = Array.from({ length: 1000 }, (_, seed) => seed)
/** Two attempts each: what holds of the best layout holds of any. */
const crosswords = seeds.map(seed =>
  packCrossword({ words: week, most, attempts: 2 }, generatorFor(seed, 'crossword')),
)

describe('a crossword', () => {
  it('can be read across and down in its entries alone', () => {
    for (const crossword of crosswords) {
      const told = crossword.entries.map(
        ({ row, column, down, word }) => `${row},${column} ${down ? 'down' : 'across'} ${word}`,
      )
      expect([...runsIn(crosswordRows(crossword))].sort()).toEqual(told.sort())
    }
  })

  it('lays no word over one that it holds, whatever the list', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: 2, maxLength: 5 })
    const lists = fc.uniqueArray(word, { minLength: 2, maxLength: 8 })
    const property = fc.property(lists, fc.integer(), (words, seed) => {
      const wanted = { words, most, attempts: 1 }
      const crossword = packCrossword(wanted, generatorFor(seed, 'few letters'))
      const read = runsIn(crosswordRows(crossword)).map(run => run.split(' ').at(-1)!)
      expect(read.toSorted()).toEqual(crossword.entries.map(entry => entry.word).toSorted())
    })
    fc.assert(property, { numRuns: 300 })
  })

  it('holds each word once, all of them in one piece', () => {
    for (const { entries, left, ...grid } of crosswords) {
      expect([...left, ...entries.map(({ word }) => word)].sort()).toEqual([...week].sort())
      expect(isOnePiece(crosswordRows({ ...grid, entries, left }))).toBe(true)
    }
  })

  it('is numbered in reading order, words that begin together sharing a number', () => {
    for (const { entries, columns } of crosswords) {
      const starts = [...new Set(entries.map(({ row, column }) => row * columns + column))].sort(
        (a, b) => a - b,
      )
      for (const { row, column, number } of entries)
        expect(number).toBe(starts.indexOf(row * columns + column) + 1)
    }
  })

  it('lies on its longer side or stands on its shorter one, as is wanted and as there is room', () => {
    const laid = (shape: 'wide' | 'tall', room = most) => {
      const wanted = { words: week, most: room, shape, attempts: 2 }
      return seeds.slice(0, 50).map(seed => packCrossword(wanted, generatorFor(seed, 'crossword')))
    }
    expect(laid('wide').every(({ columns, rows }) => columns >= rows)).toBe(true)
    expect(laid('tall').every(({ columns, rows }) => rows >= columns)).toBe(true)
    const narrow = laid('wide', { columns: 9, rows: 14 })
    expect(narrow.every(({ columns }) => columns <= 9)).toBe(true)
    expect(narrow.some(({ columns, rows }) => rows > columns)).toBe(true)
  })

  it('is tried more often where a word is left over', () => {
    const words = 'reed frog moth knee duck shed wren bee fish snow lamb cave goat'.split(' ')
    const wholes = seeds.slice(0, 20).map(seed => {
      const wanted = { words, most: { columns: 20, rows: 20 }, attempts: 60 }
      return packCrossword(wanted, generatorFor(seed, 'crossword')).left.length
    })
    expect(wholes.filter(left => left > 0).length).toBeLessThanOrEqual(1)
  })

  it('stays within the room that it is given', () => {
    for (const seed of seeds.slice(0, 20)) {
      const { columns, rows } = packCrossword(
        { words: week, most: { columns: 9, rows: 8 } },
        generatorFor(seed, 'small'),
      )
      expect(columns).toBeLessThanOrEqual(9)
      expect(rows).toBeLessThanOrEqual(8)
    }
  })

  it('has room for all of a week’s words', () => {
    for (const seed of seeds.slice(0, 20)) expect(pack(seed).left).toEqual([])
  })

  it('tells the words that share no letter with the others', () => {
    const { left, entries } = pack(1, ['pond', 'knot', 'fly'])
    expect(left).toEqual(['fly'])
    expect(entries).toHaveLength(2)
  })

  it('is the same for the same seed', () => {
    expect(pack(4)).toEqual(pack(4))
  })

  it('has no empty row or column at its edges', () => {
    for (const crossword of crosswords) {
      const rows = crosswordRows(crossword)
      for (const edge of [
        rows[0]!,
        rows.at(-1)!,
        rows.map(row => row[0]).join(''),
        rows.map(row => row.at(-1)).join(''),
      ])
        expect(edge).toMatch(/[a-z]/)
    }
  })
})

describe('a list of hundreds', () => {
  /** How often chance is asked: about once a word of each attempt. */
  const askedFor = (count: number): number => {
    const words = Array.from(
      { length: count },
      (_, index) =>
        `${'bcdfghjklm'[index % 10]}${'aeiou'[Math.floor(index / 10) % 5]}${'npqrstvwxz'[Math.floor(index / 50)]}`,
    )
    const generator = generatorFor(12, 'crossword')
    let asked = 0
    const below = (limit: number) => {
      asked += 1
      return generator.below(limit)
    }
    packCrossword({ words, most: { columns: 3, rows: 3 } }, { ...generator, below })
    return asked / count
  }

  it('is laid less often than one of forty words', () => {
    expect(askedFor(400)).toBeLessThan(askedFor(40) / 10)
  })

  it('is laid at least once', () => {
    expect(askedFor(500)).toBeGreaterThan(0)
  })
})
