import { describe, expect, it } from 'vitest'
import { kindsOf, marshWords, piecesOf, printItem } from './print-item.js'

describe('four in a line', () => {
  it('is a board of 6x6 words, each three times', async () => {
    const [board] = piecesOf(await printItem('{layout: four-in-a-line}'))
    const words = board!.cells!.flat()
    expect(words).toHaveLength(36)
    for (const word of marshWords) expect(words.filter(each => each === word)).toHaveLength(3)
  })

  it('has fewer and larger cells in large print, never fewer than four in a line', async () => {
    const [board] = piecesOf(await printItem('{layout: four-in-a-line, size: 40 pt}'))
    expect(board!.cells!.length).toBeGreaterThanOrEqual(4)
    expect(board!.cells![0]!.length).toBeGreaterThanOrEqual(4)
    expect(board!.cells![0]!.length).toBeLessThan(6)
    expect(board!.fontPt).toBeGreaterThanOrEqual(40)
  })

  it('deals each board anew, and prints rules', async () => {
    const printed = await printItem('{layout: four-in-a-line, boards: 3}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'cover'])
    expect(new Set(piecesOf(printed).map(board => board.cells!.flat().join())).size).toBe(3)
  })
})
