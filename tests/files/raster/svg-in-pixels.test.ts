import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { svgInPixels } from '../../../src/files/raster/svg-in-pixels.js'

const drawn = (svg: string) => svgInPixels(Buffer.from(svg))

describe('an SVG picture in pixels', () => {
  it.each([
    ['0 0 200 100', 2000, 1000],
    ['0 0 30 60', 1000, 2000],
  ])('with the view box %s is %i by %i', async (viewBox, width, height) => {
    const png = drawn(
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}"><path d="M0 0L9 9"/></svg>`,
    )
    expect(await sharp(png).metadata()).toMatchObject({ width, height, format: 'png' })
  })

  it('is nothing where it cannot be read', () => {
    expect(drawn('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path')).toBeUndefined()
  })
})
