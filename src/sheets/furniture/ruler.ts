/** Two scales that prove a page was printed at its true size. */
import { inchesToMm } from '../../geometry.js'
import type { PlacedArt } from '../../pieces/piece.js'
import { type Block, textBlock } from './column.js'
import { type Lettering, unsaid } from './lettering.js'
import { drawStrokes, type Segment } from './strokes.js'

export interface RulerRequest {
  readonly lettering: Lettering
  /** Room from left to right; where 100 mm find none, the scales are 50 mm and 2 in long, or 25 mm and 1 in. */
  readonly widthMm: number
}

/** The longest that fits, with room for the last number and its unit, is taken. */
const LENGTHS = [
  { fromMm: 110, mm: 100, inches: 4 },
  { fromMm: 59, mm: 50, inches: 2 },
  { fromMm: 0, mm: 25, inches: 1 },
] as const
const STROKE_MM = 0.25
const NUMBER_MM = 2.8
const EDGE_MM = 1
const SCALE_HEIGHT_MM = 5

/** 100 mm and 4 in, or less on a narrow card. The zero of both lies 1 mm from the block's left. */
export function rulerBlock({ lettering, widthMm }: RulerRequest): Block {
  const { mm, inches } = LENGTHS.find(({ fromMm }) => widthMm >= fromMm)!
  const metric = scale(lettering, { steps: mm, stepMm: 1, numberEvery: 10, lengthAt: metricTick, unit: 'mm' })
  const inch = scale(lettering, {
    steps: inches * 8,
    stepMm: inchesToMm(1 / 8),
    numberEvery: 8,
    lengthAt: inchTick,
    unit: 'in',
  })
  const advice = textBlock({
    lettering,
    widthMm,
    text: `Measure this: ${mm} mm and ${inches} in. If they measure otherwise, print again at 100 %, “actual size”.`,
    sizeMm: NUMBER_MM,
  })
  const topMm = advice.heightMm + 1
  const rowMm = SCALE_HEIGHT_MM + NUMBER_MM * 1.35
  return {
    art: [
      ...advice.art,
      ...metric.map(placed => ({ ...placed, yMm: placed.yMm + topMm })),
      ...inch.map(placed => ({ ...placed, yMm: placed.yMm + topMm + rowMm })),
    ],
    heightMm: topMm + 2 * rowMm,
    spaceAfterMm: 4,
  }
}

interface Scale {
  readonly steps: number
  readonly stepMm: number
  readonly numberEvery: number
  /** Length in mm of the tick at a step. */
  readonly lengthAt: (step: number) => number
  readonly unit: string
}

function scale(
  lettering: Lettering,
  { steps, stepMm, numberEvery, lengthAt, unit }: Scale,
): readonly PlacedArt[] {
  const lengthMm = steps * stepMm
  const half = STROKE_MM / 2
  const ticks = Array.from({ length: steps + 1 }, (_, step): Segment => {
    const x = EDGE_MM + step * stepMm
    return [x, 0, x, lengthAt(step)]
  })
  const base: Segment = [EDGE_MM - half, half, EDGE_MM + lengthMm + half, half]
  const size = { widthMm: lengthMm + 2 * EDGE_MM, heightMm: SCALE_HEIGHT_MM }
  const numbers = Array.from({ length: Math.floor(steps / numberEvery) + 1 }, (_, index) => {
    const last = index * numberEvery === steps
    const value = unit === 'in' ? index : index * numberEvery
    const art = unsaid(lettering({ text: String(value), sizeMm: NUMBER_MM }))
    const middle = EDGE_MM + index * numberEvery * stepMm
    const number = { art, xMm: Math.max(0, middle - art.widthMm / 2), yMm: SCALE_HEIGHT_MM - 0.4 }
    if (!last) return [number]
    const unitArt = unsaid(lettering({ text: unit, sizeMm: NUMBER_MM }))
    return [number, { art: unitArt, xMm: number.xMm + art.widthMm + 1, yMm: number.yMm }]
  }).flat()
  return [
    { art: drawStrokes({ size, segments: [base, ...ticks], widthMm: STROKE_MM }), xMm: 0, yMm: 0 },
    ...numbers,
  ]
}

function metricTick(step: number): number {
  if (step % 10 === 0) return 4.4
  return step % 5 === 0 ? 3.2 : 2
}

function inchTick(step: number): number {
  if (step % 8 === 0) return 4.4
  return step % 4 === 0 ? 3.2 : 2
}
