import { describe, expect, it } from 'vitest'
import { drawCuts, straightCuts } from '../../src/sheets/cuts.js'
import { UNREACHABLE_EDGE_MM } from '../../src/sheets/margins.js'

const paper = { widthMm: 100, heightMm: 140 }

/** Two across and two down, 40 × 50 mm, from (10, 20), `gapMm` apart. */
const fourCards = (gapMm: number) =>
  [0, 1, 2, 3].map(place => ({
    xMm: 10 + (place % 2) * (40 + gapMm),
    yMm: 20 + Math.floor(place / 2) * (50 + gapMm),
    widthMm: 40,
    heightMm: 50,
  }))

describe('straight cuts', () => {
  it('serve two cards where they share an edge', () => {
    expect(straightCuts(fourCards(0), paper)).toEqual({ columns: [10, 50, 90], rows: [20, 70, 120] })
  })

  it('go on both sides of a gap', () => {
    const cuts = straightCuts(fourCards(4), { widthMm: 120, heightMm: 160 })
    expect(cuts).toEqual({ columns: [10, 50, 54, 94], rows: [20, 70, 74, 124] })
  })

  it('are not needed at the paper’s own edge', () => {
    const whole = [{ xMm: 0, yMm: 0, widthMm: 50, heightMm: 140 }]
    expect(straightCuts(whole, paper)).toEqual({ columns: [50], rows: [] })
  })
})

describe('cut lines', () => {
  it('run straight through, past the outer cards into the margin but not where printers cannot reach', () => {
    const upright = drawCuts(fourCards(0), paper, 'lines').filter(cut => cut.x1Mm === cut.x2Mm)
    expect(upright).toHaveLength(3)
    for (const cut of upright) {
      expect(cut.y1Mm).toBeLessThan(20)
      expect(cut.y2Mm).toBeGreaterThan(120)
      expect(cut.y1Mm).toBeGreaterThanOrEqual(UNREACHABLE_EDGE_MM)
      expect(paper.heightMm - cut.y2Mm).toBeGreaterThanOrEqual(UNREACHABLE_EDGE_MM)
    }
  })

  it('are thinner than any mark or border, which have at least 0.35 mm', () => {
    expect(drawCuts(fourCards(0), paper, 'lines').every(cut => cut.widthMm < 0.35)).toBe(true)
  })

  it('leave out what frees no card on a sheet that is not full', () => {
    const [first, second] = fourCards(0)
    const level = drawCuts([first!, second!], paper, 'lines').filter(cut => cut.y1Mm === cut.y2Mm)
    expect(level.map(cut => cut.y1Mm)).toEqual([20, 70])
  })
})

describe('ticks', () => {
  it('stand in the margin only, two to each cut', () => {
    const ticks = drawCuts(fourCards(0), paper, 'ticks')
    expect(ticks).toHaveLength(2 * 6)
    const inCards = ticks.filter(
      ({ x1Mm, y1Mm, x2Mm, y2Mm }) =>
        Math.max(x1Mm, x2Mm) > 10 + 1e-6 &&
        Math.min(x1Mm, x2Mm) < 90 - 1e-6 &&
        Math.max(y1Mm, y2Mm) > 20 + 1e-6 &&
        Math.min(y1Mm, y2Mm) < 120 - 1e-6,
    )
    expect(inCards).toEqual([])
  })

  it('are left out where the margin is narrower than printers reach', () => {
    const cards = [{ xMm: 3, yMm: 3, widthMm: 94, heightMm: 134 }]
    expect(drawCuts(cards, paper, 'ticks')).toEqual([])
  })
})

describe('no cut lines', () => {
  it('are drawn where the plan wants none', () => {
    expect(drawCuts(fourCards(0), paper, 'none')).toEqual([])
  })
})
