import { keptOfLate } from '../../kept-of-late.js'
import { drawnWhenAsked } from '../../pieces/art/drawn-when-asked.js'
import type { Art } from '../../pieces/piece.js'
import { drawTextLine, measureTextLine } from '../../pieces/text/text-line.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import type { Lettering, LineOfText } from '../../sheets/furniture/lettering.js'

/** How furniture gets its words drawn in a typeface: a line that stands more than once is drawn once. */
export function letteringIn(typeface: Typeface): Lettering {
  const known = linesIn(typeface)
  const drawn = new Map<string, Art>()
  const draw = (line: LineOfText): Art => {
    const name = JSON.stringify([line.text, line.sizeMm, line.color, line.weight])
    const found = drawn.get(name)
    if (found !== undefined) return found
    const shared = known(name, () => drawTextLine({ typeface, ...line }).art)
    // An art of its own: what two items have in common is no one's to share in a file.
    const art = drawnWhenAsked(shared, () => shared.shapes)
    drawn.set(name, art)
    return art
  }
  return Object.assign(draw, { widthMm: (line: LineOfText) => measureTextLine({ typeface, ...line }) })
}

/** Every cover says the same cautions: outlines of lines drawn in a typeface, as long as that is in use. */
const linesOfTypefaces = new WeakMap<Typeface, KnownLines>()

type KnownLines = (name: string, draw: () => Art) => Art

/** How many are held at least, a few kilobytes each: a week's plan has as many. */
const HELD = 150

function linesIn(typeface: Typeface): KnownLines {
  const known = linesOfTypefaces.get(typeface) ?? keptOfLate<string, Art>(HELD)
  linesOfTypefaces.set(typeface, known)
  return known
}
