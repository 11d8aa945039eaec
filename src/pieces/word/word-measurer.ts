import type { MarkSpan } from '../marks/styled-mark.js'
import type { Typeface } from '../typeface/typeface.js'
import { inkOfLettersEm, type WordRequest } from './compose-word.js'
import { measureWord, type WordMeasure } from './word-art.js'

/** A word with its marks, in whatever size. */
export type WordToMeasure = Omit<WordRequest, 'sizeMm'>

export interface MeasuredWord {
  /** The same each time. */
  readonly at: (sizeMm: number) => WordMeasure
  /** Its letters alone, known without placing a mark: with its marks it is no smaller, but for what is lost in rounding. */
  readonly letters: () => LettersEm
}

/** In em; above and below the baseline. */
export interface LettersEm {
  readonly width: number
  readonly above: number
  readonly below: number
}

/** Measures words and remembers them: the sizes of a set are sought again for every division of the paper. */
export type WordMeasurer = (word: WordToMeasure) => MeasuredWord

/** Some ten megabytes; a week's plan takes a tenth of it. */
const MANY = 50_000

/**
 * @param most so many measures are held; then it begins anew
 * @param measuredOne told of each word that is measured, not remembered
 */
export function wordMeasurer(most = MANY, measuredOne: () => void = () => {}): WordMeasurer {
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
    measuredOne()
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
  let letters: LettersEm | undefined
  return {
    at: sizeMm => {
      const found = sizes.get(sizeMm) ?? measure({ ...word, sizeMm })
      sizes.set(sizeMm, found)
      return found
    },
    letters: () => {
      letters ??= lettersOf(word)
      return letters
    },
  }
}

function lettersOf(word: WordToMeasure): LettersEm {
  const ink = inkOfLettersEm(word)
  if (ink === undefined) return { width: 0, above: 0, below: 0 }
  return { width: ink.right - ink.left, above: Math.max(0, -ink.top), below: Math.max(0, ink.bottom) }
}

function withoutColour(key: string, value: unknown): unknown {
  return key === 'color' ? undefined : value
}
