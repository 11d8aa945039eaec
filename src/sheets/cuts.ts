/** Where the trimmer cuts: each shared edge once, straight from edge to edge of the cards on the sheet. */
import type { Box, Size } from '../geometry.js'
import type { CutStyle } from '../plan/plan.js'
import { UNREACHABLE_EDGE_MM } from './margins.js'
import type { CutLine } from './sheet.js'

/**
 * Little more than half of the thinnest mark or border on a card (0.35 mm), so that it reads as neither, and black:
 * printers break thin grey lines into dots.
 */
export const CUT_WIDTH_MM = 0.2

/** How far a cut line runs out beyond the cards, or how long a tick is, where the margin allows it. */
const TICK_MM = 2.4

/** The straight cuts of a sheet: `columns` are the x of upright cuts, `rows` the y of level ones, in mm, ascending. */
export interface StraightCuts {
  readonly columns: readonly number[]
  readonly rows: readonly number[]
}

/** The cuts that free every piece. An edge that is the paper's own edge needs none. */
export function straightCuts(pieces: readonly Box[], sheetSize: Size): StraightCuts {
  const columns = pieces.flatMap(piece => [piece.xMm, piece.xMm + piece.widthMm])
  const rows = pieces.flatMap(piece => [piece.yMm, piece.yMm + piece.heightMm])
  return { columns: inside(columns, sheetSize.widthMm), rows: inside(rows, sheetSize.heightMm) }
}

/** Cut lines or ticks for the pieces of one sheet. */
export function drawCuts(pieces: readonly Box[], sheetSize: Size, style: CutStyle): readonly CutLine[] {
  if (style === 'none' || pieces.length === 0) return []
  const { columns, rows } = straightCuts(pieces, sheetSize)
  const left = Math.min(...pieces.map(piece => piece.xMm))
  const right = Math.max(...pieces.map(piece => piece.xMm + piece.widthMm))
  const top = Math.min(...pieces.map(piece => piece.yMm))
  const bottom = Math.max(...pieces.map(piece => piece.yMm + piece.heightMm))
  const upright = spans(top, bottom, sheetSize.heightMm, style)
  const level = spans(left, right, sheetSize.widthMm, style)
  return [
    ...columns.flatMap(x => upright.map(([from, to]) => cutLine(x, from, x, to))),
    ...rows.flatMap(y => level.map(([from, to]) => cutLine(from, y, to, y))),
  ]
}

/** White lines along the edges that dark pieces share, where a black line would not be seen. */
export function drawCutsOnDark(pieces: readonly Box[]): readonly CutLine[] {
  const shared = pieces.flatMap(piece =>
    pieces.flatMap(({ xMm, yMm, widthMm, heightMm }): readonly CutLine[] => {
      const right = near(piece.xMm + piece.widthMm, xMm) && near(piece.yMm, yMm)
      const below = near(piece.yMm + piece.heightMm, yMm) && near(piece.xMm, xMm)
      if (right) return [cutLine(xMm, yMm, xMm, yMm + heightMm)]
      return below ? [cutLine(xMm, yMm, xMm + widthMm, yMm)] : []
    }),
  )
  return shared.map(cut => ({ ...cut, white: true }))
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < SAME_CUT_MM
}

type Span = readonly [number, number]

/** What to draw along a cut that frees pieces from `from` to `to`: one line run out into the margins, or two ticks. */
function spans(from: number, to: number, paperMm: number, style: 'lines' | 'ticks'): readonly Span[] {
  const before = from - runOut(from)
  const after = to + runOut(paperMm - to)
  if (style === 'lines') return [[before, after]]
  const ticks: readonly Span[] = [
    [before, from],
    [to, after],
  ]
  return ticks.filter(([start, end]) => end - start > 1e-6)
}

/** Into the margin, but not into the edge that printers leave blank. */
function runOut(marginMm: number): number {
  return Math.max(0, Math.min(TICK_MM, marginMm - UNREACHABLE_EDGE_MM))
}

function cutLine(x1Mm: number, y1Mm: number, x2Mm: number, y2Mm: number): CutLine {
  return { x1Mm, y1Mm, x2Mm, y2Mm, widthMm: CUT_WIDTH_MM }
}

/** Cuts nearer to each other, or to the paper's edge, than this are one: no blade sees the difference. */
const SAME_CUT_MM = 0.01

/** Ascending, each once, without the paper's own edges. */
function inside(positions: readonly number[], paperMm: number): readonly number[] {
  return [...positions]
    .sort((a, b) => a - b)
    .filter(position => position > SAME_CUT_MM && position < paperMm - SAME_CUT_MM)
    .filter((position, index, sorted) => index === 0 || position - sorted[index - 1]! > SAME_CUT_MM)
}
