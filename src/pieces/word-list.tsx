import type { JSXNode } from 'satori/jsx'
import type { Size } from '../geometry.js'
import type { Word } from '../words/word.js'
import { type Face, mm } from './face.js'
import { flowPages, type Heading, headingHeight, type Row, rowsHeight } from './flow-page.js'
import { Rule } from './rules.js'
import { Slot } from './slot.js'
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
  /** At the foot of the list. */
  readonly keyRows: readonly Row[]
}

/**
 * A numbered list of words, each on a row with something beside it. The teacher's marked list and the children's
 * blank one come from here, so that every word stands in the same place on both.
 */
export function wordListPages(request: WordListRequest): readonly Face[] {
  const { words, type, heading, room, keyRows, columnHeadings } = request
  const headingRowMm = type.adultTextMm * 2
  const takenMm = headingHeight(heading) + headingRowMm + rowsHeight(keyRows)
  const measure = measureRows({ type, room, words: words.length, takenMm })
  const rows: Row[] = [
    {
      heightMm: headingRowMm,
      tree: (
        <div
          style={{
            display: 'flex',
            width: '100%',
            boxSizing: 'border-box',
            paddingLeft: mm(measure.numberMm + measure.wordMm),
          }}
        >
          {columnHeadings(measure.besideMm)}
        </div>
      ),
    },
    ...words.map((word, index) => wordRow(request, { word, number: index + 1 }, measure)),
    ...keyRows,
  ]
  return flowPages({ heading, rows, room })
}

interface RowMeasure {
  readonly heightMm: number
  readonly numberMm: number
  readonly wordMm: number
  readonly besideMm: number
}

/** Rows are never closer than this, so that a pencil can work between them: our own judgement, no source. */
const LEAST_ROW_MM = 10.5
const MOST_ROW_MM = 17

/** Rows as high as fill one page where they can; a longer list runs on over pages. */
function measureRows({
  type,
  room,
  words,
  takenMm,
}: {
  readonly type: TypeScale
  readonly room: Size
  readonly words: number
  readonly takenMm: number
}): RowMeasure {
  const numberMm = type.adultTextMm * 2.4
  const wordMm = room.widthMm * (type.large ? 0.42 : 0.28)
  const least = Math.max(LEAST_ROW_MM, type.wordMinimumMm * 2.3)
  const filling = (room.heightMm - takenMm) / Math.max(words, 1)
  return {
    heightMm: Math.min(Math.max(MOST_ROW_MM, least), Math.max(least, filling)),
    numberMm,
    wordMm,
    besideMm: room.widthMm - numberMm - wordMm,
  }
}

function wordRow(
  { type, marked, beside }: WordListRequest,
  { word, number }: { readonly word: Word; readonly number: number },
  measure: RowMeasure,
): Row {
  const name = `word ${number}`
  return {
    heightMm: measure.heightMm,
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
            fontSize: mm(type.adultTextMm),
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
