import { keptOfLate } from '../../kept-of-late.js'
import { pathTextOf } from '../art/path-text.js'
import type { PathShape, PlacedWord, TextRun } from '../piece.js'
import type { ShapedGlyph, ShapedRun, Weight } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'

export interface LineToDraw extends Pick<TextRun, 'xMm' | 'baselineMm' | 'sizeMm'> {
  readonly typeface: Typeface
  readonly color?: string
  readonly weight?: Weight
}

/** How many words are kept of each typeface, and as many again: two or three kilobytes each. */
const MANY_WORDS = 500

/**
 * A letter's place in its word is told in so many parts of an em: whatever stood before the word, and was added up on the way, its
 * letters come out in the same places. Typefaces are drawn in 1/1000 or 1/2048 em.
 */
const PARTS_OF_EM = 2 ** 20

interface DrawnWord {
  readonly glyphs: readonly ShapedGlyph[]
  readonly outline: PathShape
}

const drawn = new WeakMap<Typeface, (key: string, make: () => DrawnWord) => DrawnWord>()

/**
 * The words of a shaped line, each an outline from the left end of its own baseline, and where that stands. One that was drawn in the
 * same letters of late is given again: of the lines that tell sheets and pieces apart nothing differs but a number, and running text
 * has the same words over and over.
 */
export function drawWords(run: ShapedRun, line: LineToDraw): readonly PlacedWord[] {
  const { typeface, sizeMm } = line
  const kept = drawn.get(typeface) ?? keptOfLate(MANY_WORDS)
  drawn.set(typeface, kept)
  const look = `${line.weight ?? 'regular'} ${line.color ?? '#000000'} ${sizeMm}`
  return glyphsOfWords(run).flatMap(glyphs => {
    const key = `${run.text.slice(glyphs[0]!.start, glyphs.at(-1)!.end)} ${look}`
    const word = kept(key, () => drawWord(glyphs, line))
    // The word is shaped with its line: beside others its letters may come out otherwise.
    const { outline } = areAlike(word.glyphs, glyphs) ? word : drawWord(glyphs, line)
    if (outline.d === '') return []
    return [{ outline, xMm: line.xMm + glyphs[0]!.xEm * sizeMm, yMm: line.baselineMm }]
  })
}

/** The outlines of the whole line where it stands, as path data. */
export function lineOutline({ glyphs }: ShapedRun, { xMm, baselineMm, sizeMm }: LineToDraw): string {
  const outlines = glyphs.map(({ outline, xEm, yEm }) => ({
    commands: outline.commands,
    xMm: xMm + xEm * sizeMm,
    yMm: baselineMm + yEm * sizeMm,
  }))
  return pathTextOf(outlines, sizeMm)
}

function drawWord(glyphs: readonly ShapedGlyph[], { sizeMm, color = '#000000' }: LineToDraw): DrawnWord {
  const outlines = glyphs.map(({ outline, yEm }, index) => ({
    commands: outline.commands,
    xMm: placeInWordEm(glyphs, index) * sizeMm,
    yMm: yEm * sizeMm,
  }))
  return { glyphs, outline: { kind: 'path', d: pathTextOf(outlines, sizeMm), fill: color } }
}

function placeInWordEm(glyphs: readonly ShapedGlyph[], index: number): number {
  return Math.round((glyphs[index]!.xEm - glyphs[0]!.xEm) * PARTS_OF_EM) / PARTS_OF_EM
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
    some.every(
      ({ outline, yEm }, index) =>
        outline === others[index]!.outline &&
        yEm === others[index]!.yEm &&
        placeInWordEm(some, index) === placeInWordEm(others, index),
    )
  )
}
