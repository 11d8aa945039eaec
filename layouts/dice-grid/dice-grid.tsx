import type { ColumnsAndRows, Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { choice, option, wholeNumber } from '../../src/plan/values/options.js'
import { errorAt, type Problem } from '../../src/problems.js'
import { wordGridBoards } from '../../src/sets/games/word-grid.js'
import { howToPlayPages } from '../how-to-play.js'
import { inParts, joiningTold, moreSheets, sheetsOf, sheetsOption } from '../joined-sheets/joined-sheets.js'
import { defineLayout, type RequestWith, type RoomierOptions } from '../layout.js'
import { type GridHeads, reachesEachSheet } from '../word-grid/cells-on-sheet.js'
import { wordGridFace } from '../word-grid/word-grid-face.js'
import { shownWithWords, wordOptions } from '../word-options.js'
import { drawDieFace, drawSum } from './die-face.js'

const options = {
  dice: option('how many dice are thrown: 1 to 6, or sums from 2 to 12', choice(['one', 'two'], 'one'), {
    example: 'two',
  }),
  numbers: option('where the numbers stand', choice(['top', 'side'], undefined), {
    example: 'side',
    usual: 'top, and at the side where long or large words need wider cells',
  }),
  'words a number': option('how many words each number has', wholeNumber(1, 12, undefined), {
    example: '6',
    usual: '6',
  }),
  boards: option('how many boards, the words in other places', wholeNumber(1, 40, 1)),
  ...sheetsOption,
  ...wordOptions,
}

type DiceRequest = RequestWith<typeof options>

/** A grid of words in columns, or rows, numbered for dice: throw, read a word there, cover it. */
export const diceGrid = defineLayout({
  kind: 'pieces',
  name: 'dice-grid',
  summary: 'a grid of words with a number to each column: throw a die, read a word there, cover it',
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
      line: numbersOf(request) === 'top' ? 'column' : 'row',
      boards: options.boards,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
    })
    if (!reachesEachSheet(gridOf(request), sheetsOf(options))) return fail(tooNarrow(request))
    return succeed({ cards: inParts(cards, sheetsOf(options)) })
  },
  roomier: widerCells,
  face: (request, card, set, size) =>
    wordGridFace(request, { card, set, size, heads: headsOf(request), leastPaddingMm: 1.6 }),
  pages: (request, _set, room: Size) => {
    const dice = request.options.dice === 'one' ? 'the die' : 'both dice and add the numbers'
    const place = numbersOf(request) === 'top' ? 'under that number' : 'beside that number'
    return howToPlayPages(
      request,
      {
        play: [
          `Take turns. Throw ${dice}.`,
          `Choose a free word ${place} and read it aloud.`,
          'Cover it with one of your counters.',
          'Have you covered the last word of a number? You win.',
        ],
        prepare: `${joiningTold(sheetsOf(request.options))}one board for two or three players, ${request.options.dice === 'one' ? 'a die' : 'two dice'}, and sixteen counters of one kind for each of them. Counters and dice are small parts: not for children under three.`,
        help: 'a word that was read wrongly is read together, and stays free.',
        easier: 'read the words of the board together first, or let a player throw twice and choose.',
        harder:
          'write the word on a slip before it is covered, or play until the whole board is covered: a throw without a free word is a turn missed, and most counters win.',
      },
      room,
    )
  },
})

function tooNarrow({ item, options }: DiceRequest): Problem {
  return errorAt(
    item.place,
    `a board with one word to a number is not joined from ${sheetsOf(options)} sheets`,
    'Write words a number: 2 or more, or sheets: 1.',
  )
}

const WORDS_A_NUMBER = 6
const HEAD_MM = 18

function numbersOf({ options }: DiceRequest): 'top' | 'side' {
  return options.numbers ?? 'top'
}

function thrown({ options }: DiceRequest): readonly number[] {
  const [least, most] = options.dice === 'one' ? [1, 6] : [2, 12]
  return Array.from({ length: most - least + 1 }, (_, index) => least + index)
}

function gridOf(request: DiceRequest): ColumnsAndRows {
  const numbers = thrown(request).length
  const each = request.options['words a number'] ?? WORDS_A_NUMBER
  return numbersOf(request) === 'top' ? { columns: numbers, rows: each } : { columns: each, rows: numbers }
}

function headsOf(request: DiceRequest): GridHeads {
  const { type, typeface, measure } = request
  const heads = thrown(request).map(
    number => (room: Size) =>
      request.options.dice === 'one'
        ? drawDieFace(number, room)
        : drawSum(number, room, typeface, type.textMm),
  )
  return { at: numbersOf(request), heads, sizeMm: Math.max(HEAD_MM, measure('12', type.textMm, 700) * 1.4) }
}

/** Numbers at the side, and fewer words to each. */
function widerCells(request: DiceRequest): readonly RoomierOptions<DiceRequest['options']>[] {
  const { options } = request
  const each = options['words a number'] ?? WORDS_A_NUMBER
  const most = numbersOf(request) === 'top' ? each : each - 1
  const isOpen = options['words a number'] === undefined && options.numbers !== 'top'
  const wider: readonly RoomierOptions<DiceRequest['options']>[] = Array.from(
    { length: Math.max(0, Math.min(most, 5)) },
    (_, fewer) => Math.min(most, 5) - fewer,
  ).map(count => ({
    options: { numbers: 'side', 'words a number': count },
    says: `numbers: side, words a number: ${count}`,
    open: isOpen,
  }))
  return [...wider, ...moreSheets(options, false)]
}
