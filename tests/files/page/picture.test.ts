import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { decodePicture, finenessFor } from '../../../src/files/page/decode-picture.js'
import { alikeInSize, printablePicture } from '../../../src/files/page/picture.js'

/** A green block of this many pixels, 40 from the left and 10 from the top of a page of one colour. */
async function blockOn(background: string, block = { width: 100, height: 50 }): Promise<Buffer> {
  const input = { create: { ...block, channels: 4 as const, background: '#336633' } }
  return sharp({ create: { width: 300, height: 200, channels: 4, background } })
    .composite([{ input, left: 40, top: 10 }])
    .png()
    .toBuffer()
}

const block = { widthPx: 100, heightPx: 50 }
const mostPx = 900

describe('the edges of a picture', () => {
  it.each([
    ['white', '#ffffff'],
    ['clear', '#00000000'],
    ['a scanner’s white', '#f6f8f4'],
  ])('%s are left out', async (_, background) => {
    expect(await decodePicture(await blockOn(background), mostPx)).toMatchObject(block)
  })

  it('grey are kept', async () => {
    expect(await decodePicture(await blockOn('#d8d8d8'), mostPx)).toMatchObject({
      widthPx: 300,
      heightPx: 200,
    })
  })

  it('are all that a white picture has, and stay', async () => {
    const white = await sharp({ create: { width: 30, height: 20, channels: 3, background: '#ffffff' } })
      .png()
      .toBuffer()
    expect(await decodePicture(white, mostPx)).toMatchObject({ widthPx: 30, heightPx: 20 })
  })

  it('are unknown where the picture cannot be read', async () => {
    expect(await decodePicture(Buffer.from('no picture'), mostPx)).toBeUndefined()
  })

  it('are gone from what is printed', async () => {
    const bytes = await blockOn('#ffffff')
    const box = { xMm: 0, yMm: 0, widthMm: 40, heightMm: 20 }
    const printed = await printablePicture(
      { kind: 'image', bytes, mediaType: 'image/png', box, description: 'a block' },
      (await decodePicture(bytes, mostPx))!,
    )
    expect(await sharp(printed.bytes).metadata()).toMatchObject({ width: 100, height: 50 })
    expect((await sharp(printed.bytes).stats()).channels[0]!.max).toBeLessThan(80)
  })
})

describe('the pixels that are kept of a picture', () => {
  it.each([
    [{ widthMm: 30, heightMm: 20 }, 1200],
    [{ widthMm: 70, heightMm: 101 }, 1200],
    [{ widthMm: 103, heightMm: 20 }, 2400],
    [{ widthMm: 200, heightMm: 250 }, 4800],
  ])('are as many as a room of %j can show at 300 DPI, in steps that rooms share', (room, most) => {
    expect(finenessFor(room)).toBe(most)
  })

  it('are those of the file where it has no more', async () => {
    expect((await decodePicture(await blockOn('#ffffff'), 900))!.raw).toMatchObject({
      width: 100,
      height: 50,
    })
  })

  it('are no more than asked for', async () => {
    expect((await decodePicture(await blockOn('#ffffff'), 60))!.raw).toMatchObject({ width: 60, height: 30 })
  })
})

describe('pictures of a set', () => {
  const room = { xMm: 5, yMm: 5, widthMm: 40, heightMm: 30 }
  const boxesOf = (...shapes: readonly (readonly [number, number])[]) =>
    alikeInSize(shapes.map(([widthPx, heightPx]) => ({ room, extent: { widthPx, heightPx } })))
  const areas = (boxes: ReturnType<typeof boxesOf>) =>
    boxes.map(({ widthMm, heightMm }) => widthMm * heightMm)

  it('fill their rooms where they are of one shape', () => {
    expect(boxesOf([400, 300], [800, 600])).toEqual([room, room])
  })

  it('cover the same area, as the one does that covers least', () => {
    const [square, wide] = areas(boxesOf([100, 100], [200, 100]))
    // In 40 by 30 mm a square covers 900 mm², one twice as wide as high 800.
    expect(wide).toBeCloseTo(800)
    expect(square).toBeCloseTo(800)
  })

  it('shrink to seven tenths at most beside a slender one', () => {
    const [square, slender] = boxesOf([100, 100], [10, 100])
    expect(slender).toMatchObject({ widthMm: 3, heightMm: 30 })
    expect(square!.widthMm).toBeCloseTo(21)
  })

  it('stand in the middle of their rooms', () => {
    for (const { xMm, yMm, widthMm, heightMm } of boxesOf([100, 100], [10, 100])) {
      expect(xMm + widthMm / 2).toBeCloseTo(25)
      expect(yMm + heightMm / 2).toBeCloseTo(20)
    }
  })
})
