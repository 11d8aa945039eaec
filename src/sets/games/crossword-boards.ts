/** The boards of a crossword: the words in as few grids as they go into, each with its clue. */
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { type AnswerData, answerOfEach } from '../answer-data.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor } from '../random.js'
import {
  type CluedEntry,
  type Crossword,
  type CrosswordOnCard,
  type CrosswordWanted,
  crosswordRows,
  packCrossword,
} from './crossword.js'
import { leftOutInWords } from './left-out.js'
import { isLettersAlone, noPlaceForSigns } from './word-search.js'

export interface CrosswordsWanted {
  readonly words: readonly Word[]
  readonly most: CrosswordWanted['most']
  readonly shape: NonNullable<CrosswordWanted['shape']>
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/** Words without a clue, or that cross no other, are left out with a warning; fewer than two that cross are an error. */
export function crosswordBoards(wanted: CrosswordsWanted): Outcome<CardSet> {
  const { place, copies } = wanted
  const judged = wanted.words.map(word => ({ word, why: whyNot(word, wanted) }))
  const usable = judged.flatMap(({ word, why }) => (why === undefined ? [word] : []))
  const unusable = judged.flatMap(({ word: { text }, why }) => (why === undefined ? [] : [{ text, why }]))
  const { crosswords, alone } = gridsFor(usable, wanted)
  const crossless = alone.map(word => ({ text: word.text, why: whyAlone(word, usable) }))
  const problems = leftOutInWords([...unusable, ...crossless], 'not in the crossword').map(told =>
    leftOut(told, place),
  )
  if (crosswords.length === 0) return failWith([...problems, nothingCrosses(place)])
  const byLetters = new Map(usable.map(word => [word.text.toLowerCase(), word]))
  const boards = crosswords.map(crossword => boardOf(crossword, byLetters))
  const set: CardSet = {
    cards: Array.from({ length: copies }, (_, copy) =>
      boards.map(
        (crossword, index): Card => ({
          id: cardId({ prefix: 'board', number: index + 1, copy: copy + 1, of: boards.length }),
          kind: 'board',
          number: index + 1,
          copy: copy + 1,
          words: crossword.entries.map(({ word }) => word),
          crossword,
        }),
      ),
    ).flat(),
    answerData: answerOfEach(boards.map(crosswordData)),
    notes: boards.length === 1 ? [] : [`The words go into ${boards.length} grids.`],
  }
  return succeed(set, problems)
}

function whyNot({ text, clue }: Word, { most }: CrosswordsWanted): string | undefined {
  if (clue === undefined) return 'it has no clue'
  if (!isLettersAlone(text)) return noPlaceForSigns
  if (text.length < 2) return 'it is a single letter'
  const room = Math.max(most.columns, most.rows)
  return text.length > room ? `it has ${text.length} letters, and here a row has room for ${room}` : undefined
}

function whyAlone(word: Word, words: readonly Word[]): string {
  const lettersOf = ({ text }: Word) => [...text.toLowerCase()]
  const others = new Set(words.filter(other => other !== word).flatMap(lettersOf))
  return lettersOf(word).some(letter => others.has(letter))
    ? 'no place was found where it crosses another and touches no third'
    : 'it shares no letter with the other words'
}

/** Grid after grid from the words that the one before left over, while two of them cross. */
function gridsFor(words: readonly Word[], { most, shape, seed, label }: CrosswordsWanted) {
  const crosswords: Crossword[] = []
  let waiting = words
  while (waiting.length > 1) {
    const crossword = packCrossword(
      { words: waiting.map(word => word.text.toLowerCase()), most, shape },
      generatorFor(seed, `${label}: crossword ${crosswords.length}`),
    )
    if (crossword.entries.length < 2) break
    crosswords.push(crossword)
    waiting = waiting.filter(word => crossword.left.includes(word.text.toLowerCase()))
  }
  return { crosswords, alone: waiting }
}

function boardOf(crossword: Crossword, byLetters: ReadonlyMap<string, Word>): CrosswordOnCard {
  const entries = crossword.entries.map(({ word: letters, number, row, column, down }): CluedEntry => {
    const word = byLetters.get(letters)!
    return { number, row, column, down, word, clue: word.clue ?? '' }
  })
  return { rows: crosswordRows(crossword), entries }
}

function crosswordData({ rows, entries }: CrosswordOnCard): AnswerData {
  return {
    grid: rows,
    entries: entries.map(({ word, ...entry }) => ({ ...entry, word: word.text })),
  }
}

function leftOut(
  { message, why }: { readonly message: string; readonly why: string },
  place: Place,
): Problem {
  return warningAt(
    place,
    message,
    why === 'it has no clue'
      ? 'Give it a clue in the words, or write clues: drafts in the plan.'
      : 'Leave it out of this item with words, or print it in another game.',
  )
}

function nothingCrosses(place: Place): Problem {
  return errorAt(
    place,
    'no two words with clues cross, so there is no crossword',
    'Give more words a clue, or words that share letters.',
  )
}
