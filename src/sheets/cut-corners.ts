/** The corner that is cut off each piece of a set in large print, so that a finger finds which way is up. */
import type { PieceOutline } from '../pieces/piece.js'
import { CUT_WIDTH_MM } from './cuts.js'
import { type CutLine, type PlacedPiece, pieceBox } from './sheet.js'

/**
 * The legs of the corner that is cut off. A finger tells points apart that are 2 to 3 mm from each other (from memory:
 * Weber's two-point threshold of the fingertip), so a slope of three times that is felt at once; a border 2.5 mm
 * inside the edge stays whole.
 */
export const CUT_CORNER_MM = 5.5

/** A slanting line over the top right corner of each piece: which corner, common practice of tactile cards, no source. */
export function cornerCuts(pieces: readonly PlacedPiece<PieceOutline>[], dark: boolean): readonly CutLine[] {
  return pieces.map(pieceBox).map(({ xMm, yMm, widthMm }) => {
    const right = xMm + widthMm
    return {
      x1Mm: right - CUT_CORNER_MM,
      y1Mm: yMm,
      x2Mm: right,
      y2Mm: yMm + CUT_CORNER_MM,
      widthMm: CUT_WIDTH_MM,
      ...(dark ? { white: true as const } : {}),
    }
  })
}
