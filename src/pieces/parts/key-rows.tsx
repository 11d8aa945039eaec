import type { JSXNode } from 'satori/jsx'
import type { Word } from '../../words/word.js'
import { mm, type SlotContent } from '../faces/face.js'
import type { Row } from '../faces/flow-page.js'
import { Slot } from '../faces/slot.js'
import { type KeyEntry, keyEntries } from '../marks/key-entries.js'
import { drawKeySample, isCornerTag, keySampleEm } from '../marks/key-sample.js'
import type { StyledMark } from '../marks/styled-mark.js'
import { breakLines, linesHeight, type TextMeasure, type TextStyle } from '../text/break-lines.js'
import { Lines } from '../text/lines.js'
import { type TypeScale, wordRules } from '../text/type-scale.js'
import type { Typeface } from '../typeface/typeface.js'
import { EmptyBox } from './rules.js'

/** What rows of a key are made from. */
export interface KeyRequest {
  readonly words: readonly Word[]
  readonly marks: readonly StyledMark[]
  readonly typeface: Typeface
  readonly type: TypeScale
  readonly measure: TextMeasure
}

/** How close a key is set where its page has little room, the usual first. */
export const keySettings = ['usual', 'closer', 'one column more'] as const
/**
 * Roomier is for a key that has a good part of a page: larger samples or boxes to draw in, further apart. Names alone is
 * for one that is only to call to mind what the children know.
 */
export type KeySetting = (typeof keySettings)[number] | 'roomier' | 'names alone'

/** A key beside other things: two marks a row (one in large print), the mark on sample letters and its name. */
export function keyRows(request: KeyRequest, widthMm: number, setting: KeySetting = 'usual'): readonly Row[] {
  const { typeface, type, measure } = request
  const shape = smallKey(request, widthMm, setting)
  return rowsOf(entriesShown(request, setting), shape.columns).map(entries => {
    const slots: Record<string, SlotContent> = {}
    const cells = entries.map(entry => {
      const { mark, letters } = entry
      const name = `key ${mark.index}`
      slots[name] = {
        kind: 'art',
        draw: room =>
          drawKeySample({
            typeface,
            mark,
            letters,
            sizeMm: shape.sampleMm,
            room,
            at: 'right',
            ...wordRules(type),
          }),
      }
      return (
        <div style={{ display: 'flex', width: mm(shape.cellWidthMm), alignItems: 'center' }}>
          <Slot name={name} style={{ width: mm(shape.boxWidthMm), height: mm(shape.boxHeightMm) }} />
          <KeyText entry={entry} shape={shape} measure={measure} />
        </div>
      )
    })
    return { heightMm: rowHeight(entries, shape, measure), slots, tree: <KeyRow cells={cells} /> }
  })
}

/** The same key for the children to fill in: the names, and a box to draw each mark in. */
export function blankKeyRows(
  request: KeyRequest,
  widthMm: number,
  setting: KeySetting = 'usual',
): readonly Row[] {
  const { measure } = request
  const shape = smallKey(request, widthMm, setting)
  return rowsOf(entriesShown(request, setting), shape.columns).map(entries => ({
    heightMm: rowHeight(entries, shape, measure),
    tree: (
      <KeyRow
        cells={entries.map(entry => (
          <div style={{ display: 'flex', width: mm(shape.cellWidthMm), alignItems: 'center' }}>
            <EmptyBox widthMm={shape.boxWidthMm} heightMm={shape.boxHeightMm} lineMm={0.3} color="#737373" />
            <KeyText entry={entry} shape={shape} measure={measure} />
          </div>
        ))}
      />
    ),
  }))
}

function entriesShown({ words, marks }: KeyRequest, setting: KeySetting): readonly KeyEntry[] {
  const entries = keyEntries(words, marks)
  return setting === 'names alone' ? entries.map(({ says: _, ...named }) => named) : entries
}

/** Set as asked, unless the words of the key would have to be smaller for that. */
function smallKey(request: KeyRequest, widthMm: number, setting: KeySetting) {
  const asked = keyShape(request, widthMm, setting)
  const isSmaller = asked.label.sizeMm < keyTextMm(request.type.listTextMm, widthMm)
  return isSmaller && setting !== 'closer' ? keyShape(request, widthMm, 'usual') : asked
}

/** Of the width: a key in larger print would not hold a mark's name on its page. */
const TEXT_SHARE = 1 / 10

/** The em of a key's text on a page this wide. */
export function keyTextMm(textMm: number, widthMm: number): number {
  return Math.min(textMm, widthMm * TEXT_SHARE)
}

/** The samples take no more of a column's width. */
const SAMPLE_SHARE = 0.4
/** Of a key's text where a word of it has no room beside the samples; a longer one is broken. */
const LEAST_SHARE = 0.7

/** White between a sample and its name, and beside that: of the name's em in very large print. */
const LEAST_WHITE_MM = 3
const WHITE_SHARE = 0.35

function keyShape(request: KeyRequest, widthMm: number, setting: KeySetting) {
  const { type, marks, measure } = request
  const columns = (type.large ? 1 : 2) + (setting === 'one column more' ? 1 : 0)
  const close = setting === 'usual' || setting === 'roomier' ? 1 : 0.85
  const roomier = setting === 'roomier' ? 1.5 : 1
  const cellWidthMm = widthMm / columns
  // No wider than the widest sample, with what an outline or a tag's card adds, so that samples stand by their names.
  const entries = entriesShown(request, setting)
  const widestEm = Math.min(4.2, Math.max(1.9, ...entries.map(entry => keySampleEm(entry, measure, 0.6))))
  const wishedMm = type.listTextMm * (type.large ? 1.3 : 1.7 * close) * roomier
  const sampleMm = Math.min(wishedMm, (cellWidthMm * SAMPLE_SHARE) / widestEm)
  const boxWidthMm = sampleMm * widestEm
  const usualMm = keyTextMm(type.listTextMm, widthMm)
  const besideSampleMm = Math.max(LEAST_WHITE_MM, usualMm * WHITE_SHARE)
  const labelWidthMm = cellWidthMm - boxWidthMm - besideSampleMm - LEAST_WHITE_MM
  const textOf = ({ label, says = '' }: KeyEntry) => `${label} ${says}`.split(/\s+/)
  const widestWord = Math.max(0.1, ...entries.flatMap(textOf).map(word => measure(word, 1, 700)))
  const textMm = Math.min(usualMm, Math.max(usualMm * LEAST_SHARE, (labelWidthMm * 0.995) / widestWord))
  return {
    columns,
    sampleMm,
    cellWidthMm,
    boxWidthMm,
    boxHeightMm: sampleMm * (1.8 + roomForTag(type, marks)),
    rowHeightMm: sampleMm * (1.8 + 0.3 * (close === 1 ? roomier : 0.4) + roomForTag(type, marks)),
    besideSampleMm,
    labelWidthMm,
    label: { sizeMm: textMm, weight: 700 } satisfies TextStyle,
    says: { sizeMm: type.large ? textMm : textMm * 0.9 } satisfies TextStyle,
  }
}

type SmallKey = ReturnType<typeof keyShape>

interface KeyTextRequest {
  readonly entry: KeyEntry
  readonly shape: SmallKey
  readonly measure: TextMeasure
}

/** Her own label first, then what the mark is in words for a child. */
function keyLines({ entry: { label, says }, shape, measure }: KeyTextRequest) {
  const { labelWidthMm } = shape
  return {
    label: breakLines(label, labelWidthMm, shape.label, measure),
    says: says === undefined ? [] : breakLines(says, labelWidthMm, shape.says, measure),
  }
}

function KeyText(request: KeyTextRequest) {
  const { shape } = request
  const { label, says } = keyLines(request)
  return (
    <div style={{ display: 'flex', flexDirection: 'column', marginLeft: mm(shape.besideSampleMm) }}>
      <Lines lines={label} style={shape.label} />
      <Lines lines={says} style={shape.says} />
    </div>
  )
}

/** White between one text of a key and the next, of their em. */
const BETWEEN_TEXTS = 0.4

/** As high as a sample, or as the longest text of the row. */
function rowHeight(entries: readonly KeyEntry[], shape: SmallKey, measure: TextMeasure): number {
  const heights = entries.map(entry => {
    const { label, says } = keyLines({ entry, shape, measure })
    const textMm = linesHeight(label.length, shape.label.sizeMm) + linesHeight(says.length, shape.says.sizeMm)
    return textMm + shape.label.sizeMm * BETWEEN_TEXTS
  })
  return Math.max(shape.rowHeightMm, ...heights)
}

/** In large print a tag is as large as the words: room for it under a sample, in ems of the sample. */
export function roomForTag({ large }: TypeScale, marks: readonly StyledMark[]): number {
  return large && marks.some(mark => mark.tag !== undefined && !isCornerTag(mark)) ? 0.9 : 0
}

function KeyRow({ cells }: { readonly cells: readonly JSXNode[] }) {
  return <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'flex-end' }}>{cells}</div>
}

function rowsOf<T>(items: readonly T[], columns: number): readonly (readonly T[])[] {
  const rows = Math.ceil(items.length / columns)
  return Array.from({ length: rows }, (_, row) => items.slice(row * columns, (row + 1) * columns))
}
