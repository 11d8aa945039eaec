import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import { type Row, rowsHeight } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import { tilesOfWord } from '../../src/sets/games/letter-tiles.js'
import type { LayoutRequest } from '../layout.js'

/** A tile slides in without catching on the line: our own judgement, no source. */
const AROUND_TILE_MM = 2
/** A row of boxes as long as the page is wide may be that much narrower than its tiles, whose frames leave white at the edge. */
const LEAST_OF_TILE = 0.985
const LINE_MM = 0.7
/** White between two rows for one word, and below the last. */
const BETWEEN_MM = 4
const BELOW_MM = 8

/** Of the page's height, for boxes; the words to build stand below them. */
const BOXES_SHARE = 0.6

/**
 * Boxes a little larger than a tile, as many as the longest word needs, in one row where there is room for it, else in
 * rows one below the other; the same again for further words, as many as are built side by side. Below them the words to
 * build.
 */
export function buildingMat(
  request: LayoutRequest,
  { tile, room, most }: { readonly tile: Size; readonly room: Size; readonly most: number },
): readonly Row[] {
  const { words, type, measure } = request
  const longest = Math.max(...words.map(word => tilesOfWord(word).length))
  const lineMm = room.widthMm - LINE_MM
  const fitting = Math.max(1, Math.floor(lineMm / (tile.widthMm * LEAST_OF_TILE)))
  const count = Math.ceil(longest / fitting)
  const columns = Math.ceil(longest / count)
  const box = {
    widthMm: Math.min(tile.widthMm + AROUND_TILE_MM, lineMm / columns),
    heightMm: tile.heightMm + AROUND_TILE_MM,
  }
  const rowsOf = (word: number) =>
    Array.from({ length: count }, (_, index) => {
      const belowMm = index + 1 === count ? BELOW_MM : BETWEEN_MM
      return boxesRow(`boxes ${word} ${index}`, columns, { box, belowMm })
    })
  const sets = Math.floor((room.heightMm * BOXES_SHARE) / rowsHeight(rowsOf(0)))
  const style = { sizeMm: type.listTextMm * (type.large ? 1 : 1.3) }
  const list = words.map(word => word.text).join(', ')
  return [
    ...Array.from({ length: Math.max(1, Math.min(most, sets)) }, (_, word) => rowsOf(word)).flat(),
    textRow(`Words to build: ${list}`, { style, widthMm: room.widthMm, measure }),
  ]
}

function boxesRow(
  name: string,
  columns: number,
  { box, belowMm }: { readonly box: Size; readonly belowMm: number },
): Row {
  const size = { widthMm: columns * box.widthMm + LINE_MM, heightMm: box.heightMm + LINE_MM }
  return {
    heightMm: size.heightMm + belowMm,
    slots: {
      [name]: { kind: 'art', draw: room => drawCellLines({ room, columns, rows: 1, lineMm: LINE_MM }) },
    },
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', justifyContent: 'center' }}>
        <Slot name={name} style={{ width: mm(size.widthMm), height: mm(size.heightMm) }} />
      </div>
    ),
  }
}
