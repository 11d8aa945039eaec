/**
 * Lengths and boxes. Every length inside oaktag is a number of millimetres; other units exist only where
 * text is read (`parseLength`), where type is named in points, and where pixels are written (`files/`).
 */

/** 1 in = 25.4 mm exactly (international inch, 1959); 1 in = 72 pt (CSS Values and Units Level 4, §6.2). */
export const MM_PER_INCH = 25.4
export const MM_PER_POINT = MM_PER_INCH / 72

/** 1 in = 96 CSS pixels (CSS Values and Units Level 4, §6.2): what a screen's page counts in. */
export const PIXELS_PER_SCREEN_INCH = 96

/** Pixels of a screen's page to mm. */
export function screenPixelsToMm(pixels: number): number {
  return (pixels / PIXELS_PER_SCREEN_INCH) * MM_PER_INCH
}

/** Width and height in mm. */
export interface Size {
  readonly widthMm: number
  readonly heightMm: number
}

/** How many things stand side by side and one below the other: pieces on a sheet, cells of a board. */
export interface ColumnsAndRows {
  readonly columns: number
  readonly rows: number
}

/** A rectangle in mm, its origin the top left corner of whatever it stands on; y grows downwards. */
export interface Box extends Size {
  readonly xMm: number
  readonly yMm: number
}

export function pointsToMm(points: number): number {
  return points * MM_PER_POINT
}

export function mmToPoints(mm: number): number {
  return mm / MM_PER_POINT
}

export function inchesToMm(inches: number): number {
  return inches * MM_PER_INCH
}

/** Length in mm to a count of pixels (not rounded) at `dpi` pixels per inch. */
export function mmToPixels(mm: number, dpi: number): number {
  return (mm / MM_PER_INCH) * dpi
}

/** A length as it is said in words: at most one decimal, halves upwards (64.85 is 64.9, although floating point lies below). */
export function sayMm(mm: number): string {
  return String(Math.round(mm * 10 + 1e-6) / 10)
}

/** A size in words: `63 × 88 mm`. */
export function saySize({ widthMm, heightMm }: Size): string {
  return `${sayMm(widthMm)} × ${sayMm(heightMm)} mm`
}

/** The box moved by (`xMm`, `yMm`). */
export function moveBox(box: Box, xMm: number, yMm: number): Box {
  return { ...box, xMm: box.xMm + xMm, yMm: box.yMm + yMm }
}

/** The box shrunk by `mm` on every side (grown where `mm` is negative). */
export function insetBox(box: Box, mm: number): Box {
  return {
    xMm: box.xMm + mm,
    yMm: box.yMm + mm,
    widthMm: box.widthMm - 2 * mm,
    heightMm: box.heightMm - 2 * mm,
  }
}

/** Whether two boxes share an area of more than a rounding error. */
export function boxesOverlap(a: Box, b: Box): boolean {
  const epsilon = 1e-6
  return (
    a.xMm + a.widthMm > b.xMm + epsilon &&
    b.xMm + b.widthMm > a.xMm + epsilon &&
    a.yMm + a.heightMm > b.yMm + epsilon &&
    b.yMm + b.heightMm > a.yMm + epsilon
  )
}

/** Whether `inner` lies within `outer`, to a rounding error. */
export function boxContains(outer: Box, inner: Box): boolean {
  const epsilon = 1e-6
  return (
    inner.xMm >= outer.xMm - epsilon &&
    inner.yMm >= outer.yMm - epsilon &&
    inner.xMm + inner.widthMm <= outer.xMm + outer.widthMm + epsilon &&
    inner.yMm + inner.heightMm <= outer.yMm + outer.heightMm + epsilon
  )
}
