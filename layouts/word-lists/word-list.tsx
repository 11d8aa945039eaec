import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../src/geometry.js'
import { type ArtSlot, type Face, mm, type WordSlot } from '../../src/pieces/faces/face.js'
import { cornerTagsOf } from '../../src/pieces/faces/fit-faces.js'
import {
  flowPages,
  type Heading,
  headingHeight,
  type Row,
  rowsHeight,
} from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { slotWordFinder } from '../../src/pieces/faces/slot-words.js'
import type { StyledMark } from '../../src/pieces/marks/styled-mark.js'
import { type KeySetting, keySettings } from '../../src/pieces/parts/key-rows.js'
import { drawWritingLine, Rule } from '../../src/pieces/parts/rules.js'
import type { BandCells } from '../../src/pieces/piece.js'
import { fewestPages } from '../../src/pieces/text/fewest-pages.js'
import { type TypeScale, wordRules } from '../../src/pieces/text/type-scale.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'
import { cornerRoom } from '../../src/pieces/word/corner-tags.js'
import { measureWord } from '../../src/pieces/word/word-art.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'

export interface WordListRequest {
  readonly words: readonly Word[]
  readonly marks: readonly StyledMark[]
  readonly typeface: Typeface
  readonly type: TypeScale
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

export interface ColumnMeasure {
  readonly numberMm: number
  /** With the white between a word and what stands beside it. */
  readonly wordMm: number
  readonly besideMm: number
}

/** Of a page: a higher row above the words stands on the first page alone. */
const MOST_REPEATED = 0.12

/** Kept free, so that rows that share a page exactly are not held to be too high for it. */
const ROUNDING_MM = 0.01

interface RowMeasure extends ColumnMeasure {
  /** Of a row that needs no more. */
  readonly heightMm: number
}

/**
 * Rows are no closer than this, so that a pencil can work between them; where the whole list and its key then stand on
 * one page, as close as the second: our own judgement, no source.
 */
const LEAST_ROW_MM = 10.5
const CLOSEST_ROW_MM = 9
/** Of the least height: in rows higher still, a word is far from the next. */
const MOST_ROW = 1.65
/** Between what stands in a row and the rules above and below, taken together. */
const ROW_PADDING_MM = 1.5

/** Of the list's width, at most, for the words: beside them there is more to say, or room to write. */
const MOST_FOR_WORDS = 0.6

/** What the words need with their marks at the smallest size that may be printed, on one baseline. */
function leastRoom({ words, marks, typeface, type }: WordListRequest): Size {
  const show = slotWordFinder(marks)
  const measures = words.map(word => {
    const slot = listSlot(word, true)
    const shown = show(slot)
    const measure = measureWord({ typeface, sizeMm: type.wordMinimumMm, ...shown, ...wordRules(type) })
    const tags = cornerRoom(cornerTagsOf(shown, slot, LEAST_ROW_MM, { typeface, type }))
    return { ...measure, widthMm: measure.widthMm + (tags?.widthMm ?? 0) }
  })
  const most = (of: (measure: (typeof measures)[number]) => number) => Math.max(0, ...measures.map(of))
  // A hair more than that, because boxes are laid out in whole twentieths of a millimetre.
  const around = 2 * WORD_PADDING_MM + 0.1
  return {
    widthMm: most(measure => measure.widthMm) + around + WORD_GAP_MM,
    heightMm: most(measure => measure.aboveMm) + most(measure => measure.belowMm) + around,
  }
}

function measureColumns(type: TypeScale, widthMm: number, leastWordMm: number): ColumnMeasure {
  const numberMm = type.listTextMm * 2.4
  const usual = widthMm * (type.large ? 0.42 : 0.28)
  const wordMm = Math.max(usual, Math.min(leastWordMm, widthMm * MOST_FOR_WORDS))
  return { numberMm, wordMm, besideMm: widthMm - numberMm - wordMm }
}

/** Of rows whose words need this much. */
function rowHeights(leastWordMm: number) {
  const least = Math.max(LEAST_ROW_MM, leastWordMm)
  return { least, closest: Math.max(CLOSEST_ROW_MM, leastWordMm), most: least * MOST_ROW }
}

/** The height that fills the room when all rows have it, but those that need more than it. */
function evenShare(roomMm: number, needs: readonly number[]): number {
  let leftMm = roomMm
  for (const [index, need] of [...needs].sort((a, b) => b - a).entries()) {
    const share = leftMm / (needs.length - index)
    if (need <= share) return share
    leftMm -= need
  }
  return 0
}

/** Between a word and what stands beside it. */
const WORD_GAP_MM = 3
/** White on each side of a word. */
const WORD_PADDING_MM = 1

function listSlot(word: Word, marked: boolean): WordSlot {
  return {
    kind: 'word',
    word,
    marked,
    sizedAsMarked: true,
    sizeGroup: 'list',
    align: 'left',
    paddingMm: WORD_PADDING_MM,
  }
}

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
