/** Red, green, blue from 0 to 1. */
export type Rgb = readonly [red: number, green: number, blue: number]

/** `#rrggbb` to sRGB values from 0 to 1. */
export function parseColor(color: string): Rgb {
  const [red, green, blue] = [1, 3, 5].map(start => Number.parseInt(color.slice(start, start + 2), 16) / 255)
  return [red!, green!, blue!]
}

/** Undoes the sRGB transfer curve (IEC 61966-2-1, with the threshold that WCAG 2.2 writes). */
export function linearRgb(color: string): Rgb {
  const [red, green, blue] = parseColor(color).map(value =>
    value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4,
  )
  return [red!, green!, blue!]
}

/** Relative luminance (WCAG 2.2, glossary), from 0 for black to 1 for white. */
export function relativeLuminance(color: string): number {
  const [red, green, blue] = linearRgb(color)
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

/** Contrast ratio (WCAG 2.2, glossary), from 1 to 21; compare it unrounded. */
export function contrastRatio(color: string, other: string): number {
  const [darker, lighter] = [relativeLuminance(color), relativeLuminance(other)].sort((a, b) => a - b)
  return (lighter! + 0.05) / (darker! + 0.05)
}

/** WCAG 2.2, 1.4.6 (type, level AAA) and 1.4.3 (marks are held to the rule for text, stricter than 1.4.11's 3). */
export const leastTypeContrast = 7
export const leastMarkContrast = 4.5

/** A ratio to show: cut off after the second decimal, so that 4.497 never reads as 4.5. */
export function shownRatio(ratio: number): string {
  return (Math.floor(ratio * 100 + 1e-9) / 100).toFixed(2)
}
