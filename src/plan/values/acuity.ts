/**
 * From a child's reading acuity to the x-height of type. Always a starting point: the child's own vision specialist
 * decides.
 */

import { andThen, fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { key, reading } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { TypeSize } from '../plan.js'
import { type MapEntry, misfit } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { lengthReader } from './lengths.js'

type AcuitySize = Extract<TypeSize, { kind: 'acuity' }>

/**
 * Two times the smallest print read lets a reader read fluently (acuity reserve about 2:1, Latham and Tabrett 2012;
 * Whittaker and Lovie-Kitchin 1993, the latter from memory).
 */
const usualReserve = 2
/** Type of a hand's breadth is a poster's; beyond it the figures are surely mistyped. */
const largestXHeightMm = 100

/**
 * The letter that subtends 5 minutes of arc at 1 m is 1.45444 mm high (1 M unit); it grows with the distance and
 * with the smallest angle read, 10^logMAR.
 */
export function xHeightForAcuityMm({ logMar, distanceMm, reserve }: Omit<AcuitySize, 'kind'>): number {
  const unitMm = 1000 * 2 * Math.tan((2.5 / 60) * (Math.PI / 180))
  return unitMm * 10 ** logMar * (distanceMm / 1000) * reserve
}

/** `0.1`, `20/200`, `6/60` or `logMAR 1.0` → logMAR; `null` where it is none of them. */
export function parseAcuity(text: string): number | null {
  const number = String.raw`(\d+(?:\.\d+)?|\.\d+)`
  const logMar = new RegExp(String.raw`^logmar\s*([+-]?)${number}$|^([+-]?)${number}\s*logmar$`, 'i').exec(
    text,
  )
  if (logMar) return Number(`${logMar[1] ?? logMar[3]}${logMar[2] ?? logMar[4]}`)
  const fraction = new RegExp(String.raw`^${number}(?:\s*/\s*${number})?$`).exec(text)
  const decimal = fraction ? Number(fraction[1]) / Number(fraction[2] ?? 1) : 0
  // Adding 0 turns the -0 of 20/20 into 0.
  return decimal > 0 && Number.isFinite(decimal) ? -Math.log10(decimal) + 0 : null
}

const acuityTaken: Takes = {
  kind: 'form',
  what: 'an acuity as the specialist gave it',
  samples: ['20/200', '6/60', '0.1', 'logMAR 1.0'],
  pattern: String.raw`^(?:logmar\s*)?[+-]?[\d.]+(?:\s*/\s*[\d.]+)?(?:\s*logmar)?$`,
  plain: ['number'],
}

const readAcuity = reading<number>(acuityTaken, entry => {
  const form = 'Write the acuity as 0.1, 20/200, 6/60 or logMAR 1.0, as the specialist gave it.'
  if (entry.kind !== 'text') return misfit(entry, 'an acuity', form)
  const logMar = parseAcuity(entry.text)
  return logMar !== null && logMar >= -0.3 && logMar <= 3
    ? succeed(logMar)
    : fail(errorAt(entry.place, `"${entry.text}" is no acuity from 2.0 down to 0.001`, form))
})

const reserveTaken: Takes = {
  kind: 'form',
  what: 'a number from 1 to 10',
  samples: ['2', '3'],
  pattern: String.raw`^[\d.]+(?:\s*:\s*1)?$`,
  plain: ['number'],
}

const readReserve = reading<number>(reserveTaken, entry => {
  const form = 'Give the reserve as a number from 1 to 10, such as 2.'
  if (entry.kind !== 'text') return misfit(entry, 'a number', form)
  const value = /^\d+(?:\.\d+)?(?:\s*:\s*1)?$/.test(entry.text) ? Number.parseFloat(entry.text) : 0
  return value >= 1 && value <= 10
    ? succeed(value)
    : fail(errorAt(entry.place, `"${entry.text}" is no reserve`, form))
})

const acuityKeys = {
  acuity: key('the smallest print that the child reads, as the vision specialist gave it', readAcuity),
  distance: key(
    'from how far away the child reads',
    lengthReader('the reading distance', { minMm: 20, maxMm: 6000 }),
    { example: '40 cm' },
  ),
  reserve: key('how many times larger than the smallest readable the type is to be', readReserve, {
    usual: '2',
  }),
}

export const acuityTakes: Takes = {
  kind: 'keys',
  what: 'a size made for a child',
  keys: () => acuityKeys,
  needed: ['acuity', 'distance'],
}

/** `{acuity: 20/200, distance: 40 cm}`, with `reserve` where it is not to be 2. */
export function readAcuitySize(map: MapEntry): Outcome<AcuitySize> {
  const missing = ['acuity', 'distance'].filter(key => !valueAt(map, key))
  const keys = readKeys(map, {
    what: 'a size made for a child',
    readers: acuityKeys,
    rules: missing.map(key =>
      errorAt(
        map.place,
        `"${key}" is missing in a size made for a child`,
        'Write for: {acuity: 20/200, distance: 40 cm}.',
      ),
    ),
  })
  return andThen(keys, ({ values: { acuity, distance, reserve = usualReserve } }) => {
    const size = { kind: 'acuity', logMar: acuity!, distanceMm: distance!, reserve } as const
    const xHeightMm = xHeightForAcuityMm(size)
    if (xHeightMm <= largestXHeightMm) return succeed(size)
    const message = `an x-height of ${xHeightMm.toFixed(0)} mm comes of this acuity and distance`
    return fail(
      errorAt(map.place, message, `Check the figures; the largest x-height is ${largestXHeightMm} mm.`),
    )
  })
}
