/**
 * How a sheet is turned over between its front and its back.
 *
 * `long edge` and `short edge` speak of the paper: turned over about its long edge, a portrait sheet keeps its rows
 * and swaps left and right; a landscape sheet, whose long edges lie at top and bottom, swaps top and bottom.
 */
import type { Box, Size } from '../geometry.js'

export type Flip = 'long edge' | 'short edge'

/** What changes sides: left and right, or top and bottom. */
export type TurnedSides = 'left and right' | 'top and bottom'

export function turnedSides(flip: Flip, sheetSize: Size): TurnedSides {
  const longEdgeUpright = sheetSize.heightMm >= sheetSize.widthMm
  return (flip === 'long edge') === longEdgeUpright ? 'left and right' : 'top and bottom'
}

/** The box on the back that lies behind `box` on the front, as seen with the back's page upright. */
export function behind(box: Box, sheetSize: Size, sides: TurnedSides): Box {
  return sides === 'left and right'
    ? { ...box, xMm: sheetSize.widthMm - box.xMm - box.widthMm }
    : { ...box, yMm: sheetSize.heightMm - box.yMm - box.heightMm }
}

/**
 * The turn of a piece's back, so that the loose card, turned over like the page of a book, reads upright: a page
 * that swaps top and bottom stands on its head for that reader.
 */
export function turnOfBack(sides: TurnedSides): 0 | 180 {
  return sides === 'left and right' ? 0 : 180
}
