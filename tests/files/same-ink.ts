import { expect } from 'vitest'

/**
 * Two pictures of one page, as darkness 0 to 255 a pixel, that differ by no more than anti-aliasing. The bound: every
 * pixel that is at least half black in one has some ink no further than a pixel away in the other, whichever is
 * asked first, so no edge is off by more than a pixel and nothing is drawn in one alone; and the ink of the whole
 * page is the same to `share`, by default 2 %.
 */
export function expectSameInk(a: Uint8Array, b: Uint8Array, widthPx: number, share = 0.02): void {
  expect(astray(a, b, widthPx), 'pixels of the first without ink near them in the second').toBe(0)
  expect(astray(b, a, widthPx), 'pixels of the second without ink near them in the first').toBe(0)
  expect(Math.abs(sum(a) / sum(b) - 1), 'difference of ink in all').toBeLessThan(share)
}

function astray(from: Uint8Array, to: Uint8Array, widthPx: number): number {
  let count = 0
  for (let at = 0; at < from.length; at++) if (from[at]! >= 128 && !hasInkBeside(to, at, widthPx)) count += 1
  return count
}

/** On the pixel itself or one of the eight round it. */
function hasInkBeside(to: Uint8Array, at: number, widthPx: number): boolean {
  for (let row = -widthPx; row <= widthPx; row += widthPx)
    for (let column = -1; column <= 1; column++) if ((to[at + row + column] ?? 0) > 0) return true
  return false
}

function sum(values: Uint8Array): number {
  let total = 0
  for (let at = 0; at < values.length; at++) total += values[at]!
  return total
}
