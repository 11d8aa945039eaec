import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, piecesOf, printItem } from './print-item.js'

/** Columns and rows of the first board's cells. */
async function gridOf(item: string) {
  const cells = piecesOf(await printItem(item))[0]!.cells!
  return `${cells[0]!.length}x${cells.length}`
}

describe('a dice grid', () => {
  it('has a column of six words for each side of a die', async () => {
    expect(await gridOf('{layout: dice-grid}')).toBe('6x6')
  })

  it('has a place for each sum of two dice', async () => {
    expect(await gridOf('{layout: dice-grid, dice: two, numbers: side, words a number: 4}')).toBe('4x11')
    expect(await gridOf('{layout: dice-grid, dice: two, numbers: top, words a number: 3, paper: a3}')).toBe(
      '11x3',
    )
    const printed = await printItem('{layout: dice-grid, dice: two}')
    const sums = piecesOf(printed)[0]!
      .art.flatMap(({ art }) => art.text.map(run => run.text))
      .filter(text => /^\d+$/.test(text))
    expect(sums).toEqual(['2', '3', '4', '5', '6', '7', '8', '9', '10', '11', '12'])
  })

  it('turns its numbers to the side, with fewer words, where large words need wider cells', async () => {
    const large = piecesOf(await printItem('{layout: dice-grid, size: 40 pt}'))[0]!
    expect(large.cells!).toHaveLength(6)
    expect(large.cells![0]!.length).toBeLessThan(6)
    expect(large.fontPt).toBeGreaterThanOrEqual(40)
  })

  it('goes with rules that say where to look', async () => {
    const top = await printItem('{layout: dice-grid}')
    expect(kindsOf(top)).toEqual(['pieces', 'rules', 'cover'])
    expect(linesOn(top, 'rules').join(' ')).toContain('a free word under that number')
    const side = await printItem('{layout: dice-grid, numbers: side, dice: two}')
    expect(linesOn(side, 'rules').join(' ')).toMatch(
      /Throw both dice and add the numbers\..*a free word beside that number/,
    )
  })
})
