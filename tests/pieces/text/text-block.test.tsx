import { describe, expect, it } from 'vitest'
import { faceLayouter } from '../../../src/pieces/faces/lay-out-face.js'
import type { Art } from '../../../src/pieces/piece.js'
import type { TextStyle } from '../../../src/pieces/text/break-lines.js'
import { Lines } from '../../../src/pieces/text/lines.js'
import { drawTextBlock } from '../../../src/pieces/text/text-block.js'
import { bundledTypeface, bundledTypefaces } from '../bundled-typefaces.js'

const room = { widthMm: 60, heightMm: 30 }
const lines = ['Hop', 'along']

/** Edges of an art's ink in mm. */
function edgesOf({ shapes }: Art) {
  const numbers = shapes.flatMap(shape =>
    shape.kind === 'path' ? (shape.d.match(/-?[\d.]+/g) ?? []).map(Number) : [],
  )
  const [xs, ys] = [0, 1].map(axis => numbers.filter((_, index) => index % 2 === axis))
  return [Math.min(...xs!), Math.max(...xs!), Math.min(...ys!), Math.max(...ys!)]
}

describe('a block of text', () => {
  const styles: readonly TextStyle[] = [
    { sizeMm: 4 },
    { sizeMm: 4, align: 'centre', weight: 700 },
    { sizeMm: 6, align: 'right', color: '#595959' },
  ]

  it.each(bundledTypefaces)(
    'stands where satori would have its lines, to a tenth of a millimetre: $name',
    async typeface => {
      for (const style of styles) {
        const tree = (
          <div style={{ display: 'flex', width: '100%', height: '100%', flexDirection: 'column' }}>
            <Lines lines={lines} style={style} box={{ flexGrow: 1, justifyContent: 'center' }} />
          </div>
        )
        const { art } = await faceLayouter().layOut({ ...room, tree, slots: {} }, typeface)
        const drawn = drawTextBlock({ typeface, lines, style, room })
        const wanted = edgesOf(art)
        for (const [edge, mm] of edgesOf(drawn).entries())
          expect(Math.abs(mm - wanted[edge]!), `${style.align} ${edge}`).toBeLessThan(0.1)
        expect(drawn.shapes.map(shape => shape.kind === 'path' && shape.fill)).toEqual(
          art.shapes.map(shape => shape.kind === 'path' && shape.fill),
        )
      }
    },
  )

  it('tells its text, line by line, each as wide as it is drawn', () => {
    const typeface = bundledTypeface('andika')
    const { text } = drawTextBlock({ typeface, lines, style: { sizeMm: 4, align: 'right' }, room })
    expect(text.map(run => run.text)).toEqual(lines)
    for (const run of text) {
      expect(run.xMm + run.widthMm).toBeCloseTo(room.widthMm, 6)
      expect(run.widthMm).toBeCloseTo(typeface.shape(run.text).widthEm * 4, 6)
    }
  })

  it('is empty where it has no lines', () => {
    const typeface = bundledTypeface('andika')
    expect(drawTextBlock({ typeface, lines: [], style: { sizeMm: 4 }, room })).toMatchObject({
      shapes: [],
      text: [],
    })
  })
})
