import type { Size } from '../../src/geometry.js'
import { pointsToMm } from '../../src/geometry.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { emForXHeight, REFERENCE_X_HEIGHT } from '../../src/pieces/text/type-size.js'
import type { Practice, PracticeItem } from '../../src/sets/practice/practice.js'
import type { LayoutRequest } from '../layout.js'
import type { PracticeRequest } from './practice-options.js'

/** What a child's page shows of some of its prompts. */
export interface PromptsOnPage<P extends Practice = Practice> {
  readonly practice: P
  readonly items: readonly PracticeItem[]
  /** What the practice's words need at the smallest size that may be printed. */
  readonly leastWord: Size
  /** The number of the first. */
  readonly from: number
  /** Of a page, under the heading and the line that tells what to do. */
  readonly room: Size
  /** What the rows are to fill: as much as that, or where they take several pages, more. */
  readonly fillMm: number
}

/** One way of practising: what is asked, what the child's page looks like, what the teacher is told. */
export interface PracticeKind<P extends Practice = Practice> {
  /** Over the child's page. */
  readonly title: string
  /** One line for the child; each of its sentences is short. */
  readonly task: (request: PracticeRequest, practice: P) => string
  readonly practice: (request: PracticeRequest) => P
  /** What is said where nothing can be asked. */
  readonly nothing: { readonly message: string; readonly advice: string }
  readonly rows: (request: PracticeRequest, prompts: PromptsOnPage<P>) => readonly Row[]
  /** Over prompts and answers on the teacher's page. */
  readonly heads: readonly [prompt: string, answer: string]
  /** What the teacher should know of the page, in whole sentences. */
  readonly about?: (request: PracticeRequest, practice: P) => readonly string[]
  /** Instead of the table of prompts and answers. */
  readonly answerRows?: (request: PracticeRequest, practice: P, widthMm: number) => readonly Row[]
}

type SizedRequest = Pick<LayoutRequest, 'type' | 'typeface'>

/** What a child reads on her page beside the words of the list: our own judgement, no source. */
const TEXT_PT = 13
/** Words that she copies or chooses from: the same. */
const WORD_PT = 18

export function childTextMm({ type, typeface }: SizedRequest): number {
  return type.large ? type.textMm : emForXHeight(typeface, pointsToMm(TEXT_PT) * REFERENCE_X_HEIGHT)
}

export function childWordMm({ type, typeface }: SizedRequest): number {
  const usualMm = emForXHeight(typeface, pointsToMm(WORD_PT) * REFERENCE_X_HEIGHT)
  return Math.max(type.wordMinimumMm, type.large ? 0 : usualMm)
}
