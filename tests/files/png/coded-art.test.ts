import { describe, expect, it } from 'vitest'
import { codeArt } from '../../../src/files/png/coded-art.js'
import { rectangleSprites } from '../../../src/files/raster/rectangle-sprite.js'

const rectangle = rectangleSprites()

describe('an upright line is coded as its rows are, one by one', () => {
  const lines = [1, 2, 3, 4, 300].flatMap(heightPx =>
    [0, 90, 255].flatMap(grey => ([1, 3] as const).map(channels => ({ heightPx, grey, channels }))),
  )

  it.each(lines)('$heightPx rows of grey $grey in $channels channels', ({ heightPx, grey, channels }) => {
    const sprite = rectangle(7, heightPx, grey)
    const { rowsAlike, ...rowByRow } = sprite
    expect(rowsAlike).toBe(true)
    expect(codeArt([{ sprite, x: 3, y: -5 }], channels)).toEqual(
      codeArt([{ sprite: rowByRow, x: 3, y: -5 }], channels),
    )
  })
})
