import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { type KeyEntry, keyEntries } from '../../src/pieces/marks/key-entries.js'
import { drawKeySample, keySampleEm } from '../../src/pieces/marks/key-sample.js'
import { type KeyRequest, keyTextMm, roomForTag } from '../../src/pieces/parts/key-rows.js'
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
  /** No row may be higher, or it would leave its page: then words that show the mark are left out, then what it is. */
  readonly mostMm?: number
  /** Before the names of the rows' slots, where a page holds several keys. */
  readonly prefix?: string
}

/** Shares of the sample's em: of a mark's name, the usual and the least that it is set to, so that it need not be broken. */
const LABEL = { usual: 0.48, least: 0.28 } as const
/** Of the name's em, for what the mark is and for words that show it. */
const EXAMPLES = 0.71
/** Between the samples and their names. */
const GAP_MM = 6
/** The samples take no more of the width. */
export const SAMPLE_SHARE = 0.4

/** The widest sample in ems, with what an outline or an arc adds to its letters. */
export function widestSampleEm({ words, marks, measure }: KeyRequest): number {
  return Math.max(1, ...keyEntries(words, marks).map(entry => keySampleEm(entry, measure, 0.4)))
}

/** A mark a row, with words that show it. */
export function largeKeyRows(request: KeyRequest, key: LargeKey): readonly Row[] {
  const [boxMm, labelMm] = [sampleBoxMm(request, key), labelSizeMm(request, key)]
  return keyEntries(request.words, request.marks).map(entry =>
    largeKeyRow(request, entry, { ...key, boxMm, labelMm }),
  )
}

/** Whether the column is too narrow for a mark and its name side by side. */
export function hasBrokenNames(request: KeyRequest, key: LargeKey): boolean {
  const { type, measure } = request
  const widthMm = key.widthMm - sampleBoxMm(request, key) - GAP_MM
  const labelMm = labelSizeMm(request, key)
  return keyEntries(request.words, request.marks).some(
    entry => textBeside(saidOf(entry, labelMm), { widthMm, pageMm: key.widthMm, type, measure }).broken,
  )
}

/** All names are of one size, at which each stands on one line if that is not too small beside the samples. */
function labelSizeMm(request: KeyRequest, key: LargeKey): number {
  const { words, marks, measure } = request
  const widthMm = key.widthMm - sampleBoxMm(request, key) - GAP_MM
  const widest = Math.max(...keyEntries(words, marks).map(({ label }) => measure(label, 1, 700)))
  const [usualMm, oneLineMm] = [key.sampleMm * LABEL.usual, (widthMm * 0.995) / widest]
  return oneLineMm < key.sampleMm * LABEL.least ? usualMm : Math.min(usualMm, oneLineMm)
}

function sampleBoxMm(request: KeyRequest, { widthMm, sampleMm }: LargeKey): number {
  return Math.min(sampleMm * widestSampleEm(request), widthMm * SAMPLE_SHARE)
}

function saidOf({ label, says = '', examples }: KeyEntry, labelMm: number) {
  return { label, says, examples, labelMm, examplesMm: labelMm * EXAMPLES }
}

function largeKeyRow(
  { typeface, type, measure }: KeyRequest,
  entry: KeyEntry,
  { boxMm, labelMm, ...key }: LargeKey & { readonly boxMm: number; readonly labelMm: number },
): Row {
  const { mark, letters } = entry
  const { widthMm, sampleMm, mostMm = Number.POSITIVE_INFINITY, prefix = '' } = key
  const name = `${prefix}key ${mark.index}`
  const sampleHeightMm = sampleMm * (2 + roomForTag(type, [mark]))
  const said = saidOf(entry, labelMm)
  const ways = [said, { ...said, examples: [] }, { ...said, examples: [], says: '' }].map(words => {
    const beside = textBeside(words, { widthMm: widthMm - boxMm - GAP_MM, pageMm: widthMm, type, measure })
    // Where a word of the name is wider than the room beside the sample, name and words stand below it.
    const isBelow = beside.broken
    const text = isBelow ? textBeside(words, { widthMm, pageMm: widthMm, type, measure }) : beside
    const textMm = text.heightMm + sampleMm * 0.3
    return {
      text,
      isBelow,
      heightMm: isBelow ? sampleHeightMm + textMm : Math.max(sampleHeightMm, textMm),
    }
  })
  const { text, isBelow, heightMm } = ways.find(way => way.heightMm <= mostMm) ?? ways.at(-1)!
  return {
    heightMm,
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
      <div
        style={{
          display: 'flex',
          flexDirection: isBelow ? 'column' : 'row',
          width: '100%',
          height: '100%',
          alignItems: isBelow ? 'flex-start' : 'center',
        }}
      >
        <Slot
          name={name}
          style={{
            width: mm(boxMm),
            height: isBelow ? mm(sampleHeightMm) : '100%',
            flexShrink: 0,
          }}
        />
        <div
          style={{
            display: 'flex',
            flexDirection: 'column',
            marginLeft: isBelow ? 0 : mm(GAP_MM),
          }}
        >
          <Lines lines={text.labelLines} style={text.labelStyle} />
          <Lines lines={text.saysLines} style={text.saysStyle} />
          <Lines lines={text.exampleLines} style={text.exampleStyle} />
        </div>
      </div>
    ),
  }
}

/** The name of a mark and words that show it, in a column. */
function textBeside(
  said: {
    readonly label: string
    readonly says: string
    readonly examples: readonly string[]
    readonly labelMm: number
    readonly examplesMm: number
  },
  {
    widthMm,
    pageMm,
    type,
    measure,
  }: Pick<KeyRequest, 'type' | 'measure'> & { readonly widthMm: number; readonly pageMm: number },
) {
  const sizeFor = (text: string, wishedMm: number, weight?: 700) => {
    const leastMm = Math.max(keyTextMm(type.textMm, pageMm), wishedMm)
    const widest = Math.max(...text.split(/\s+/).map(word => measure(word, 1, weight)), 0.1)
    // A hair less, lest rounding break the word.
    return { sizeMm: Math.min(leastMm, (widthMm * 0.995) / widest), broken: widest * leastMm > widthMm }
  }
  const [name, words] = [
    sizeFor(said.label, said.labelMm, 700),
    sizeFor([said.says, ...said.examples].join(' '), said.examplesMm),
  ]
  const labelStyle: TextStyle = { sizeMm: name.sizeMm, weight: 700 }
  const exampleStyle: TextStyle = { sizeMm: words.sizeMm, color: '#595959' }
  const saysStyle: TextStyle = { sizeMm: words.sizeMm }
  const labelLines = breakLines(said.label, widthMm, labelStyle, measure)
  const saysLines = breakLines(said.says, widthMm, saysStyle, measure)
  const exampleLines = wholeWordsWithin(said.examples, { widthMm, maximum: 2 }, exampleStyle, measure)
  const heightMm =
    linesHeight(labelLines.length, labelStyle.sizeMm) +
    linesHeight(saysLines.length + exampleLines.length, exampleStyle.sizeMm)
  return {
    labelLines,
    labelStyle,
    saysLines,
    saysStyle,
    exampleLines,
    exampleStyle,
    heightMm,
    broken: name.broken || words.broken,
  }
}
