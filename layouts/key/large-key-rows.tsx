import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { type KeyEntry, keyEntries } from '../../src/pieces/marks/key-entries.js'
import { drawKeySample } from '../../src/pieces/marks/key-sample.js'
import { type KeyRequest, roomForTag } from '../../src/pieces/parts/key-rows.js'
import {
  breakLines,
  linesHeight,
  type TextStyle,
  wholeWordsWithin,
} from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { wordRules } from '../../src/pieces/text/type-scale.js'

/** How large a key is that is a page of its own. */
export interface LargeKey {
  readonly widthMm: number
  /** The em of the sample letters. */
  readonly sampleMm: number
  /** Before the names of the rows' slots, where a page holds several keys. */
  readonly prefix?: string
}

/** Shares of the sample's em. */
const LABEL = 0.48
const EXAMPLES = 0.34
/** Between the samples and their names. */
const GAP_MM = 6
/** The samples take no more of the width. */
export const SAMPLE_SHARE = 0.4

/** The widest sample in ems, with what an outline or an arc adds to its letters. */
export function widestSampleEm({ words, marks, measure }: KeyRequest): number {
  return Math.max(1, ...keyEntries(words, marks).map(({ letters }) => measure(letters, 1) + 0.4))
}

/** A mark a row, with words that show it. */
export function largeKeyRows(request: KeyRequest, key: LargeKey): readonly Row[] {
  const boxMm = Math.min(key.sampleMm * widestSampleEm(request), key.widthMm * SAMPLE_SHARE)
  return keyEntries(request.words, request.marks).map(entry => largeKeyRow(request, entry, { ...key, boxMm }))
}

function largeKeyRow(
  { typeface, type, measure }: KeyRequest,
  { mark, letters, label, says, examples }: KeyEntry,
  { widthMm, sampleMm, boxMm, prefix = '' }: LargeKey & { readonly boxMm: number },
): Row {
  const name = `${prefix}key ${mark.index}`
  const labelStyle: TextStyle = { sizeMm: Math.max(type.textMm, sampleMm * LABEL), weight: 700 }
  const exampleStyle: TextStyle = { sizeMm: Math.max(type.textMm, sampleMm * EXAMPLES), color: '#595959' }
  const room = { widthMm: widthMm - boxMm - GAP_MM, maximum: 2 }
  const labelLines = breakLines(label, room.widthMm, labelStyle, measure)
  const saysStyle: TextStyle = { sizeMm: exampleStyle.sizeMm }
  const saysLines = says === undefined ? [] : breakLines(says, room.widthMm, saysStyle, measure)
  const exampleLines = wholeWordsWithin(examples, room, exampleStyle, measure)
  const textMm =
    linesHeight(labelLines.length, labelStyle.sizeMm) +
    linesHeight(saysLines.length, saysStyle.sizeMm) +
    linesHeight(exampleLines.length, exampleStyle.sizeMm)
  return {
    heightMm: Math.max(sampleMm * (2 + roomForTag(type, [mark])), textMm + sampleMm * 0.3),
    slots: {
      [name]: {
        kind: 'art',
        draw: slot =>
          drawKeySample({
            typeface,
            mark,
            letters,
            sizeMm: sampleMm,
            room: slot,
            at: 'right',
            ...wordRules(type),
          }),
      },
    },
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center' }}>
        <Slot name={name} style={{ width: mm(boxMm), height: '100%' }} />
        <div style={{ display: 'flex', flexDirection: 'column', marginLeft: mm(GAP_MM) }}>
          <Lines lines={labelLines} style={labelStyle} />
          <Lines lines={saysLines} style={saysStyle} />
          <Lines lines={exampleLines} style={exampleStyle} />
        </div>
      </div>
    ),
  }
}
