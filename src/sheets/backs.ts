/** Backs: placed so that each meets its front when the sheet is turned over. */
import type { Box, Size } from '../geometry.js'
import type { Art, PieceOutline, PlacedArt } from '../pieces/piece.js'
import { bleedAreas } from './bleed.js'
import { behind, type Flip, turnedSides, turnOfBack } from './flip.js'
import { placePageLabel } from './furniture/page-label.js'
import type { SheetLabel } from './impose.js'
import { type PlacedPiece, pieceBox, type Sheet } from './sheet.js'

/** How far backs are moved on their own page to meet their fronts, read from the calibration sheet; negative: left, up. */
export interface BackShift {
  readonly rightMm: number
  readonly downMm: number
}

/** A pattern carried on beyond the cards, so that a back printed a little askew shows no white edge. */
export interface Bleed {
  readonly widthMm: number
  /** Draws the pattern over `area` of the page, in step with the piece whose top left corner is `corner`. */
  readonly paint: (area: Box, corner: { readonly xMm: number; readonly yMm: number }) => Art
}

export interface ImposeBacksRequest<F extends PieceOutline, P extends PieceOutline> {
  readonly fronts: readonly Sheet<F>[]
  /** The back of a front piece, of the same size; it is given its front's id. `undefined` leaves the back blank. */
  readonly backOf: (front: F) => P | undefined
  readonly flip: Flip
  readonly shift?: BackShift | undefined
  readonly title: string
  readonly label?: SheetLabel | undefined
  readonly bleed?: Bleed | undefined
}

/** One back a front, in the same order and with the same number; `interleave` numbers them for printing. */
export function imposeBacks<F extends PieceOutline, P extends PieceOutline>(
  request: ImposeBacksRequest<F, P>,
): readonly Sheet<P>[] {
  const { bleed } = request
  const once = bleed && { ...bleed, paint: paintOnce(bleed.paint) }
  return request.fronts.map((front, index) => imposeBack({ ...request, bleed: once }, front, index))
}

function imposeBack<F extends PieceOutline, P extends PieceOutline>(
  request: ImposeBacksRequest<F, P>,
  front: Sheet<F>,
  index: number,
): Sheet<P> {
  const { backOf, flip, title, label, bleed, fronts } = request
  const shift = request.shift ?? { rightMm: 0, downMm: 0 }
  const size = { widthMm: front.widthMm, heightMm: front.heightMm }
  const sides = turnedSides(flip, size)
  const pieces = front.pieces.flatMap((placed): readonly PlacedPiece<P>[] => {
    const back = backOf(placed.piece)
    if (back === undefined) return []
    const box = behind(pieceBox(placed), size, sides)
    const piece = { ...back, id: placed.piece.id, number: placed.piece.number, copy: placed.piece.copy }
    return [{ piece, xMm: box.xMm + shift.rightMm, yMm: box.yMm + shift.downMm, turn: turnOfBack(sides) }]
  })
  const boxes = pieces.map(pieceBox)
  const which = `back of sheet ${index + 1} of ${fronts.length}`
  const painted = bleed ? paintBleed(bleed, boxes, size) : []
  const labelArt =
    label &&
    placePageLabel({
      text: `${label.text} · ${which}`,
      lettering: label.lettering,
      sheetSize: size,
      pieces: [...boxes, ...painted.map(artBox)],
      cuts: [],
    })
  return {
    ...size,
    number: front.number,
    side: 'back',
    kind: front.kind,
    title: `${title}, ${which}`,
    pieces,
    cuts: [],
    furniture: labelArt ? [...painted, labelArt] : painted,
  }
}

function paintBleed(bleed: Bleed, boxes: readonly Box[], size: Size): readonly PlacedArt[] {
  return bleedAreas(boxes, size, bleed.widthMm).map(({ area, piece }) => ({
    art: bleed.paint(area, piece),
    xMm: area.xMm,
    yMm: area.yMm,
  }))
}

/** Equal strips beside equal cards share one art, so that a format draws it once for all sheets. */
function paintOnce(paint: Bleed['paint']): Bleed['paint'] {
  const painted = new Map<string, Art>()
  return (area, corner) => {
    const key = [area.xMm - corner.xMm, area.yMm - corner.yMm, area.widthMm, area.heightMm]
      .map(mm => mm.toFixed(6))
      .join(' ')
    const art = painted.get(key) ?? paint(area, corner)
    painted.set(key, art)
    return art
  }
}

function artBox({ art, xMm, yMm }: PlacedArt): Box {
  return { xMm, yMm, widthMm: art.widthMm, heightMm: art.heightMm }
}
