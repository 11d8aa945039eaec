/** What the marked list says beside each word. */
import type { JSXNode } from 'satori/jsx'
import { mm } from '../../src/pieces/faces/face.js'
import { leftsOf } from '../../src/pieces/parts/table-rows.js'
import { atCommas, breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { soundsInWords } from '../../src/words/sounds-in-words.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'

export interface WordFacts {
  readonly headings: (widthMm: number) => JSXNode
  readonly of: (word: Word, widthMm: number) => JSXNode
  readonly heightMm: (word: Word, widthMm: number) => number
  /** Where the columns begin. */
  readonly leftsMm: (widthMm: number) => readonly number[]
}

interface Column {
  readonly heading: string
  /** Of the room beside the word. */
  readonly share: number
  readonly of: (word: Word) => readonly string[]
}

/** Of a word that is no noun. */
const NO_PLURAL = '–'

/** Left to right. */
const columns: readonly Column[] = [
  { heading: 'sounds', share: 0.22, of: word => atCommas(soundsInWords(word)) },
  { heading: 'part of speech', share: 0.18, of: word => [word.partsOfSpeech.slice(0, 2).join(', ')] },
  { heading: 'plural', share: 0.32, of: pluralOf },
  { heading: 'clue', share: 0.28, of: word => [word.clue ?? ''] },
]

/** The columns of which any word has something, over the whole width. */
function columnsFor(words: readonly Word[]): readonly Column[] {
  const said = ({ of }: Column) =>
    words.some(word => of(word).some(text => text !== '' && text !== NO_PLURAL))
  const shown = columns.filter(said)
  const whole = shown.reduce((sum, { share }) => sum + share, 0)
  return shown.map(column => ({ ...column, share: column.share / whole }))
}

/** On narrow pages, everything one under another. */
function oneColumn(columns: readonly Column[]): readonly Column[] {
  const of = (word: Word) => columns.flatMap(column => column.of(word)).filter(text => text !== '')
  return [{ heading: '', share: 1, of }]
}

/** Between one column and the next. */
const COLUMN_GAP_MM = 2

/** Nothing is shortened: a word's row grows with what is said of it. */
export function wordFacts({ words, type, measure }: LayoutRequest): WordFacts {
  const style: TextStyle = { sizeMm: type.adultTextMm * 0.9 }
  const bold: TextStyle = { ...style, weight: 700 }
  const columns = columnsFor(words)
  const roomOf = ({ share }: Column, widthMm: number) => widthMm * share - COLUMN_GAP_MM
  /** Whether no word in a column has to be broken. */
  const nothingBreaks = (widthMm: number) =>
    columns.every(column => {
      const said = words.flatMap(column.of).flatMap(text => text.split(/\s+|(?<=[·-])/))
      const fits = (part: string, { sizeMm, weight }: TextStyle) =>
        measure(part, sizeMm, weight) <= roomOf(column, widthMm)
      return (
        said.every(part => fits(part, style)) && column.heading.split(' ').every(part => fits(part, bold))
      )
    })
  const chosen = new Map<number, readonly Column[]>()
  const columnsAt = (widthMm: number) => {
    const known = chosen.get(widthMm) ?? (nothingBreaks(widthMm) ? columns : oneColumn(columns))
    chosen.set(widthMm, known)
    return known
  }
  const linesOf = (word: Word, widthMm: number) =>
    columnsAt(widthMm).map(column =>
      column.of(word).flatMap(text => breakLines(text, roomOf(column, widthMm), style, measure)),
    )
  const inColumns = (texts: readonly (readonly string[])[], widthMm: number, textStyle: TextStyle) =>
    columnsAt(widthMm).map(({ share }, index) => (
      <Lines lines={texts[index]!} style={textStyle} box={{ width: mm(widthMm * share) }} />
    ))
  return {
    headings: widthMm => {
      const headings = columnsAt(widthMm).map(column =>
        breakLines(column.heading, roomOf(column, widthMm), bold, measure),
      )
      return (
        <div style={{ display: 'flex', width: '100%', alignItems: 'flex-end' }}>
          {inColumns(headings, widthMm, bold)}
        </div>
      )
    },
    of: (word, widthMm) => (
      <div style={{ display: 'flex', width: '100%', alignItems: 'center' }}>
        {inColumns(linesOf(word, widthMm), widthMm, style)}
      </div>
    ),
    heightMm: (word, widthMm) =>
      linesHeight(Math.max(...linesOf(word, widthMm).map(lines => lines.length)), style.sizeMm),
    leftsMm: widthMm => leftsOf(columnsAt(widthMm).map(({ share }) => share * widthMm)),
  }
}

function pluralOf({ plural }: Word): readonly string[] {
  if (plural === null) return [NO_PLURAL]
  return [[plural.form, ...(plural.alternatives ?? [])].join(' or '), plural.rule]
}
