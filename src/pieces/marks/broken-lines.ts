import { rectangle } from '../art/path-text.js'
import type { PathCommand } from '../typeface/glyph-outline.js'
import { finestStrokeMm } from './ink-rules.js'
import type { LineStyle } from './line-style.js'

/** Lengths in strokes. */
const dashLength = 3.2
const dotWidth = 2
const dotGap = 1.6

export const dashedLine: LineStyle = {
  name: 'dashed',
  summary: 'a row of dashes',
  stands: 'under',
  heightMm: ink => 1.25 * ink.strokeMm,
  shortestMm: ink => 4 * ink.strokeMm + ink.gapMm,
  draw: ({ left, top, right, bottom }, ink) => {
    const gap = ink.insideMm
    const count = Math.max(2, Math.round((right - left + gap) / (dashLength * ink.strokeMm + gap)))
    // A short line keeps two dashes by giving up white before it gives up ink.
    const width = right - left
    const white = count === 2 ? Math.max(ink.gapMm, Math.min(gap, width - 3 * ink.strokeMm)) : gap
    const dash = (width - (count - 1) * white) / count
    return Array.from({ length: count }, (_, index) => {
      const start = left + index * (dash + white)
      return { commands: rectangle(start, top, start + dash, bottom) }
    })
  },
}

export const dottedLine: LineStyle = {
  name: 'dotted',
  summary: 'a row of round dots',
  stands: 'under',
  heightMm: ink => dotWidth * ink.strokeMm,
  shortestMm: ink => 2 * dotWidth * ink.strokeMm + ink.gapMm,
  draw: ({ left, top, right, bottom }, ink) => {
    const width = right - left
    const full = bottom - top
    const gap = Math.max(ink.gapMm, dotGap * ink.strokeMm)
    // One dot more rather than wider gaps: the dots give up some of their width.
    const gaps = Math.max(1, Math.ceil((width - full) / (full + gap) - 1e-9))
    const roomy = (width - gaps * gap) / (gaps + 1)
    const dot = Math.min(full, roomy < finestStrokeMm ? (width - gaps * ink.gapMm) / (gaps + 1) : roomy)
    const y = (top + bottom) / 2
    // Under a narrow letter two smaller dots still read as a row; one dot is the last resort.
    if (dot < finestStrokeMm) return [{ commands: disc((left + right) / 2, y, full / 2) }]
    const step = (width - dot) / gaps
    return Array.from({ length: gaps + 1 }, (_, index) => ({
      commands: disc(left + dot / 2 + index * step, y, dot / 2),
    }))
  },
}

/** Control points of a quarter circle by one cubic: 4/3 · (√2 − 1). */
export const quarterCircle = 0.5523

export function disc(x: number, y: number, radius: number): readonly PathCommand[] {
  const k = quarterCircle * radius
  return [
    { type: 'M', values: [x - radius, y] },
    { type: 'C', values: [x - radius, y - k, x - k, y - radius, x, y - radius] },
    { type: 'C', values: [x + k, y - radius, x + radius, y - k, x + radius, y] },
    { type: 'C', values: [x + radius, y + k, x + k, y + radius, x, y + radius] },
    { type: 'C', values: [x - k, y + radius, x - radius, y + k, x - radius, y] },
    { type: 'Z', values: [] },
  ]
}
