import { pathWriter } from './path-writer.js'

const writer = pathWriter()

/** The path with each of its lengths changed; `index` counts them from 0. */
export function changeLengths(d: string, change: (mm: number, index: number) => number): string {
  let index = 0
  let at = 0
  while (at < d.length) {
    const end = endOfNumber(d, at)
    if (end === at) {
      writer.character(d.charCodeAt(at))
      at += 1
    } else {
      writer.number(change(readNumber(d, at, end), index))
      index += 1
      at = end
    }
  }
  return writer.take()
}

const [MINUS, POINT, ZERO, NINE, SMALL_E] = [45, 46, 48, 57, 101]

/** Where the number that begins here ends; the same place where none does. */
function endOfNumber(d: string, start: number): number {
  const whole = endOfDigits(d, d.charCodeAt(start) === MINUS ? start + 1 : start)
  const fraction = d.charCodeAt(whole) === POINT ? endOfDigits(d, whole + 1) : whole
  const end = fraction > whole + 1 ? fraction : whole
  if (end === start || !isDigit(d.charCodeAt(end - 1))) return start
  if (d.charCodeAt(end) !== SMALL_E) return end
  const exponent = d.charCodeAt(end + 1) === MINUS ? end + 2 : end + 1
  return isDigit(d.charCodeAt(exponent)) ? endOfDigits(d, exponent) : end
}

function endOfDigits(d: string, start: number): number {
  let end = start
  while (isDigit(d.charCodeAt(end))) end += 1
  return end
}

function isDigit(code: number): boolean {
  return code >= ZERO && code <= NINE
}

/** Whole numbers are exact up to more digits than this. */
const EXACT_DIGITS = 15

/**
 * What `Number` reads from `start` to `end`, sooner: a whole number over a power of ten, where both are exact, is rounded
 * as it rounds.
 */
export function readNumber(d: string, start: number, end: number): number {
  if (end - start > EXACT_DIGITS) return Number(d.slice(start, end))
  let value = 0
  let divisor = 0
  for (let at = start; at < end; at++) {
    const code = d.charCodeAt(at)
    if (isDigit(code)) {
      value = value * 10 + code - ZERO
      divisor *= 10
    } else if (code === POINT) divisor = 1
    else if (code !== MINUS || at > start) return Number(d.slice(start, end))
  }
  const positive = divisor === 0 ? value : value / divisor
  return d.charCodeAt(start) === MINUS ? -positive : positive
}
