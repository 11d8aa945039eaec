import type { PathCommand } from '../typeface/glyph-outline.js'

/** SVG path data in mm, at most three decimals: a thousandth of a millimetre is far below what paper shows. */
export function pathText(commands: readonly PathCommand[]): string {
  return commands.map(({ type, values }) => type + values.map(thousandths).join(' ')).join('')
}

/** A length in mm as text. Put together from whole numbers: twice as fast as letting it print a fraction. */
export function thousandths(mm: number): string {
  const count = Math.round(mm * 1000)
  const whole = Math.floor(Math.abs(count) / 1000)
  const digits = `${whole}${fractions[Math.abs(count) - whole * 1000]}`
  return count < 0 ? `-${digits}` : digits
}

const fractions = Array.from({ length: 1000 }, (_, index) =>
  index === 0 ? '' : `.${String(index).padStart(3, '0').replace(/0+$/, '')}`,
)

/** Commands in em, y from the baseline, enlarged to `sizeMm` and moved so that the origin stands at (x, y). */
export function scaleCommands(
  commands: readonly PathCommand[],
  sizeMm: number,
  origin: { readonly xMm: number; readonly yMm: number },
): readonly PathCommand[] {
  return commands.map(({ type, values }) => ({
    type,
    values: values.map((value, index) => value * sizeMm + (index % 2 === 0 ? origin.xMm : origin.yMm)),
  }))
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
