import type { FontFile, Range, RawGlyph } from './font-file.js'
import type { GlyphOutline } from './glyph-outline.js'

export type Weight = 'regular' | 'bold'

export interface ShapeOptions {
  readonly weight?: Weight
  /** Added after every letter but the last, in em. Any but 0 breaks ligatures, which could not open up evenly. */
  readonly letterSpacingEm?: number
  /** Text indices that no ligature may bridge: where a mark begins or ends. */
  readonly splitLigaturesAt?: readonly number[]
}

/** Two blanks, which a font draws as one long line, stand apart, so that a child counts the letters that are missing. */
const BETWEEN_BLANKS_EM = 0.1

/** Text shaped as one run (kerning and ligatures as the font has them), lengths in em. */
export interface ShapedRun {
  readonly text: string
  readonly glyphs: readonly ShapedGlyph[]
  readonly widthEm: number
}

export interface ShapedGlyph {
  readonly outline: GlyphOutline
  /** Where the outline's origin stands on the run, from its start. */
  readonly xEm: number
  /** Downwards from the baseline. */
  readonly yEm: number
  /** The text indices that it draws: more than one for a ligature. */
  readonly start: number
  readonly end: number
}

/**
 * A text in words, each with the space behind it: each is shaped alone and remembered, for most words of running text stand in it
 * again. No font that comes with oaktag moves or swaps a letter for what stands before a space (a test holds all pairs of them); an
 * accent or an unseen sign stays with what it stands after.
 */
export function wordsToShape(text: string): readonly string[] {
  if (!text.includes(' ')) return [text]
  // The same for plain signs, without going through the tables of all others.
  return text.split(/^[ -~]*$/.test(text) ? /(?<= )(?=[^ ^`])/ : /(?<= )(?=[^\s\p{M}\p{Sk}\p{Cf}])/u)
}

/** Where the last of those words begins. */
export function lastWordToShape(text: string): number {
  for (let space = text.lastIndexOf(' '); space >= 0; space = text.lastIndexOf(' ', space - 1)) {
    if (/^[^\s\p{M}\p{Sk}\p{Cf}]/u.test(text.slice(space + 1, space + 3))) return space + 1
    if (space === 0) return 0
  }
  return 0
}

/** One run after the other. */
export function joinRuns(runs: readonly ShapedRun[]): ShapedRun {
  if (runs.length === 1) return runs[0]!
  const glyphs: ShapedGlyph[] = []
  let text = ''
  let penEm = 0
  for (const run of runs) {
    for (const { outline, xEm, yEm, start, end } of run.glyphs)
      glyphs.push({ outline, xEm: penEm + xEm, yEm, start: text.length + start, end: text.length + end })
    text += run.text
    penEm += run.widthEm
  }
  return { text, glyphs, widthEm: penEm }
}

/** Shapes `text` with the first of `fonts` that covers each character; characters that none covers are left out. */
export function shapeText(fonts: readonly FontFile[], text: string, options: ShapeOptions): ShapedRun {
  const spacing = options.letterSpacingEm ?? 0
  const splits = options.splitLigaturesAt ?? []
  const glyphs: ShapedGlyph[] = []
  let penEm = 0
  for (const part of divideByFont(fonts, text)) {
    const raw = shapePart(part, spacing === 0 ? splits : 'everywhere')
    const ends = endsOf(raw, part.text.length)
    raw.forEach((glyph, index) => {
      const start = part.start + glyph.start
      const end = part.start + ends[index]!
      const outline = part.font.outline(glyph.glyph)
      glyphs.push({ outline, xEm: penEm + glyph.xOffsetEm, yEm: glyph.yOffsetEm, start, end })
      const lastOfCluster = raw[index + 1]?.start !== glyph.start
      penEm += glyph.advanceEm + (lastOfCluster && end < text.length ? spacing : 0)
      if (text.startsWith('__', end - 1)) penEm += BETWEEN_BLANKS_EM
    })
  }
  return { text, glyphs, widthEm: penEm }
}

/** Where the text that a glyph draws ends: where the next one that begins further on begins. */
function endsOf(raw: readonly RawGlyph[], length: number): readonly number[] {
  const ends: number[] = []
  for (let index = raw.length - 1; index >= 0; index--) {
    const next = raw[index + 1]
    const further = next !== undefined && next.start > raw[index]!.start
    ends[index] = further ? next.start : (ends[index + 1] ?? length)
  }
  return ends
}

interface Part {
  readonly font: FontFile
  readonly text: string
  readonly start: number
}

function divideByFont(fonts: readonly FontFile[], text: string): readonly Part[] {
  const parts: Part[] = []
  let index = 0
  let [font, start]: [FontFile | undefined, number] = [undefined, 0]
  for (const character of text) {
    const next = fonts.find(candidate => candidate.covers(character.codePointAt(0)!))
    if (next !== font) {
      if (font !== undefined) parts.push({ font, text: text.slice(start, index), start })
      font = next
      start = index
    }
    index += character.length
  }
  if (font !== undefined) parts.push({ font, text: text.slice(start), start })
  return parts
}

/** A ligature that bridges a split is undone, and only that one. */
function shapePart(part: Part, splits: readonly number[] | 'everywhere'): readonly RawGlyph[] {
  if (splits === 'everywhere') return part.font.shape(part.text, [{ start: 0, end: part.text.length }])
  const whole = part.font.shape(part.text, [])
  const starts = [...new Set(whole.map(glyph => glyph.start)), part.text.length]
  const bridged: Range[] = starts.flatMap((start, index) => {
    const end = starts[index + 1]
    if (end === undefined) return []
    return splits.some(at => at - part.start > start && at - part.start < end) ? [{ start, end }] : []
  })
  return bridged.length === 0 ? whole : part.font.shape(part.text, bridged)
}
