import { pathTextOf } from '../art/path-text.js'
import { fromLetters } from '../art/placed-letters.js'
import type { PathShape, PlacedWord, TextRun } from '../piece.js'
import type { ShapedRun, Weight } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'

export interface LineToDraw extends Pick<TextRun, 'text' | 'xMm' | 'baselineMm' | 'sizeMm'> {
  readonly typeface: Typeface
  readonly color?: string
  readonly weight?: Weight
}

/** By what it looks like: size and colour. */
type Outlines = Map<string, PathShape>

/** A word's outlines are held as long as the word is remembered as it was shaped. */
const drawn = new WeakMap<ShapedRun, Outlines>()

/**
 * The words of a line, each an outline from the left end of its own baseline, and where that stands. One that was drawn in the same
 * look of late is given again: of the lines that tell sheets and pieces apart nothing differs but a number, and running text has the
 * same words over and over.
 */
export function drawWords(line: LineToDraw): readonly PlacedWord[] {
  const words: PlacedWord[] = []
  for (const { run, xMm } of wordsInPlace(line)) {
    const outline = drawWord(run, line)
    if (outline.d !== '') words.push({ outline, xMm, yMm: line.baselineMm })
  }
  return words
}

/** The outlines of the whole line where it stands, as path data. */
export function lineOutline(line: LineToDraw): string {
  return wordsInPlace(line)
    .map(({ run, xMm }) => outlineOf(run, line.sizeMm, xMm, line.baselineMm))
    .join('')
}

interface WordInPlace {
  readonly run: ShapedRun
  readonly xMm: number
}

function wordsInPlace({ typeface, text, weight, sizeMm, xMm }: LineToDraw): readonly WordInPlace[] {
  let penEm = 0
  return typeface.words(text, weight).map(run => {
    const word = { run, xMm: xMm + penEm * sizeMm }
    penEm += run.widthEm
    return word
  })
}

function drawWord(run: ShapedRun, { sizeMm, color = '#000000' }: LineToDraw): PathShape {
  const looks = drawn.get(run) ?? new Map<string, PathShape>()
  drawn.set(run, looks)
  const look = `${color} ${sizeMm}`
  const outline =
    looks.get(look) ??
    fromLetters(
      { kind: 'path', d: outlineOf(run, sizeMm, 0, 0), fill: color },
      { run, sizeMm, xMm: 0, yMm: 0 },
    )
  looks.set(look, outline)
  return outline
}

function outlineOf({ glyphs }: ShapedRun, sizeMm: number, xMm: number, yMm: number): string {
  const outlines = glyphs.map(({ outline, xEm, yEm }) => ({
    commands: outline.commands,
    xMm: xMm + xEm * sizeMm,
    yMm: yMm + yEm * sizeMm,
  }))
  return pathTextOf(outlines, sizeMm)
}
