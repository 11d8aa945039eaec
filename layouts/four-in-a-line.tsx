import type { ColumnsAndRows, Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import { gridSize, option, wholeNumber } from '../src/plan/values/options.js'
import { wordGridBoards } from '../src/sets/games/word-grid.js'
import { howToPlayPages } from './how-to-play.js'
import { inParts, joiningTold, moreSheets, sheetsOf, sheetsOption } from './joined-sheets/joined-sheets.js'
import { defineLayout, type RequestWith, type RoomierOptions } from './layout.js'
import { smallerGrids } from './word-grid/smaller-grids.js'
import { wordGridFace } from './word-grid/word-grid-face.js'
import { shownWithWords, wordOptions } from './word-options.js'

const options = {
  grid: option('columns x rows of the board', gridSize(4, 9, undefined), {
    example: '6x6',
    usual: '6x6, and 5x5 in large print',
  }),
  boards: option('how many boards, the words in other places', wholeNumber(1, 40, 1)),
  ...sheetsOption,
  ...wordOptions,
}

type LineRequest = RequestWith<typeof options>

/** A board of words for two, who cover what they have read and try for four beside one another. */
export const fourInALine = defineLayout({
  kind: 'pieces',
  name: 'four-in-a-line',
  summary: 'a board of words for two players: read a word, cover it, and be the first with four in a line',
  inWeek: { day: 'centres', given: 'each pair' },
  options,
  marks: 'none',
  shownWithWords,
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => {
    const { words, item, options, itemName, plan } = request
    const cards = wordGridBoards({
      ...gridOf(request),
      words,
      line: 'none',
      boards: options.boards,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
    })
    return succeed({ cards: inParts(cards, sheetsOf(options)) })
  },
  roomier: roomierGrids,
  face: (request, card, set, size) => wordGridFace(request, { card, set, size }),
  pages: (request, _set, room: Size) =>
    howToPlayPages(
      request,
      {
        play: [
          'Choose a word that is still free and read it aloud.',
          'Cover it with one of your counters. Now it is the other player’s turn.',
          'Four of yours in a line, across, down or on a slant? You win.',
          'Is the board full? Nobody wins. Swap who begins and play again.',
        ],
        prepare: `${joiningTold(sheetsOf(request.options))}one board for two players, and eighteen counters of one kind for each of them. Counters are small parts: not for children under three.`,
        help: 'a word that was read wrongly is read together, and stays free for the next turn.',
        easier: 'three in a line win, or read the words of the board together first.',
        harder: 'say a sentence with the word, or spell it with eyes shut, before it is covered.',
      },
      room,
    ),
})

const USUAL: Readonly<Record<'normal' | 'large', ColumnsAndRows>> = {
  normal: { columns: 6, rows: 6 },
  large: { columns: 5, rows: 5 },
}

function gridOf({ options, type }: LineRequest): ColumnsAndRows {
  return options.grid ?? USUAL[type.large ? 'large' : 'normal']
}

/** Four must still go into a line. */
function roomierGrids(request: LineRequest): readonly RoomierOptions<LineRequest['options']>[] {
  const smaller = smallerGrids(gridOf(request), 4).map(grid => ({
    options: { grid },
    says: `grid: ${grid.columns}x${grid.rows}`,
    open: request.options.grid === undefined,
  }))
  return [...smaller, ...moreSheets(request.options, false)]
}
