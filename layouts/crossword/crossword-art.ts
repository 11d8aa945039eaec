import { pointsToMm, type Size } from '../../src/geometry.js'
import { moveArt } from '../../src/pieces/art/move-art.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'
import { drawTextLine } from '../../src/pieces/text/text-line.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'
import type { CrosswordOnCard } from '../../src/sets/games/crossword.js'

export interface CrosswordArt {
  readonly crossword: CrosswordOnCard
  readonly room: Size
  readonly typeface: Typeface
  /** No number may be smaller. */
  readonly leastMm: number
  readonly mostMm: number
  readonly letters: 'none' | 'first' | 'all'
}

const LINE_MM = 0.4
const NUMBER_SHARE = 0.28
const LETTER_SHARE = 0.56
/** The smallest print on a piece: our own judgement, no source. */
const LEAST_NUMBER_MM = pointsToMm(7)

/** The side of a cell in which a child can write below a number of `textMm` in large print, and below a letter beside it. */
export function leastCell(
  { large, textMm }: { readonly large: boolean; readonly textMm: number },
  letters: 'none' | 'first',
): number {
  if (!large) return 9
  return (letters === 'first' ? 2 : 1.7) * textMm
}

/** The height that the cells of one grid take. */
export function cellsHeight(crossword: CrosswordOnCard, sideMm: number): number {
  return crossword.rows.length * sideMm + LINE_MM
}

export function cellSide({ rows }: CrosswordOnCard, { widthMm, heightMm }: Size, mostMm: number): number {
  return Math.min(mostMm, (widthMm - LINE_MM) / rows[0]!.length, (heightMm - LINE_MM) / rows.length)
}

/** What lies between cells and is none: grey, so that nobody writes there; a copier keeps it apart from white. */
const GAP_GREY = '#c4c4c4'

/** The cells that hold a letter, in the middle of the room, numbered where words begin. */
export function drawCrossword({ crossword, room, typeface, leastMm, mostMm, letters }: CrosswordArt): Art {
  const { rows, entries } = crossword
  const sideMm = cellSide(crossword, room, mostMm)
  const left = (room.widthMm - rows[0]!.length * sideMm) / 2
  const top = (room.heightMm - rows.length * sideMm) / 2
  const numbers = new Map(entries.map(({ row, column, number }) => [`${row} ${column}`, number]))
  const numberMm = Math.max(leastMm, LEAST_NUMBER_MM, sideMm * NUMBER_SHARE)
  const parts = rows.flatMap((line, row) =>
    [...line].flatMap((letter, column): Art[] => {
      if (letter === '.') return []
      const [x, y] = [left + column * sideMm, top + row * sideMm]
      const number = numbers.get(`${row} ${column}`)
      const shown = letters === 'all' || (letters === 'first' && number !== undefined)
      return [
        ...(number === undefined ? [] : [numberArt(String(number), x, y)]),
        ...(shown ? [letterArt(letter, x, y)] : []),
      ]
    }),
  )

  function numberArt(text: string, x: number, y: number): Art {
    const { art, baselineMm } = drawTextLine({ typeface, text, sizeMm: numberMm })
    const above = baselineMm - typeface.metrics.capHeight * numberMm
    return moveArt(art, x + LINE_MM + 0.5, y + LINE_MM + 0.5 - above, room)
  }

  function letterArt(text: string, x: number, y: number): Art {
    const sizeMm = Math.max(leastMm, sideMm * LETTER_SHARE)
    const { art, baselineMm } = drawTextLine({ typeface, text, sizeMm })
    const middle = baselineMm - (typeface.metrics.xHeight * sizeMm) / 2
    // A large number takes the upper left of its cell, and the letter stands clear of it.
    const [across, down] = leastMm > 0 ? [0.68, 0.66] : [0.5, 0.56]
    return moveArt(art, x + sideMm * across - art.widthMm / 2, y + sideMm * down - middle, room)
  }

  return {
    ...room,
    shapes: [
      ...gaps(rows, { left, top, sideMm }),
      cells(rows, { left, top, sideMm }),
      ...parts.flatMap(art => art.shapes),
    ],
    text: parts.flatMap(art => art.text),
  }
}

interface CellsPlace {
  readonly left: number
  readonly top: number
  readonly sideMm: number
}

/** Places without a letter that look like a cell, because cells stand on two sides of them that face each other. */
export function gapsBetween(rows: readonly string[]): readonly (readonly [row: number, column: number])[] {
  const isCell = (row: number, column: number) => /[^.]/.test(rows[row]?.[column] ?? '.')
  return rows.flatMap((line, row) =>
    [...line].flatMap((_, column) => {
      const isBetween =
        (isCell(row, column - 1) && isCell(row, column + 1)) ||
        (isCell(row - 1, column) && isCell(row + 1, column))
      return isBetween && !isCell(row, column) ? [[row, column] as const] : []
    }),
  )
}

function gaps(rows: readonly string[], { left, top, sideMm }: CellsPlace): readonly PathShape[] {
  const boxes = gapsBetween(rows).map(([row, column]) => {
    const [x, y] = [left + column * sideMm, top + row * sideMm]
    return rectangle(x, y, x + sideMm, y + sideMm)
  })
  return boxes.length === 0 ? [] : [{ kind: 'path', d: pathText(boxes.flat()), fill: GAP_GREY }]
}

/** A frame around each cell, shared with its neighbours. */
function cells(rows: readonly string[], { left, top, sideMm }: CellsPlace): PathShape {
  const half = LINE_MM / 2
  const bars = rows.flatMap((line, row) =>
    [...line].flatMap((letter, column) => {
      if (letter === '.') return []
      const [x, y] = [left + column * sideMm, top + row * sideMm]
      const [right, bottom] = [x + sideMm, y + sideMm]
      return [
        rectangle(x - half, y - half, right + half, y + half),
        rectangle(x - half, bottom - half, right + half, bottom + half),
        rectangle(x - half, y + half, x + half, bottom - half),
        rectangle(right - half, y + half, right + half, bottom - half),
      ]
    }),
  )
  return { kind: 'path', d: pathText(bars.flat()), fill: '#000000' }
}
