/** Path boards: a track of spaces with words on them, equal words far apart. */
import type { Word } from '../../words/word.js'
import { type AnswerData, answerOfEach } from '../answer-data.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { type Generator, generatorFor, shuffle } from '../random.js'
import { expectedTurns, type TrackRules } from './track-turns.js'

export interface PathWanted {
  /** How many words there are, 1 or more. */
  readonly words: number
  readonly spaces: number
}

/**
 * The index of the word on each space, from start to finish: every word equally often (± 1), and at least two thirds
 * of the list between equal words (`leastPathGap` spaces from one to the next).
 * Throws a RangeError where there is no word.
 */
export function dealPath({ words, spaces }: PathWanted, generator: Generator): number[] {
  if (words < 1) throw new RangeError('a path needs a word')
  const slack = words - leastPathGap(words)
  let round = shuffle(
    Array.from({ length: words }, (_, word) => word),
    generator,
  )
  const path = [...round]
  while (path.length < spaces) {
    // Round by round each word comes once; a word may come earlier than in the round before by the slack at most.
    const previous = round
    const left = [...previous]
    round = previous.map((_, place) => {
      const allowed = left.filter(word => previous.indexOf(word) <= place + slack)
      const chosen = allowed[generator.below(allowed.length)]!
      left.splice(left.indexOf(chosen), 1)
      return chosen
    })
    path.push(...round)
  }
  return path.slice(0, spaces)
}

/** The fewest spaces from a word to the same word's next space. */
export function leastPathGap(words: number): number {
  return Math.ceil((2 * words) / 3)
}

export interface PathBoardsWanted {
  readonly words: readonly Word[]
  readonly spaces: number
  readonly boards: number
  readonly seed: number
  readonly label: string
}

/** Boards `board-01`, … each with one row of cells, its spaces from start to finish; each board's path is its own. */
export function pathBoards({ words, spaces, boards, seed, label }: PathBoardsWanted): CardSet {
  const generator = generatorFor(seed, `${label}: path`)
  const rules: TrackRules = { finish: spaces + 1, jumps: [], faces: DIE_FACES, ending: 'over' }
  const cards = Array.from({ length: boards }, (_, index): Card => {
    const row = dealPath({ words: words.length, spaces }, generator).map(word => words[word]!)
    return {
      id: cardId({ prefix: 'board', number: index + 1, copy: 1, of: boards }),
      kind: 'board',
      number: index + 1,
      copy: 1,
      words: row,
      cells: [row],
    }
  })
  return { cards, answerData: answerOfEach(cards.map(({ words: track }) => trackData(track, rules))) }
}

/** A common die. */
const DIE_FACES = 6

function trackData(track: readonly Word[], rules: TrackRules): AnswerData {
  return {
    track: track.map(word => word.text),
    jumps: rules.jumps.map(({ from, to }) => ({ from, to })),
    faces: rules.faces,
    finish: rules.ending,
    expectedTurns: Math.round(expectedTurns(rules) * 100) / 100,
  }
}
