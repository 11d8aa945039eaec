import type { Size } from '../../src/geometry.js'
import { andThen, succeed } from '../../src/outcomes.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { tableRows, textRow, whiteRow } from '../../src/pieces/parts/table-rows.js'
import { gridSize, option, wholeNumber } from '../../src/plan/values/options.js'
import type { Outcome } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { patternBingo as patternBoards } from '../../src/sets/games/pattern-bingo.js'
import type { Kind } from '../../src/sets/games/pattern-shares.js'
import type { Sort } from '../../src/sets/sorts/sort.js'
import { numberOf } from '../board-number.js'
import { chooseSort, sortOption, sortsFor } from '../chosen-sort.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { inParts, joiningTold, moreSheets, sheetsOf, sheetsOption } from '../joined-sheets/joined-sheets.js'
import { defineLayout, type PageFace, type RequestWith, type RoomierOptions } from '../layout.js'
import { boardsOf, boardsOption } from '../one-board-each.js'
import { smallerGrids } from '../word-grid/smaller-grids.js'
import { wordGridFace } from '../word-grid/word-grid-face.js'

const options = {
  ...boardsOption('how many boards are dealt', 200),
  grid: option('columns x rows of a board', gridSize(2, 7, undefined), {
    usual: 'the largest that the words fill',
  }),
  answers: option('how many words on each board answer a call', wholeNumber(1, 20, undefined), {
    example: '2',
    usual: 'as many as fill the board',
  }),
  sort: option('the sort whose kinds are called', sortOption.sort, {
    usual: 'the first that oaktag sorts shows',
  }),
  ...sheetsOption,
}

type PatternRequest = RequestWith<typeof options>

/** Boards for a game in which a kind of word is called, and each board has as many words of each kind as any other. */
export const patternBingo = defineLayout({
  kind: 'pieces',
  name: 'pattern-bingo',
  summary: 'boards for a game in which kinds of words are called: a pattern, a vowel, a number of sounds',
  inWeek: { day: 'centres', given: 'once' },
  options,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: patternSet,
  roomier: smallerBoards,
  face: (request, card, set, size) => wordGridFace(request, { card, set, size }),
  pages: patternPages,
})

/** Boards of the sort that the teacher names; else of the best of which two kinds can be called. */
function patternSet(request: PatternRequest): Outcome<CardSet> {
  const { sort: name } = request.options
  const ranked = name === undefined ? sortsFor(request) : []
  for (const sort of ranked) {
    const boards = boardsFor(request, sort)
    if (boards.ok) return boards
  }
  return andThen(chooseSort(request, name), sort => boardsFor(request, sort))
}

function boardsFor(request: PatternRequest, sort: Sort): Outcome<CardSet> {
  const { words, item, options, plan, itemName } = request
  const byText = new Map(words.map(word => [word.text, word]))
  const kinds = sort.columns
    // “No digraph” is nothing to listen for.
    .filter(({ without }) => without !== true)
    .map(({ title, words: texts }): Kind => ({ title, words: texts.map(text => byText.get(text)!) }))
  const dealt = patternBoards({
    kinds,
    grid: options.grid,
    answers: options.answers,
    boards: boardsOf(request),
    copies: item.copies,
    seed: plan.seed,
    label: itemName,
    place: item.place,
  })
  return andThen(dealt, set =>
    succeed({
      ...set,
      cards: inParts(set.cards, sheetsOf(options)),
      notes: [`The words differ by ${sort.basis}.`, ...(set.notes ?? [])],
    }),
  )
}

/** Boards with fewer and larger cells. */
function smallerBoards(request: PatternRequest): readonly RoomierOptions<PatternRequest['options']>[] {
  const { grid: asked } = request.options
  const smaller = smallerGrids(asked ?? { columns: 5, rows: 5 }, 2).map(grid => ({
    options: { grid },
    says: `grid: ${grid.columns}x${grid.rows}`,
    open: asked === undefined,
  }))
  return [...smaller, ...moreSheets(request.options, false)]
}

function patternPages(request: PatternRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { options } = request
  const boards = boardsOf(request)
  const rows = callersRows(request, set, room.widthMm)
  return [
    ...grownUpPages(request, { kind: 'caller', what: 'caller’s sheet', rows, room }),
    ...howToPlayPages(
      request,
      {
        play: [
          'Listen to what is called.',
          'Find one word of that kind on your board. Read it. Cover it.',
          'Cover one word for each call. You may choose which.',
          `${goalOn(set.cards[0]!)}? Call “bingo!” and read it aloud.`,
        ],
        prepare: `${joiningTold(sheetsOf(options))}${boards === 1 ? 'the board' : `${boards} boards, one for each child or pair`}; counters or scraps of paper, and the caller’s sheet. Counters are small parts: not for children under three.`,
        help: 'the caller’s sheet has the calls in order and the words of each kind: to check a shout, count: no more words of a kind may be covered than times it was called.',
        easier: 'show a word of the kind with each call.',
        harder: 'let the children say a word of the kind that stands on no board.',
      },
      room,
    ),
  ]
}

function goalOn({ cells }: Card): string {
  const [columns, rows] = [cells![0]!.length, cells!.length]
  if (columns === rows) return 'A full line across, down or from corner to corner'
  if (columns < 3 || rows < 3) return columns > rows ? 'A full line across' : 'A full line down'
  return 'A full line across or down'
}

function callersRows(request: PatternRequest, set: CardSet, widthMm: number): readonly Row[] {
  const { type, measure } = request
  const { callOrder, wins } = set.deal!
  const table = { widthMm, textMm: type.adultTextMm, measure }
  const paragraph = (text: string) => textRow(text, { style: { sizeMm: type.adultTextMm }, widthMm, measure })
  const winners = (call: number) => wins.filter(win => win.call === call).map(({ board }) => numberOf(board))
  return [
    paragraph(
      'Call the kinds from the top down and cross out each one. Whoever has a word of the kind covers it.',
    ),
    ...tableRows({
      ...table,
      columns: [
        { heading: 'call', share: 0.1 },
        { heading: 'say', share: 0.4 },
        { heading: 'boards that can have a line now', share: 0.5 },
      ],
      cells: callOrder.map((title, index) => [String(index + 1), title, winners(index + 1).join(', ')]),
    }),
    whiteRow(type.adultTextMm),
    ...tableRows({
      ...table,
      columns: [
        { heading: 'kind', share: 0.3 },
        { heading: 'its words', share: 0.7 },
      ],
      cells: (set.kinds ?? []).map(({ title, words }) => [title, words.join(', ')]),
    }),
    whiteRow(type.adultTextMm),
    ...(set.notes ?? []).map(paragraph),
  ]
}
