import { describe, expect, it } from 'vitest'
import type { CardOrder, CutStyle } from '../../src/plan/plan.js'
import { planCuts } from '../../src/sheets/cutting-plan.js'
import { divideSheet, type Grid, type GridRequest } from '../../src/sheets/grid.js'
import { paperNamed } from './paper-named.js'
import { somewhere } from './sample-pieces.js'

describe('a cutting plan', () => {
  it('begins with the outside edges, goes straight through, piles the strips and cuts across', () => {
    const plan = planOf({})
    expect(plan.steps.map(step => step.text)).toEqual([
      'Trim the outside edges of the pile: 4 cuts.',
      'Cut straight through from top to bottom: 2 cuts. This makes 3 strips, 67.7 mm wide.',
      'Lay the strips one on another, the left one on top, and cut straight across: 3 cuts. Each is 64.9 mm high.',
      'Sort them by the numbers at the foot.',
    ])
  })

  it('ends with the corners where they are to be cut off, in large print', () => {
    const steps = (cut: CutStyle) =>
      planCuts({ grid: gridOf({}), order: 'rows', cut, cutCorners: true }).steps.map(step => step.text)
    expect(steps('lines').at(-1)).toContain('cut off the top right corner of every piece')
    expect(steps('none').join(' ')).not.toContain('corner')
  })

  it('numbers the cuts in the order of cutting, each once', () => {
    const cuts = planOf({}).steps.flatMap(step => step.cuts)
    expect(cuts.map(cut => cut.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9])
    expect(new Set(cuts.map(cut => `${cut.direction} ${cut.atMm}`)).size).toBe(9)
  })

  it('counts the strokes of the blade, with the strips piled and one by one', () => {
    // 3 across and 4 down: 4 + 3 + 2 lines = 9; one by one each of the 3 inner level cuts is made 3 times: 9 + 2 × 3.
    const plan = planOf({})
    expect([plan.cuts, plan.cutsStripByStrip]).toEqual([9, 15])
  })

  it('counts two cuts to a gap', () => {
    expect(planOf({ gapMm: 4 }).cuts).toBe(2 * 3 + 2 * 4)
  })

  it('leaves out the outside edges that are the paper’s own', () => {
    const plan = planOf({ marginMm: 0 })
    expect(plan.cuts).toBe(2 + 3)
    expect(plan.steps[0]?.text).toMatch(/^Cut straight through/)
  })

  it('leaves out rows that stay empty on the fullest sheet', () => {
    const plan = planCuts({ grid: gridOf({}), order: 'stack', cut: 'lines', used: 8 })
    expect(plan.cuts).toBe(4 + 2 + 2)
    expect(plan.block.heightMm).toBeCloseTo(3 * 64.85, 6)
  })

  it('leaves the ends on until the upright cuts are done where ticks in the margin mark them', () => {
    const [sides, through, across] = planOf({}, 'ticks').steps
    expect(sides?.cuts.map(cut => cut.direction)).toEqual(['upright', 'upright'])
    expect(through?.cuts).toHaveLength(2)
    expect(across?.cuts.map(cut => cut.direction)).toEqual(['level', 'level', 'level', 'level', 'level'])
    expect(across?.text).toContain('beginning 10 mm below the top')
  })

  it('needs no strips for a single card', () => {
    const plan = planOf({ division: { kind: 'count', across: 1, down: 1 } })
    expect(plan.steps.map(step => step.text)).toEqual([
      'Trim the outside edges of the pile: 4 cuts.',
      'Sort them by the numbers at the foot.',
    ])
  })

  it('has nothing sorted that is one piece alone', () => {
    const grid = gridOf({ division: { kind: 'count', across: 1, down: 1 } })
    const { steps } = planCuts({ grid, order: 'rows', cut: 'lines', pieces: 1 })
    expect(steps.map(step => step.text)).toEqual(['Trim the outside edges of the pile: 4 cuts.'])
  })

  it('says how each order is gathered', () => {
    const lastOf = (order: CardOrder) => planOf({}, 'lines', order).steps.at(-1)?.text
    expect(lastOf('stack')).toContain('all are in order, and any blanks come last')
    expect(lastOf('child')).toContain('one child at a time')
  })
})

function planOf(parts: Partial<GridRequest>, cut: CutStyle = 'lines', order: CardOrder = 'rows') {
  return planCuts({ grid: gridOf(parts), order, cut })
}

function gridOf(parts: Partial<GridRequest>): Grid {
  const outcome = divideSheet({
    paper: paperNamed('letter')!,
    gapMm: 0,
    division: { kind: 'count', across: 3, down: 4 },
    preferred: { columns: 3, rows: 4 },
    place: somewhere,
    ...parts,
  })
  if (!outcome.ok) throw new Error('the grid does not fit')
  return outcome.value
}
