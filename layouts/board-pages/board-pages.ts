import { fail, succeed } from '../../src/outcomes.js'
import { errorAt, type Outcome } from '../../src/problems.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { defineLayout } from '../layout.js'
import { boardOf } from './board-key.js'
import { type BoardRequest, boardOptions, stepsOfWord } from './board-options.js'
import { kindPages, pluralPages } from './grammar-steps.js'
import { allMarkedPages, listPages, patternPages } from './list-steps.js'
import { wordPages } from './word-steps.js'

/** Pages to show on the board, a step each: the next page shows one thing more, and nothing else moves. */
export const boardPages = defineLayout({
  kind: 'pages',
  name: 'board-pages',
  summary: 'pages for a screen before the class, on which the marks come step by step',
  inWeek: { day: 'lesson', given: 'screen' },
  options: boardOptions,
  paper: 'screen 16:9',
  marks: 'all',
  set: noLongerThanALesson,
  pages: (request, room) => {
    const board = boardOf(request, room)
    return [
      ...listPages(board, room),
      ...(board.marked && board.options.patterns ? patternPages(board, room) : []),
      ...wordPages(board, room),
      ...(board.options['parts of speech'] ? kindPages(board, room) : []),
      ...(board.options.plurals ? pluralPages(board, room) : []),
      ...(board.marked ? allMarkedPages(board, room) : []),
    ]
  },
})

/** Of a list of more words nobody turns all pages in a lesson, nor in a week of them: our own judgement, no source. */
const MOST_WORDS = 60
const MOST_MARKS = 20

function noLongerThanALesson(request: BoardRequest): Outcome<CardSet> {
  const { item, words, marks, options } = request
  const isLong = words.length > MOST_WORDS && stepsOfWord(request) !== 'none'
  if (isLong || words.length > 10 * MOST_WORDS)
    return fail(
      errorAt(
        item.place,
        `pages for the board would show ${words.length} words, far more than a lesson has`,
        `Name the words of the lesson with words, ${MOST_WORDS} at most${isLong ? ', or write each word: none' : ''}.`,
      ),
    )
  if (marks.length > MOST_MARKS && options.patterns)
    return fail(
      errorAt(
        item.place,
        `pages for the board would show ${marks.length} marks one by one`,
        `Show ${MOST_MARKS} at most, or write patterns: no.`,
      ),
    )
  return succeed({ cards: [] })
}
