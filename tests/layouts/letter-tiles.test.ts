import { describe, expect, it } from 'vitest'
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
})
