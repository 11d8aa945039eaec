/** What the sets stage gives: what goes on which card, in set order. Knows nothing of print. */
import type { Word } from '../words/word.js'
import type { AnswerData } from './answer-data.js'
import type { DieOnCard } from './games/build-dice.js'
import type { CrosswordOnCard } from './games/crossword.js'
import type { LadderRung } from './games/ladder-steps.js'
import type { TrackOfSet } from './games/track-turns.js'
import type { HiddenWord } from './games/word-search.js'

export type CardKind = 'card' | 'board' | 'header'

/** One card or board of a set, before it has a size. */
export interface Card {
  /** Unique within the set, e.g. `card-03` or `board-07`. */
  readonly id: string
  readonly kind: CardKind
  /** 1, 2, … in set order; the same for each copy. */
  readonly number: number
  /** 1, 2, … */
  readonly copy: number
  /** Of a board that is joined from several sheets: which of them, from 1, and how many there are. */
  readonly part?: { readonly number: number; readonly of: number }
  readonly words: readonly Word[]
  /** What a header says, or any text that stands on the card beside its words. */
  readonly title?: string
  /** What of its word stands on it, where the cards of a set show this or that; `form`: its title is a word too. */
  readonly shows?: 'marks' | 'picture' | 'form'
  /** A board's rows of words, `null` for a free space. */
  readonly cells?: readonly (readonly (Word | null)[])[]
  /** Of a crossword: where its words stand, and its clues. */
  readonly crossword?: CrosswordOnCard
  /** Of a die to fold: what stands on its faces. */
  readonly die?: DieOnCard
  /** Of a word ladder: its words with what changes from one to the next. */
  readonly ladder?: readonly LadderRung[]
  /** Letters, one of which belongs into the gap of its word. */
  readonly choices?: readonly string[]
  /** Of a word search: its rows of letters, and where its words stand in them. */
  readonly letterGrid?: { readonly rows: readonly string[]; readonly hidden: readonly HiddenWord[] }
}

export interface CardSet {
  readonly cards: readonly Card[]
  readonly deal?: Deal
  /** Of boards that play with those of other children: the boards of all, and their calls. */
  readonly wholeGame?: CardSet
  /** What a teacher should know of the set, in plain sentences. */
  readonly notes?: readonly string[]
  /** Those of the notes that tell of what was dealt otherwise than the plan says. */
  readonly changes?: readonly string[]
  /** What the children find out with it, for a machine to check. */
  readonly answerData?: AnswerData
  /** Where kinds of words are called: what each is called, and its words. */
  readonly kinds?: readonly { readonly title: string; readonly words: readonly string[] }[]
  /** Of path boards: where spaces send a counter, and how long a game lasts. */
  readonly track?: TrackOfSet
  /** For a key apart from the cards: which numbers belong together, and as what. */
  readonly answers?: readonly Answer[]
}

export interface Answer {
  /** As the key prints it: a column's title, a pair, a step of a chain. */
  readonly text: string
  /** The numbers of the cards concerned. */
  readonly numbers: readonly number[]
}

/** Which words are called in which order, and when each board first has a line. */
export interface Round {
  readonly callOrder: readonly string[]
  readonly wins: readonly BoardAtCall[]
  /** The call at which each board is full, for a game that goes on after the first line. */
  readonly full?: readonly BoardAtCall[]
  /** The call at which each board wins by the rule of the game, where that is not the first line. */
  readonly winsByRule?: readonly BoardAtCall[]
}

export interface BoardAtCall {
  readonly board: string
  readonly call: number
}

/** The first round, and what the boards are played for. */
export interface Deal extends Round {
  /** What wins: `line`, `two lines`, `corners` or `full board`. */
  readonly rule?: string
  /** Further rounds from the same boards, each won by another of them. */
  readonly laterRounds?: readonly Round[]
}
