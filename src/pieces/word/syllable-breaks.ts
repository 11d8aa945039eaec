import { disc } from '../marks/broken-lines.js'
import type { InkRules } from '../marks/ink-rules.js'
import { inkBetween, type LetterInk, placeInk } from '../marks/letter-ink.js'
import { outlineAir } from '../marks/outline-style.js'
import type { LetterRange } from '../marks/styled-mark.js'
import type { PathCommand } from '../typeface/glyph-outline.js'
import { rowHeightEm } from '../typeface/glyph-outline.js'
import type { ShapedRun } from '../typeface/shaped-run.js'
import { openedAt } from './opened-run.js'

const dotEm = 0.11

interface BreakRules {
  readonly ink: InkRules
  readonly sizeMm: number
  readonly xHeightEm: number
  /** Ranges that have an outline: where one begins or ends at a break, the break makes room for its line too. */
  readonly outlined: readonly LetterRange[]
}

/** The word opened where a syllable begins, and the dots that stand there, half the height of x above the baseline. */
export function openSyllables(
  run: ShapedRun,
  starts: readonly number[],
  { ink, sizeMm, xHeightEm, outlined }: BreakRules,
): { readonly run: ShapedRun; readonly breaks: readonly LetterInk[] } {
  const radiusMm = Math.max(dotEm * sizeMm, 1.6 * ink.strokeMm) / 2
  const middleMm = (-xHeightEm / 2) * sizeMm
  let opened = run
  const breaks: LetterInk[] = []
  for (const start of [...starts].sort((a, b) => a - b)) {
    if (start <= 0 || start >= run.text.length) continue
    const letters = opened.glyphs.flatMap(glyph =>
      glyph.outline.ink === undefined ? [] : [placeInk(glyph.outline.ink, glyph, sizeMm)],
    )
    const edges = [outlined.some(({ end }) => end === start), outlined.some(range => range.start === start)]
    // An outline's straight side needs the white at every height, a dot only at its own.
    const reachMm = edges.includes(true) ? Infinity : radiusMm + ink.gapMm
    const band = [middleMm - reachMm, middleMm + reachMm] as const
    const before = letters
      .filter(letter => letter.end <= start)
      .map(letter => inkBetween(letter, ...band)?.right)
    const after = letters
      .filter(letter => letter.start >= start)
      .map(letter => inkBetween(letter, ...band)?.left)
    const left = Math.max(...before.filter(x => x !== undefined))
    const right = Math.min(...after.filter(x => x !== undefined))
    if (!Number.isFinite(left) || !Number.isFinite(right)) continue
    const lineMm = ink.strokeMm + 2 * outlineAir * ink.gapMm
    const beforeMm = edges[0] ? lineMm : ink.gapMm
    const afterMm = edges[1] ? lineMm : ink.gapMm
    const addedMm = Math.max(0, beforeMm + 2 * radiusMm + afterMm - (right - left))
    const spareMm = right - left + addedMm - (beforeMm + 2 * radiusMm + afterMm)
    opened = openedAt(opened, start, addedMm / sizeMm)
    breaks.push(dotAt(left + beforeMm + radiusMm + spareMm / 2, middleMm, radiusMm, start, sizeMm))
  }
  return { run: opened, breaks }
}

/** The dot as ink between two letters, so that outlines keep off it or take it in. */
function dotAt(x: number, y: number, radius: number, at: number, sizeMm: number): LetterInk {
  const rowMm = rowHeightEm * sizeMm
  const firstRow = Math.floor((y - radius) / rowMm)
  const rowCount = Math.floor((y + radius) / rowMm) - firstRow + 1
  const rowAt = () => ({ left: x - radius, right: x + radius })
  const [left, right, top, bottom] = [x - radius, x + radius, y - radius, y + radius]
  return { start: at, end: at, left, right, top, bottom, rowCount, rowAt, firstRow, rowMm }
}

export function dotOf({ left, right, top, bottom }: LetterInk): readonly PathCommand[] {
  return disc((left + right) / 2, (top + bottom) / 2, (right - left) / 2)
}
