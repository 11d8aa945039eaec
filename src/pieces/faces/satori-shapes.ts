import { changeLengths } from '../art/path-numbers.js'
import type { PathShape } from '../piece.js'

/**
 * The filled paths and rectangles of satori's SVG as shapes in mm. satori also writes masks and clips that cut
 * nothing at our faces (nothing in them overflows); they are left out. Anything else is an error in a layout.
 */
export function shapesOfSatoriSvg(
  svg: string,
  unitsPerMm: number,
  at: Corner = { left: 0, top: 0 },
): PathShape[] {
  const drawn = svg.replace(/<(mask|clipPath|defs)\b[^>]*>.*?<\/\1>/gs, '')
  const shapes: PathShape[] = []
  for (const [element, tag] of drawn.matchAll(/<(\w+)\b[^>]*>/g)) {
    switch (tag) {
      case 'svg':
      case 'g':
        break
      case 'path':
        shapes.push({
          kind: 'path',
          d: placePath(attribute(element, 'd'), at, unitsPerMm),
          fill: color(element),
        })
        break
      case 'rect':
        shapes.push({
          kind: 'path',
          d: placePath(rectanglePath(element), at, unitsPerMm),
          fill: color(element),
        })
        break
      default:
        throw new Error(`satori drew a <${tag}>, which a face may not use; draw it in a slot instead`)
    }
  }
  return shapes.filter(shape => shape.d !== '' && shape.fill !== 'none')
}

/** Where the SVG's own corner stands, in its units. */
interface Corner {
  readonly left: number
  readonly top: number
}

/** SVG path data with x and y by turns, moved and then scaled, rounded to 3 decimals of a millimetre (a micrometre). */
export function placePath(d: string, { left, top }: Corner, unitsPerMm: number): string {
  const mmPerUnit = 1 / unitsPerMm
  return changeLengths(d, (value, index) => (value + (index % 2 === 0 ? left : top)) * mmPerUnit)
}

function attribute(element: string, name: string): string {
  return new RegExp(`\\b${name}="([^"]*)"`).exec(element)?.[1] ?? ''
}

function color(element: string): string {
  const fill = attribute(element, 'fill')
  return fill === 'black' || fill === '' ? '#000000' : fill
}

function rectanglePath(element: string): string {
  const [x, y, width, height] = ['x', 'y', 'width', 'height'].map(name => Number(attribute(element, name)))
  const right = x! + width!
  const bottom = y! + height!
  return `M${x} ${y}L${right} ${y}L${right} ${bottom}L${x} ${bottom}Z`
}
