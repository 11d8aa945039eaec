import { describe, expect, it } from 'vitest'
import type { Box } from '../../../src/geometry.js'
import { drawLattice } from '../../../src/sheets/furniture/lattice.js'

const pieceSize = { widthMm: 67.7, heightMm: 64.9 }
const whole: Box = { xMm: 0, yMm: 0, ...pieceSize }

/** The lines of the lattice over `area`, in the coordinates of the card, each as its two ends. */
function linesOver(area: Box): readonly (readonly [number, number, number, number])[] {
  const art = drawLattice({ area, corner: { xMm: 0, yMm: 0 }, pieceSize })
  const [shape] = art.shapes
  if (shape?.kind !== 'path') return []
  return [...shape.d.matchAll(/M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)/g)].map(([, x1, y1, x2, y2]) => [
    Number(x1) + area.xMm,
    Number(y1) + area.yMm,
    Number(x2) + area.xMm,
    Number(y2) + area.yMm,
  ])
}

/** Where lines come to an edge at `edge` of the axis, in mm along it. */
function endsAt(lines: ReturnType<typeof linesOver>, axis: 'x' | 'y', edge: number): readonly number[] {
  const ends = lines.flatMap(([x1, y1, x2, y2]) => [
    [x1, y1],
    [x2, y2],
  ])
  return ends
    .filter(([x, y]) => Math.abs((axis === 'x' ? x! : y!) - edge) < 0.002)
    .map(([x, y]) => (axis === 'x' ? y! : x!))
    .sort((a, b) => a - b)
}

describe('the lattice of a patterned back', () => {
  it('stays inside its card', () => {
    for (const [x1, y1, x2, y2] of linesOver(whole)) {
      for (const x of [x1, x2]) expect(x >= -0.001 && x <= pieceSize.widthMm + 0.001).toBe(true)
      for (const y of [y1, y2]) expect(y >= -0.001 && y <= pieceSize.heightMm + 0.001).toBe(true)
    }
  })

  it('joins its neighbour on the right without a break', () => {
    const lines = linesOver(whole)
    const [left, right] = [endsAt(lines, 'x', 0), endsAt(lines, 'x', pieceSize.widthMm)]
    expect(left.length).toBeGreaterThan(5)
    expectSame(left, right)
  })

  it('joins its neighbour below without a break', () => {
    const lines = linesOver(whole)
    expectSame(endsAt(lines, 'y', 0), endsAt(lines, 'y', pieceSize.heightMm))
  })

  it('looks the same turned by 180°', () => {
    const lines = linesOver(whole)
    const left = endsAt(lines, 'x', 0)
    expectSame(
      left,
      left.map(y => pieceSize.heightMm - y).sort((a, b) => a - b),
    )
  })

  it('goes on into the bleed in step with its card', () => {
    const bleed = linesOver({ xMm: -3, yMm: 0, widthMm: 3, heightMm: pieceSize.heightMm })
    expectSame(endsAt(bleed, 'x', 0), endsAt(linesOver(whole), 'x', 0))
  })
})

/** The same positions along an edge, its two corners aside, where lines may or may not be clipped to a point. */
function expectSame(a: readonly number[], b: readonly number[]): void {
  const inner = (positions: readonly number[]) =>
    positions
      .filter((at, index) => index === 0 || at - positions[index - 1]! > 0.01)
      .filter(at => at > 0.01 && !isFarCorner(at))
  expect(inner(a)).toHaveLength(inner(b).length)
  for (const [index, at] of inner(a).entries()) expect(at).toBeCloseTo(inner(b)[index]!, 2)
}

function isFarCorner(at: number): boolean {
  return [pieceSize.widthMm, pieceSize.heightMm].some(edge => Math.abs(at - edge) < 0.01)
}
