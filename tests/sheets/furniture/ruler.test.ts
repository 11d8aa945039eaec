import { describe, expect, it } from 'vitest'
import type { Shape } from '../../../src/pieces/piece.js'
import { rulerBlock } from '../../../src/sheets/furniture/ruler.js'
import { sampleLettering } from '../sample-pieces.js'

/** x of every upright line that starts at the top of a scale. */
function ticksOf(shapes: readonly Shape[]): readonly number[] {
  const d = shapes.map(shape => (shape.kind === 'path' ? shape.d : '')).join('')
  return [...d.matchAll(/M([\d.]+) 0L([\d.]+) [\d.]+/g)]
    .filter(([, from, to]) => from === to)
    .map(([, from]) => Number(from))
}

describe('the ruler', () => {
  const scales = rulerBlock({ lettering: sampleLettering, widthMm: 190 })
    .art.map(({ art }) => ticksOf(art.shapes))
    .filter(ticks => ticks.length > 0)

  it('is 100 mm long in steps of 1 mm', () => {
    const [metric] = scales
    expect(metric).toHaveLength(101)
    expect(metric!.at(-1)! - metric![0]!).toBeCloseTo(100, 6)
    expect(metric![50]! - metric![0]!).toBeCloseTo(50, 6)
  })

  it('is 4 in long in steps of an eighth (1 in = 25.4 mm)', () => {
    const [, inch] = scales
    expect(inch).toHaveLength(33)
    expect(inch!.at(-1)! - inch![0]!).toBeCloseTo(101.6, 6)
    expect(inch![8]! - inch![0]!).toBeCloseTo(25.4, 6)
  })

  it('is half as long on a card too narrow for it, and says so', () => {
    const block = rulerBlock({ lettering: sampleLettering, widthMm: 64 })
    expect(block.art[0]!.art.text[0]!.text).toContain('50 mm and 2 in')
    const [metric] = block.art.map(({ art }) => ticksOf(art.shapes)).filter(ticks => ticks.length > 0)
    expect(metric!.at(-1)! - metric![0]!).toBeCloseTo(50, 6)
  })

  it.each([110, 80, 59, 47, 38])('keeps within a room of %d mm', widthMm => {
    const { art } = rulerBlock({ lettering: sampleLettering, widthMm })
    for (const placed of art) expect(placed.xMm + placed.art.widthMm).toBeLessThanOrEqual(widthMm)
  })
})
