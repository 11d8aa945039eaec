/**
 * A page on its way to another thread. What is sent there is copied, and would be another shape each time: so every shape goes once
 * and is spoken of by its number from then on.
 */
import type { Size } from '../../geometry.js'
import type { Shape } from '../../pieces/piece.js'
import type { CutLine } from '../../sheets/sheet.js'
import type { PageShapes, PlacedShape, PlacedShapes } from './page-shapes.js'

export interface PackedPage extends Size {
  readonly cuts: readonly CutLine[]
  /** For each drawing how many shapes it has and its turn; for each shape its number and where it stands, x and y in mm. */
  readonly drawings: Float64Array<ArrayBuffer>
  /** Those that no page before had, with their numbers. */
  readonly firsts: readonly (readonly [number: number, shape: Shape])[]
}

export interface PagePacking {
  readonly pack: (page: PageShapes) => PackedPage
  /** Forgets the shapes that were on no page since the last call but one; whoever unpacks is to forget these numbers too. */
  readonly letGo: () => readonly number[]
}

const DRAWING_NUMBERS = 2
const SHAPE_NUMBERS = 3

export function pagePacking(): PagePacking {
  let earlier = new Map<Shape, number>()
  let late = new Map<Shape, number>()
  let count = 0
  return {
    pack: ({ widthMm, heightMm, cuts, drawings }) => {
      const shapeCount = drawings.reduce((sum, { shapes }) => sum + shapes.length, 0)
      const numbers = new Float64Array(drawings.length * DRAWING_NUMBERS + shapeCount * SHAPE_NUMBERS)
      const firsts: [number, Shape][] = []
      const numberOf = (shape: Shape): number => {
        const known = late.get(shape) ?? earlier.get(shape)
        const number = known ?? count++
        if (known === undefined) firsts.push([number, bare(shape)])
        late.set(shape, number)
        return number
      }
      let at = 0
      for (const { shapes, turn } of drawings) {
        numbers[at++] = shapes.length
        numbers[at++] = turn
        for (const { shape, xMm, yMm } of shapes) {
          numbers[at++] = numberOf(shape)
          numbers[at++] = xMm
          numbers[at++] = yMm
        }
      }
      return { widthMm, heightMm, cuts, drawings: numbers, firsts }
    },
    letGo: () => {
      const gone = [...earlier].flatMap(([shape, number]) => (late.has(shape) ? [] : number))
      earlier = late
      late = new Map()
      return gone
    },
  }
}

/** What it looks like alone: a line comes word by word, and its own outline is as long again. */
function bare(shape: Shape): Shape {
  if (shape.kind === 'image') return shape
  const { kind, d, fill, stroke } = shape
  return stroke === undefined ? { kind, d, fill } : { kind, d, fill, stroke }
}

export interface PageUnpacking {
  /** Pages in the order in which they were packed. The same number is the same shape. */
  readonly unpack: (page: PackedPage) => PageShapes
  readonly forget: (numbers: readonly number[]) => void
}

export function pageUnpacking(): PageUnpacking {
  const known = new Map<number, Shape>()
  return {
    unpack: ({ widthMm, heightMm, cuts, drawings: numbers, firsts }) => {
      for (const [number, shape] of firsts) known.set(number, shape)
      const drawings: PlacedShapes[] = []
      for (let at = 0; at < numbers.length; ) {
        const end = at + DRAWING_NUMBERS + numbers[at]! * SHAPE_NUMBERS
        const turn = numbers[at + 1] === 0 ? 0 : 180
        const shapes: PlacedShape[] = []
        for (at += DRAWING_NUMBERS; at < end; at += SHAPE_NUMBERS)
          shapes.push({ shape: known.get(numbers[at]!)!, xMm: numbers[at + 1]!, yMm: numbers[at + 2]! })
        drawings.push({ shapes, turn })
      }
      return { widthMm, heightMm, cuts, drawings }
    },
    forget: gone => {
      for (const number of gone) known.delete(number)
    },
  }
}
