import type { LetterShape } from '../src/pieces/typeface/letter-shapes.js'

/** The typefaces that come with oaktag, under the names that @fontsource gives them; the first is the default. */
export interface BundledTypeface {
  readonly name: string
  readonly family: string
  /** One line for `oaktag list fonts`. */
  readonly summary: string
  /** The shapes of a and g: `schoolbook` as children write them, `book` with two storeys. */
  readonly letterShapes: { readonly a: LetterShape; readonly g: LetterShape }
  /** How much of the type size the letter x is high: what makes one typeface look larger than another. */
  readonly xHeight: number
}

export const bundledTypefaces: readonly BundledTypeface[] = [
  {
    name: 'andika',
    family: 'Andika',
    summary: 'made by SIL for beginning readers; a and g in their schoolbook shapes, letters hard to mistake',
    letterShapes: { a: 'schoolbook', g: 'schoolbook' },
    xHeight: 0.5,
  },
  {
    name: 'atkinson-hyperlegible',
    family: 'Atkinson Hyperlegible',
    summary: 'made for the Braille Institute for readers with low vision; letters kept far apart in shape',
    letterShapes: { a: 'book', g: 'schoolbook' },
    xHeight: 0.5,
  },
  {
    name: 'lexend',
    family: 'Lexend',
    summary: 'wide letters and generous spaces between them; words come out long',
    letterShapes: { a: 'schoolbook', g: 'schoolbook' },
    xHeight: 0.53,
  },
  {
    name: 'opendyslexic',
    family: 'OpenDyslexic',
    summary:
      'heavy feet on the letters, so that none can be turned about; chosen by some readers with dyslexia',
    letterShapes: { a: 'schoolbook', g: 'schoolbook' },
    xHeight: 0.56,
  },
]

export const defaultTypeface = 'andika'
