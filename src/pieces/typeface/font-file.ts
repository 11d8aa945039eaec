import * as hb from 'harfbuzzjs'
import { faultOfTables } from './font-tables.js'
import { type GlyphOutline, type PathCommand, readOutline } from './glyph-outline.js'
import { unpackFont } from './woff.js'

/** One font file, opened for shaping. */
export interface FontFile {
  /** How far the font file asks for room above and below its baseline, in em; both positive. */
  readonly lineRoom: { readonly aboveEm: number; readonly belowEm: number }
  covers(codePoint: number): boolean
  /** Whether it has something to print for the character: an outline, or for a space none but room. */
  draws(codePoint: number): boolean
  shape(text: string, unligated: readonly Range[]): readonly RawGlyph[]
  outline(glyph: number): GlyphOutline
}

/** Text indices from `start` up to, not including, `end`. */
export interface Range {
  readonly start: number
  readonly end: number
}

/** As the shaper gives it, lengths in em. */
export interface RawGlyph {
  readonly glyph: number
  readonly start: number
  readonly advanceEm: number
  readonly xOffsetEm: number
  /** Downwards. */
  readonly yOffsetEm: number
}

/** Features by which a typeface joins or swaps neighbouring letters. */
const joiningFeatures = ['liga', 'clig', 'dlig', 'rlig', 'calt', 'hlig']

/** One for all texts: each of its own would have to be tracked until it is let go, which costs as much as shaping. */
const buffer = new hb.Buffer()

/**
 * The font, or why it cannot be used, a clause. The shaper is shown nothing that is not whole; what comes with oaktag is packed,
 * and unpacks as a whole or not at all.
 */
export function openFontFile(packed: Uint8Array, { bundled = false } = {}): FontFile | string {
  const bytes = unpackFont(packed)
  if (bytes === undefined) return 'the file is not a TTF, OTF or WOFF font'
  const fault = bundled ? undefined : faultOfTables(bytes)
  if (fault !== undefined) return fault
  const face = new hb.Face(new hb.Blob(bytes))
  const covered = new Set(face.collectUnicodes())
  if (covered.size === 0 || face.upem === 0) return 'the font knows no letters'
  const font = new hb.Font(face)
  const em = face.upem
  const { ascender, descender } = font.hExtents()
  const outlines = new Map<number, GlyphOutline>()
  const drawn = new Map<number, boolean>()
  const file: FontFile = {
    lineRoom: { aboveEm: ascender / em, belowEm: -descender / em },
    covers: codePoint => covered.has(codePoint),
    draws: codePoint => {
      const known = drawn.get(codePoint)
      if (known !== undefined) return known
      const draws = covered.has(codePoint) && (isSpace(codePoint) || hasInk(file, codePoint))
      drawn.set(codePoint, draws)
      return draws
    },
    shape(text, unligated) {
      buffer.clearContents()
      buffer.addText(text)
      buffer.guessSegmentProperties()
      const features = unligated.flatMap(({ start, end }) =>
        joiningFeatures.map(tag => new hb.Feature(tag, 0, start, end)),
      )
      hb.shape(font, buffer, features)
      // Asked for in one they come with hidden properties, defined glyph by glyph, which take as long as shaping.
      const positions = buffer.getGlyphPositions()
      return buffer.getGlyphInfos().map(({ codepoint, cluster }, index) => {
        const { xAdvance, xOffset, yOffset } = positions[index]!
        return {
          glyph: codepoint,
          start: cluster,
          advanceEm: xAdvance / em,
          xOffsetEm: xOffset / em,
          yOffsetEm: -yOffset / em,
        }
      })
    },
    outline(glyph) {
      const known = outlines.get(glyph)
      if (known !== undefined) return known
      const outline = readOutline(() =>
        font.glyphToJson(glyph).map(({ type, values }) => ({
          type: type as PathCommand['type'],
          values: values.map((value, index) => (index % 2 === 0 ? value : -value) / em),
        })),
      )
      outlines.set(glyph, outline)
      return outline
    },
  }
  return file
}

/** Spaces, and signs that are only ever to be seen by the shaper. */
function isSpace(codePoint: number): boolean {
  if (codePoint > 0x20 && codePoint < 0x7f) return false
  return /[\p{Z}\p{Cf}\p{Cc}\p{Mn}]/u.test(String.fromCodePoint(codePoint))
}

function hasInk(font: FontFile, codePoint: number): boolean {
  const shaped = font.shape(String.fromCodePoint(codePoint), [])
  return shaped.some(({ glyph }) => glyph !== 0 && font.outline(glyph).hasInk)
}
