import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import { reading, type ValueReader } from '../keys/key.js'
import { misfit } from '../yaml/entry.js'

/** Seeds are 32 bits, as many as anybody will type. */
export const LARGEST_SEED = 0xffff_ffff

/** A whole number from `min` to `max`, both included. */
export function wholeNumberReader(what: string, min: number, max: number): ValueReader<number> {
  const advice = `Give a whole number from ${min} to ${max}.`
  return reading({ kind: 'number', least: min, most: max }, entry => {
    if (entry.kind !== 'text') return misfit(entry, what, advice)
    const value = /^[+-]?\d+$/.test(entry.text) ? Number(entry.text) : Number.NaN
    if (Number.isNaN(value)) return fail(errorAt(entry.place, `"${entry.text}" is no whole number`, advice))
    if (value >= min && value <= max) return succeed(value)
    return fail(errorAt(entry.place, `${entry.text} is too ${value < min ? 'small' : 'large'}`, advice))
  })
}

/** Of a class or a group. */
export const childrenReader = wholeNumberReader('a number of children', 1, 200)
