/** How fine a mark may be drawn, in mm. */
export interface InkRules {
  readonly strokeMm: number
  /** Least white between two strokes, and between a mark and a letter. */
  readonly gapMm: number
  /** The most white that a style has inside it, as between two dashes. */
  readonly insideMm: number
  /** Least white between two marks: more than any style has inside it, so that neighbours do not read as one mark. */
  readonly apartMm: number
}

/** What office printers and tired copiers still hold (common practice, no source). */
export const finestStrokeMm = 0.35
export const finestGapMm = 0.4

/** In strokes. */
const inside = 2.2
const apart = 2.9

/**
 * How many times the white between two marks stands between lines that share letters: two of them close together would
 * read as a style of their own (a line over a double line as a triple one).
 */
export const sharedLetters = 1.8

/**
 * Strokes and gaps for type whose em is `sizeMm`. They grow with the type, at about half the weight of a bundled
 * face's stem, and are heavier in large print.
 */
export function inkRulesFor(sizeMm: number, large: boolean): InkRules {
  const strokeMm = Math.max(large ? 0.5 : finestStrokeMm, sizeMm * (large ? 0.052 : 0.045))
  const gapMm = Math.max(large ? 0.5 : finestGapMm, sizeMm * 0.045)
  return { strokeMm, gapMm, insideMm: inside * strokeMm, apartMm: apart * strokeMm }
}
