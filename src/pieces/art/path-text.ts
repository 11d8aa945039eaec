import type { PathCommand } from '../typeface/glyph-outline.js'
import { pathWriter } from './path-writer.js'

const writer = pathWriter()
const SPACE = 32

/** SVG path data in mm. */
export function pathText(commands: readonly PathCommand[]): string {
  return pathTextAt(commands, 1, { xMm: 0, yMm: 0 })
}

/** Commands in em, y from the baseline, enlarged to `sizeMm` and moved so that the origin stands at (x, y), as text. */
export function pathTextAt(
  commands: readonly PathCommand[],
  sizeMm: number,
  { xMm, yMm }: { readonly xMm: number; readonly yMm: number },
): string {
  write(commands, sizeMm, xMm, yMm)
  return writer.take()
}

/** An outline in em, and where its origin stands, in mm. */
export interface OutlineInPlace {
  readonly commands: readonly PathCommand[]
  readonly xMm: number
  readonly yMm: number
}

/** Several outlines, all enlarged to `sizeMm`, as one text. */
export function pathTextOf(outlines: readonly OutlineInPlace[], sizeMm: number): string {
  for (const { commands, xMm, yMm } of outlines) write(commands, sizeMm, xMm, yMm)
  return writer.take()
}

function write(commands: readonly PathCommand[], sizeMm: number, xMm: number, yMm: number): void {
  for (const { type, values } of commands) {
    writer.character(type.charCodeAt(0))
    for (let index = 0; index < values.length; index++) {
      if (index > 0) writer.character(SPACE)
      writer.number(values[index]! * sizeMm + (index % 2 === 0 ? xMm : yMm))
    }
  }
}

/** A closed polygon. */
export function polygon(points: readonly (readonly [number, number])[]): readonly PathCommand[] {
  return [
    ...points.map(([x, y], index) => ({
      type: index === 0 ? ('M' as const) : ('L' as const),
      values: [x, y],
    })),
    { type: 'Z', values: [] },
  ]
}

/** An upright rectangle between two corners. */
export function rectangle(left: number, top: number, right: number, bottom: number): readonly PathCommand[] {
  return polygon([
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ])
}
