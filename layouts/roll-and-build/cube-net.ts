/** Six squares that fold to a cube, and the tabs that hold it: a row of four, one above and one below its second. */
import type { Size } from '../../src/geometry.js'
import { pathText, polygon, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'

export type Side = 'top' | 'right' | 'bottom' | 'left'

export interface Square {
  /** In sides of a square, from the left and from the top of the squares. */
  readonly column: number
  readonly row: number
  /** Edges with a tab to glue. */
  readonly tabs: readonly Side[]
}

/** In the order of the faces. */
export const netSquares: readonly Square[] = [
  { column: 0, row: 1, tabs: [] },
  { column: 1, row: 1, tabs: [] },
  { column: 2, row: 1, tabs: [] },
  { column: 3, row: 1, tabs: ['right'] },
  { column: 1, row: 0, tabs: ['left', 'top', 'right'] },
  { column: 1, row: 2, tabs: ['left', 'bottom', 'right'] },
]

/** As wide as a finger end, of a square's side: common practice, no source. */
const TAB_SHARE = 0.2
const MOST_TAB_MM = 9
const CUT_MM = 0.45
const FOLD_MM = 0.3

export interface NetPlace {
  readonly sideMm: number
  /** Of the squares' top left corner in the room. */
  readonly leftMm: number
  readonly topMm: number
}

function tabDepth(sideMm: number): number {
  return Math.min(MOST_TAB_MM, sideMm * TAB_SHARE)
}

/** The largest net that stands in the room, in its middle. */
export function placeNet({ widthMm, heightMm }: Size): NetPlace {
  const wide = (sideMm: number) => 4 * sideMm + tabDepth(sideMm) + CUT_MM
  const high = (sideMm: number) => 3 * sideMm + 2 * tabDepth(sideMm) + CUT_MM
  let sideMm = Math.min(widthMm / 4, heightMm / 3)
  while (wide(sideMm) > widthMm || high(sideMm) > heightMm) sideMm *= 0.99
  return {
    sideMm,
    leftMm: (widthMm - wide(sideMm) + CUT_MM) / 2,
    topMm: (heightMm - high(sideMm) + CUT_MM) / 2 + tabDepth(sideMm),
  }
}

type Point = readonly [number, number]

const corners: Readonly<Record<Side, readonly [Point, Point]>> = {
  top: [
    [0, 0],
    [1, 0],
  ],
  right: [
    [1, 0],
    [1, 1],
  ],
  bottom: [
    [1, 1],
    [0, 1],
  ],
  left: [
    [0, 1],
    [0, 0],
  ],
}
const outward: Readonly<Record<Side, Point>> = { top: [0, -1], right: [1, 0], bottom: [0, 1], left: [-1, 0] }
const sides: readonly Side[] = ['top', 'right', 'bottom', 'left']

/** Whole lines to cut along, dashed lines to fold. */
export function drawNet(room: Size): Art {
  const { sideMm, leftMm, topMm } = placeNet(room)
  const at = ([x, y]: Point): Point => [leftMm + x * sideMm, topMm + y * sideMm]
  const shapes = netSquares.flatMap(square =>
    sides.flatMap((side): readonly PathShape[] => {
      const [from, to] = corners[side].map(([x, y]): Point => [square.column + x, square.row + y])
      const neighbour = neighbourOf(square, side)
      // A fold between two squares is drawn by the first of them.
      if (neighbour !== undefined)
        return netSquares.indexOf(neighbour) > netSquares.indexOf(square)
          ? [line(at(from!), at(to!), true)]
          : []
      if (!square.tabs.includes(side)) return [line(at(from!), at(to!), false)]
      return [line(at(from!), at(to!), true), ...tab(at(from!), at(to!), outward[side], tabDepth(sideMm))]
    }),
  )
  return { ...room, shapes, text: [] }
}

export function neighbourOf({ column, row }: Square, side: Side): Square | undefined {
  const [x, y] = outward[side]
  return netSquares.find(other => other.column === column + x && other.row === row + y)
}

/** Narrower at its outer edge, so that two in one corner do not meet. */
function tab(from: Point, to: Point, [x, y]: Point, depthMm: number): readonly PathShape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length]
  const out = ([left, top]: Point, inMm: number): Point => [
    left + x * depthMm + along[0] * inMm,
    top + y * depthMm + along[1] * inMm,
  ]
  const outer: readonly [Point, Point] = [out(from, depthMm), out(to, -depthMm)]
  return [line(from, outer[0], false), line(outer[0], outer[1], false), line(outer[1], to, false)]
}

const DASH_MM = 2.4

function line(from: Point, to: Point, isFold: boolean): PathShape {
  const d = `M${from.map(round).join(' ')}L${to.map(round).join(' ')}`
  return {
    kind: 'path',
    d,
    fill: 'none',
    stroke: {
      color: '#000000',
      widthMm: isFold ? FOLD_MM : CUT_MM,
      cap: 'round',
      ...(isFold ? { dashMm: [DASH_MM, DASH_MM * 0.8] } : {}),
    },
  }
}

function round(length: number): number {
  return Math.round(length * 1000) / 1000
}

/** Three short bars at the foot of a face: they show which way is up, and the black one the place of its die. */
export function drawPlaceBars(place: 0 | 1 | 2, { widthMm, heightMm }: Size): Art {
  const gapMm = widthMm * 0.06
  const eachMm = (widthMm - 2 * gapMm) / 3
  const lineMm = Math.min(0.5, heightMm / 4)
  const bars = [0, 1, 2].map((index): PathShape => {
    const left = index * (eachMm + gapMm)
    const right = left + eachMm
    const hole = polygon([
      [left + lineMm, lineMm],
      [left + lineMm, heightMm - lineMm],
      [right - lineMm, heightMm - lineMm],
      [right - lineMm, lineMm],
    ])
    const bar = rectangle(left, 0, right, heightMm)
    return { kind: 'path', d: pathText(index === place ? bar : [...bar, ...hole]), fill: '#000000' }
  })
  return { widthMm, heightMm, shapes: bars, text: [] }
}
