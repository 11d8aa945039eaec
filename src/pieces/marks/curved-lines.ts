import type { PathCommand } from '../typeface/glyph-outline.js'
import type { LineStyle } from './line-style.js'

/** From crest to trough of the middle of the stroke, and from one crest to the next trough, in strokes. */
const waveHeight = 2.3
const halfWave = 3.1
const shortestHalfWave = 1.4

/** Handles that bring a cubic from crest to trough near a sine (least squares, to the third place). */
const sineHandle = 0.364

export const wavyLine: LineStyle = {
  name: 'wavy',
  summary: 'a wave',
  stands: 'under',
  heightMm: ink => (1 + waveHeight) * ink.strokeMm,
  shortestMm: ink => (1 + 2 * halfWave) * ink.strokeMm * 0.8,
  draw: ({ left, top, right, bottom }, { strokeMm }) => {
    const [from, to] = [left + strokeMm / 2, right - strokeMm / 2]
    const even = Math.max(2, Math.round((to - from) / (halfWave * strokeMm)))
    // Two halves alone would be a hump: under a narrow letter a third, shorter ones, makes it a wave.
    const count = even === 2 && (to - from) / 3 >= shortestHalfWave * strokeMm ? 3 : even
    const step = (to - from) / count
    // Short halves swing less, so that they stay as round as the others.
    const middle = (top + bottom) / 2
    const swing = (middle - top - strokeMm / 2) * Math.min(1, (1.2 * step) / (halfWave * strokeMm))
    const [crest, trough] = [middle - swing, middle + swing]
    const commands: PathCommand[] = [{ type: 'M', values: [from, trough] }]
    for (let index = 0; index < count; index++) {
      const x = from + index * step
      const [y, next] = index % 2 === 0 ? [trough, crest] : [crest, trough]
      commands.push({
        type: 'C',
        values: [x + sineHandle * step, y, x + (1 - sineHandle) * step, next, x + step, next],
      })
    }
    return [{ commands, strokeMm }]
  },
}

export const arcLine: LineStyle = {
  name: 'arc',
  summary: 'a shallow curve, open upwards',
  stands: 'under',
  heightMm: (ink, widthMm) =>
    ink.strokeMm + Math.min(4.5 * ink.strokeMm, Math.max(2 * ink.strokeMm, widthMm * 0.22)),
  shortestMm: ink => 4 * ink.strokeMm,
  draw: ({ left, top, right, bottom }, { strokeMm }) => {
    const [from, to] = [left + strokeMm / 2, right - strokeMm / 2]
    const [high, low] = [top + strokeMm / 2, bottom - strokeMm / 2]
    const handle = high + ((low - high) * 4) / 3
    const reach = (to - from) * 0.2
    return [
      {
        commands: [
          { type: 'M', values: [from, high] },
          { type: 'C', values: [from + reach, handle, to - reach, handle, to, high] },
        ],
        strokeMm,
      },
    ]
  },
}
