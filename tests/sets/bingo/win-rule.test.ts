import { describe, expect, it } from 'vitest'
import { goalsOf } from '../../../src/sets/bingo/win-rule.js'

const threeByThree = { columns: 3, rows: 3, freeCentre: true }

describe('what wins', () => {
  it('is one of the rows, columns and corner-to-corner lines', () => {
    const { goals, needed } = goalsOf('line', threeByThree)
    expect([goals.length, needed]).toEqual([8, 1])
  })

  it('is two of them', () => expect(goalsOf('two lines', threeByThree).needed).toBe(2))

  it('is never more lines than a board has', () => {
    expect(goalsOf('two lines', { columns: 2, rows: 1, freeCentre: false }).needed).toBe(2)
    expect(goalsOf('two lines', { columns: 1, rows: 1, freeCentre: false }).needed).toBe(1)
  })

  it('is the four corners', () =>
    expect(goalsOf('corners', { columns: 4, rows: 3, freeCentre: false }).goals).toEqual([[0, 3, 8, 11]]))

  it('is two corners where there is one row', () =>
    expect(goalsOf('corners', { columns: 4, rows: 1, freeCentre: false }).goals).toEqual([[0, 3]]))

  it('is every cell but the free one', () =>
    expect(goalsOf('full board', threeByThree).goals).toEqual([[0, 1, 2, 3, 5, 6, 7, 8]]))
})
