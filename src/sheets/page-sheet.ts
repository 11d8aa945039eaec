/** A whole page without loose pieces (a key, a list, a cover) as a sheet. */
import type { Box, Size } from '../geometry.js'
import type { Band, PlacedArt } from '../pieces/piece.js'
import type { Sheet, SheetKind } from './sheet.js'

export interface PageSheetRequest {
  readonly art: readonly PlacedArt[]
  readonly bands?: readonly Band[] | undefined
  /** Where the origin of `art` and `bands` lies: as a rule the room within the margins. */
  readonly room: Box
  readonly sheetSize: Size
  readonly kind: Exclude<SheetKind, 'pieces'>
  readonly title: string
}

/** Number 1; `numberSheets` counts on where it joins others. */
export function pageSheet({ art, bands, room, sheetSize, kind, title }: PageSheetRequest): Sheet {
  return {
    widthMm: sheetSize.widthMm,
    heightMm: sheetSize.heightMm,
    number: 1,
    side: 'front',
    kind,
    title,
    pieces: [],
    cuts: [],
    furniture: art.map(placed => ({ ...placed, xMm: placed.xMm + room.xMm, yMm: placed.yMm + room.yMm })),
    ...(bands === undefined ? {} : { bands: bands.map(band => inRoom(band, room)) }),
  }
}

function inRoom({ yMm, heightMm, cells }: Band, room: Box): Band {
  const moved = { yMm: yMm + room.yMm, heightMm }
  return cells === undefined
    ? moved
    : { ...moved, cells: { ...cells, leftsMm: cells.leftsMm.map(left => left + room.xMm) } }
}
