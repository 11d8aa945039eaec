import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { crosswordRows, packCrossword } from '../../../src/sets/games/crossword.js'
import { extentOf, type Placed, sizeOf } from '../../../src/sets/games/crossword-places.js'
import { packSymmetric } from '../../../src/sets/games/symmetric-crossword.js'
import { generatorFor } from '../../../src/sets/random.js'
import { isOnePiece, runsIn } from './crossword-runs.js'

const most = { columns: 14, rows: 14 }

/** The cells of a grid as letters or not, and after half a turn. */
const shapeOf = (rows: readonly string[]) => rows.map(row => row.replaceAll(/[^.]/g, 'o'))
const turned = (rows: readonly string[]) => rows.map(row => [...row].reverse().join('')).reverse()

function rowsOf(placed: readonly Placed[]): readonly string[] {
  const { top, left, bottom, right } = extentOf(placed)
  const entries = placed.map(place => ({
    ...place,
    row: place.row - top,
    column: place.column - left,
    number: 0,
  }))
  return crosswordRows({ columns: right - left, rows: bottom - top, entries, left: [] })
}

/** What is wrong with a grid that is said to be symmetric and to hold every word; empty where nothing is. */
function faultsOf(placed: readonly Placed[], words: readonly string[]): readonly string[] {
  const rows = rowsOf(placed)
  const read = runsIn(rows).map(run => run.split(' ').at(-1)!)
  return [
    ...(turned(shapeOf(rows)).join() === shapeOf(rows).join()
      ? []
      : ['it is another grid after half a turn']),
    ...(read.toSorted().join() === words.toSorted().join() ? [] : [`it reads ${read.join(', ')}`]),
    ...(isOnePiece(rows) ? [] : ['it is in pieces']),
    ...(rows.length <= most.rows && rows[0]!.length <= most.columns ? [] : ['it has no room']),
  ]
}

const letters = fc.array(fc.constantFrom(...'abcdefghijklmnopqrst'), { minLength: 20, maxLength: 20 })

/**
 * Lists made from a grid that we drew, so that a symmetric one is known to exist; the letters are by chance:
 *
 *     . . o o o
 *     . . . . o
 *     . . . . o
 *     o o o o o
 *     o . . . .
 *     o . . . .
 *     o o o . .
 */
function listOfCentre(chance: readonly string[]): readonly string[] {
  const take = (from: number, count: number) => chance.slice(from, from + count).join('')
  const centre = take(0, 5)
  const down = `${centre[0]}${take(5, 3)}`
  const up = `${take(8, 3)}${centre[4]}`
  return [centre, down, up, `${down[3]}${take(11, 2)}`, `${take(13, 2)}${up[0]}`]
}

/** Two words of five across and two of five down, round an empty centre. */
function listOfRing(chance: readonly string[]): readonly string[] {
  const [upper, lower] = [chance.slice(0, 5), chance.slice(5, 10)]
  const [left, right] = [chance.slice(10, 15), chance.slice(15, 20)]
  left[0] = upper[0]!
  left[4] = lower[0]!
  right[0] = upper[4]!
  right[4] = lower[4]!
  return [upper, lower, left, right].map(each => each.join(''))
}

describe('a symmetric crossword', () => {
  it.each([
    ['a centre and two pairs', listOfCentre],
    ['a ring of two pairs', listOfRing],
  ])('is found for a list made from one: %s', (_what, listOf) => {
    fc.assert(
      fc.property(letters, fc.integer(), (chance, seed) => {
        const words = listOf(chance)
        fc.pre(new Set(words).size === words.length)
        const placed = packSymmetric({ words, most, mostSize: 60 }, generatorFor(seed, 'made'))
        expect(placed === undefined ? ['none was found'] : faultsOf(placed, words)).toEqual([])
      }),
      { numRuns: 200 },
    )
  })

  it('is one, with every word in it once and nothing else to read, whatever the list', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: 3, maxLength: 5 })
    const lists = fc.uniqueArray(word, { minLength: 2, maxLength: 9 })
    let found = 0
    fc.assert(
      fc.property(lists, fc.integer(), fc.integer({ min: 20, max: 60 }), (words, seed, mostSize) => {
        const placed = packSymmetric({ words, most, mostSize }, generatorFor(seed, 'few letters'))
        if (placed === undefined) return
        found += 1
        expect(faultsOf(placed, words)).toEqual([])
        expect(sizeOf(extentOf(placed))).toBeLessThanOrEqual(mostSize)
      }),
      { numRuns: 500 },
    )
    expect(found).toBeGreaterThan(20)
  })

  it.each([
    ['two even lengths, each with one word', ['pond', 'spring']],
    ['three lengths, each with one word', ['pond', 'heron', 'fog']],
  ])('is not looked for where none can be: %s', (_what, words) => {
    expect(packSymmetric({ words, most, mostSize: 60 }, generatorFor(1, 'none'))).toBeUndefined()
  })
})

describe('a crossword of a list that has a symmetric grid', () => {
  // One of 60 lists by chance of seven familiar words of five letters for which the search finds one.
  const list = 'ideas truly heavy shame still hired lunch'.split(' ')

  it('is it, and holds every word', () => {
    const crossword = packCrossword({ words: list, most }, generatorFor(1, 'crossword'))
    const rows = crosswordRows(crossword)
    expect(crossword.left).toEqual([])
    expect(turned(shapeOf(rows))).toEqual(shapeOf(rows))
  })
})
