import { describe, expect, it } from 'vitest'
import { screenPixelsToMm } from '../../../src/geometry.js'
import { boardPicture, boardReader, boardXHeightMm } from '../../../src/pieces/text/board-size.js'
import { boardTypeScale } from '../../../src/pieces/text/type-scale.js'
import { bundledTypeface } from '../bundled-typefaces.js'

describe('the least x-height on the board', () => {
  it('is what a child with 20/20 reads fluently from 8 m: 23.27 mm on the wall, 21 whole pixels of the picture', () => {
    // 1.45444 mm (1 M unit) · 8 m · 10^0 · 2, and 1,080 pixels over 1.2 m.
    const onTheWallMm =
      1.45444 * (boardReader.distanceMm / 1000) * 10 ** boardReader.logMar * boardReader.reserve
    expect(onTheWallMm).toBeCloseTo(23.27, 2)
    const pixels = (onTheWallMm / boardPicture.heightMm) * boardPicture.pixels
    expect(pixels).toBeCloseTo(20.94, 2)
    expect(boardXHeightMm()).toBeCloseTo(screenPixelsToMm(21), 9)
  })

  it.each(['andika', 'atkinson-hyperlegible', 'lexend', 'opendyslexic'])('holds for all text in %s', name => {
    const typeface = bundledTypeface(name)
    const { textMm, adultTextMm, listTextMm, setMarkMm, wordMinimumMm } = boardTypeScale(
      { kind: 'normal' },
      typeface,
    )
    for (const em of [textMm, adultTextMm, listTextMm, setMarkMm, wordMinimumMm])
      expect(em * typeface.metrics.xHeight).toBeGreaterThanOrEqual(boardXHeightMm() - 1e-9)
  })

  it('gives way to a larger size that the teacher names', () => {
    const andika = bundledTypeface('andika')
    expect(boardTypeScale({ kind: 'x-height', mm: 9 }, andika).textMm * andika.metrics.xHeight).toBeCloseTo(9)
  })
})
