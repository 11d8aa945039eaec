import { keptOfLate } from '../../kept-of-late.js'
import { type FontFile, openFontFile } from './font-file.js'
import { faultOfLetters } from './font-letters.js'
import {
  joinRuns,
  lastWordToShape,
  type ShapedRun,
  type ShapeOptions,
  shapeText,
  type Weight,
  wordsToShape,
} from './shaped-run.js'

/** What a typeface is opened from: font files (TTF, OTF or WOFF). */
export interface TypefaceFiles {
  /** As a plan names it, e.g. `andika`. */
  readonly name: string
  /** As people call it, e.g. `Andika`. */
  readonly family: string
  readonly regular: Uint8Array
  readonly bold?: Uint8Array
  /** A further file of the regular weight, for characters that `regular` lacks. */
  readonly extended?: Uint8Array
  readonly extendedBold?: Uint8Array
  /** Its letters were looked at before, as those that come with oaktag are in its tests. */
  readonly bundled?: true
}

/** Heights in em, all positive; measured from the outlines themselves but for `middle`. */
export interface TypefaceMetrics {
  /** Ink of the letter x above the baseline. */
  readonly xHeight: number
  /** Ink of the letter H above the baseline. */
  readonly capHeight: number
  /** Highest ink of b d f h k l t, above the baseline. */
  readonly ascender: number
  /** Lowest ink of g j p q y, below the baseline. */
  readonly descender: number
  /** The middle of a line of running text above its baseline, as the font file divides the line. */
  readonly middle: number
}

export interface Typeface {
  readonly name: string
  readonly family: string
  readonly metrics: TypefaceMetrics
  readonly hasBold: boolean
  /** The characters of `text` for which the typeface has no glyph with an outline (spaces excepted), each once. */
  missing(text: string): readonly string[]
  /** Characters without a glyph leave nothing behind: ask `missing` first. */
  shape(text: string, options?: ShapeOptions): ShapedRun
  /**
   * A text's words, each with the space behind it, which stand one behind the other: put together they are what `shape` gives. A word
   * is the same run wherever it stands, as long as it is remembered.
   */
  words(text: string, weight?: Weight): readonly ShapedRun[]
  /** How wide it would be, in em: remembered for many more texts than can be held shaped. */
  widthEm(text: string, weight?: Weight): number
}

export interface UnreadableFont {
  /** In plain words, a clause without a full stop. */
  readonly unreadable: string
}

/** How many are held at least, three kilobytes each: a week's plan has as many. */
const MANY_RUNS = 1000

/**
 * Words of running text, a kilobyte each, and their outlines, two or three. The whole week's set has seven hundred: of fewer that are
 * held, half would be shaped and drawn again each time that it is made again.
 */
const MANY_WORDS = 800

/** A width takes a hundred bytes; a set of thousands of cards asks for those of all its small texts, over and over. */
const MANY_WIDTHS = 20_000

/** No line is longer, in signs; a text that is has all its words measured in a row. */
const LONGEST_LINE = 1000

/** The typeface, or why its files cannot be used. */
export function openTypeface(files: TypefaceFiles): Typeface | UnreadableFont {
  const regular = openLetters(files.regular, files)
  if (typeof regular === 'string') return { unreadable: regular }
  const bold = files.bold && openLetters(files.bold, files)
  if (typeof bold === 'string') return { unreadable: `in its bold weight ${bold}` }
  const further = {
    regular: openedWhenAsked(files.extended),
    bold: openedWhenAsked(bold === undefined ? files.extended : files.extendedBold),
  }
  const first = { regular, bold: bold ?? regular }
  /** Which fonts a text takes: few have a character for which the second is opened. */
  const fontsFor = (text: string, weight: Weight): readonly FontFile[] => {
    const font = first[weight]
    for (const character of text)
      if (!font.covers(character.codePointAt(0)!))
        return [font, further[weight]()].filter(each => each !== undefined)
    return [font]
  }
  const runs = keptOfLate<string, ShapedRun>(MANY_RUNS)
  const widths = keptOfLate<string, number>(MANY_WIDTHS)
  // Every text of a plan is asked about for every item in which it may stand.
  const missing = keptOfLate<string, readonly string[]>(MANY_RUNS)
  const knownWords = keptOfLate<string, ShapedRun>(MANY_WORDS)
  const wordOf = (word: string, weight: Weight): ShapedRun =>
    knownWords(`${weight}|${word}`, () => shapeText(fontsFor(word, weight), word, { weight }))
  const words = (text: string, weight: Weight = 'regular'): readonly ShapedRun[] =>
    wordsToShape(text).map(word => wordOf(word, weight))
  // Where a text is broken into lines, each is asked for word by word: all but the last word is what was asked for before.
  const widthEm = (text: string, weight: Weight): number =>
    widths(`${weight}|${text}`, () => {
      const last = text.length > LONGEST_LINE ? 0 : lastWordToShape(text)
      if (last === 0) return words(text, weight).reduce((sum, word) => sum + word.widthEm, 0)
      return widthEm(text.slice(0, last), weight) + wordOf(text.slice(last), weight).widthEm
    })
  const shape = (text: string, options: ShapeOptions = {}): ShapedRun => {
    const { weight = 'regular', letterSpacingEm = 0, splitLigaturesAt = [] } = options
    // A line's words are kept; putting them in a row again is cheaper than to hold every line of a set.
    if (letterSpacingEm === 0 && splitLigaturesAt.length === 0) return joinRuns(words(text, weight))
    const key = `${weight}|${letterSpacingEm}|${splitLigaturesAt.join(' ')}|${text}`
    return runs(key, () => shapeText(fontsFor(text, weight), text, options))
  }
  return {
    name: files.name,
    family: files.family,
    metrics: measure(regular),
    hasBold: bold !== undefined,
    missing: text =>
      missing(text, () =>
        [...new Set(text)].filter(character => {
          const codePoint = character.codePointAt(0)!
          return !regular.draws(codePoint) && further.regular()?.draws(codePoint) !== true
        }),
      ),
    shape,
    words,
    widthEm: (text, weight = 'regular') => widthEm(text, weight),
  }
}

/** A font that words are set in, or why they cannot be. */
function openLetters(bytes: Uint8Array, { bundled }: TypefaceFiles): FontFile | string {
  const font = openFontFile(bytes, { bundled: bundled === true })
  return typeof font === 'string' || bundled === true ? font : (faultOfLetters(font) ?? font)
}

/** A file for the characters that another lacks need not have the alphabet. */
function openedWhenAsked(bytes: Uint8Array | undefined): () => FontFile | undefined {
  let opened: { readonly font: FontFile | undefined } | undefined
  return () => {
    if (opened === undefined) {
      const font = bytes && openFontFile(bytes)
      opened = { font: typeof font === 'string' ? undefined : font }
    }
    return opened.font
  }
}

function measure(font: FontFile): TypefaceMetrics {
  const ink = (letters: string) =>
    [...letters].map(letter => font.outline(font.shape(letter, [])[0]!.glyph).ink!).filter(Boolean)
  const highest = (letters: string): number => Math.max(...ink(letters).map(({ top }) => -top))
  return {
    xHeight: highest('x'),
    capHeight: highest('H'),
    ascender: highest('bdfhklt'),
    descender: Math.max(...ink('gjpqy').map(({ bottom }) => bottom)),
    middle: (font.lineRoom.aboveEm - font.lineRoom.belowEm) / 2,
  }
}
