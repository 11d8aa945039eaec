import { keptOfLate } from '../../kept-of-late.js'
import { pathTextAt } from '../art/path-text.js'
import type { PathShape, TextRun } from '../piece.js'
import type { ShapedGlyph, ShapedRun, Weight } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'

export interface LineToDraw extends Pick<TextRun, 'xMm' | 'baselineMm' | 'sizeMm'> {
  readonly typeface: Typeface
  readonly color?: string
  readonly weight?: Weight
}

/** How many words are kept of each typeface, and as many again: two or three kilobytes each. */
const MANY_WORDS = 500

interface DrawnWord {
  readonly glyphs: readonly ShapedGlyph[]
  readonly shape: PathShape
}

const drawn = new WeakMap<Typeface, (key: string, make: () => DrawnWord) => DrawnWord>()

/**
 * The words of a shaped line, each an outline where it stands. One that stood at the same place in the same letters of late is given
 * again: of the lines that tell sheets and pieces apart nothing differs but a number.
 */
export function drawWords(run: ShapedRun, line: LineToDraw): readonly PathShape[] {
  const { typeface } = line
  const kept = drawn.get(typeface) ?? keptOfLate(MANY_WORDS)
  drawn.set(typeface, kept)
  return glyphsOfWords(run).flatMap(glyphs => {
    const key = [
      run.text.slice(glyphs[0]!.start, glyphs.at(-1)!.end),
      line.weight ?? 'regular',
      line.color ?? '#000000',
      line.sizeMm,
      line.baselineMm,
      line.xMm,
      glyphs[0]!.xEm,
    ].join(' ')
    const word = kept(key, () => drawWord(glyphs, line))
    // The word is shaped with its line: beside others its letters may come out otherwise.
    const { shape } = areAlike(word.glyphs, glyphs) ? word : drawWord(glyphs, line)
    return shape.d === '' ? [] : [shape]
  })
}

function drawWord(
  glyphs: readonly ShapedGlyph[],
  { sizeMm, color = '#000000', xMm, baselineMm }: LineToDraw,
): DrawnWord {
  const d = glyphs
    .map(({ outline, xEm, yEm }) =>
      pathTextAt(outline.commands, sizeMm, { xMm: xMm + xEm * sizeMm, yMm: baselineMm + yEm * sizeMm }),
    )
    .join('')
  return { glyphs, shape: { kind: 'path', d, fill: color } }
}

/** Glyphs between spaces; what a space itself draws, as a font may, goes with the word before it. */
function glyphsOfWords({ text, glyphs }: ShapedRun): readonly (readonly ShapedGlyph[])[] {
  const words: ShapedGlyph[][] = []
  let afterSpace = true
  for (const glyph of glyphs) {
    const isSpace = text[glyph.start] === ' '
    if (words.length === 0 || (afterSpace && !isSpace)) words.push([glyph])
    else words.at(-1)!.push(glyph)
    afterSpace = isSpace
  }
  return words
}

function areAlike(some: readonly ShapedGlyph[], others: readonly ShapedGlyph[]): boolean {
  return (
    some.length === others.length &&
    some.every(({ outline, xEm, yEm }, index) => {
      const other = others[index]!
      return outline === other.outline && xEm === other.xEm && yEm === other.yEm
    })
  )
}
