/** Lengths as a teacher writes them: a bare number is mm; `mm`, `cm`, `in` and `pt` are understood. */
import { inchesToMm, pointsToMm, type Size } from '../../geometry.js'
import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { misfit } from '../yaml/entry.js'

type Unit = 'mm' | 'cm' | 'in' | 'pt'

const toMm: Readonly<Record<Unit, (value: number) => number>> = {
  mm: value => value,
  cm: value => value * 10,
  in: inchesToMm,
  pt: pointsToMm,
}

const units: Readonly<Record<string, Unit>> = {
  mm: 'mm',
  cm: 'cm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  pt: 'pt',
  point: 'pt',
  points: 'pt',
}

const vulgarFractions: Readonly<Record<string, string>> = {
  '¼': ' 1/4',
  '½': ' 1/2',
  '¾': ' 3/4',
  '⅛': ' 1/8',
}

interface Measure {
  readonly value: number
  /** Where left out, the measure stands without a unit. */
  readonly unit?: Unit
}

function measure(text: string): Measure | null {
  const plain = text.replaceAll(/[¼½¾⅛]/g, sign => vulgarFractions[sign]!).trim()
  const match = /^(?:(\d+(?:\.\d*)?|\.\d+)|(?:(\d+)\s+)?(\d+)\/(\d+))\s*([a-z"″]*)\.?$/i.exec(plain)
  if (!match) return null
  const [, decimal, whole, numerator, denominator, unitName = ''] = match
  const value =
    decimal === undefined ? Number(whole ?? 0) + Number(numerator) / Number(denominator) : Number(decimal)
  const unit = units[unitName.toLowerCase()]
  if (!Number.isFinite(value) || (unitName !== '' && !unit)) return null
  return unit ? { value, unit } : { value }
}

/** mm, or `null` where the text is no length. Fractions of an inch are understood: `2 1/2 in`. */
export function parseLength(text: string): number | null {
  const read = measure(text)
  return read && toMm[read.unit ?? 'mm'](read.value)
}

/** `63 x 88 mm`, `2.5in × 3.5in`, `63x88`; a unit given once is that of both. */
export function parseSize(text: string): Size | null {
  const parts = text.split(/\s*[x×*]\s*/i)
  const [width, height] = parts.map(measure)
  if (parts.length !== 2 || !width || !height) return null
  const unit = width.unit ?? height.unit ?? 'mm'
  return { widthMm: toMm[width.unit ?? unit](width.value), heightMm: toMm[height.unit ?? unit](height.value) }
}

export interface LengthRange {
  readonly minMm: number
  readonly maxMm: number
}

const unitAdvice = 'Write a number and mm, cm, in or pt, such as 6 mm or 0.25 in; a number alone is mm.'

const lengthForm = String.raw`[\d.,/ ¼½¾⅛]*[\d¼½¾⅛.]\s*(?:mm|cm|in|inch|inches|"|″|pt|points?)?\.?`

const lengthTaken: Takes = {
  kind: 'form',
  what: 'a length',
  samples: ['6 mm', '0.25 in'],
  pattern: `^${lengthForm}$`,
  plain: ['number'],
}

const sizeTaken: Takes = {
  kind: 'form',
  what: 'width x height',
  samples: ['63 x 88 mm', '2.5 x 3.5 in'],
  pattern: String.raw`^${lengthForm}\s*[x×*]\s*${lengthForm}$`,
}

/** A length in mm, within the range. */
export function lengthReader(what: string, { minMm, maxMm }: LengthRange): ValueReader<number> {
  return reading(lengthTaken, entry => {
    if (entry.kind !== 'text') return misfit(entry, what, unitAdvice)
    const mm = parseLength(entry.text)
    if (mm === null) return fail(errorAt(entry.place, `"${entry.text}" is no length`, unitAdvice))
    if (mm >= minMm && mm <= maxMm) return succeed(mm)
    const advice = `Give ${what} between ${minMm} mm and ${maxMm} mm.`
    return fail(errorAt(entry.place, `"${entry.text}" is too ${mm < minMm ? 'small' : 'large'}`, advice))
  })
}

/** Width by height in mm, each within the range. */
export function sizeReader(what: string, { minMm, maxMm }: LengthRange): ValueReader<Size> {
  const form = 'Write width x height with a unit, such as 63 x 88 mm or 2.5 x 3.5 in.'
  return reading(sizeTaken, entry => {
    if (entry.kind !== 'text') return misfit(entry, what, form)
    const size = parseSize(entry.text)
    if (size === null) return fail(errorAt(entry.place, `"${entry.text}" is no size`, form))
    const wrong = [size.widthMm, size.heightMm].find(mm => mm < minMm || mm > maxMm)
    if (wrong === undefined) return succeed(size)
    const advice = `Give ${what} with sides between ${minMm} mm and ${maxMm} mm.`
    return fail(errorAt(entry.place, `"${entry.text}" is too ${wrong < minMm ? 'small' : 'large'}`, advice))
  })
}
