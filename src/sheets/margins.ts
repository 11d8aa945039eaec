/** How much of the paper's edge is left free. */
import type { Size } from '../geometry.js'

export interface Margins {
  readonly sideMm: number
  /** Top and bottom are equal, so that the grid stays in the middle whichever edge is turned. */
  readonly endMm: number
}

/**
 * Edge that office printers do not reach: 423 hundredths of a millimetre is a usual value of IPP's media margins
 * (their definition: PWG 5100.13, section 7.6).
 */
export const UNREACHABLE_EDGE_MM = 4.23

/** A quarter of an inch: common practice, no source. */
export const DEFAULT_MARGIN_MM = 6.35

/** At the top and bottom of an ordinary page: room for a line of 7 pt outside the cards and inside the reachable area. */
const LABEL_MARGIN_MM = 10

/** Smaller papers keep all their height for the cards. */
const SMALL_PAPER_MM = 200

/** A sheet divided by count gives a little height to its label; one divided by card size gives all it has to cards. */
export function defaultMargins(sheetSize: Size, division: 'count' | 'card' | 'layout'): Margins {
  const small = Math.min(sheetSize.widthMm, sheetSize.heightMm) < SMALL_PAPER_MM
  const endMm = division === 'card' || small ? DEFAULT_MARGIN_MM : LABEL_MARGIN_MM
  return { sideMm: DEFAULT_MARGIN_MM, endMm }
}

/** What a teacher sets holds on all four sides. */
export function evenMargins(marginMm: number): Margins {
  return { sideMm: marginMm, endMm: marginMm }
}
