/** Memory that two threads share is used in parts of one size: most files of a page fill one. */
export const PART_BYTES = 2 ** 17

/** The bytes of a part, by its number: what one thread puts there the other finds. */
export function bytesOfPart(memory: SharedArrayBuffer, part: number): Buffer {
  return Buffer.from(memory, part * PART_BYTES, PART_BYTES)
}
