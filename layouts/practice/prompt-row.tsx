/** A numbered prompt with room for its answer beside it or, where print is large, below it. */
import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../src/geometry.js'
import type { WordSlot } from '../../src/pieces/faces/face.js'
import { mm, type SlotContent } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { drawWritingLine, WritingLine } from '../../src/pieces/parts/rules.js'
import { leftsOf } from '../../src/pieces/parts/table-rows.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'
import { leastRoom, listSlot } from '../word-lists/list-measure.js'
import { leastLabelled, leastWriting } from '../writing/writing-lines.js'
import { childTextMm, childWordMm, type PromptsOnPage } from './practice-kind.js'
import type { PracticeRequest } from './practice-options.js'

/** How the rows of a page are divided. */
export interface PromptColumns {
  readonly numberMm: number
  readonly promptMm: number
  /** Between the prompt and the room for the answer. */
  readonly gapMm: number
  readonly answerMm: number
  /** The answer stands below the prompt, over the whole width. */
  readonly stacked: boolean
}

/** Of the width, for the prompt. */
const USUAL_SHARE = 0.34
const MOST_SHARE = 0.56
const GAP_MM = 5
/** Between a prompt's number and its word, at least and in ems. */
const LEAST_NUMBER_GAP_MM = 3
const NUMBER_GAP = 0.35

/** @param besideMm what stands behind the word of a prompt, such as its ending */
export function wordColumns(
  request: PracticeRequest,
  { room: { widthMm }, leastWord }: Pick<PromptsOnPage, 'room' | 'leastWord'>,
  besideMm = 0,
): PromptColumns {
  const leastMm = leastWord.widthMm + besideMm
  return columnsOf(request, { widthMm, wishedMm: Math.max(widthMm * USUAL_SHARE, leastMm) })
}

/** Columns whose prompt has this width, as far as there is room for it beside the answer. */
export function columnsOf(
  request: PracticeRequest,
  { widthMm, wishedMm }: { readonly widthMm: number; readonly wishedMm: number },
): PromptColumns {
  const textMm = childTextMm(request)
  const numberMm = request.measure('99', textMm) + Math.max(LEAST_NUMBER_GAP_MM, textMm * NUMBER_GAP)
  const stacked = wishedMm > (widthMm - numberMm) * MOST_SHARE
  const promptMm = stacked ? widthMm - numberMm : wishedMm
  const answerMm = stacked ? promptMm : widthMm - numberMm - promptMm - GAP_MM
  return { numberMm, promptMm, gapMm: stacked ? 0 : GAP_MM, answerMm, stacked }
}

/** What the words need at the smallest size that may be printed, with their marks where the item asks for these. */
export function roomForWords(request: LayoutRequest, words: readonly Word[]): Size {
  return leastRoom({ ...request, words, marks: request.marked ? request.marks : [] })
}

/** A word of the list, bare unless the item asks for marks. */
export function promptSlot({ marked }: LayoutRequest, word: Word): WordSlot {
  return { ...listSlot(word, marked), sizedAsMarked: marked }
}

/** What stands in a row's prompt or in its room for the answer. */
export interface RowPart {
  readonly tree: JSXNode
  readonly slots: Readonly<Record<string, SlotContent>>
}

export interface PromptRow {
  readonly number: number
  readonly columns: PromptColumns
  /** Of the prompt, and of the answer below or beside it. */
  readonly promptHeightMm: number
  readonly answerHeightMm: number
  readonly prompt: RowPart
  readonly answer: RowPart
  /** The word whose baseline the number stands on. */
  readonly levelWith?: string
  /** How far from the top the number stands where the prompt is no word. */
  readonly topMm?: number
}

export function promptRow(request: PracticeRequest, row: PromptRow): Row {
  const { number, columns, promptHeightMm, answerHeightMm, prompt, answer, levelWith, topMm = 0 } = row
  const { numberMm, promptMm, gapMm, answerMm, stacked } = columns
  const name = `number ${number}`
  const style: TextStyle = { sizeMm: childTextMm(request), color: '#595959' }
  const heightMm = stacked ? promptHeightMm + answerHeightMm : Math.max(promptHeightMm, answerHeightMm)
  const level: Readonly<Record<string, SlotContent>> =
    levelWith === undefined ? {} : { [name]: { kind: 'text', levelWith, lines: [String(number)], style } }
  return {
    heightMm,
    ...(stacked ? {} : { cells: { leftsMm: leftsOf([numberMm, promptMm + gapMm, answerMm]), headings: 1 } }),
    slots: { ...level, ...prompt.slots, ...answer.slots },
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%' }}>
        {levelWith === undefined ? (
          <Lines lines={[String(number)]} style={style} box={{ width: mm(numberMm), marginTop: mm(topMm) }} />
        ) : (
          <Slot name={name} style={{ width: mm(numberMm), height: mm(promptHeightMm), flexShrink: 0 }} />
        )}
        <div style={{ display: 'flex', flexDirection: stacked ? 'column' : 'row', height: '100%' }}>
          <div
            style={{
              display: 'flex',
              width: mm(promptMm),
              height: mm(stacked ? promptHeightMm : heightMm),
              flexShrink: 0,
              marginRight: mm(gapMm),
            }}
          >
            {prompt.tree}
          </div>
          <div
            style={{
              display: 'flex',
              width: mm(answerMm),
              height: mm(stacked ? answerHeightMm : heightMm),
              flexShrink: 0,
            }}
          >
            {answer.tree}
          </div>
        </div>
      </div>
    ),
  }
}

/** The word of a prompt, bare unless the item asks for marks. */
export function wordPart(
  request: PracticeRequest,
  word: Word,
  { name, heightMm, widthMm }: { readonly name: string; readonly heightMm: number; readonly widthMm: number },
): RowPart {
  const slot = { ...promptSlot(request, word), maximumMm: wordSizeIn(request, heightMm) }
  return {
    slots: { [name]: slot },
    tree: <Slot name={name} style={{ width: mm(widthMm), height: '100%' }} />,
  }
}

/** Of a row's height, for the em of its word; more than a child writes would be wasted. */
const WORD_SHARE = 0.55
const LARGER = 1.25

function wordSizeIn(request: PracticeRequest, heightMm: number): number {
  return Math.min(heightMm * WORD_SHARE, mostWordMm(request))
}

/** Of a prompt's word, however high its row. */
export function mostWordMm(request: PracticeRequest): number {
  return childWordMm(request) * LARGER
}

/** A line to write on, level with a word. */
export function linePart(name: string, levelWith: string): RowPart {
  return {
    slots: { [name]: { kind: 'art', levelWith, draw: drawWritingLine } },
    tree: <Slot name={name} style={{ width: '100%', height: '100%' }} />,
  }
}

/** A line to write on, so far below the top of its place. */
export function lineAt(depthMm: number): RowPart {
  return {
    slots: {},
    tree: (
      <div style={{ display: 'flex', width: '100%', height: mm(depthMm), alignItems: 'flex-end' }}>
        <WritingLine />
      </div>
    ),
  }
}

/** A row of prompts is no higher than this, however much room there is: the next prompt would be far away. */
const MOST_ROW_MM = 19
const MOST_LARGE_ROW = 1.5

interface RowsInRoom {
  readonly count: number
  readonly roomMm: number
  readonly leastMm: number
  readonly mostMm?: number
}

/** As high as fills the page with them, between what a child needs to write and what looks lost. */
export function rowHeightFor(
  request: PracticeRequest,
  { count, roomMm, leastMm, mostMm: wishedMm = MOST_ROW_MM }: RowsInRoom,
): number {
  const mostMm = Math.max(wishedMm, leastMm * MOST_LARGE_ROW)
  const least = Math.max(leastMm, leastLabelled(request.type), leastWriting(request.type))
  return Math.max(least, Math.min(mostMm, roomMm / Math.max(1, count) - ROUNDING_MM))
}

/** Kept free, so that rows that share a page exactly are not held to be too high for it. */
const ROUNDING_MM = 0.05

/** Heads over the columns of prompts. */
export function columnHeads(
  request: PracticeRequest,
  heads: readonly { readonly text: string; readonly widthMm: number }[],
): Row {
  const style: TextStyle = { sizeMm: childTextMm(request), weight: 700 }
  const widths = heads.map(({ widthMm }) => widthMm)
  const broken = heads.map(({ text, widthMm }) => breakLines(text, widthMm - 1, style, request.measure))
  const most = Math.max(1, ...broken.map(({ length }) => length))
  return {
    heightMm: linesHeight(most, style.sizeMm),
    heads: true,
    cells: { leftsMm: leftsOf(widths), headings: 'all' },
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'flex-end' }}>
        {broken.map((lines, index) => (
          <Lines lines={lines} style={style} box={{ width: mm(widths[index]!) }} />
        ))}
      </div>
    ),
  }
}
