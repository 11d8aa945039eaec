import { describe, expect, it } from 'vitest'
import { pathText, pathTextAt, polygon, rectangle } from '../../../src/pieces/art/path-text.js'

describe('paths', () => {
  it('are absolute commands, closed where they bound an area', () => {
    expect(pathText(rectangle(1, 2, 4, 3))).toBe('M1 2L4 2L4 3L1 3Z')
    expect(
      pathText(
        polygon([
          [0, 0],
          [1, 0],
          [0, 0.5],
        ]),
      ),
    ).toBe('M0 0L1 0L0 0.5Z')
  })

  it('grow and move', () => {
    expect(pathTextAt(rectangle(0, 0, 1, 1), 2, { xMm: 10, yMm: -1 })).toBe('M10 -1L12 -1L12 1L10 1Z')
  })
})
