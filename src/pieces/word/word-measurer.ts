import type { MarkSpan } from '../marks/styled-mark.js'
import type { Typeface } from '../typeface/typeface.js'
import { measureWord, type WordMeasure, type WordRequest } from './word-art.js'

/** Measures words and remembers them: the sizes of a set are sought again for every division of the paper. */
export type WordMeasurer = (request: WordRequest) => WordMeasure

/** Some ten megabytes; a week's plan takes a tenth of it. */
const MANY = 50_000

/** @param most so many measures are held; then it begins anew */
export function wordMeasurer(most = MANY): WordMeasurer {
  const known = new Map<string, WordMeasure>()
  // Marks by number: told in full they are longer than all the rest of a key. Their colours take no room.
  const spanNumbers = new WeakMap<readonly MarkSpan[], number>()
  const numbers = new Map<string, number>()
  let count = 0
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
  return request => {
    const { typeface, word, spans, sizeMm, large = false, leastTextMm, syllableBreaks = [] } = request
    const face = typefaces.get(typeface) ?? typefaces.size
    typefaces.set(typeface, face)
    const key = `${face} ${word} ${sizeMm} ${large} ${leastTextMm} ${syllableBreaks.join()} ${numberOf(spans)}`
    const found = known.get(key) ?? measureWord(request)
    if (known.size >= most) known.clear()
    known.set(key, found)
    return found
  }
}

function withoutColour(key: string, value: unknown): unknown {
  return key === 'color' ? undefined : value
}
