import type { Size } from '../../src/geometry.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import type { Word } from '../../src/words/word.js'
import { jointSlot } from '../joined-sheets/joint-art.js'
import type { LayoutRequest } from '../layout.js'
import { type WordPlace, wordSlot } from '../one-card-a-word.js'
import { ABOVE_MARK_MM, cellsOnSheet, type GridHeads } from './cells-on-sheet.js'

const LINE_MM = 0.6

/** A board of words in cells, with heads where it has them; a cell without a word is free. */
export function wordGridFace(
  request: LayoutRequest,
  {
    card,
    set,
    size,
    heads,
    leastPaddingMm = 2,
    cellOf = (word, place) => wordSlot(request, word, place),
    textOf = ({ text }) => text,
  }: {
    card: Card
    set: CardSet
    size: Size
    heads?: GridHeads
    leastPaddingMm?: number
    /** What fills the cell of a word; the word where left out. */
    cellOf?: (word: Word, place: WordPlace) => SlotContent
    /** What a cell says. */
    textOf?: (word: Word) => string
  },
): CardFace {
  const { cells, cell, room, whole, heads: headsHere } = cellsOnSheet(request, { card, size, heads })
  const columns = cells[0]!.length
  const [paddingMm, paddingAboveMm] = [cell.widthMm, Math.min(cell.widthMm, cell.heightMm)].map(mm =>
    Math.max(leastPaddingMm, mm / 14),
  )
  const place = { align: 'centre', paddingMm: paddingMm!, paddingAboveMm: paddingAboveMm! } as const
  const words = cells.flatMap((row, down) =>
    row.flatMap((word, across): [string, SlotContent][] =>
      word === null ? [] : [[`cell ${down} ${across}`, cellOf(word, place)]],
    ),
  )
  const isJoined = card.part !== undefined
  const grid = (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        position: 'relative',
        ...(isJoined
          ? { width: mm(cell.widthMm * columns), height: mm(cell.heightMm * cells.length) }
          : { flexGrow: 1, flexBasis: 0 }),
      }}
    >
      <OverlaySlot name="lines" />
      {cells.map((row, down) => (
        <div style={{ display: 'flex', flexGrow: 1, flexBasis: 0 }}>
          {row.map((word, across) =>
            word === null ? (
              <FreeSpace sizeMm={Math.max(request.type.textMm, cell.widthMm / 6)} />
            ) : (
              <Slot name={`cell ${down} ${across}`} style={{ flexGrow: 1, flexBasis: 0 }} />
            ),
          )}
        </div>
      ))}
    </div>
  )
  const along =
    headsHere?.at === 'side'
      ? { height: mm(cell.heightMm * cells.length) }
      : { width: mm(cell.widthMm * columns) }
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: undefined,
    text: cells.flat().flatMap(word => (word === null ? [] : textOf(word))),
    cells: cells.map(row => row.map(word => word?.text ?? null)),
    content: (
      <div
        style={{
          display: 'flex',
          position: 'relative',
          flexDirection: headsHere?.at === 'side' ? 'row' : 'column',
          ...(isJoined
            ? { width: mm(whole.widthMm), height: mm(whole.heightMm) }
            : { flexGrow: 1, marginBottom: mm(ABOVE_MARK_MM) }),
        }}
      >
        {isJoined && <OverlaySlot name="joint" />}
        {headsHere === undefined ? null : <Heads heads={headsHere} along={isJoined ? along : {}} />}
        {grid}
      </div>
    ),
    slots: {
      ...jointSlot(card, { room, whole, request }),
      lines: {
        kind: 'art',
        draw: room => drawCellLines({ room, columns, rows: cells.length, lineMm: LINE_MM }),
      },
      ...Object.fromEntries(
        (headsHere?.heads ?? []).map((draw, index) => [`head ${index}`, { kind: 'art', draw }]),
      ),
      ...Object.fromEntries(words),
    },
  })
}

function Heads({
  heads: { at, heads, sizeMm },
  along,
}: {
  readonly heads: GridHeads
  readonly along: { readonly width?: number; readonly height?: number }
}) {
  const extent = at === 'top' ? { height: mm(sizeMm) } : { width: mm(sizeMm) }
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: at === 'top' ? 'row' : 'column',
        flexShrink: 0,
        ...extent,
        ...along,
      }}
    >
      {heads.map((_, index) => (
        <Slot name={`head ${index}`} style={{ flexGrow: 1, flexBasis: 0 }} />
      ))}
    </div>
  )
}

function FreeSpace({ sizeMm }: { readonly sizeMm: number }) {
  return (
    <div
      style={{ display: 'flex', flexGrow: 1, flexBasis: 0, alignItems: 'center', justifyContent: 'center' }}
    >
      <Lines lines={['free']} style={{ sizeMm, weight: 700 }} />
    </div>
  )
}
