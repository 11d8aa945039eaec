import { setFlagsFromString } from 'node:v8'

/** More than a week's plan has. */
const MANY_SHEETS = 60

/**
 * V8 lets garbage lie until it is as much again as what is in use, and with it what resvg drew. Where sheets are made by the
 * hundred it is to collect when there is a quarter more: the most memory that is held falls by a fifth, for a tenth more of
 * the processor's time. A flag of the whole process, and no other value depends on it; a week's plan never comes here.
 */
export function collectSoonerFor(sheets: number): void {
  if (sheets > MANY_SHEETS) setFlagsFromString('--heap-growing-percent=25')
}
