import { describe, expect, it } from 'vitest'
import { piecesOf, printItem } from './print-item.js'

describe('the clue of a call card', () => {
  it.each(['normal', 'large'])('keeps clear of the set mark: %s', async size => {
    for (const { art, setMark, text } of piecesOf(await printItem(`{layout: call-cards, size: ${size}}`))) {
      const runs = art.flatMap(placed =>
        placed.art.text.map(run => ({ ...run, baselineMm: placed.yMm + run.baselineMm })),
      )
      const mark = runs.find(run => run.text === setMark)!
      const clue = runs.filter(run => run !== mark && run.text !== text[0])
      const foot = Math.max(...clue.map(run => run.baselineMm + 0.25 * run.sizeMm))
      expect(mark.baselineMm - 0.75 * mark.sizeMm - foot).toBeGreaterThan(1.5)
    }
  })

  it('is balanced: no line of it is much shorter than the other', async () => {
    const cards = piecesOf(await printItem('{layout: call-cards, words: [spring, thrush, shrub]}'))
    for (const { art, setMark, text } of cards) {
      const widths = art.flatMap(placed =>
        placed.art.text.filter(run => run.text !== setMark && run.text !== text[0]).map(run => run.widthMm),
      )
      expect(widths).toHaveLength(2)
      expect(Math.min(...widths)).toBeGreaterThan(0.6 * Math.max(...widths))
    }
  })
})
