import type { Word } from '../words/word.js'
import { mm } from './face.js'
import type { Row } from './flow-page.js'
import { type KeyEntry, keyEntries } from './marks/key-entries.js'
import { drawKeySample } from './marks/key-sample.js'
import type { StyledMark } from './marks/styled-mark.js'
import { Slot } from './slot.js'
import { breakLinesWithin, Lines, type TextMeasure } from './text-lines.js'
import type { TypeScale } from './type-scale.js'
import type { Typeface } from './typeface/typeface.js'

/** What rows of a key are made from. */
export interface KeyRequest {
  readonly words: readonly Word[]
  readonly marks: readonly StyledMark[]
  readonly typeface: Typeface
  readonly type: TypeScale
  readonly measure: TextMeasure
}

/** Rows of a key, one a mark that these words use: the mark on sample letters, its name, words that show it. */
export function keyRows(
  request: KeyRequest,
  widthMm: number,
  sizeMm = request.type.textMm * 1.6,
): readonly Row[] {
  return keyEntries(request.words, request.marks).map((entry, index) =>
    keyRow(request, entry, { index, widthMm, sizeMm }),
  )
}

function keyRow(
  { typeface, type, measure }: KeyRequest,
  entry: KeyEntry,
  { index, widthMm, sizeMm }: { readonly index: number; readonly widthMm: number; readonly sizeMm: number },
): Row {
  const name = `key ${index}`
  const sampleWidthMm = Math.max(sizeMm * 5, widthMm * 0.2)
  const labelStyle = { sizeMm: Math.max(type.textMm, sizeMm * 0.55), weight: 700 as const }
  const exampleStyle = { sizeMm: Math.max(type.textMm * 0.9, sizeMm * 0.4) }
  const room = { widthMm: widthMm - sampleWidthMm - 4, maximum: 1 }
  return {
    heightMm: sizeMm * 2.6,
    slots: {
      [name]: {
        kind: 'art',
        draw: slot =>
          drawKeySample({ typeface, mark: entry.mark, letters: entry.letters, sizeMm, room: slot }),
      },
    },
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center' }}>
        <Slot name={name} style={{ width: mm(sampleWidthMm), height: '100%' }} />
        <div style={{ display: 'flex', flexDirection: 'column', marginLeft: mm(4) }}>
          <Lines lines={breakLinesWithin(entry.label, room, labelStyle, measure)} style={labelStyle} />
          <Lines
            lines={breakLinesWithin(entry.examples.join(', '), room, exampleStyle, measure)}
            style={exampleStyle}
          />
        </div>
      </div>
    ),
  }
}

/** A key for the children to fill in: the names, and a box to draw each mark in. */
export function blankKeyRows(request: KeyRequest): readonly Row[] {
  const { type } = request
  const sizeMm = type.textMm
  return keyEntries(request.words, request.marks).map(entry => ({
    heightMm: sizeMm * 3,
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'center' }}>
        <div
          style={{
            display: 'flex',
            width: mm(sizeMm * 7),
            height: mm(sizeMm * 2.4),
            boxSizing: 'border-box',
            padding: mm(0.3),
            backgroundColor: '#737373',
          }}
        >
          <div style={{ display: 'flex', flexGrow: 1, backgroundColor: '#ffffff' }} />
        </div>
        <Lines lines={[entry.label]} style={{ sizeMm }} box={{ marginLeft: mm(4) }} />
      </div>
    ),
  }))
}
