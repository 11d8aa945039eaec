import { describe, expect, it } from 'vitest'
import type { Sheet } from '../../src/sheets/sheet.js'
import { kindsOf, linesOn, piecesOf, printItem } from './print-item.js'

describe('letter tiles', () => {
  it('show a letter or a team each, all of one size', async () => {
    const tiles = piecesOf(await printItem('{layout: letter-tiles, words: [marsh, reed]}'))
    expect(tiles.map(tile => tile.text.join())).toEqual(['d', 'm', 'r', 'sh', 'ar', 'ee'])
    expect(new Set(tiles.map(tile => tile.fontPt)).size).toBe(1)
  })

  it('have round corners where they spell a vowel', async () => {
    const tiles = piecesOf(await printItem('{layout: letter-tiles, words: [marsh, reed]}'))
    const borderOf = (text: string) => {
      const tile = tiles.find(each => each.text[0] === text)!
      return tile.art
        .flatMap(({ art }) => art.shapes)
        .find(shape => shape.kind === 'path' && shape.fill === 'none')
    }
    expect(borderOf('m')).toEqual(borderOf('sh'))
    expect(borderOf('ar')).toEqual(borderOf('ee'))
    expect(borderOf('ar')).not.toEqual(borderOf('sh'))
  })

  it('keep the line of the border that the teacher chose', async () => {
    const drawn = async (item: string) =>
      piecesOf(await printItem(item)).map(tile => JSON.stringify(tile.art.map(({ art }) => art.shapes)))
    const [plain, dashed] = await Promise.all([
      drawn('{layout: letter-tiles, words: [reed]}'),
      drawn('{layout: letter-tiles, words: [reed], border: dashed}'),
    ])
    expect(dashed).not.toEqual(plain)
  })

  it('go with a mat, rules and each word divided into its tiles', async () => {
    const printed = await printItem('{layout: letter-tiles}')
    expect(kindsOf(printed)).toEqual(['pieces', 'list', 'rules', 'answers', 'cover'])
    expect(linesOn(printed, 'answers')).toContain('thrush | th · r · u · sh')
    expect(linesOn(printed, 'list').join(' ')).toContain('Words to build: reed, marsh')
  })

  it('go with a mat that has a box for each tile of the longest word, none cut off by the page', async () => {
    const plan = 'title: In the woods\nwords: [understanding, hedgehog, moth]\nprint:\n'
    const printed = await printItem('{layout: letter-tiles, size: large, across: 2, down: 4}', plan)
    const mats = printed.sheets.filter(({ kind }) => kind === 'list')
    expect(mats.length).toBeGreaterThan(1)
    const rows = mats.flatMap(sheet => boxesOn(sheet).map(row => ({ ...row, heightMm: sheet.heightMm })))
    expect(rows.every(({ footMm, heightMm }) => footMm <= heightMm - 12)).toBe(true)
    // understanding: u n d er s t a n d i ng
    expect(rows.reduce((sum, { boxes }) => sum + boxes, 0)).toBeGreaterThanOrEqual(11)
  })

  it('are laid in one row of boxes where as many stand side by side on their sheet', async () => {
    const printed = await printItem('{layout: letter-tiles, size: large, words: [frog, moth]}')
    const mats = printed.sheets.filter(({ kind }) => kind === 'list')
    expect(mats.flatMap(boxesOn).map(({ boxes }) => boxes)).toEqual([4])
  })

  it('are told apart as they look, in large print too', async () => {
    const rules = async (item: string) => linesOn(await printItem(item), 'rules').join(' ')
    expect(await rules('{layout: letter-tiles}')).toContain('those with square corners')
    expect(await rules('{layout: letter-tiles, size: large}')).toContain('those with cut corners')
  })

  it('that build all words at once have boxes for several words, all drawn', async () => {
    const printed = await printItem('{layout: letter-tiles, build: all words at once, words: [frog, moth]}')
    const mats = printed.sheets.filter(({ kind }) => kind === 'list')
    expect(mats.flatMap(boxesOn).map(({ boxes }) => boxes)).toEqual([4, 4])
  })
})

/** Rows of boxes on a mat, whose lines are bars: one upright more than there are boxes, and two level. */
function boxesOn({ furniture }: Sheet) {
  return furniture
    .filter(({ art }) => art.text.length === 0 && art.shapes.length > 3)
    .map(({ art, yMm }) => ({ boxes: art.shapes.length - 3, footMm: yMm + art.heightMm }))
}
