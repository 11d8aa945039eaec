import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import satori from 'satori'
import { describe, expect, it } from 'vitest'
import { mm, UNITS_PER_MM } from '../../../src/pieces/faces/face.js'
import { shapesOfSatoriSvg } from '../../../src/pieces/faces/satori-shapes.js'
import type { Art } from '../../../src/pieces/piece.js'
import { LINE_HEIGHT, type TextStyle } from '../../../src/pieces/text/break-lines.js'
import { drawTextBlock } from '../../../src/pieces/text/text-block.js'
import type { Typeface } from '../../../src/pieces/typeface/typeface.js'
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

const require = createRequire(import.meta.url)
const fontFile = (name: string, weight: number) =>
  readFileSync(require.resolve(`@fontsource/${name}/files/${name}-latin-${weight}-normal.woff`))

/** The lines as satori sets them, which opens the font files itself and shapes, breaks and centres by itself. */
async function setBySatori({ name }: Typeface, style: TextStyle): Promise<Art> {
  const { sizeMm, weight = 400, align = 'left', color = '#000000' } = style
  const alignItems = { left: 'flex-start', centre: 'center', right: 'flex-end' }[align]
  const tree = (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        justifyContent: 'center',
        alignItems,
        width: '100%',
        height: '100%',
        fontSize: mm(sizeMm),
        fontWeight: weight,
        lineHeight: LINE_HEIGHT,
        color,
      }}
    >
      {lines.map(line => (
        <div style={{ display: 'flex' }}>{line}</div>
      ))}
    </div>
  )
  const svg = await satori(tree as Parameters<typeof satori>[0], {
    width: mm(room.widthMm),
    height: mm(room.heightMm),
    fonts: [400 as const, 700 as const].map(each => ({ name, data: fontFile(name, each), weight: each })),
  })
  return { ...room, shapes: shapesOfSatoriSvg(svg, UNITS_PER_MM), text: [] }
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
        const art = await setBySatori(typeface, style)
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
