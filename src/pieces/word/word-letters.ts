import { pathTextAt } from '../art/path-text.js'
import { fromLetters } from '../art/placed-letters.js'
import type { InkRules } from '../marks/ink-rules.js'
import { type LetterInk, placeInk } from '../marks/letter-ink.js'
import type { MarkSpan } from '../marks/styled-mark.js'
import { outlineStyle } from '../marks/styles.js'
import type { PathShape } from '../piece.js'
import type { InkRow } from '../typeface/glyph-outline.js'
import type { ShapedGlyph, ShapedRun } from '../typeface/shaped-run.js'

/** How letters are drawn; hollow and heavy ones carry a mark's colour. */
export interface LetterPaint {
  readonly kind: 'plain' | 'hollow' | 'heavy'
  readonly color?: string
}

const plain: LetterPaint = { kind: 'plain' }

export function paintOf(glyph: ShapedGlyph, spans: readonly MarkSpan[]): LetterPaint {
  for (const { mark, ranges } of spans) {
    if (mark.outline === undefined) continue
    const style = outlineStyle(mark.outline)
    if (style.kind !== 'letters') continue
    if (ranges.some(({ start, end }) => glyph.start < end && glyph.end > start))
      return { kind: style.paint, ...(mark.color === undefined ? {} : { color: mark.color }) }
  }
  return plain
}

/**
 * Width of the stroke along the outline; half of it lies outside the letter's own shape, and of a hollow letter's
 * stroke that is the half that shows.
 */
function strokeMm(paint: LetterPaint, ink: InkRules): number {
  switch (paint.kind) {
    case 'plain':
      return 0
    case 'hollow':
      return 2 * ink.strokeMm
    case 'heavy':
      return ink.strokeMm
  }
}

/** Where the letters' ink stands, the strokes of hollow and heavy ones included. */
export function inkOfLetters(
  run: ShapedRun,
  spans: readonly MarkSpan[],
  ink: InkRules,
  sizeMm: number,
): readonly LetterInk[] {
  return run.glyphs.flatMap(glyph => {
    if (glyph.outline.ink === undefined) return []
    const letter = placeInk(glyph.outline.ink, glyph, sizeMm)
    const growth = strokeMm(paintOf(glyph, spans), ink) / 2
    return [growth === 0 ? letter : grow(letter, growth)]
  })
}

function grow(letter: LetterInk, mm: number): LetterInk {
  const more = Math.ceil(mm / letter.rowMm)
  const { rowCount } = letter
  let grown: readonly InkRow[] | undefined
  return {
    ...letter,
    left: letter.left - mm,
    right: letter.right + mm,
    top: letter.top - mm,
    bottom: letter.bottom + mm,
    rowCount: rowCount + 2 * more,
    rowAt: index => {
      grown ??= grownRows(letter, mm, more)
      return grown[index]!
    },
    firstRow: letter.firstRow - more,
  }
}

/** Each row as wide as the widest of those within `more` rows of it, and by the stroke. */
function grownRows({ rowCount, rowAt }: LetterInk, mm: number, more: number): readonly InkRow[] {
  const rows = Array.from({ length: rowCount }, (_, index) => rowAt(index))
  return Array.from({ length: rowCount + 2 * more }, (_, index) => {
    let [left, right] = [Infinity, -Infinity]
    for (let near = Math.max(0, index - 2 * more); near <= index && near < rowCount; near++) {
      const row = rows[near]!
      if (row.left < left) left = row.left
      if (row.right > right) right = row.right
    }
    return { left: left - mm, right: right + mm }
  })
}

/** What has to be added before each letter, by its text index, for hollow and heavy ones to keep off their neighbours, in mm. */
export function spaceForPaint(
  run: ShapedRun,
  spans: readonly MarkSpan[],
  letters: readonly LetterInk[],
  ink: InkRules,
): ReadonlyMap<number, number> {
  const inked = run.glyphs.filter(glyph => glyph.outline.ink !== undefined)
  const painted = inked.map(glyph => paintOf(glyph, spans).kind !== 'plain')
  const neededMm = new Map<number, number>()
  for (let index = 1; index < letters.length; index++) {
    if (!painted[index - 1] && !painted[index]) continue
    const [before, after] = [letters[index - 1]!, letters[index]!]
    const near = Math.ceil(ink.gapMm / before.rowMm)
    let needed = 0
    const leftsAfter = Array.from({ length: after.rowCount }, (_, row) => after.rowAt(row).left)
    for (let offset = 0; offset < before.rowCount; offset++) {
      const { right } = before.rowAt(offset)
      const level = before.firstRow + offset - after.firstRow
      const beside = leftsAfter.slice(Math.max(0, level - near), Math.max(0, level + near + 1))
      for (const left of beside) needed = Math.max(needed, right + ink.gapMm - left)
    }
    if (needed > 0) neededMm.set(after.start, needed)
  }
  return neededMm
}

export interface LetterDrawing {
  readonly run: ShapedRun
  readonly spans: readonly MarkSpan[]
  readonly ink: InkRules
  readonly sizeMm: number
  /** Where the pen starts, on the baseline. */
  readonly origin: { readonly xMm: number; readonly yMm: number }
  readonly color: string
  readonly paper: string
}

/** All plain letters as one shape, then each hollow or heavy one. */
export function drawLetters(drawing: LetterDrawing): readonly PathShape[] {
  const { run, spans, ink, sizeMm, origin, color, paper } = drawing
  const pathOf = ({ outline, xEm, yEm }: ShapedGlyph): string =>
    pathTextAt(outline.commands, sizeMm, {
      xMm: origin.xMm + xEm * sizeMm,
      yMm: origin.yMm + yEm * sizeMm,
    })
  const painted = run.glyphs
    .map(glyph => ({ glyph, d: pathOf(glyph), paint: paintOf(glyph, spans) }))
    .filter(({ d }) => d !== '')
  const plainLetters = painted.filter(({ paint }) => paint.kind === 'plain')
  const shapes: PathShape[] = []
  if (plainLetters.length > 0) {
    const letters = { run: { ...run, glyphs: plainLetters.map(({ glyph }) => glyph) }, sizeMm, ...origin }
    shapes.push(
      fromLetters({ kind: 'path', d: plainLetters.map(({ d }) => d).join(''), fill: color }, letters),
    )
  }
  for (const { d, paint } of painted) {
    if (paint.kind === 'plain') continue
    const ownColor = paint.color ?? color
    const stroke = { color: ownColor, widthMm: strokeMm(paint, ink), cap: 'round' } as const
    if (paint.kind === 'heavy') shapes.push({ kind: 'path', d, fill: ownColor, stroke })
    // The outlines of one letter may overlap inside it: stroked and then filled over, only the outer edge stays.
    else shapes.push({ kind: 'path', d, fill: 'none', stroke }, { kind: 'path', d, fill: paper })
  }
  return shapes
}
