import { flatten } from './glyph-outline.js'
import type { Typeface } from './typeface.js'

/** `schoolbook` as children write the letter, `book` with two storeys. */
export type LetterShape = 'schoolbook' | 'book'

/** The shapes of the two letters that typefaces draw in two ways, told from their outlines. */
export function letterShapesOf(typeface: Typeface): { readonly a: LetterShape; readonly g: LetterShape } {
  return {
    a: strokesDownTheMiddle(typeface, 'a') > 2 ? 'book' : 'schoolbook',
    g: strokesDownTheMiddle(typeface, 'g') > 3 ? 'book' : 'schoolbook',
  }
}

/**
 * How many strokes a line down the middle of the letter crosses. A schoolbook a has two, the top and the foot of its
 * bowl; a book a has a third above them. A schoolbook g has the hook below its bowl, a book g has two bowls.
 */
function strokesDownTheMiddle(typeface: Typeface, letter: string): number {
  const { commands, ink } = typeface.shape(letter).glyphs[0]!.outline
  if (ink === undefined) return 0
  const middle = (ink.left + ink.right) / 2
  const crossings = flatten(commands)
    .filter(([x1, , x2]) => x1 < middle !== x2 < middle)
    .map(([x1, y1, x2, y2]) => ({
      y: y1 + ((middle - x1) / (x2 - x1)) * (y2 - y1),
      turn: x1 < x2 ? 1 : -1,
    }))
    .sort((a, b) => a.y - b.y)
  let [strokes, winding] = [0, 0]
  for (const { turn } of crossings) {
    if (winding === 0) strokes++
    winding += turn
  }
  return strokes
}
