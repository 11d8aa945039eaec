/** Where words of a crossword lie, and the room that they take. */
export interface Placed {
  readonly word: string
  readonly row: number
  readonly column: number
  readonly down: boolean
}

export interface Extent {
  readonly top: number
  readonly left: number
  readonly bottom: number
  readonly right: number
}

export function extentOf(placed: readonly Placed[]): Extent {
  return {
    top: Math.min(...placed.map(({ row }) => row)),
    left: Math.min(...placed.map(({ column }) => column)),
    bottom: Math.max(...placed.map(({ row, word, down }) => row + (down ? word.length : 1))),
    right: Math.max(...placed.map(({ column, word, down }) => column + (down ? 1 : word.length))),
  }
}

/** The extent of more words, which need not be gone through again for one of many places that are tried. */
export function extentWith(
  { top, left, bottom, right }: Extent,
  { word, row, column, down }: Placed,
): Extent {
  return {
    top: Math.min(top, row),
    left: Math.min(left, column),
    bottom: Math.max(bottom, row + (down ? word.length : 1)),
    right: Math.max(right, column + (down ? 1 : word.length)),
  }
}

/** The side of a square around it counts more than its area: a long thin grid has small cells on any page. */
export function sizeOf(extent: Extent): number {
  const [height, width] = sidesOf(extent)
  return 2 * Math.max(height, width) + Math.min(height, width)
}

export function sidesOf({ top, left, bottom, right }: Extent): readonly [height: number, width: number] {
  return [bottom - top, right - left]
}
