import type { Size } from '../../src/geometry.js'
import { andThen, fail, failWith, present, succeed } from '../../src/outcomes.js'
import type { CardFace } from '../../src/pieces/faces/face.js'
import { choice, gridSize, option, wholeNumber, yesNo } from '../../src/plan/values/options.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import { settleBingo } from '../../src/sets/bingo/bingo-game.js'
import { winRules } from '../../src/sets/bingo/win-rule.js'
import type { CardSet, Round } from '../../src/sets/card-set.js'
import { boardSet } from '../../src/sets/word-set.js'
import { grownUpPages } from '../grown-up-pages.js'
import { type GameRules, howToPlayPages } from '../how-to-play.js'
import { inParts, joiningTold, moreSheets, sheetsOf, sheetsOption } from '../joined-sheets/joined-sheets.js'
import {
  defineLayout,
  type LayoutRequest,
  type PageFace,
  type RequestWith,
  type RoomierOptions,
} from '../layout.js'
import { boardsOf, boardsOption } from '../one-board-each.js'
import { cellsOnSheet } from '../word-grid/cells-on-sheet.js'
import { smallerGrids } from '../word-grid/smaller-grids.js'
import { wordGridFace } from '../word-grid/word-grid-face.js'
import { shownWithWords, wordOptions } from '../word-options.js'
import { cellsOf, largestGrid, smallerGrid, usualGrid } from './board-grids.js'
import { callersRows } from './callers-rows.js'
import { cellContents } from './cell-contents.js'
import { oddsNotes } from './odds-notes.js'
import { boardsOfSide, oneGameOf, tellOneGame, wordsOfSides } from './one-game.js'
import { playedWords, saidKinds, shownKinds, whatToFind } from './played-words.js'
import { goalOfGame, hasFreeMiddle } from './rules-of-game.js'

const options = {
  ...boardsOption('how many boards are dealt, no two alike', 1000),
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
  caller: option(
    'whether the class and each group have a caller of their own, or play one game with one caller for all',
    choice(['for each', 'for all'], 'for each'),
    { example: 'for all' },
  ),
  ...sheetsOption,
  ...wordOptions,
}

type BingoRequest = RequestWith<typeof options>

/** Boards of words, all different, with a caller's sheet that tells who wins when. */
export const bingo = defineLayout({
  kind: 'pieces',
  name: 'bingo',
  summary: 'boards of words, each one different, and a caller’s sheet with the winning calls',
  inWeek: { day: 'centres', given: 'once' },
  options,
  marks: 'all',
  shownWithWords,
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  isOneGame: ({ caller }) => caller === 'for all',
  set: bingoSet,
  roomier: roomierBoards,
  faces: bingoFaces,
  pages: bingoPages,
})

function bingoFaces(request: BingoRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { show } = request.options
  const own = new Set(request.words.map(({ text }) => text))
  const played = playedWords({ ...request, words: wordsOfSides(request) }, request.options)
  const kept = played.words.map((word, index) => ({ word, shown: played.shown[index]! }))
  const mine = kept.filter(({ word }) => own.has(word.text))
  const [words, shown] = [mine.map(({ word }) => word), mine.map(each => each.shown)]
  const { cell } = cellsOnSheet(request, { card: set.cards[0]!, size })
  const textOf = new Map(words.map((word, index) => [word.text, shown[index]!]))
  return andThen(cellContents(request, { show, words, shown, cell }), cellOf =>
    succeed(
      set.cards.map(card =>
        wordGridFace(request, { card, set, size, cellOf, textOf: ({ text }) => textOf.get(text)! }),
      ),
    ),
  )
}

function bingoSet(whole: BingoRequest): Outcome<CardSet> {
  const played = playedWords({ ...whole, words: wordsOfSides(whole) }, whole.options)
  const { words } = played
  const request = { ...whole, words }
  const { item, options, plan } = request
  const { free, grid: asked, 'win at': winAt, win: rule } = options
  if (winAt !== undefined && winAt > words.length) return fail(noSuchCall(request, winAt))
  const oneGame = oneGameOf(whole, words)
  const boards = boardsDealt(whole)
  const forGroup = oneGame === undefined && request.group?.hasOwnWords === true
  const tooLarge = asked !== undefined && forGroup && cellsOf(asked, free !== false) > words.length
  const smaller = tooLarge ? largestGrid(words.length, free !== false) : undefined
  const grid =
    smaller ?? asked ?? usualGrid(Math.min(...(oneGame?.pools ?? [{ words }]).map(pool => pool.words.length)))
  const settled = settleBingo({
    ...grid,
    words: words.length,
    boards,
    gap: options['runner-up gap'],
    rounds: options.rounds,
    seed: plan.seed,
    label: oneGame === undefined ? request.itemName : item.name,
    place: item.place,
    ...present({ free, rule, winAt, pools: oneGame?.pools }),
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
  const told = oneGame === undefined ? [] : tellOneGame(oneGame, boards)
  const notes = [...told, ...game.deal.notes, ...changes, ...oddsNotes(game)]
  const own = oneGame === undefined ? set : boardsOfSide({ ...set, notes }, oneGame, boards)
  const cards = inParts(own.cards, sheetsOf(options))
  // What is told of the whole game is told with its caller's sheet.
  const ownNotes = oneGame === undefined || oneGame.side === 0 ? notes : told
  return succeed({ ...own, cards, changes, notes: ownNotes }, problems)
}

/** In one game all sides have as many. */
function boardsDealt(request: BingoRequest): number {
  const { children: _, ...ofAnySide } = request
  return boardsOf(request.options.caller === 'for all' ? ofAnySide : request)
}

function noSuchCall({ item, words }: LayoutRequest, winAt: number): Problem {
  return errorAt(
    item.place,
    `there is no call ${winAt}: ${words.length} words are called, each once`,
    `Write win at: ${words.length} or less, or give more words.`,
  )
}

function bingoPages(request: BingoRequest, set: CardSet, room: Size): readonly PageFace[] {
  const howToPlay = howToPlayPages(request, bingoRules(request, set), room)
  const isCalledElsewhere =
    set.wholeGame !== undefined && (request.group?.name ?? null) !== request.sides[0]!.name
  return isCalledElsewhere ? howToPlay : [...callersPages(request, set.wholeGame ?? set, room), ...howToPlay]
}

function callersPages(own: BingoRequest, set: CardSet, room: Size): readonly PageFace[] {
  const request = { ...own, words: wordsOfSides(own) }
  const { words, said } = playedWords(request, request.options)
  const saidFor =
    request.options.say === 'word' ? undefined : new Map(words.map(({ text }, index) => [text, said[index]!]))
  const rounds: readonly Round[] = [set.deal!, ...(set.deal!.laterRounds ?? [])]
  return rounds.flatMap((round, index) => {
    const what = rounds.length === 1 ? 'caller’s sheet' : `caller’s sheet of game ${index + 1}`
    const rows = callersRows({ request, set, round, game: request.options, saidFor, widthMm: room.widthMm })
    return grownUpPages(request, { kind: 'caller', what, rows, room })
  })
}

function bingoRules(request: BingoRequest, set: CardSet): GameRules {
  const { options } = request
  const boards = boardsDealt(request)
  return {
    play: [
      whatToFind(options),
      `Is it there? Cover it.${hasFreeMiddle(set) ? ' The middle is free: it counts as covered.' : ''}`,
      `Have you covered ${goalOfGame(set)}? Call “bingo!”`,
      'Read aloud what you have covered. Is it right? You win.',
    ],
    prepare: `${joiningTold(sheetsOf(options))}${boards === 1 ? 'the board' : `${boards} boards, one for each child or pair`}; counters or scraps of paper for each of them, and the caller’s sheet. Counters are small parts: not for children under three.`,
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

/** Boards with fewer and larger cells; boards of one game have one grid, and room on more sheets. */
function roomierBoards(request: BingoRequest): readonly RoomierOptions<BingoRequest['options']>[] {
  const { options, sides } = request
  const more = moreSheets(options, sides.length > 1)
  if (sides.length > 1) return more
  const now = options.grid ?? usualGrid(playedWords(request, options).words.length)
  const smaller = smallerGrids(now, 2).map(grid => ({
    options: { grid },
    says: `grid: ${grid.columns}x${grid.rows}`,
    open: options.grid === undefined,
  }))
  return [...smaller, ...more]
}
