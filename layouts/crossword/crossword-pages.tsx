import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import type { PageFace } from '../layout.js'
import { boardPlan } from './board-plan.js'
import { cluesOf } from './clue-lists.js'
import { cellSide, cellsHeight, drawCrossword } from './crossword-art.js'
import type { CrosswordRequest } from './crossword-options.js'

/** A solved grid on the answer page, at most. */
const ANSWER_MM = 96
const ANSWER_CELL_MM = 9

/** The clues where the board has no room for them, how it is played, and the answers. */
export function crosswordPages(request: CrosswordRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { type, typeface, measure } = request
  const first = set.cards.filter(card => card.copy === 1)
  const row = (text: string, sizeMm: number, weight: 400 | 700 = 400): Row =>
    textRow(text, { style: { sizeMm, weight }, widthMm: room.widthMm, measure })
  const named = (number: number, way: 'across' | 'down') =>
    first.length > 1 ? `Grid ${number}, ${way}` : way === 'across' ? 'Across' : 'Down'
  const clueRows = first.flatMap(({ number, crossword }): Row[] => [
    { ...row(named(number, 'across'), type.listTextMm, 700), keepsWithNext: true },
    ...cluesOf(crossword!.entries, false).map(clue => row(clue, type.listTextMm)),
    { ...row(named(number, 'down'), type.listTextMm, 700), keepsWithNext: true },
    ...cluesOf(crossword!.entries, true).map(clue => row(clue, type.listTextMm)),
  ])
  const answers = first.flatMap(({ number, crossword }): Row[] => {
    const name = `answer ${number}`
    const mostMm = cellSide(crossword!, { ...room, heightMm: ANSWER_MM }, ANSWER_CELL_MM)
    const gridMm = cellsHeight(crossword!, mostMm)
    const draw = (box: Size) =>
      drawCrossword({ crossword: crossword!, room: box, typeface, leastMm: 0, mostMm, letters: 'all' })
    const solved = (down: boolean) =>
      crossword!.entries
        .filter(entry => entry.down === down)
        .map(entry => `${entry.number} ${entry.word.text}`)
        .join(', ')
    return [
      {
        heightMm: gridMm + 4,
        keepsWithNext: true,
        slots: { [name]: { kind: 'art', draw } },
        tree: <Slot name={name} style={{ width: '100%', height: mm(gridMm) }} />,
      },
      { ...row(`${named(number, 'across')}: ${solved(false)}`, type.adultTextMm), keepsWithNext: true },
      row(`${named(number, 'down')}: ${solved(true)}`, type.adultTextMm),
    ]
  })
  return [
    ...(boardPlan(request, set).clues === undefined
      ? grownUpPages(request, { kind: 'list', what: 'clues', rows: clueRows, room })
      : []),
    ...howToPlayPages(
      request,
      {
        play: [
          'Read a clue. The number behind it, in ( ), tells how many letters its word has.',
          'Find the number of the clue in the grid.',
          'Write the word, one letter in each box: to the right for “across”, downwards for “down”.',
          'Words that cross share a letter. All boxes full? Check with the answers.',
        ],
        prepare: 'one sheet for each child or pair, and a pencil.',
        help: 'the answer page shows the grid filled in.',
        easier: 'give the list of words beside it, or print the item with help: first letters.',
        harder: 'cover the numbers in brackets, or let the children write new clues for each other.',
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows: answers, room }),
  ]
}
