import type { Size } from '../../src/geometry.js'
import { pathText, rectangle } from '../../src/pieces/art/path-text.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { leftsOf, type TableColumn, tableRows, textRow, whiteRow } from '../../src/pieces/parts/table-rows.js'
import type { Art } from '../../src/pieces/piece.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { grownUpPages } from '../grown-up-pages.js'
import type { PageFace } from '../layout.js'
import { type DictationRequest, sentenceOf } from './dictation-options.js'
import { type CountedPattern, countedPatterns, countedPlaces, pointsOf } from './points.js'

/** What the teacher reads, how she counts, and where she keeps it: on paper alone. */
export function dictationPages(request: DictationRequest, _set: CardSet, room: Size): readonly PageFace[] {
  const patterns = countedPatterns(request)
  const page = (kind: PageFace['kind'], what: string, rows: readonly Row[]) =>
    grownUpPages(request, { kind, what, rows, room })
  return [
    ...page('caller', 'to read aloud', readersRows(request, room.widthMm)),
    ...page('answers', 'answers and points', answerRows(request, patterns, room.widthMm)),
    ...page('list', 'class record', recordRows(request, patterns, room)),
  ]
}

function paragraphOf({ type, measure }: DictationRequest, widthMm: number): (text: string) => Row {
  return text => textRow(text, { style: { sizeMm: type.adultTextMm }, widthMm, measure })
}

function readersRows(request: DictationRequest, widthMm: number): readonly Row[] {
  const { words, type, measure } = request
  const sentences = words.map(word => sentenceOf(request, word))
  const hasSentences = sentences.some(sentence => sentence !== undefined)
  const hasClues = words.some(({ clue }) => clue !== undefined)
  const columns: readonly TableColumn[] = [
    { heading: '', share: 0.06 },
    { heading: 'word', share: 0.2 },
    ...(hasClues ? [{ heading: 'clue', share: hasSentences ? 0.3 : 0.74 }] : []),
    ...(hasSentences ? [{ heading: 'sentence', share: hasClues ? 0.44 : 0.74 }] : []),
  ]
  return [
    paragraphOf(
      request,
      widthMm,
    )(
      `Say the number and the word, say it in a sentence${hasClues ? ' or give its clue' : ''}, and say the word again. Wait until all have written.${hasSentences ? ' Where a sentence stands here, the children write it on the lines below the word.' : ''}`,
    ),
    whiteRow(type.adultTextMm * 0.5),
    ...tableRows({
      columns,
      cells: words.map((word, index) => [
        String(index + 1),
        word.text,
        ...(hasClues ? [word.clue ?? ''] : []),
        ...(hasSentences ? [sentences[index] ?? ''] : []),
      ]),
      widthMm,
      textMm: type.adultTextMm,
      measure,
    }),
  ]
}

function answerRows(
  request: DictationRequest,
  patterns: readonly CountedPattern[],
  widthMm: number,
): readonly Row[] {
  const { words, type, measure } = request
  const paragraph = paragraphOf(request, widthMm)
  const most = words.reduce((sum, word) => sum + pointsOf(word, patterns), 0)
  return [
    paragraph(
      patterns.length === 0
        ? `A point for each word. The plan marks no pattern, so none counts by itself; ${most} points in all.`
        : `A point for each pattern that is spelled right, wherever the word is wrong elsewhere, and one more for the whole word: ${most} points in all.`,
    ),
    whiteRow(type.adultTextMm * 0.5),
    ...tableRows({
      columns: [
        { heading: '', share: 0.06 },
        { heading: 'word', share: 0.24 },
        { heading: 'a point each for', share: 0.55 },
        { heading: 'points', share: 0.15 },
      ],
      cells: words.map((word, index) => [
        String(index + 1),
        word.text,
        [
          ...countedPlaces(word, patterns).map(({ letters, label }) => `${letters} (${label})`),
          'the word',
        ].join(', '),
        String(pointsOf(word, patterns)),
      ]),
      widthMm,
      textMm: type.adultTextMm,
      measure,
    }),
  ]
}

/** A class and a few who come later: our own judgement, no source. */
const NAMES = 28
const NAME_ROW_MM = 7.5
const NAME_SHARE = 0.28
const HAIRLINE_MM = 0.25

function recordRows(
  request: DictationRequest,
  patterns: readonly CountedPattern[],
  room: Size,
): readonly Row[] {
  const { words, type, measure } = request
  const share = (1 - NAME_SHARE) / (patterns.length + 1)
  const columns: readonly TableColumn[] = [
    { heading: 'name', share: NAME_SHARE },
    ...patterns.map(({ label, places }) => ({ heading: `${label}, of ${places}`, share })),
    { heading: `words, of ${words.length}`, share },
  ]
  const { widthMm } = room
  const lefts = leftsOf(columns.map(column => column.share * widthMm))
  const nameRow = (index: number): Row => ({
    heightMm: NAME_ROW_MM,
    underHeads: true,
    slots: {
      [`name ${index}`]: { kind: 'art', draw: box => drawRecordRow(box, lefts) },
    },
    tree: <Slot name={`name ${index}`} style={{ width: '100%', height: mm(NAME_ROW_MM) }} />,
  })
  return [
    paragraphOf(
      request,
      widthMm,
    )(
      'How many of each pattern a child spelled right. A column of low numbers is what to teach again. Keep it where your school keeps such records; the tool keeps nothing of it.',
    ),
    ...tableRows({ columns, cells: [], widthMm, textMm: type.adultTextMm, measure }),
    ...Array.from({ length: NAMES }, (_, index) => nameRow(index)),
  ]
}

/** A row's line at its foot, with a stroke where each column begins. */
function drawRecordRow({ widthMm, heightMm }: Size, leftsMm: readonly number[]): Art {
  const bars = [
    rectangle(0, heightMm - HAIRLINE_MM, widthMm, heightMm),
    ...leftsMm.slice(1).map(left => rectangle(left - 2, 0, left - 2 + HAIRLINE_MM, heightMm)),
  ]
  return {
    widthMm,
    heightMm,
    shapes: [{ kind: 'path', d: pathText(bars.flat()), fill: '#737373' }],
    text: [],
  }
}
