import { describe, expect, it } from 'vitest'
import { drawDisc } from '../../../layouts/path-board/number-makers.js'

describe('the disc', () => {
  const room = { widthMm: 100, heightMm: 100 }
  const write = (text: string, sizeMm: number) => ({
    widthMm: sizeMm,
    heightMm: sizeMm,
    shapes: [],
    text: [{ text, xMm: 0, baselineMm: 0, sizeMm, widthMm: sizeMm }],
  })

  it.each([3, 6, 10])('has %d numbers at equal angles round its middle', faces => {
    const { text } = drawDisc(faces, room, write)
    const middles = text.map(({ xMm, baselineMm, sizeMm }) => [
      xMm + sizeMm / 2 - 50,
      baselineMm + sizeMm / 2 - 50,
    ])
    const angles = middles.map(([x, y]) => (Math.atan2(x!, -y!) + 2 * Math.PI) % (2 * Math.PI))
    const step = (2 * Math.PI) / faces
    for (const [index, angle] of angles.entries()) expect(angle).toBeCloseTo((index + 0.5) * step, 6)
    expect(text.map(run => run.text)).toEqual(Array.from({ length: faces }, (_, index) => String(index + 1)))
  })
})
