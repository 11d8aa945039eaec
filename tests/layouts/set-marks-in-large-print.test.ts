import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import { pointsToMm } from '../../src/geometry.js'
import type { Piece, TextRun } from '../../src/pieces/piece.js'
import { exampleItems, withKeys } from './example-items.js'
import { piecesOf, printItem } from './print-item.js'

const items = layouts.filter(({ kind }) => kind === 'pieces').flatMap(exampleItems)

/** Where the set mark stands on its piece, and its colour. */
function markOf({
  setMark,
  art,
  heightMm,
}: Piece): TextRun & { readonly fill: string; readonly fromFootMm: number } {
  const placed = art.find(each => each.art.text.some(({ text }) => text === setMark))!
  const run = placed.art.text.find(({ text }) => text === setMark)!
  const [shape] = placed.art.shapes
  const fill = shape?.kind === 'path' ? shape.fill : ''
  return { ...run, fill, fromFootMm: heightMm - placed.yMm - run.baselineMm }
}

describe.each(['large', '28 pt', 'x-height 9 mm'])('the set mark of pieces of size %s', size => {
  it.each(items)('is small, grey and at the foot: %s', async item => {
    const pieces = piecesOf(await printItem(withKeys(item, `size: ${size}`, 'paper: tabloid', 'cover: no')))
    expect(pieces.length).toBeGreaterThan(0)
    for (const piece of pieces) {
      const mark = markOf(piece)
      expect(mark.sizeMm).toBeLessThan(pointsToMm(8))
      expect(mark.fill).toBe('#595959')
      expect(mark.fromFootMm).toBeLessThan(8)
      if (piece.xHeightMm !== undefined) expect(mark.sizeMm).toBeLessThan(piece.xHeightMm)
    }
  })
})
