/**
 * Machado, Oliveira and Fernandes 2009, "A physiologically-based model for simulation of color vision deficiency",
 * IEEE Transactions on Visualization and Computer Graphics 15 (6): the matrices for severity 1.0, which act on linear
 * RGB.
 */
import { describe, expect, it } from 'vitest'
import { colourDifference, machado, seen } from '../../src/pieces/marks/colour-vision.js'

const published = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
}

describe.each(['protan', 'deutan'] as const)('%s vision', kind => {
  it('has the published matrix', () => {
    expect(machado[kind]).toEqual(published[kind])
  })

  it('leaves greys as they are: each row adds up to 1', () => {
    for (const row of machado[kind]) expect(row[0] + row[1] + row[2]).toBeCloseTo(1, 5)
    const [red, green, blue] = seen('#808080', kind)
    expect(red).toBeCloseTo(0.215861, 5)
    expect(green).toBeCloseTo(0.215861, 5)
    expect(blue).toBeCloseTo(0.215861, 5)
  })

  it('shows pure green as the second column, clipped to what paper can show', () => {
    const column = published[kind].map(row => Math.min(1, Math.max(0, row[1]!)))
    for (const [index, value] of seen('#00ff00', kind).entries())
      expect(value).toBeCloseTo(column[index]!, 10)
  })

  it('brings a red and a green nearer that are far apart in full colour, and leaves blue and yellow apart', () => {
    expect(colourDifference('#a04000', '#506000', 'full colour')).toBeGreaterThan(40)
    expect(colourDifference('#a04000', '#506000', kind)).toBeLessThan(
      colourDifference('#a04000', '#506000', 'full colour') / 2,
    )
    expect(colourDifference('#0000ff', '#ffff00', kind)).toBeGreaterThan(80)
  })
})

describe('a grey copy', () => {
  it('keeps the luminance and nothing else', () => {
    expect(seen('#ff0000', 'grey copy')).toEqual([0.2126, 0.2126, 0.2126])
    expect(colourDifference('#ff0000', '#7f7f7f', 'grey copy')).toBeLessThan(1)
  })
})
