import { describe, expect, it } from 'vitest'
import { drawCuts } from '../../../src/sheets/cuts.js'
import { placePageLabel } from '../../../src/sheets/furniture/page-label.js'
import { sampleLettering } from '../sample-pieces.js'

const sheetSize = { widthMm: 215.9, heightMm: 279.4 }
const card = (marginMm: number) => [
  { xMm: marginMm, yMm: marginMm, widthMm: 215.9 - 2 * marginMm, heightMm: 279.4 - 2 * marginMm },
]

describe('the page label', () => {
  it('stands in the top margin, above the cards', () => {
    const label = labelOn(10)!
    expect(label.yMm).toBeGreaterThanOrEqual(4.23)
    expect(label.yMm + label.art.heightMm).toBeLessThan(10)
  })

  it('is left out where the margin has no room for it', () => {
    expect(labelOn(0)).toBeUndefined()
    expect(labelOn(6.35)).toBeUndefined()
  })

  it('is never smaller than 6 pt', () => {
    for (let marginMm = 6; marginMm < 16; marginMm += 0.1) {
      const label = labelOn(marginMm)
      if (label) expect(label.art.text[0]!.sizeMm).toBeGreaterThanOrEqual((6 * 25.4) / 72 - 1e-9)
    }
  })

  it('keeps clear of cut lines that run into the margin', () => {
    const pieces = card(10)
    const cuts = drawCuts(pieces, sheetSize, 'lines')
    const label = placePageLabel({
      text: 'x'.repeat(60),
      lettering: sampleLettering,
      sheetSize,
      pieces,
      cuts,
    })!
    const crossing = cuts.filter(
      cut =>
        cut.x1Mm === cut.x2Mm &&
        cut.x1Mm > label.xMm &&
        cut.x1Mm < label.xMm + label.art.widthMm &&
        cut.y1Mm < label.yMm + label.art.heightMm,
    )
    expect(crossing).toEqual([])
  })

  it('is left out when it is longer than the page is wide', () => {
    const text = 'long '.repeat(100)
    expect(
      placePageLabel({ text, lettering: sampleLettering, sheetSize, pieces: card(10), cuts: [] }),
    ).toBeUndefined()
  })
})

function labelOn(marginMm: number) {
  const pieces = card(marginMm)
  return placePageLabel({ text: 'marsh', lettering: sampleLettering, sheetSize, pieces, cuts: [] })
}
