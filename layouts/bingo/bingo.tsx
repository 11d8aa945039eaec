import type { ColumnsAndRows, Size } from '../../src/geometry.js'
import { andThen, fail, failWith, present, succeed } from '../../src/outcomes.js'
import type { CardFace } from '../../src/pieces/faces/face.js'
import { choice, gridSize, option, wholeNumber, yesNo } from '../../src/plan/values/options.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../../src/problems.js'
import { settleBingo } from '../../src/sets/bingo/bingo-game.js'
import { winRules } from '../../src/sets/bingo/win-rule.js'
import type { CardSet, Round } from '../../src/sets/card-set.js'
import { boardSet } from '../../src/sets/word-set.js'
import { grownUpPages } from '../grown-up-pages.js'
import { type GameRules, howToPlayPages } from '../how-to-play.js'
import { inParts, joiningTold, sheetsOption } from '../joined-sheets/joined-sheets.js'
import {
  defineLayout,
  type LayoutRequest,
  type PageFace,
  type RequestWith,
  type RoomierOptions,
} from '../layout.js'
import { cellsOnSheet } from '../word-grid/cells-on-sheet.js'
import { smallerGrids } from '../word-grid/smaller-grids.js'
import { wordGridFace } from '../word-grid/word-grid-face.js'
import { shownWithWords, wordOptions } from '../word-options.js'
import { callersRows } from './callers-rows.js'
import { cellContents } from './cell-contents.js'
import { oddsNotes } from './odds-notes.js'
import { playedWords, saidKinds, shownKinds, whatToFind } from './played-words.js'
import { goalOfGame, hasFreeMiddle } from './rules-of-game.js'

const options = {
  boards: option('how many boards are dealt, no two alike', wholeNumber(1, 1000, 24), { example: '30' }),
  grid: option('columns x rows of a board', gridSize(2, 9, undefined), {
    usual: 'a square of 3, 4 or 5 that the words fill',
  }),
  free: option('whether the middle of a board with an odd grid is free', yesNo(undefined), {
    example: 'no',
    usual: 'yes, unless the game would be over too soon',
  }),
  win: option('what wins', choice(winRules, undefined), {
    example: 'two lines',
    usual: 'a line, unless the game would be over too soon',
  }),
  'win at': option('the call at which one board alone is to win', wholeNumber(1, 400, undefined), {
    example: '9',
    usual: 'a call after the middle of the words',
  }),
  'runner-up gap': option(
    'how many calls after the first winner the next board wins at the earliest',
    wholeNumber(1, 9, 1),
    { example: '3' },
  ),
  rounds: option(
    'how many games are called from one set of boards, each won by another board',
    wholeNumber(1, 9, 1),
    { example: '3' },
  ),
  say: option('what the caller says for a word', choice(saidKinds, 'word'), { example: 'clue' }),
  show: option('what the boards show of a word', choice(shownKinds, 'word'), { example: 'picture' }),
  ...sheetsOption,
  ...wordOptions,
}

type BingoRequest = RequestWith<typeof options>

/** Boards of words, all different, with a caller's sheet that tells who wins when. */
export const bingo = defineLayout({
  kind: 'pieces',
  name: 'bingo',
  summary: 'boards of words, each one different, and a caller’s sheet with the winning calls',
  options,
  marks: 'all',
  shownWithWords,
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: bingoSet,
  roomier: smallerBoards,
  faces: bingoFaces,
  pages: bingoPages,
})

function bingoFaces(request: BingoRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { show } = request.options
  const { words, shown } = playedWords(request, request.options)
  const { cell } = cellsOnSheet(request, { card: set.cards[0]!, size })
  const textOf = new Map(words.map((word, index) => [word, shown[index]!]))
  return andThen(cellContents(request, { show, words, shown, cell }), cellOf =>
    succeed(
      set.cards.map(card =>
        wordGridFace(request, { card, set, size, cellOf, textOf: word => textOf.get(word)! }),
      ),
    ),
  )
}

function bingoSet(whole: BingoRequest): Outcome<CardSet> {
  const played = playedWords(whole, whole.options)
  const { words } = played
  const request = { ...whole, words }
  const { item, options, plan } = request
  const { free, grid: asked, 'win at': winAt, win: rule } = options
  if (winAt !== undefined && winAt > words.length) return fail(noSuchCall(request, winAt))
  const forGroup = request.group?.hasOwnWords === true
  const tooLarge = asked !== undefined && forGroup && cellsOf(asked, free !== false) > words.length
  const smaller = tooLarge ? largestGrid(words.length, free !== false) : undefined
  const grid = smaller ?? asked ?? gridFor(words.length)
  const settled = settleBingo({
    ...grid,
    words: words.length,
    boards: options.boards,
    gap: options['runner-up gap'],
    rounds: options.rounds,
    seed: plan.seed,
    label: request.itemName,
    place: item.place,
    ...present({ free, rule, winAt }),
  })
  if (!settled.ok) return failWith([...played.problems, ...settled.problems])
  const game = settled.value
  const set = boardSet({ words, game, copies: item.copies })
  const problems = [
    ...played.problems,
    ...settled.problems,
    ...(smaller === undefined ? [] : [smallerGrid(request, asked!, smaller)]),
  ]
  const { changes } = game
  const cards = inParts(set.cards, options.sheets)
  return succeed(
    { ...set, cards, changes, notes: [...game.deal.notes, ...changes, ...oddsNotes(game)] },
    problems,
  )
}

function noSuchCall({ item, words }: LayoutRequest, winAt: number): Problem {
  return errorAt(
    item.place,
    `there is no call ${winAt}: ${words.length} words are called, each once`,
    `Write win at: ${words.length} or less, or give more words.`,
  )
}

function bingoPages(request: BingoRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { words, said } = playedWords(request, request.options)
  const saidFor =
    request.options.say === 'word' ? undefined : new Map(words.map(({ text }, index) => [text, said[index]!]))
  const rounds: readonly Round[] = [set.deal!, ...(set.deal!.laterRounds ?? [])]
  const callers = rounds.flatMap((round, index) => {
    const what = rounds.length === 1 ? 'caller’s sheet' : `caller’s sheet of game ${index + 1}`
    const rows = callersRows({ request, set, round, game: request.options, saidFor, widthMm: room.widthMm })
    return grownUpPages(request, { kind: 'caller', what, rows, room })
  })
  return [...callers, ...howToPlayPages(request, bingoRules(request, set), room)]
}

function bingoRules({ options }: BingoRequest, set: CardSet): GameRules {
  const { boards } = options
  return {
    play: [
      whatToFind(options),
      `Is it there? Cover it.${hasFreeMiddle(set) ? ' The middle is free: it counts as covered.' : ''}`,
      `Have you covered ${goalOfGame(set)}? Call “bingo!”`,
      'Read aloud what you have covered. Is it right? You win.',
    ],
    prepare: `${joiningTold(options.sheets)}${boards === 1 ? 'the board' : `${boards} boards, one for each child or pair`}; counters or scraps of paper for each of them, and the caller’s sheet. Counters are small parts: not for children under three.`,
    help: 'call in the order of the caller’s sheet and tick each word; the small boards at its foot tell whether a shout is right. The number of a board stands small at its foot. For another game swap the boards, or print more rounds.',
    easier:
      options.say === 'word'
        ? 'show each word as you say it, or let two children share a board.'
        : 'say the first sound of the word too, or let two children share a board.',
    harder:
      options.say === 'word'
        ? 'say a sentence with the word left out; the winner spells one of the covered words.'
        : 'let the children make up what is said; the winner spells one of the covered words.',
  }
}

/** Words that a board of this grid takes. */
function cellsOf({ columns, rows }: ColumnsAndRows, free: boolean): number {
  return columns * rows - (free && columns % 2 === 1 && rows % 2 === 1 ? 1 : 0)
}

/** A group with fewer words than the class plays on smaller boards; undefined where not even four cells can be filled. */
function largestGrid(words: number, free: boolean): ColumnsAndRows | undefined {
  const squares = [8, 7, 6, 5, 4, 3, 2].map(side => ({ columns: side, rows: side }))
  return squares.find(grid => cellsOf(grid, free) <= words)
}

function smallerGrid(
  { item, group, words }: LayoutRequest,
  asked: ColumnsAndRows,
  grid: ColumnsAndRows,
): Problem {
  const named = ({ columns, rows }: ColumnsAndRows) => `${columns}x${rows}`
  return warningAt(
    item.place,
    `${group!.name} has ${words.length} words, too few for ${named(asked)}: its boards are ${named(grid)}`,
    'Give the group more words, or leave it out with groups.',
  )
}

/** The largest square grid for which a fifth of the words stay off each board, so that boards differ well. */
function gridFor(words: number): ColumnsAndRows {
  const side = [5, 4, 3].find(size => size * size <= words * 0.8 + (size % 2)) ?? 3
  return { columns: side, rows: side }
}

/** Boards with fewer and larger cells. */
function smallerBoards(request: BingoRequest): readonly RoomierOptions<BingoRequest['options']>[] {
  const { grid: asked } = request.options
  const now = asked ?? gridFor(playedWords(request, request.options).words.length)
  return smallerGrids(now, 2).map(grid => ({
    options: { grid },
    says: `grid: ${grid.columns}x${grid.rows}`,
    open: asked === undefined,
  }))
}
