import type { Size } from '../../src/geometry.js'
import type { Word } from '../../src/words/word.js'
import { boardRoom } from '../board-room.js'
import type { LayoutRequest } from '../layout.js'
import { MOST_LETTER_SHARE } from './letter-grid-art.js'

/** How a board is divided between its grid and its list: below it on upright paper, to its right on paper that lies. */
export interface SearchPlan {
  readonly list: {
    readonly at: 'foot' | 'right'
    readonly columns: number
    readonly rows: number
    readonly columnMm: number
    readonly rowMm: number
    /** The em of its words at most. */
    readonly wordMm: number
  }
  /** The room for the grid. */
  readonly grid: Size
}

/** White between the grid and its list. */
export const GAP_MM = 4
/** A child's pencil needs so much to ring a word: our own judgement, no source. */
const LEAST_PLACE_MM = 9
/** Farther apart, letters no longer stand in rows for the eye: our own judgement, no source. */
const MOST_PLACE_MM = 24
const MOST_COLUMNS = 5
/** Height of a row of the list; with marks, room for lines below the word and an outline round its letters. */
const ROW_EM = 1.55
const MARKED_ROW_EM = 2.9
/** Of a word's width: outlines open it at their edges. */
const MARKED_WIDTH = 1.4

/** The side of a letter's place at least. */
export function leastPlace({ mainMinimumMm }: LayoutRequest['type']): number {
  return Math.max(LEAST_PLACE_MM, mainMinimumMm / MOST_LETTER_SHARE)
}

/** The side of a letter's place at most. */
export function mostPlace(type: LayoutRequest['type']): number {
  return Math.max(MOST_PLACE_MM, leastPlace(type))
}

/** A board of `room` with a list of at most so many of the words. */
export function searchPlan(
  { type, measure, marked }: Pick<LayoutRequest, 'type' | 'measure' | 'marked'>,
  { words, most, room }: { readonly words: readonly Word[]; readonly most: number; readonly room: Size },
): SearchPlan {
  const sizeMm = Math.max(type.mainMinimumMm, type.textMm * (type.large ? 1 : 1.4))
  const rowMm = sizeMm * (marked ? MARKED_ROW_EM : ROW_EM)
  const longestMm = Math.max(...words.map(word => measure(word.text, sizeMm)))
  const columnMm = longestMm * (marked ? MARKED_WIDTH : 1.12) + 6
  const wordMm = sizeMm * 1.2
  if (room.widthMm > room.heightMm) {
    const deep = Math.max(1, Math.floor(room.heightMm / rowMm))
    const columns = Math.ceil(most / deep)
    const list = { at: 'right', columns, rows: Math.ceil(most / columns), columnMm, rowMm, wordMm } as const
    return { list, grid: { ...room, widthMm: room.widthMm - GAP_MM - columns * columnMm } }
  }
  const beside = Math.max(1, Math.min(MOST_COLUMNS, most, Math.floor(room.widthMm / columnMm)))
  const rows = Math.ceil(most / beside)
  const columns = Math.ceil(most / rows)
  const list = { at: 'foot', columns, rows, columnMm: room.widthMm / columns, rowMm, wordMm } as const
  return { list, grid: { ...room, heightMm: room.heightMm - GAP_MM - rows * rowMm } }
}

/** How many letters of the least size have room in a row and in a column of the paper, beside a list of the words. */
export function mostLetters(request: LayoutRequest, words: readonly Word[]): number {
  const { grid } = searchPlan(request, { words, most: words.length, room: boardRoom(request) })
  return Math.min(20, Math.floor(Math.min(grid.widthMm, grid.heightMm) / leastPlace(request.type)))
}
