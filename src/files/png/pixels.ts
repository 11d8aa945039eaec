/** A page's pixels: rows from the top, grey (1 byte a pixel) or red, green, blue (3 bytes). */
export interface Pixels {
  readonly widthPx: number
  readonly heightPx: number
  readonly channels: 1 | 3
  /** From one row to the next; `rowBytes` of the width and channels, so that a row can be read in whole words. */
  readonly bytes: Uint8Array
}

/** Bytes from the beginning of a row to that of the next: the row's own, rounded up to a multiple of four. */
export function rowBytes(widthPx: number, channels: 1 | 3): number {
  return Math.ceil((widthPx * channels) / 4) * 4
}
