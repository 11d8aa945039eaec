import type { ColumnsAndRows, Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { drawCellLines } from '../../src/pieces/parts/cell-lines.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import { tilesOfWord } from '../../src/sets/games/letter-tiles.js'
import type { LayoutRequest } from '../layout.js'

/** A tile slides in without catching on the line: our own judgement, no source. */
const AROUND_TILE_MM = 2
const LINE_MM = 0.7
/** White below a row of boxes. */
const BELOW_MM = 8

/** Of the page's height, for boxes; the words to build stand below them. */
const BOXES_SHARE = 0.6

/**
 * Boxes a little larger than a tile, as many as the longest word needs, in one row where there is room for it; the same
 * again for further words, as many as are built side by side. Below them the words to build.
 */
export function buildingMat(
  request: LayoutRequest,
  { tile, room, most }: { readonly tile: Size; readonly room: Size; readonly most: number },
): readonly Row[] {
  const { words, type, measure } = request
  const box = { widthMm: tile.widthMm + AROUND_TILE_MM, heightMm: tile.heightMm + AROUND_TILE_MM }
  const longest = Math.max(...words.map(word => tilesOfWord(word).length))
  const fitting = Math.max(1, Math.floor((room.widthMm - LINE_MM) / box.widthMm))
  const rows = Math.ceil(longest / fitting)
  const columns = Math.ceil(longest / rows)
  const each = boxesRow({ columns, rows }, box)
  const count = Math.max(1, Math.min(most, Math.floor((room.heightMm * BOXES_SHARE) / each.heightMm)))
  const style = { sizeMm: type.listTextMm * (type.large ? 1 : 1.3) }
  const list = words.map(word => word.text).join(', ')
  return [
    ...Array.from({ length: count }, () => each),
    textRow(`Words to build: ${list}`, { style, widthMm: room.widthMm, measure }),
  ]
}

function boxesRow({ columns, rows }: ColumnsAndRows, box: Size): Row {
  const size = { widthMm: columns * box.widthMm + LINE_MM, heightMm: rows * box.heightMm + LINE_MM }
  return {
    heightMm: size.heightMm + BELOW_MM,
    slots: { boxes: { kind: 'art', draw: room => drawCellLines({ room, columns, rows, lineMm: LINE_MM }) } },
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', justifyContent: 'center' }}>
        <Slot name="boxes" style={{ width: mm(size.widthMm), height: mm(size.heightMm) }} />
      </div>
    ),
  }
}
