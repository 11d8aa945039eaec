/** How large letters on the board must be, from who is to read them and where she sits. */
import { screenPixelsToMm } from '../../geometry.js'
import { xHeightForAcuityMm } from '../../plan/values/acuity.js'

/**
 * A child who reads 20/20 (logMAR 0) from the last row, 8 m away, with type twice as large as the smallest she can read:
 * an x-height of 23.27 mm on the wall. The distance is our own judgement, no source; what the reserve rests on is told
 * in acuity.ts.
 */
export const boardReader = { logMar: 0, distanceMm: 8000, reserve: 2 } as const

/** How high the picture on the wall is taken to be, and how many pixels that is in both shapes of screen. */
export const boardPicture = { heightMm: 1200, pixels: 1080 } as const

/** In whole pixels of the picture, 21, so that no rounding makes it less; in mm of a screen's page. */
export function boardXHeightMm(): number {
  const onTheWallMm = xHeightForAcuityMm(boardReader)
  return screenPixelsToMm(Math.ceil((onTheWallMm / boardPicture.heightMm) * boardPicture.pixels))
}
