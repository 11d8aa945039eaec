import type { Size } from '../../geometry.js'
import { pathText, polygon } from '../art/path-text.js'
import { disc } from '../marks/broken-lines.js'
import type { PathShape } from '../piece.js'
import type { PathCommand } from '../typeface/glyph-outline.js'

export const borderLines = ['single', 'double', 'dashed', 'dotted', 'wavy', 'thick'] as const
export type BorderLine = (typeof borderLines)[number]

export const borderCorners = ['square', 'round', 'cut', 'ticket'] as const
export type BorderCorners = (typeof borderCorners)[number]

export interface BorderRequest {
  readonly line: BorderLine
  readonly corners?: BorderCorners
  /** The border's ink stays within it. */
  readonly size: Size
  /** Of a single line; 0.5 where left out. */
  readonly strokeMm?: number
  /** `#rrggbb`; black where left out. */
  readonly color?: string
}

type Point = readonly [x: number, y: number]

/** A side or a corner, as points near enough for straight pieces; runs join end to end. */
type Run = readonly Point[]

/** How wide a border is, from its outer edge to its inner. */
export function borderWidthMm(line: BorderLine, strokeMm = 0.5): number {
  switch (line) {
    case 'single':
    case 'dashed':
      return strokeMm
    case 'thick':
      return 3 * strokeMm
    case 'double':
      return 2 * strokeMm + Math.max(0.6, strokeMm)
    case 'dotted':
      return 2 * strokeMm
    case 'wavy':
      return 3.6 * strokeMm
  }
}

/** A line around a card. It lies within `size`; its corners are drawn, never left to chance. */
export function drawBorder(request: BorderRequest): readonly PathShape[] {
  const { line, corners = 'square', size, strokeMm = 0.5, color = '#000000' } = request
  const width = borderWidthMm(line, strokeMm)
  const runsAt = (insetMm: number): readonly Run[] => sides(size, insetMm, corners)
  const stroke = (commands: readonly PathCommand[], widthMm: number): PathShape => ({
    kind: 'path',
    d: pathText(commands),
    fill: 'none',
    stroke: { color, widthMm, cap: 'butt' },
  })
  switch (line) {
    case 'single':
    case 'thick':
      return [stroke(closed(runsAt(width / 2)), width)]
    case 'double':
      return [strokeMm / 2, width - strokeMm / 2].map(inset => stroke(closed(runsAt(inset)), strokeMm))
    case 'dashed':
      return [
        stroke(
          runsAt(width / 2).flatMap(run => dashes(run, 6 * strokeMm, 4 * strokeMm)),
          strokeMm,
        ),
      ]
    case 'dotted': {
      const dots = runsAt(width / 2).flatMap(run => evenly(run, 4.2 * strokeMm).slice(0, -1))
      return [{ kind: 'path', d: pathText(dots.flatMap(([x, y]) => disc(x, y, width / 2))), fill: color }]
    }
    case 'wavy': {
      const amplitude = (width - strokeMm) / 2
      const wave = runsAt(width / 2).flatMap(run => waves(run, amplitude, 7.5 * strokeMm))
      return [stroke(polygon(wave), strokeMm)]
    }
  }
}

/** A ticket's corners curve inwards, as admission tickets are punched (common practice, no source). */
const cornerMm = 4

/** Clockwise from the top left: four sides, with four corners between them unless these are square. */
function sides({ widthMm, heightMm }: Size, insetMm: number, corners: BorderCorners): readonly Run[] {
  const [left, top, right, bottom] = [insetMm, insetMm, widthMm - insetMm, heightMm - insetMm]
  const cut = corners === 'square' ? 0 : Math.min(cornerMm, (right - left) / 4, (bottom - top) / 4)
  // At each corner: its point, and the turns that a quarter circle there runs through.
  const places: readonly { readonly at: Point; readonly into: Point; readonly quarter: number }[] = [
    { at: [left, top], into: [1, 1], quarter: 2 },
    { at: [right, top], into: [-1, 1], quarter: 3 },
    { at: [right, bottom], into: [-1, -1], quarter: 0 },
    { at: [left, bottom], into: [1, -1], quarter: 1 },
  ]
  const bends = places.map(({ at: [x, y], into: [dx, dy], quarter }): Run => {
    const ends: Point[] =
      quarter % 2 === 0
        ? [
            [x, y + dy * cut],
            [x + dx * cut, y],
          ]
        : [
            [x + dx * cut, y],
            [x, y + dy * cut],
          ]
    if (corners === 'square' || corners === 'cut') return cut === 0 ? [[x, y]] : ends
    const centre: Point = corners === 'round' ? [x + dx * cut, y + dy * cut] : [x, y]
    return arc(centre, ends[0]!, ends[1]!)
  })
  return bends.flatMap((bend, index) => {
    const next = bends[(index + 1) % bends.length]!
    const side: Run = [bend.at(-1)!, next[0]!]
    return bend.length > 1 ? [bend, side] : [side]
  })
}

/** The shorter way round `centre` from one point to another at the same distance. */
function arc([x, y]: Point, from: Point, to: Point): Run {
  const radius = Math.hypot(from[0] - x, from[1] - y)
  const start = Math.atan2(from[1] - y, from[0] - x)
  const full = Math.atan2(to[1] - y, to[0] - x) - start
  const turn = full > Math.PI ? full - 2 * Math.PI : full < -Math.PI ? full + 2 * Math.PI : full
  return Array.from({ length: 17 }, (_, step) => {
    const angle = start + (turn * step) / 16
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)] as const
  })
}

function closed(runs: readonly Run[]): readonly PathCommand[] {
  return polygon(runs.flatMap(run => run.slice(0, -1)))
}

function lengthOf(run: Run): number {
  return run
    .slice(1)
    .reduce((sum, [x, y], index) => sum + Math.hypot(x - run[index]![0], y - run[index]![1]), 0)
}

/** Where one is after walking `distance` along the run, and the way it is going there. */
function walk(run: Run, distance: number): { readonly at: Point; readonly heading: Point } {
  let left = distance
  for (let index = 1; ; index++) {
    const [[x1, y1], [x2, y2]] = [run[index - 1]!, run[index]!]
    const length = Math.hypot(x2 - x1, y2 - y1)
    if (left > length + 1e-9 && index < run.length - 1) {
      left -= length
      continue
    }
    const heading: Point = [(x2 - x1) / length, (y2 - y1) / length]
    return { at: [x1 + heading[0] * left, y1 + heading[1] * left], heading }
  }
}

/** Points a whole number of equal steps apart, both ends among them. */
function evenly(run: Run, stepMm: number): readonly Point[] {
  const length = lengthOf(run)
  const count = Math.max(1, Math.round(length / stepMm))
  return Array.from({ length: count + 1 }, (_, index) => walk(run, (index * length) / count).at)
}

/** Half a dash at either end, so that dashes meet in the corners. */
function dashes(run: Run, dashMm: number, gapMm: number): readonly PathCommand[] {
  const length = lengthOf(run)
  const count = Math.max(1, Math.round(length / (dashMm + gapMm)))
  const period = length / count
  const dash = (period * dashMm) / (dashMm + gapMm)
  return Array.from({ length: count }, (_, index) => [
    [index * period, index * period + dash / 2],
    [(index + 1) * period - dash / 2, (index + 1) * period],
  ]).flatMap(pieces => pieces.flatMap(([from, to]) => piece(run, from!, to!)))
}

function piece(run: Run, from: number, to: number): readonly PathCommand[] {
  const steps = run.length === 2 ? 1 : 6
  return Array.from({ length: steps + 1 }, (_, index) => ({
    type: index === 0 ? ('M' as const) : ('L' as const),
    values: walk(run, from + ((to - from) * index) / steps).at,
  }))
}

function waves(run: Run, amplitudeMm: number, wavelengthMm: number): readonly Point[] {
  const length = lengthOf(run)
  const count = Math.max(1, Math.round(length / wavelengthMm))
  const samples = count * 16
  return Array.from({ length: samples }, (_, index) => {
    const { at, heading } = walk(run, (index * length) / samples)
    const swing = amplitudeMm * Math.sin((2 * Math.PI * count * index) / samples)
    return [at[0] + heading[1] * swing, at[1] - heading[0] * swing] as const
  })
}
