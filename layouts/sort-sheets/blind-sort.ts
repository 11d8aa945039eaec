import type { Size } from '../../src/geometry.js'
import { tableRows, textRow, whiteRow } from '../../src/pieces/parts/table-rows.js'
import { orderWithoutHints } from '../../src/sets/sorts/order-without-hints.js'
import type { Word } from '../../src/words/word.js'
import { grownUpPages } from '../grown-up-pages.js'
import { defineLayout, type PageFace } from '../layout.js'
import { talkOver } from '../sort-talk.js'
import {
  type ChosenHeadings,
  chooseHeadings,
  headingOptions,
  roomierHeadings,
  type SortRequest,
} from './chosen-headings.js'
import { linesFor, sheetFaces, sheetSet } from './sort-sheet.js'

/** A sheet to write on: the teacher reads the words, the children write each under its heading. */
export const blindSort = defineLayout({
  kind: 'pieces',
  name: 'blind-sort',
  summary: 'a sheet to write on: you read the words, the children hear them and write each under its heading',
  inWeek: { day: 'check', given: 'each child' },
  options: headingOptions,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request =>
    sheetSet(request, chosen => ({
      answerData: readings(request, chosen).map(({ word, title }) => ({ prompt: word.text, answer: title })),
    })),
  roomier: roomierHeadings,
  faces: (request, set, size) =>
    sheetFaces(request, set, size, headings => ({ linesEach: linesFor(headings), named: true, asked: [] })),
  pages: readersPages,
})

interface Reading {
  readonly word: Word
  /** Of the column in which it belongs. */
  readonly title: string
}

/** The words in the order in which they are read, which gives no column away. */
function readings(
  { words, plan, itemName }: SortRequest,
  { sort, headings }: ChosenHeadings,
): readonly Reading[] {
  const titleOf = new Map(
    headings.flatMap(({ title, words: own }) => own.map(text => [text, title] as const)),
  )
  const order = orderWithoutHints({
    words: words.filter(({ text }) => titleOf.has(text)),
    sorts: [sort],
    seed: plan.seed,
    label: itemName,
  })
  return order.map(word => ({ word, title: titleOf.get(word.text)! }))
}

function readersPages(request: SortRequest, _set: unknown, room: Size): readonly PageFace[] {
  const chosen = chooseHeadings(request)
  if (!chosen.ok) return []
  const { type, measure } = request
  const { rated, sort, headings } = chosen.value
  const read = readings(request, chosen.value)
  const hasClues = read.some(({ word }) => word.clue !== undefined)
  const paragraph = (said: string) =>
    textRow(said, { style: { sizeMm: type.adultTextMm }, widthMm: room.widthMm, measure })
  const keyWords = headings.flatMap(({ title, keyWord }) =>
    keyWord === undefined ? [] : [`“${keyWord.text}” for ${title}`],
  )
  const rows = [
    paragraph(
      'The children see none of the words. Read each one twice, with its clue or in a sentence; they write it under the heading where they think that it belongs. Then show the word, let them check it, and ask how they knew.',
    ),
    ...(keyWords.length === 0 ? [] : [paragraph(`The key words: ${keyWords.join(', ')}.`)]),
    whiteRow(type.adultTextMm * 0.5),
    ...tableRows({
      columns: [
        { heading: '', share: 0.06 },
        { heading: 'read', share: 0.24 },
        ...(hasClues ? [{ heading: 'clue', share: 0.4 }] : []),
        { heading: 'belongs under', share: hasClues ? 0.3 : 0.7 },
      ],
      cells: read.map(({ word, title }, index) => [
        String(index + 1),
        word.text,
        ...(hasClues ? [word.clue ?? ''] : []),
        title,
      ]),
      widthMm: room.widthMm,
      textMm: type.adultTextMm,
      measure,
    }),
    ...(sort.leftoverReasons.length === 0 ? [] : [whiteRow(type.adultTextMm * 0.5)]),
    ...sort.leftoverReasons.map(({ word, why }) => paragraph(`${word} ${why}.`)),
    ...talkOver(request, room.widthMm)(rated, 'When the words lie there, to talk over:'),
  ]
  return grownUpPages(request, { kind: 'answers', what: 'to read aloud', rows, room })
}
