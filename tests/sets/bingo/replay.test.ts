import { describe, expect, it } from 'vitest'
import { linesOf } from '../../../src/sets/bingo/board.js'
import { replay } from './replay.js'

const square = { columns: 3, rows: 3, freeCentre: true }
const board = [
  [0, 1, 2],
  [3, null, 4],
  [5, 6, 7],
]

describe('lines', () => {
  it('are rows, columns and both diagonals on a square grid', () => {
    expect(linesOf({ columns: 5, rows: 5, freeCentre: true })).toHaveLength(12)
    expect(linesOf({ columns: 2, rows: 2, freeCentre: false })).toEqual([
      [0, 1],
      [2, 3],
      [0, 2],
      [1, 3],
      [0, 3],
      [1, 2],
    ])
  })

  it('are rows and columns alone on a grid that is not square', () => {
    expect(linesOf({ columns: 3, rows: 2, freeCentre: true })).toHaveLength(5)
  })
})

describe('replaying a call order', () => {
  it.each([
    { line: 'a row', calls: [3, 0, 1, 2, 5, 6, 4, 7], call: 4 },
    { line: 'a row through the free space', calls: [0, 3, 7, 4, 1, 2, 5, 6], call: 3 },
    { line: 'a column', calls: [2, 4, 1, 7, 0, 3, 5, 6], call: 4 },
    { line: 'the falling diagonal', calls: [0, 7, 1, 2, 3, 4, 5, 6], call: 2 },
    { line: 'the rising diagonal', calls: [1, 5, 0, 2, 3, 4, 6, 7], call: 4 },
  ])('finds $line at call $call', ({ calls, call }) => {
    expect(replay([board], square, calls)).toEqual([call])
  })

  it('counts calls of words that the board does not hold', () => {
    expect(replay([board], square, [9, 8, 0, 7])).toEqual([4])
  })

  it('gives null where the calls end before a line', () => {
    expect(replay([board], square, [0, 3, 6])).toEqual([null])
  })
})
