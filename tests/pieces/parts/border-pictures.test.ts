import { describe, expect, it } from 'vitest'
import { borderCorners, borderLines, drawBorder } from '../../../src/pieces/parts/borders.js'
import { expectedPicture } from '../expected-picture.js'

const size = { widthMm: 18, heightMm: 12 }
const borders = [
  ...borderLines.map(line => ({ line, corners: 'square' as const })),
  ...borderCorners.slice(1).map(corners => ({ line: 'single' as const, corners })),
]

describe('how a border looks', () => {
  it.each(borders)('$line, $corners', async border => {
    const picture = expectedPicture({
      title: `${border.line}, ${border.corners}`,
      art: size,
      shapes: drawBorder({ ...border, size }),
    })
    await expect(picture).toMatchFileSnapshot(`pictures/border-${border.line}-${border.corners}.svg`)
  })
})
