/** Words side by side and one below the other, as large as their page holds them. */
import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import type { StyledMark } from '../../src/pieces/marks/styled-mark.js'
import type { Word } from '../../src/words/word.js'
import { leastRoom, listSlot } from '../word-lists/list-measure.js'
import type { Board, BoardContent } from './board-key.js'

export interface WordsShown {
  readonly words: readonly Word[]
  /** With which the words are measured, whether they show them or not: bare and marked they have one place and size. */
  readonly marks: readonly StyledMark[]
  readonly marked: boolean
  /** Words of one group have one size. */
  readonly sizeGroup: string
}

/** Between the words of two columns, of the least em. */
const COLUMN_GAP = 1
/** Of a column's width, where another stands beside it: large words need more white between them than small ones. */
const WHITE_BESIDE = 0.14
const MOST_COLUMNS = 4
/** Words of a page are so many times as large as they must be, or the list goes on on the next: our own judgement. */
const COMFORTABLE = 1.2

interface WordGrid {
  readonly columns: number
  readonly rows: number
  /** How many times as large as the smallest that may be shown the words can be. */
  readonly times: number
}

function gridFor(count: number, least: Size, room: Size): WordGrid {
  const grids = Array.from({ length: MOST_COLUMNS }, (_, index): WordGrid => {
    const columns = index + 1
    const rows = Math.max(1, Math.ceil(count / columns))
    const times = Math.min(room.widthMm / columns / least.widthMm, room.heightMm / rows / least.heightMm)
    return { columns, rows, times }
  })
  return grids.reduce((best, grid) => (grid.times > best.times ? grid : best))
}

function leastOf(request: Board, { words, marks }: Pick<WordsShown, 'words' | 'marks'>): Size {
  const least = leastRoom({ ...request, words, marks })
  return { ...least, widthMm: least.widthMm + request.type.wordMinimumMm * COLUMN_GAP }
}

/** The words shared out over as few pages as show them well, as even as can be. */
export function sharedOverPages(
  request: Board,
  shown: Pick<WordsShown, 'words' | 'marks'>,
  room: Size,
): readonly (readonly Word[])[] {
  const { words } = shown
  const least = leastOf(request, shown)
  const fits = (pages: number) => gridFor(Math.ceil(words.length / pages), least, room).times >= COMFORTABLE
  let pages = 1
  while (pages < words.length && !fits(pages)) pages++
  const from = (page: number) => Math.round((page * words.length) / pages)
  return Array.from({ length: pages }, (_, page) => words.slice(from(page), from(page + 1)))
}

/** Down the first column, then the next. */
export function wordsInColumns(request: Board, shown: WordsShown, room: Size): BoardContent {
  const { words, marks, marked, sizeGroup } = shown
  const { columns, rows } = gridFor(words.length, leastOf(request, shown), room)
  const used = Math.ceil(words.length / rows)
  const cell = { widthMm: room.widthMm / Math.min(columns, used), heightMm: room.heightMm / rows }
  const leastGapMm = request.type.wordMinimumMm * COLUMN_GAP
  const gapMm = used > 1 ? Math.max(leastGapMm, cell.widthMm * WHITE_BESIDE) : leastGapMm
  const onlyMarks = marks.map(({ index }) => index)
  const name = (index: number) => `${sizeGroup} ${index}`
  return {
    slots: Object.fromEntries(
      words.map((word, index) => [name(index), { ...listSlot(word, marked), onlyMarks, sizeGroup }]),
    ),
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%' }}>
        {Array.from({ length: used }, (_, column) => (
          <div style={{ display: 'flex', flexDirection: 'column', width: mm(cell.widthMm) }}>
            {words.slice(column * rows, (column + 1) * rows).map((_, row) => (
              <Slot
                name={name(column * rows + row)}
                style={{
                  width: mm(cell.widthMm - gapMm),
                  height: mm(cell.heightMm),
                }}
              />
            ))}
          </div>
        ))}
      </div>
    ),
  }
}
