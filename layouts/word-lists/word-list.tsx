import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../src/geometry.js'
import { type ArtSlot, type Face, mm } from '../../src/pieces/faces/face.js'
import {
  flowPages,
  type Heading,
  headingHeight,
  type Row,
  rowsHeight,
} from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { type KeySetting, keySettings } from '../../src/pieces/parts/key-rows.js'
import { drawWritingLine, Rule } from '../../src/pieces/parts/rules.js'
import type { BandCells } from '../../src/pieces/piece.js'
import { fewestPages } from '../../src/pieces/text/fewest-pages.js'
import type { TypeScale } from '../../src/pieces/text/type-scale.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'
import {
  type ColumnMeasure,
  evenShare,
  type ListedWords,
  leastRoom,
  listSlot,
  measureColumns,
  rowHeights,
  WORD_GAP_MM,
} from './list-measure.js'

export interface WordListRequest extends ListedWords {
  readonly marked: boolean
  readonly heading: Heading
  readonly room: Size
  /** The row above the words, as high as `topRowHeight` says in every list of the set. */
  readonly topRow: Pick<Row, 'heightMm'> & {
    readonly tree: (columns: ColumnMeasure) => JSXNode
    /** Whether it holds the headings of the columns. */
    readonly headings: boolean
  }
  /** What stands beside a word; a line to write on, level with it, where left out. */
  readonly beside?: (word: Word, widthMm: number) => JSXNode
  /** Where the columns of what stands beside a word begin, from the left of the first; one where left out. */
  readonly besideLeftsMm?: (widthMm: number) => readonly number[]
  /** What the marked list says of a word is this high; its row is no lower, in either list. */
  readonly besideHeightMm: (word: Word, widthMm: number) => number
  /** At the foot of the list, on one page; set closer where that saves a page. */
  readonly keyRows: (setting: KeySetting) => readonly Row[]
}

/**
 * A numbered list of words, each on a row with something beside it. The teacher's marked list and the children's
 * blank one come from here, so that every word stands in the same place on both.
 */
export function wordListPages(request: WordListRequest): readonly Face[] {
  const least = leastRoom(request)
  const pages = fewestPages(keySettings, setting => listWithKey(request, request.keyRows(setting), least))
  if (pages.length < 2) return pages
  const roomier = listWithKey(request, request.keyRows('roomier'), least)
  return roomier.length > pages.length ? pages : roomier
}

/** Rows as high as fill their page; those of a list that runs on, as high as they can be without one page more. */
function listWithKey(request: WordListRequest, key: readonly Row[], least: Size): readonly Face[] {
  const { words, type, heading, room, topRow } = request
  const headingMm = headingHeight(heading, room.widthMm)
  const keyRows = keyOnOnePage(type, key, room.heightMm - headingMm)
  const takenMm = headingMm + topRow.heightMm + rowsHeight(keyRows) + ROUNDING_MM
  const columns = measureColumns(type, room.widthMm, least.widthMm)
  const needs = words.map(word => request.besideHeightMm(word, columns.besideMm) + ROW_PADDING_MM)
  const pagesAt = (heightMm: number) => {
    const measure = { ...columns, heightMm }
    const rows: Row[] = [
      {
        heightMm: topRow.heightMm,
        ...(topRow.heightMm <= room.heightMm * MOST_REPEATED ? { heads: true } : {}),
        tree: topRow.tree(measure),
        ...(topRow.headings ? { cells: cellsOf(request, measure, 'all') } : {}),
      },
      ...words.map((word, index) =>
        wordRow(request, { word, number: index + 1, leastMm: needs[index]! }, measure),
      ),
    ]
    return flowPages({ heading, rows, after: keyRows, room })
  }
  const heights = rowHeights(least.heightMm)
  const share = evenShare(room.heightMm - takenMm, needs)
  if (share >= heights.closest) return pagesAt(Math.min(heights.most, share))
  const pages = pagesAt(heights.least)
  let [enough, tooHigh] = [pages, heights.most]
  for (let low = heights.least; tooHigh - low > 0.2; ) {
    const middle = (low + tooHigh) / 2
    const tried = pagesAt(middle)
    if (tried.length > pages.length) tooHigh = middle
    else [low, enough] = [middle, tried]
  }
  return enough
}

function cellsOf(
  { besideLeftsMm = () => [0] }: WordListRequest,
  { numberMm, wordMm, besideMm }: ColumnMeasure,
  headings: BandCells['headings'],
): BandCells {
  const beside = besideLeftsMm(besideMm).map(left => numberMm + wordMm + left)
  return { leftsMm: [0, numberMm, ...beside], headings }
}

/** The word is what its row is about. */
const WORD_COLUMN = 1

const MOST_AIR_MM = 4

/**
 * The key, and white between it and the list, as one row, so that it stands on one page whole; row by row where no page
 * is high enough for it.
 */
function keyOnOnePage({ listTextMm }: TypeScale, rows: readonly Row[], pageMm: number): readonly Row[] {
  const airMm = Math.min(listTextMm, MOST_AIR_MM)
  const heightMm = airMm + rowsHeight(rows)
  if (rows.length === 0 || heightMm > pageMm) return rows
  const whole: Row = {
    heightMm,
    slots: Object.assign({}, ...rows.map(row => row.slots ?? {})),
    tree: (
      <div style={{ display: 'flex', flexDirection: 'column', width: '100%', paddingTop: mm(airMm) }}>
        {rows.map(row => (
          <div style={{ display: 'flex', height: mm(row.heightMm), flexShrink: 0, width: '100%' }}>
            {row.tree}
          </div>
        ))}
      </div>
    ),
  }
  return [whole]
}

/** Of a page: a higher row above the words stands on the first page alone. */
const MOST_REPEATED = 0.12

/** Kept free, so that rows that share a page exactly are not held to be too high for it. */
const ROUNDING_MM = 0.01

interface RowMeasure extends ColumnMeasure {
  /** Of a row that needs no more. */
  readonly heightMm: number
}

/** Between what stands in a row and the rules above and below, taken together. */
const ROW_PADDING_MM = 1.5

function wordRow(
  request: WordListRequest,
  { word, number, leastMm }: { readonly word: Word; readonly number: number; readonly leastMm: number },
  measure: RowMeasure,
): Row {
  const { type, marked, beside } = request
  const name = `word ${number}`
  const heightMm = Math.max(measure.heightMm, leastMm)
  const writing: ArtSlot = { kind: 'art', levelWith: name, draw: drawWritingLine }
  return {
    heightMm,
    cells: cellsOf(request, measure, WORD_COLUMN),
    slots: {
      [name]: { ...listSlot(word, marked), maximumMm: measure.heightMm * 0.55 },
      [`number ${number}`]: {
        kind: 'text',
        levelWith: name,
        lines: [String(number)],
        style: { sizeMm: type.listTextMm, color: '#595959' },
      },
      ...(beside === undefined ? { [`line ${number}`]: writing } : {}),
    },
    tree: (
      <div
        style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center', position: 'relative' }}
      >
        {beside === undefined ? null : <Rule />}
        <Slot name={`number ${number}`} style={{ width: mm(measure.numberMm), height: '100%' }} />
        <Slot
          name={name}
          style={{ width: mm(measure.wordMm - WORD_GAP_MM), height: '100%', marginRight: mm(WORD_GAP_MM) }}
        />
        {beside === undefined ? (
          <Slot name={`line ${number}`} style={{ width: mm(measure.besideMm), height: '100%' }} />
        ) : (
          <div style={{ display: 'flex', width: mm(measure.besideMm), height: '100%', alignItems: 'center' }}>
            {beside(word, measure.besideMm)}
          </div>
        )}
      </div>
    ),
  }
}

/** What a page of a list is called among all pages of the plan. */
export function pageTitle({ plan, itemTitle }: LayoutRequest): string {
  return `${plan.title}: ${itemTitle}`
}
