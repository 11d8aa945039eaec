import { describe, expect, it } from 'vitest'
import { placePath, shapesOfSatoriSvg } from '../../../src/pieces/faces/satori-shapes.js'

describe('shapes of satori’s SVG', () => {
  it('keeps filled paths, in mm', () => {
    const svg = '<svg viewBox="0 0 100 100"><g><path fill="#333333" d="M20 40L60 40.5Z"/></g></svg>'
    expect(shapesOfSatoriSvg(svg, 20)).toEqual([{ kind: 'path', d: 'M1 2L3 2.025Z', fill: '#333333' }])
  })

  it('keeps rectangles as paths', () => {
    const svg = '<svg><rect x="0" y="20" width="40" height="20" fill="#000000"/></svg>'
    expect(shapesOfSatoriSvg(svg, 20)).toEqual([{ kind: 'path', d: 'M0 1L2 1L2 2L0 2Z', fill: '#000000' }])
  })

  it('leaves out masks, which cut nothing where nothing overflows', () => {
    const svg = '<svg><mask id="a"><rect x="0" y="0" width="9" height="9" fill="#fff"/></mask></svg>'
    expect(shapesOfSatoriSvg(svg, 20)).toEqual([])
  })

  it('refuses what a sheet cannot hold', () => {
    expect(() => shapesOfSatoriSvg('<svg><image href="a.png"/></svg>', 20)).toThrow('<image>')
  })

  it('reads numbers with exponents, signs and no leading nought', () => {
    expect(placePath('M-.5 2e-1L1e1-4', { left: 0, top: 0 }, 0.5)).toBe('M-1 0.4L20-8')
  })

  it('places them where the corner of the SVG stands', () => {
    const svg = '<svg><path d="M20 40L60 40.5Z"/><rect x="0" y="20" width="40" height="20"/></svg>'
    const placed = shapesOfSatoriSvg(svg, 20, { left: 20, top: 200 })
    expect(placed.map(({ d }) => d)).toEqual(['M2 12L4 12.025Z', 'M1 11L3 11L3 12L1 12Z'])
  })
})
