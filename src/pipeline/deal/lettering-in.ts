import type { Art } from '../../pieces/piece.js'
import { drawTextLine, measureTextLine } from '../../pieces/text/text-line.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import type { Lettering, LineOfText } from '../../sheets/furniture/lettering.js'

/** How furniture gets its words drawn in a typeface: a line that stands more than once is drawn once. */
export function letteringIn(typeface: Typeface): Lettering {
  const drawn = new Map<string, Art>()
  const draw = (line: LineOfText): Art => {
    const name = JSON.stringify([line.text, line.sizeMm, line.color, line.weight])
    const art = drawn.get(name) ?? drawTextLine({ typeface, ...line }).art
    drawn.set(name, art)
    return art
  }
  return Object.assign(draw, { widthMm: (line: LineOfText) => measureTextLine({ typeface, ...line }) })
}
