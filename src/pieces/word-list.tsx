import type { JSXNode } from 'satori/jsx'
import type { Size } from '../geometry.js'
import type { Word } from '../words/word.js'
import { type Face, mm } from './face.js'
import { flowPages, type Heading, headingHeight, type Row, rowsHeight } from './flow-page.js'
import { Rule } from './rules.js'
import { Slot } from './slot.js'
import { linesHeight } from './text-lines.js'
import type { TypeScale } from './type-scale.js'

export interface WordListRequest {
  readonly words: readonly Word[]
  readonly type: TypeScale
  readonly marked: boolean
  readonly heading: Heading
  readonly room: Size
  /** Over what stands beside the words; its height is the same in every list of the set. */
  readonly columnHeadings: (widthMm: number) => JSXNode
  /** What stands beside a word. */
  readonly beside: (word: Word, widthMm: number) => JSXNode
  /** What the marked list says of a word is this high; its row is no lower, in either list. */
  readonly besideHeightMm: (word: Word, widthMm: number) => number
  /** At the foot of the list. */
  readonly keyRows: readonly Row[]
}

/**
 * A numbered list of words, each on a row with something beside it. The teacher's marked list and the children's
 * blank one come from here, so that every word stands in the same place on both.
 */
export function wordListPages(request: WordListRequest): readonly Face[] {
  const { words, type, heading, room, keyRows, columnHeadings } = request
  const headingRowMm = linesHeight(2, type.adultTextMm * 0.9)
  const takenMm = headingHeight(heading, room.widthMm) + headingRowMm + rowsHeight(keyRows)
  const columns = measureColumns(type, room.widthMm)
  const needs = words.map(word => request.besideHeightMm(word, columns.besideMm) + ROW_PADDING_MM)
  const measure = { ...columns, heightMm: rowHeight(type, room.heightMm - takenMm, needs) }
  const rows: Row[] = [
    {
      heightMm: headingRowMm,
      tree: (
        <div
          style={{
            display: 'flex',
            width: '100%',
            boxSizing: 'border-box',
            height: '100%',
            alignItems: 'flex-end',
            paddingLeft: mm(measure.numberMm + measure.wordMm),
          }}
        >
          {columnHeadings(measure.besideMm)}
        </div>
      ),
    },
    ...words.map((word, index) =>
      wordRow(request, { word, number: index + 1, leastMm: needs[index]! }, measure),
    ),
    ...keyRows,
  ]
  return flowPages({ heading, rows, room })
}

interface ColumnMeasure {
  readonly numberMm: number
  readonly wordMm: number
  readonly besideMm: number
}

interface RowMeasure extends ColumnMeasure {
  /** Of a row that needs no more. */
  readonly heightMm: number
}

/** Rows are never closer than this, so that a pencil can work between them: our own judgement, no source. */
const LEAST_ROW_MM = 10.5
const MOST_ROW_MM = 17
/** Between what stands in a row and the rules above and below, taken together. */
const ROW_PADDING_MM = 1.5

function measureColumns(type: TypeScale, widthMm: number): ColumnMeasure {
  const numberMm = type.listTextMm * 2.4
  const wordMm = widthMm * (type.large ? 0.42 : 0.28)
  return { numberMm, wordMm, besideMm: widthMm - numberMm - wordMm }
}

/** Rows as high as fill one page where they can; a longer list runs on over pages. */
function rowHeight(type: TypeScale, roomMm: number, needs: readonly number[]): number {
  const least = Math.max(LEAST_ROW_MM, type.wordMinimumMm * 2.3)
  return Math.min(Math.max(MOST_ROW_MM, least), Math.max(least, evenShare(roomMm, needs)))
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

function wordRow(
  { type, marked, beside }: WordListRequest,
  { word, number, leastMm }: { readonly word: Word; readonly number: number; readonly leastMm: number },
  measure: RowMeasure,
): Row {
  const name = `word ${number}`
  return {
    heightMm: Math.max(measure.heightMm, leastMm),
    slots: {
      [name]: {
        kind: 'word',
        word,
        marked,
        sizedAsMarked: true,
        sizeGroup: 'list',
        maximumMm: measure.heightMm * 0.55,
        align: 'left',
        paddingMm: 1,
      },
    },
    tree: (
      <div
        style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center', position: 'relative' }}
      >
        <Rule />
        <div
          style={{
            display: 'flex',
            width: mm(measure.numberMm),
            fontSize: mm(type.listTextMm),
            lineHeight: 1.3,
            color: '#595959',
          }}
        >
          {String(number)}
        </div>
        <Slot name={name} style={{ width: mm(measure.wordMm), height: '100%' }} />
        <div style={{ display: 'flex', width: mm(measure.besideMm), height: '100%', alignItems: 'center' }}>
          {beside(word, measure.besideMm)}
        </div>
      </div>
    ),
  }
}
