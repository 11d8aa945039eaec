/** Path boards: a track of spaces with words on them, equal words far apart. */
import type { Word } from '../../words/word.js'
import { type AnswerData, answerOfEach } from '../answer-data.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { type Generator, generatorFor, shuffle } from '../random.js'
import { chooseJumps, minutesOf } from './track-length.js'
import { expectedTurns, type TrackOfSet, type TrackRules } from './track-turns.js'

export interface PathWanted {
  /** How many words there are, 1 or more. */
  readonly words: number
  readonly spaces: number
  /** Of the die: as many spaces can be reached with one throw. */
  readonly faces: number
}

/**
 * The index of the word on each space, from start to finish: every word equally often (± 1), and at least two thirds
 * of the list between equal words (`leastPathGap` spaces from one to the next), so that no throw can reach a word twice
 * where there are as many words as a throw has numbers.
 * Throws a RangeError where there is no word.
 */
export function dealPath({ words, spaces, faces }: PathWanted, generator: Generator): number[] {
  if (words < 1) throw new RangeError('a path needs a word')
  const slack = words - leastPathGap(words, faces)
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
export function leastPathGap(words: number, faces: number): number {
  return Math.max(Math.ceil((2 * words) / 3), Math.min(words, faces))
}

export interface PathBoardsWanted {
  readonly words: readonly Word[]
  readonly spaces: number
  readonly boards: number
  readonly copies: number
  readonly faces: number
  readonly players: number
  readonly minutes?: number | undefined
  /** Whether the finish must be met exactly; left out where the time may decide. */
  readonly finish?: TrackRules['ending'] | undefined
  /** How many spaces send on or back; none where left out, unless the time needs them. */
  readonly jumps?: number | undefined
  readonly seed: number
  readonly label: string
}

/**
 * Boards `board-01`, … each with one row of cells, its spaces from start to finish; each board's path is its own, the
 * spaces that send on or back are the same on all.
 */
export function pathBoards(wanted: PathBoardsWanted): CardSet & { readonly track: TrackOfSet } {
  const { words, spaces, boards, copies, faces, players, seed, label } = wanted
  const generator = generatorFor(seed, `${label}: path`)
  const rules = rulesOf(wanted)
  const turns = expectedTurns(rules)
  const rows = Array.from({ length: boards }, () =>
    dealPath({ words: words.length, spaces, faces }, generator).map(word => words[word]!),
  )
  const cardOf = (row: readonly Word[], index: number, copy: number): Card => ({
    id: cardId({ prefix: 'board', number: index + 1, copy, of: boards }),
    kind: 'board',
    number: index + 1,
    copy,
    words: row,
    cells: [row],
  })
  return {
    cards: Array.from({ length: copies }, (_, copy) =>
      rows.map((row, index) => cardOf(row, index, copy + 1)),
    ).flat(),
    answerData: answerOfEach(rows.map(row => trackData(row, rules, turns))),
    track: {
      jumps: rules.jumps,
      turns,
      ending: rules.ending,
      minutes: minutesOf(rules, players),
      numbers: numberGrid(faces, generatorFor(seed, `${label}: numbers`)),
    },
  }
}

/** A throw past the finish ends there, unless a game that is to last longer can last as long as it should otherwise. */
function rulesOf({
  spaces,
  faces,
  players,
  minutes,
  finish,
  jumps,
  seed,
  label,
}: PathBoardsWanted): TrackRules {
  const ruled = (ending: TrackRules['ending']): TrackRules => {
    const track = { finish: spaces + 1, faces, ending }
    if (jumps === undefined && minutes === undefined) return { ...track, jumps: [] }
    const generator = generatorFor(seed, `${label}: jumps`)
    return { ...track, jumps: chooseJumps({ ...track, players, minutes, count: jumps }, generator) }
  }
  const usual = ruled(finish ?? 'over')
  if (finish !== undefined || minutes === undefined) return usual
  const missed = (rules: TrackRules) => Math.abs(minutesOf(rules, players) - minutes)
  if (missed(usual) <= minutes * NEAR_SHARE) return usual
  const exact = ruled('exact')
  return missed(exact) < missed(usual) ? exact : usual
}

/** Nearer than this to the minutes asked for is as near as luck allows. */
export const NEAR_SHARE = 0.1

/** Rows in which each number stands once, as it does in each column: a finger put down anywhere is as fair as a die. */
function numberGrid(faces: number, generator: Generator): readonly (readonly number[])[] {
  const order = () =>
    shuffle(
      Array.from({ length: faces }, (_, index) => index),
      generator,
    )
  const columns = order()
  return order().map(row => columns.map(column => ((row + column) % faces) + 1))
}

function trackData(track: readonly Word[], { jumps, faces, ending }: TrackRules, turns: number): AnswerData {
  return {
    track: track.map(word => word.text),
    jumps: jumps.map(({ from, to }) => ({ from, to })),
    faces,
    finish: ending,
    expectedTurns: Math.round(turns * 100) / 100,
  }
}
