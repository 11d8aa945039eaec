import { describe, expect, it } from 'vitest'
import { dealBoards } from '../../../src/sets/bingo/deal-boards.js'
import { generatorFor, shuffle } from '../../../src/sets/random.js'
import { replay } from '../../sets/bingo/replay.js'
import { playClassGames } from './class-odds.js'
import { oneBoardOdds } from './odds.js'

const five = { columns: 5, rows: 5, freeCentre: true }
const four = { columns: 4, rows: 4, freeCentre: false }
const three = { columns: 3, rows: 3, freeCentre: false }

describe('seventy-five-ball bingo, one 5x5 card with a free centre', () => {
  const odds = oneBoardOdds(five, 75)

  // By hand: of the twelve lines, four run through the free centre and need four numbers; C(75, 4) = 1215450 equally
  // likely sets of four calls; 4 / 1215450 = 2 / 607725.
  it('has a line by call 4 with probability 2/607725', () => {
    expect([odds.lineByCall[4]!.over, odds.lineByCall[4]!.under]).toEqual([2n, 607725n])
    expect(odds.lineByCall[3]!.over).toBe(0n)
  })

  // Computed beforehand by another program from the same formula (inclusion and exclusion over the twelve lines).
  it.each([
    [10, 0.000807826],
    [20, 0.022874453],
    [25, 0.063961056],
    [30, 0.143539469],
    [40, 0.445631106],
    [50, 0.814391912],
  ])('has a line by call %i with probability %f', (call, probability) => {
    expect(odds.lineByCall[call]!.value).toBeCloseTo(probability, 9)
  })

  // Computed beforehand by another program.
  it('takes 8491934/205275 calls on average, with standard deviation 9.8545', () => {
    expect([odds.meanCalls.over, odds.meanCalls.under]).toEqual([8491934n, 205275n])
    expect(odds.meanCalls.value).toBeCloseTo(41.368574, 6)
    expect(odds.deviation).toBeCloseTo(9.8545, 4)
  })

  // Agard and Shackleford, "A New Look at the Probabilities in Bingo", The College Mathematics Journal 33 (2002):
  // about half of all cards have a line within 41 calls, about nine tenths within 54.
  it('agrees with Agard and Shackleford 2002', () => {
    expect(odds.lineByCall[41]!.value).toBeCloseTo(0.5, 1)
    expect(odds.lineByCall[54]!.value).toBeCloseTo(0.9, 1)
    expect(odds.medianCall).toBe(42)
  })
})

describe('one board of a word list', () => {
  // Computed beforehand by another program from the same formula.
  it.each([
    { name: '5x5 with a free centre, 30 words', grid: five, words: 30, over: 131624977n, under: 7800450n },
    { name: '4x4, 20 words', grid: four, words: 20, over: 2836n, under: 255n },
    { name: '3x3, 12 words', grid: three, words: 12, over: 7813n, under: 1260n },
  ])('takes $over/$under calls on average: $name', ({ grid, words, over, under }) => {
    const { meanCalls } = oneBoardOdds(grid, words)
    expect([meanCalls.over, meanCalls.under]).toEqual([over, under])
  })

  // Another route to the same figures: all 2^cells sets of filled cells of a small board, none left out. A set of c
  // filled cells of the board's k has been reached after n calls of v words with probability C(v − k, n − c)/C(v, n).
  it.each([
    { name: '3x3', grid: three, words: 12 },
    { name: '3x3 with a free centre', grid: { ...three, freeCentre: true }, words: 11 },
    { name: '4x3', grid: { columns: 4, rows: 3, freeCentre: false }, words: 13 },
    { name: '4x4', grid: four, words: 20 },
  ])('agrees with a count of all filled boards: $name', ({ grid, words }) => {
    const { lineByCall } = oneBoardOdds(grid, words)
    expect(lineByCall.map(({ value }) => value)).toEqual(
      countedLineByCall(grid, words).map(value => expect.closeTo(value, 12)),
    )
  })
})

describe('our own dealer against the exact odds of one board', () => {
  // Each board of a deal, seen alone, must be as random as a board drawn alone; each is played with calls of its own.
  // Bound: four standard errors of the mean over all boards, the deviation being the exact one.
  it.each([
    { name: '5x5 with a free centre, 30 words', grid: five, words: 30, deals: 250 },
    { name: '4x4, 20 words', grid: four, words: 20, deals: 250 },
    { name: '3x3, 12 words', grid: three, words: 12, deals: 250 },
  ])('takes as many calls on average: $name', ({ grid, words, deals }) => {
    const exact = oneBoardOdds(grid, words)
    const generator = generatorFor(2002, 'calls for a dealer on trial')
    const order = Array.from({ length: words }, (_, word) => word)
    let sum = 0
    let count = 0
    for (let seed = 0; seed < deals; seed++) {
      const dealt = dealBoards({ ...grid, words, boards: 6, seed, label: 'trial', place: { file: 'trial' } })
      if (!dealt.ok) throw new Error('too few words')
      for (const board of dealt.value.boards) {
        const [call] = replay([board], grid, shuffle(order, generator))
        sum += call!
        count++
      }
    }
    expect(Math.abs(sum / count - exact.meanCalls.value)).toBeLessThan(
      (4 * exact.deviation) / Math.sqrt(count),
    )
  })
})

describe('a class of 25 boards, every board drawn at random', () => {
  // Mean calls to the first line and share of ties: simulated beforehand by another program (no closed form known).
  it.each([
    { name: '5x5 with a free centre, 30 words', grid: five, words: 30, mean: 9.539, tied: 0.218 },
    { name: '4x4, 20 words', grid: four, words: 20, mean: 6.355, tied: 0.329 },
    { name: '3x3, 12 words', grid: three, words: 12, mean: 3.416, tied: 0.563 },
  ])('has its first line after $mean calls, tied in $tied of games: $name', ({ grid, words, mean, tied }) => {
    const games = 20_000
    const odds = playClassGames({ grid, words, boards: 25, games, seed: 12 })
    expect(Math.abs(odds.meanFirstCall - mean)).toBeLessThan(3 * odds.meanError)
    expect(Math.abs(odds.tied - tied)).toBeLessThan(3 * Math.sqrt((tied * (1 - tied)) / games))
  })

  it('comes to the exact odds when the class is one child', () => {
    const exact = oneBoardOdds(four, 20)
    const odds = playClassGames({ grid: four, words: 20, boards: 1, games: 20_000, seed: 12 })
    expect(Math.abs(odds.meanFirstCall - exact.meanCalls.value)).toBeLessThan(3 * odds.meanError)
    expect(odds.tied).toBe(0)
  })
})

/** P(line by call n), from every possible set of filled cells, lines written out anew. */
function countedLineByCall(
  grid: { columns: number; rows: number; freeCentre: boolean },
  words: number,
): number[] {
  const { columns, rows } = grid
  const cells: string[] = []
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) cells.push(`${row},${column}`)
  const middle = grid.freeCentre ? `${(rows - 1) / 2},${(columns - 1) / 2}` : ''
  const held = cells.filter(cell => cell !== middle)
  const winning = (filled: ReadonlySet<string>): boolean => {
    const has = (row: number, column: number) =>
      `${row},${column}` === middle || filled.has(`${row},${column}`)
    const all = (length: number, at: (step: number) => boolean) => {
      for (let step = 0; step < length; step++) if (!at(step)) return false
      return true
    }
    for (let row = 0; row < rows; row++) if (all(columns, column => has(row, column))) return true
    for (let column = 0; column < columns; column++) if (all(rows, row => has(row, column))) return true
    if (rows !== columns) return false
    return all(rows, step => has(step, step)) || all(rows, step => has(step, rows - 1 - step))
  }
  const winningSets = new Array<number>(held.length + 1).fill(0)
  for (let set = 0; set < 2 ** held.length; set++) {
    const filled = new Set(held.filter((_, cell) => (set >> cell) & 1))
    if (winning(filled)) winningSets[filled.size]!++
  }
  const choose = (items: number, size: number): number => {
    if (size < 0 || size > items) return 0
    let ways = 1
    for (let step = 1; step <= size; step++) ways = (ways * (items - size + step)) / step
    return ways
  }
  return Array.from({ length: words + 1 }, (_, call) =>
    winningSets.reduce(
      (sum, count, filled) =>
        sum + (count * choose(words - held.length, call - filled)) / choose(words, call),
      0,
    ),
  )
}
