/** The boards of a word search: as many as the words need, and each in as many ways as are asked for. */
import { fail, failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { type AnswerData, answerOfEach } from '../answer-data.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor } from '../random.js'
import { type LeftOut, leftOutInWords } from './left-out.js'
import { gridRows } from './letter-grid.js'
import { hideWords, type SearchWays, type WordSearch, wordsToHide } from './word-search.js'

export interface SearchBoardsWanted {
  readonly words: readonly Word[]
  readonly ways: SearchWays
  /** As the plan has it; undefined where it is left open. */
  readonly grid?: { readonly columns: number; readonly rows: number }
  /** The most letters in a row for which there is room beside a list of the words, where the grid is left open. */
  readonly mostColumns: (words: readonly Word[]) => number
  readonly boards: number
  readonly copies: number
  readonly unfit: ReadonlySet<string>
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/** A grid has at least so many letters for each that is hidden, or the words alone would fill it: our own judgement. */
const ROOM = 1.9
const LEAST_SIDE = 5
/** Grids are tried up to this side when the plan's own is too small, to say which would do. */
const MOST_SIDE = 20

/** A word and its letters in the grid. */
interface Lettered {
  readonly word: Word
  readonly letters: string
}

/** Words that cannot be hidden are left out with a warning; words without room are an error that says what has it. */
export function wordSearchBoards(wanted: SearchBoardsWanted): Outcome<CardSet> {
  const { words: hideable, leftOut } = wordsToHide(wanted.words.map(word => word.text))
  const problems: Problem[] = leftOutInWords(leftOut, 'not hidden in the grid').map(({ message }) =>
    notHidden(message, wanted.place),
  )
  if (hideable.length === 0) return fail(nothingToHide(wanted))
  const byText = new Map(wanted.words.map(word => [word.text, word]))
  const all = hideable.map(({ text, letters }): Lettered => ({ word: byText.get(text)!, letters }))
  const words = all.filter(each => !isTooLong(each, wanted))
  const longOnes = all.filter(each => isTooLong(each, wanted)).map(each => tooLong(each, wanted))
  problems.push(...leftOutInWords(longOnes, 'not hidden').map(({ message }) => longProblem(message, wanted)))
  const parts = partsThatFit(words, wanted)
  if (parts === undefined) return failWith([...problems, noRoom(all, wanted)])
  const boards = Array.from({ length: wanted.boards }, (_, board) =>
    parts.map((part, index) => boardOf(part, searchWithRoom(part, wanted, `${board} ${index}`))),
  ).flat()
  const set: CardSet = {
    cards: Array.from({ length: wanted.copies }, (_, copy) =>
      boards.map(
        ({ words: own, letterGrid }, index): Card => ({
          id: cardId({ prefix: 'board', number: index + 1, copy: copy + 1, of: boards.length }),
          kind: 'board',
          number: index + 1,
          copy: copy + 1,
          words: own,
          letterGrid,
        }),
      ),
    ).flat(),
    answerData: answerOfEach(boards.map(({ data }) => data)),
    notes: parts.length === 1 ? [] : [`The words are shared out over ${parts.length} grids.`],
  }
  return succeed(set, problems)
}

interface Board {
  readonly words: readonly Word[]
  readonly letterGrid: NonNullable<Card['letterGrid']>
  readonly data: AnswerData
}

function boardOf({ words }: Part, { grid, placed }: WordSearch): Board {
  const rows = gridRows(grid)
  return {
    words: words.map(({ word }) => word),
    letterGrid: { rows, hidden: placed },
    data: {
      grid: rows,
      placed: placed.map(({ row, column, down, across }, index) => ({
        word: words[index]!.word.text,
        row,
        column,
        down,
        across,
      })),
    },
  }
}

interface Part {
  readonly words: readonly Lettered[]
  readonly columns: number
  readonly rows: number
}

/** All words in one grid where there is room for it, else shared out evenly over as few as will do. */
function partsThatFit(words: readonly Lettered[], wanted: SearchBoardsWanted): readonly Part[] | undefined {
  if (words.length === 0) return undefined
  const mostGrids = wanted.grid === undefined ? words.length : 1
  for (let count = 1; count <= mostGrids; count++) {
    const size = Math.ceil(words.length / count)
    const shares = Array.from({ length: Math.ceil(words.length / size) }, (_, index) =>
      words.slice(index * size, (index + 1) * size),
    )
    const parts = shares.map(share => partFor(share, wanted))
    if (parts.every(part => part !== undefined)) return parts
  }
  return undefined
}

/** The grid that the plan names, or the smallest square that has room. */
function partFor(words: readonly Lettered[], wanted: SearchBoardsWanted): Part | undefined {
  if (wanted.grid !== undefined) {
    const part = { words, ...wanted.grid }
    return hasRoom(part, wanted) ? part : undefined
  }
  const most = wanted.mostColumns(words.map(({ word }) => word))
  for (let side = leastSide(words); side <= most; side++) {
    const part = { words, columns: side, rows: side }
    if (hasRoom(part, wanted)) return part
  }
  return undefined
}

function leastSide(words: readonly Lettered[]): number {
  const lengths = words.map(({ letters }) => letters.length)
  const total = lengths.reduce((sum, length) => sum + length, 0)
  return Math.max(LEAST_SIDE, ...lengths, Math.ceil(Math.sqrt(total * ROOM)))
}

function hasRoom(part: Part, wanted: SearchBoardsWanted): boolean {
  return searchOf(part, wanted, 'room') !== undefined
}

/** Of a part for which there is room; where the chance of its name finds none, that which was tried before. */
function searchWithRoom(part: Part, wanted: SearchBoardsWanted, name: string): WordSearch {
  return searchOf(part, wanted, name) ?? searchOf(part, wanted, 'room')!
}

function searchOf(
  { words, columns, rows }: Part,
  { ways, unfit, seed, label }: SearchBoardsWanted,
  name: string,
): WordSearch | undefined {
  const letters = words.map(each => each.letters)
  // Where one seed finds no place for a word, another does: there is room, as was tried before.
  for (let again = 0; again < 4; again++) {
    const generator = generatorFor(seed, `${label}: search ${name} ${again}`)
    const found = hideWords({ words: letters, columns, rows, ways, unfit }, generator)
    if (found !== undefined) return found
  }
  return undefined
}

function notHidden(message: string, place: Place): Problem {
  return warningAt(
    place,
    message,
    'Nobody could tell where to look; leave it out of this item with words, or print it in another game.',
  )
}

function nothingToHide({ place }: SearchBoardsWanted): Problem {
  return errorAt(
    place,
    'the words hold nothing that can be hidden in a grid',
    'Give words of three letters or more.',
  )
}

/** Where the grid is left open it may have as many letters in a row as the paper has room for. */
function isTooLong({ word, letters }: Lettered, { grid, mostColumns }: SearchBoardsWanted): boolean {
  return grid === undefined && letters.length > mostColumns([word])
}

function tooLong({ word, letters }: Lettered, { mostColumns }: SearchBoardsWanted): LeftOut {
  const why = `it has ${letters.length} letters, and at this size a row has room for ${mostColumns([word])}`
  return { text: word.text, why }
}

function longProblem(message: string, { place }: SearchBoardsWanted): Problem {
  return warningAt(
    place,
    message,
    'Choose larger paper or a smaller size, or leave the word out of this item with words.',
  )
}

function noRoom(words: readonly Lettered[], wanted: SearchBoardsWanted): Problem {
  const { grid, place } = wanted
  const advice = 'Choose larger paper, a smaller size or shorter words.'
  if (grid === undefined) return errorAt(place, 'at this size no word has room in a grid', advice)
  const side = Array.from({ length: MOST_SIDE }, (_, index) => index + 1).find(
    each =>
      each >= Math.max(grid.columns, grid.rows) && hasRoom({ words, columns: each, rows: each }, wanted),
  )
  const message = `the ${words.length} words find no room in a grid of ${grid.columns}x${grid.rows}`
  return side === undefined
    ? errorAt(
        place,
        message,
        'Leave the grid out, and they are shared out over several; or give fewer words.',
      )
    : errorAt(place, message, `Write grid: ${side}x${side}, or give fewer words.`)
}
