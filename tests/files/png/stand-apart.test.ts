import { describe, expect, it } from 'vitest'
import { pageShapes } from '../../../src/files/page/page-shapes.js'
import { codedArts } from '../../../src/files/png/coded-arts.js'
import { standApart } from '../../../src/files/png/stand-apart.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import type { PathShape } from '../../../src/pieces/piece.js'
import { art, sheet } from '../marsh-sheets.js'

const rasterizer = createRasterizer(100)

function bar(xMm: number, yMm: number, widthMm = 20, heightMm = 4): PathShape {
  const [right, bottom] = [xMm + widthMm, yMm + heightMm]
  return {
    kind: 'path',
    d: `M${xMm} ${yMm}L${right} ${yMm}L${right} ${bottom}L${xMm} ${bottom}Z`,
    fill: '#000000',
  }
}

async function prepared(...shapes: readonly PathShape[]) {
  const furniture = [{ art: art(shapes), xMm: 10, yMm: 10 }]
  return rasterizer.prepare(pageShapes(sheet({ pieces: [], cuts: [], furniture })))
}

async function parts(...shapes: readonly PathShape[]): Promise<readonly number[]> {
  const page = await prepared(...shapes)
  return page.drawings.flatMap(sprites => standApart(sprites).map(part => part.length))
}

describe('what is coded together', () => {
  it('are no lines that stand apart', async () => {
    expect(await parts(bar(0, 0), bar(0, 10), bar(40, 10))).toEqual([1, 1, 1])
  })

  it('are letters and the mark that runs through them', async () => {
    expect(await parts(bar(0, 0), bar(5, 2), bar(0, 10))).toEqual([2, 1])
  })

  it('is what is joined by something painted later', async () => {
    expect(await parts(bar(0, 0), bar(0, 10), bar(0, 20), bar(4, 1, 4, 12))).toEqual([3, 1])
  })

  it('are no words in the cells of a table and its lines', async () => {
    const lines = [0, 20].flatMap(at => [bar(at, 0, 0.5, 20.5), bar(0, at, 20.5, 0.5)])
    expect(await parts(...lines, bar(5, 5, 10), bar(5, 12, 10))).toEqual([4, 1, 1])
  })

  it('is a line that ends where the next begins, since the row below it is of its codes', async () => {
    expect(await parts(bar(0, 0, 20, 10.16), bar(0, 10.16, 20, 10.16))).toEqual([2])
  })
})

it('a line is coded once, on whichever pages it stands among others', async () => {
  const codes = codedArts()
  const [first, second] = [await prepared(bar(0, 0), bar(0, 10)), await prepared(bar(0, 10), bar(0, 30))]
  const [one, other] = [codes(first), codes(second)]
  expect([one.length, other.length]).toEqual([2, 2])
  expect(other[0]!.art).toBe(one[1]!.art)
  expect(other[1]!.art).not.toBe(one[0]!.art)
})
