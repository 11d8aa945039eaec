/** How fine a mark may be drawn, in mm. */
export interface InkRules {
  readonly strokeMm: number
  /** Least white between two strokes, and between a mark and a letter. */
  readonly gapMm: number
}

/** What office printers and tired copiers still hold (common practice, no source). */
export const finestStrokeMm = 0.35
export const finestGapMm = 0.4

/**
 * Strokes and gaps for type whose em is `sizeMm`. They grow with the type, at about half the weight of a bundled
 * face's stem, and are heavier in large print.
 */
export function inkRulesFor(sizeMm: number, large: boolean): InkRules {
  return {
    strokeMm: Math.max(large ? 0.5 : finestStrokeMm, sizeMm * (large ? 0.052 : 0.045)),
    gapMm: Math.max(large ? 0.5 : finestGapMm, sizeMm * 0.045),
  }
}
