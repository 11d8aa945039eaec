import type { JSXNode } from 'satori/jsx'
import type { Word } from '../words/word.js'
import { mm } from './face.js'
import type { Row } from './flow-page.js'
import { Rule } from './rules.js'
import { Slot } from './slot.js'
import type { TypeScale } from './type-scale.js'

/** Where the words of a list stand; the teacher's marked list and the children's blank one share it line for line. */
export interface WordListMeasure {
  readonly rowHeightMm: number
  readonly numberWidthMm: number
  readonly wordWidthMm: number
  readonly restWidthMm: number
}

export function wordListMeasure(type: TypeScale, pageWidthMm: number): WordListMeasure {
  const numberWidthMm = type.textMm * 2.2
  const wordWidthMm = pageWidthMm * 0.3
  return {
    rowHeightMm: Math.max(14, type.textMm * 4, type.wordMinimumMm * 2.2),
    numberWidthMm,
    wordWidthMm,
    restWidthMm: pageWidthMm - numberWidthMm - wordWidthMm,
  }
}

/** A numbered row of a word list: the word on the left, whatever the list says of it on the right. */
export function wordListRow({
  word,
  number,
  marked,
  measure,
  type,
  rest,
}: {
  readonly word: Word
  readonly number: number
  readonly marked: boolean
  readonly measure: WordListMeasure
  readonly type: TypeScale
  readonly rest: JSXNode
}): Row {
  const name = `word ${number}`
  return {
    heightMm: measure.rowHeightMm,
    slots: {
      [name]: {
        kind: 'word',
        word,
        marked,
        sizedAsMarked: true,
        sizeGroup: 'list',
        maximumMm: measure.rowHeightMm * 0.55,
        align: 'left',
        paddingMm: 1,
      },
    },
    tree: (
      <div
        style={{
          display: 'flex',
          width: '100%',
          height: '100%',
          alignItems: 'center',
          position: 'relative',
        }}
      >
        <Rule />
        <div
          style={{
            display: 'flex',
            width: mm(measure.numberWidthMm),
            fontSize: mm(type.textMm),
            lineHeight: 1.3,
            color: '#595959',
          }}
        >
          {String(number)}
        </div>
        <Slot name={name} style={{ width: mm(measure.wordWidthMm), height: '100%' }} />
        <div
          style={{ display: 'flex', width: mm(measure.restWidthMm), height: '100%', alignItems: 'center' }}
        >
          {rest}
        </div>
      </div>
    ),
  }
}
