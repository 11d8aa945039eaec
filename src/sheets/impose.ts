/** Imposition: puts the pieces of a set on sheets in the order asked for, with cut lines and a label a sheet. */
import type { PieceOutline } from '../pieces/piece.js'
import type { CardOrder, CutStyle } from '../plan/plan.js'
import { cornerCuts } from './cut-corners.js'
import { drawCuts, drawCutsOnDark } from './cuts.js'
import type { Lettering } from './furniture/lettering.js'
import { placePageLabel } from './furniture/page-label.js'
import { type Grid, placeBox, placesOf } from './grid.js'
import { orders } from './order.js'
import { type PlacedPiece, pieceBox, type Sheet } from './sheet.js'

/** Words for the margin of each sheet: `Along the marsh · Otters · word cards`; `sheet 2 of 5` is added. */
export interface SheetLabel {
  readonly text: string
  readonly lettering: Lettering
}

export interface ImposeFrontsRequest<P extends PieceOutline> {
  /** In set order, all of one copy before the next, each as large as the grid's places. */
  readonly pieces: readonly P[]
  readonly grid: Grid
  readonly order: CardOrder
  readonly cut: CutStyle
  /** Whether a corner of each piece is to be cut off, as in large print; no line tells where there are no cut lines. */
  readonly cutCorners?: boolean | undefined
  /** Whether the pieces are dark all over, so that cut lines on them have to be white. */
  readonly dark?: boolean | undefined
  /** What the sheets are, in words; `sheet 2 of 5` is added. */
  readonly title: string
  readonly label?: SheetLabel | undefined
}

/** Numbered from 1. */
export function imposeFronts<P extends PieceOutline>(request: ImposeFrontsRequest<P>): readonly Sheet<P>[] {
  const { pieces, grid, order, cut, cutCorners = false, dark = false, title, label } = request
  const copies = pieces.map(piece => piece.copy)
  const sheets = orders[order]({ copies, places: placesOf(grid) })
  return sheets.map((places, index) => {
    const placed = places.flatMap((card, place) =>
      card === null ? [] : [placePiece(pieces[card]!, grid, place)],
    )
    const boxes = placed.map(pieceBox)
    const cuts = drawCuts(boxes, grid.sheetSize, cut)
    const which = `sheet ${index + 1} of ${sheets.length}`
    const labelArt =
      label &&
      placePageLabel({
        text: `${label.text} · ${which}`,
        lettering: label.lettering,
        sheetSize: grid.sheetSize,
        pieces: boxes,
        cuts,
      })
    return {
      ...grid.sheetSize,
      number: index + 1,
      side: 'front',
      kind: 'pieces',
      title: `${title}, ${which}`,
      pieces: placed,
      cuts: [
        ...cuts,
        ...(dark && cut === 'lines' ? drawCutsOnDark(boxes) : []),
        ...(cutCorners && cut !== 'none' ? cornerCuts(placed, dark) : []),
      ],
      furniture: labelArt ? [labelArt] : [],
    }
  })
}

function placePiece<P extends PieceOutline>(piece: P, grid: Grid, place: number): PlacedPiece<P> {
  const box = placeBox(grid, place)
  if (Math.abs(piece.widthMm - box.widthMm) > 1e-3 || Math.abs(piece.heightMm - box.heightMm) > 1e-3) {
    throw new RangeError(
      `piece ${piece.id} is ${piece.widthMm} × ${piece.heightMm} mm, its place ${box.widthMm} × ${box.heightMm} mm`,
    )
  }
  return { piece, xMm: box.xMm, yMm: box.yMm, turn: 0 }
}
