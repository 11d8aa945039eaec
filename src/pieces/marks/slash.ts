import { polygon } from '../art/path-text.js'
import type { LineStyle } from './line-style.js'

/** Width over height, where the letter is wide enough. */
const lean = 0.5

/** How far it reaches past the letter above and below, and its weight, in strokes. */
const reach = 2
const weight = 1.4

/** The one line that crosses ink by design. Only letters that say nothing are given to it. */
export const slashLine: LineStyle = {
  name: 'slash',
  summary:
    'a stroke through each letter that says nothing (the k of kn); letters that are heard are never crossed',
  stands: 'through',
  heightMm: () => 0,
  shortestMm: ink => ink.strokeMm,
  draw: ({ left, top, right, bottom }, { strokeMm }) => {
    const [high, low] = [top - reach * strokeMm, bottom + reach * strokeMm]
    const half = Math.min((right - left) / 2, (lean * (low - high)) / 2)
    const middle = (left + right) / 2
    const width = Math.min(weight * strokeMm, 2 * half)
    return [
      {
        commands: polygon([
          [middle - half, low],
          [middle - half + width, low],
          [middle + half, high],
          [middle + half - width, high],
        ]),
      },
    ]
  },
}
