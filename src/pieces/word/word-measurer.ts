import type { MarkSpan } from '../marks/styled-mark.js'
import type { Typeface } from '../typeface/typeface.js'
import { inkOfLettersEm, measureWord, type WordMeasure, type WordRequest } from './word-art.js'

/** A word with its marks, in whatever size. */
export type WordToMeasure = Omit<WordRequest, 'sizeMm'>

export interface MeasuredWord {
  /** The same each time. */
  readonly at: (sizeMm: number) => WordMeasure
  /** Known without placing a mark: with its marks it is no narrower, but for what is lost in rounding. */
  readonly lettersWidthMm: (sizeMm: number) => number
}

/** Measures words and remembers them: the sizes of a set are sought again for every division of the paper. */
export type WordMeasurer = (word: WordToMeasure) => MeasuredWord

/** Some ten megabytes; a week's plan takes a tenth of it. */
const MANY = 50_000

/** @param most so many measures are held; then it begins anew */
export function wordMeasurer(most = MANY): WordMeasurer {
  const known = new Map<string, MeasuredWord>()
  // Marks by number: told in full they are longer than all the rest of a key. Their colours take no room.
  const spanNumbers = new WeakMap<readonly MarkSpan[], number>()
  const numbers = new Map<string, number>()
  let count = 0
  let measures = 0
  const typefaces = new Map<Typeface, number>()
  const numberOf = (spans: readonly MarkSpan[]): number => {
    const known = spanNumbers.get(spans)
    if (known !== undefined) return known
    const key = JSON.stringify(spans, withoutColour)
    const number = numbers.get(key) ?? ++count
    if (numbers.size >= most) numbers.clear()
    numbers.set(key, number)
    spanNumbers.set(spans, number)
    return number
  }
  const measureAnew = (request: WordRequest): WordMeasure => {
    measures += 1
    return measureWord(request)
  }
  return request => {
    const { typeface, word, spans, large = false, leastTextMm, syllableBreaks = [] } = request
    const face = typefaces.get(typeface) ?? typefaces.size
    typefaces.set(typeface, face)
    const key = `${face} ${word} ${large} ${leastTextMm} ${syllableBreaks.join()} ${numberOf(spans)}`
    const found = known.get(key) ?? measuredWord(request, measureAnew)
    if (measures >= most) {
      known.clear()
      measures = 0
    }
    known.set(key, found)
    return found
  }
}

function measuredWord(word: WordToMeasure, measure: (request: WordRequest) => WordMeasure): MeasuredWord {
  const sizes = new Map<number, WordMeasure>()
  let widthEm: number | undefined
  return {
    at: sizeMm => {
      const found = sizes.get(sizeMm) ?? measure({ ...word, sizeMm })
      sizes.set(sizeMm, found)
      return found
    },
    lettersWidthMm: sizeMm => {
      if (widthEm === undefined) {
        const ink = inkOfLettersEm(word)
        widthEm = ink === undefined ? 0 : ink.right - ink.left
      }
      return widthEm * sizeMm
    },
  }
}

function withoutColour(key: string, value: unknown): unknown {
  return key === 'color' ? undefined : value
}
