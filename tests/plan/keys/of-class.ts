import type { KeyPlace } from '../../../src/plan/keys/placed-keys.js'

/** Whether a key stands in a class file, itself or in a group of keys there. */
export function isOfClass({ what, under }: KeyPlace): boolean {
  return under === undefined ? what === 'a class file' : isOfClass(under.place)
}
