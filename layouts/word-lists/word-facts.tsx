/** What the marked list says beside each word. */

import type { JSXNode } from 'satori/jsx'
import { mm } from '../../src/pieces/faces/face.js'
import { leftsOf } from '../../src/pieces/parts/table-rows.js'
import { atCommas, breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { soundsInWords } from '../../src/words/sounds-in-words.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'
import { weeksAgoInWords } from '../weeks-ago.js'

export interface WordFacts {
  readonly headings: (widthMm: number) => JSXNode
  readonly of: (word: Word, widthMm: number) => JSXNode
  readonly heightMm: (word: Word, widthMm: number) => number
  /** Where the columns begin. */
  readonly leftsMm: (widthMm: number) => readonly number[]
}

interface Column {
  readonly heading: string
  /** Of the room beside the word; of a column that is as wide as its lines, the most. */
  readonly share: number
  /** Whether it is only as wide as its longest line: a broken row of sounds is hard to count. */
  readonly asItsLines?: true
  readonly of: (word: Word) => readonly string[]
  /** The same on one line, where the column has room for that with every word: rows may then be closer. */
  readonly inOne?: (word: Word) => string
}

/** Of a word that is no noun. */
const NO_PLURAL = '–'

/** Left to right. */
const columns: readonly Column[] = [
  { heading: 'sounds', share: 0.38, asItsLines: true, of: word => atCommas(soundsInWords(word)) },
  {
    heading: 'part of speech',
    share: 0.18,
    asItsLines: true,
    of: word => [word.partsOfSpeech.slice(0, 2).join(', ')],
  },
  { heading: 'plural', share: 0.32, of: pluralOf, inOne: pluralInOne },
  { heading: 'clue', share: 0.28, of: word => [clueOnList(word)] },
  { heading: 'review of', share: 0.16, asItsLines: true, of: word => [weekOf(word)] },
]

/** The columns of which any word has something. */
function columnsFor(words: readonly Word[]): readonly Column[] {
  const said = ({ of }: Column) =>
    words.some(word => of(word).some(text => text !== '' && text !== NO_PLURAL))
  return columns.filter(said)
}

/** Over the whole width: some columns as wide as their lines, the others share what is left. */
function sharedOut(
  shown: readonly Column[],
  { words, widthMm, widest }: { readonly words: readonly Word[] } & Widths,
): readonly Column[] {
  const sized = shown.map(({ share, asItsLines, ...column }): Column => {
    if (asItsLines === undefined) return { ...column, share }
    const textMm = widest(column.heading, words.flatMap(column.of))
    return { ...column, asItsLines, share: Math.min(share, (textMm + COLUMN_GAP_MM) / widthMm) }
  })
  const sum = (some: readonly Column[]) => some.reduce((total, { share }) => total + share, 0)
  const [asLines, rest] = [sized.filter(isAsLines), sized.filter(column => !isAsLines(column))]
  const wider = rest.length === 0 ? asLines : rest
  const scale = (1 - sum(sized) + sum(wider)) / sum(wider)
  const scaled = sized.map(column =>
    wider.includes(column) ? { ...column, share: column.share * scale } : column,
  )
  const neededShare = ({ heading, of }: Column) =>
    (widest(heading, words.flatMap(of)) + COLUMN_GAP_MM) / widthMm
  return givenToBroken(scaled, neededShare)
}

/** Columns whose lines leave them room give it to those whose lines are broken. */
function givenToBroken(
  columns: readonly Column[],
  neededShare: (column: Column) => number,
): readonly Column[] {
  const isBroken = (column: Column) => !isAsLines(column) && neededShare(column) > column.share + 1e-9
  const takers = columns.filter(isBroken)
  if (takers.length === 0) return columns
  const spare = (column: Column) =>
    isAsLines(column) || isBroken(column) ? 0 : column.share - neededShare(column)
  const given = columns.reduce((sum, column) => sum + spare(column), 0) / takers.length
  return columns.map(column => ({
    ...column,
    share: isBroken(column) ? column.share + given : column.share - spare(column),
  }))
}

function isAsLines({ asItsLines }: Column): boolean {
  return asItsLines === true
}

interface Widths {
  readonly widthMm: number
  /** Of the longest line, and of the heading on two lines. */
  readonly widest: (heading: string, lines: readonly string[]) => number
}

/** On narrow pages, everything one under another. */
function oneColumn(columns: readonly Column[]): readonly Column[] {
  const of = (word: Word) => columns.flatMap(column => column.of(word)).filter(text => text !== '')
  return [{ heading: '', share: 1, of }]
}

/** Between one column and the next. */
const COLUMN_GAP_MM = 2

/** Nothing is shortened: a word's row grows with what is said of it. */
export function wordFacts({
  words,
  type,
  measure,
}: Pick<LayoutRequest, 'words' | 'type' | 'measure'>): WordFacts {
  const style: TextStyle = { sizeMm: type.adultTextMm * 0.9 }
  const bold: TextStyle = { ...style, weight: 700 }
  const columns = columnsFor(words)
  const roomOf = ({ share }: Column, widthMm: number) => widthMm * share - COLUMN_GAP_MM
  const widest = (heading: string, lines: readonly string[]) =>
    // A hair more, lest rounding break the line.
    0.1 +
    Math.max(
      ...halvesOf(heading).map(half => measure(half, bold.sizeMm, 700)),
      ...lines.map(line => measure(line, style.sizeMm)),
    )
  /** Whether no word in a column has to be broken. */
  const nothingBreaks = (columns: readonly Column[], widthMm: number) =>
    columns.every(column => {
      const said = words.flatMap(column.of).flatMap(text => text.split(/\s+|(?<=[·-])/))
      const fits = (part: string, { sizeMm, weight }: TextStyle) =>
        measure(part, sizeMm, weight) <= roomOf(column, widthMm)
      return (
        said.every(part => fits(part, style)) && column.heading.split(' ').every(part => fits(part, bold))
      )
    })
  const onOneLine = (column: Column, roomMm: number): Column => {
    const { inOne } = column
    if (inOne === undefined || words.some(word => measure(inOne(word), style.sizeMm) > roomMm)) return column
    return { ...column, of: word => [inOne(word)] }
  }
  const chosen = new Map<number, readonly Column[]>()
  const columnsAt = (widthMm: number) => {
    const known = chosen.get(widthMm)
    if (known !== undefined) return known
    const shared = sharedOut(columns, { words, widthMm, widest })
    const found = nothingBreaks(shared, widthMm)
      ? shared.map(column => onOneLine(column, roomOf(column, widthMm)))
      : oneColumn(columns)
    chosen.set(widthMm, found)
    return found
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

/** The words of a heading on two lines, as even as they go. */
function halvesOf(heading: string): readonly string[] {
  const words = heading.split(' ')
  const ways = words.map((_, at) => [words.slice(0, at).join(' '), words.slice(at).join(' ')])
  const longer = (way: readonly string[]) => Math.max(...way.map(({ length }) => length))
  return ways.reduce((best, way) => (longer(way) < longer(best) ? way : best))
}

function pluralOf({ plural }: Word): readonly string[] {
  if (plural === null) return [NO_PLURAL]
  return [[plural.form, ...(plural.alternatives ?? [])].join(' or '), plural.rule]
}

function pluralInOne(word: Word): string {
  const [forms, rule] = pluralOf(word)
  return rule === undefined ? forms! : `${forms} (${rule})`
}

/** Children see no difference; their teacher does. */
function weekOf({ backAfterWeeks: weeks }: Word): string {
  return weeks === undefined ? '' : weeksAgoInWords(weeks)
}

/** A draft is called one on her list, so that she reads it before the children do. */
function clueOnList({ clue = '', clueIsDraft }: Word): string {
  return clueIsDraft === true ? `${clue} (draft)` : clue
}
