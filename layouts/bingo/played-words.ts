import { targetsOf } from '../../src/pieces/marks/find-targets.js'
import type { Problem } from '../../src/problems.js'
import type { WordAtHand } from '../../src/sets/games/pair-sides.js'
import { apart, pairsOfSides } from '../../src/sets/games/pairs-apart.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'
import { offeredPrompts } from '../offered-prompts.js'

/** What the caller may say for a word, and what a board may show of it. */
export const saidKinds = ['word', 'clue', 'plural', 'past form', 'ing form'] as const
export const shownKinds = ['word', 'picture', 'clue', 'plural', 'past form', 'ing form'] as const
export type SaidKind = (typeof saidKinds)[number]
export type ShownKind = (typeof shownKinds)[number]

export interface SaidAndShown {
  readonly say: SaidKind
  readonly show: ShownKind
}

export interface PlayedWords {
  readonly words: readonly Word[]
  /** One for each word. */
  readonly said: readonly string[]
  readonly shown: readonly string[]
  readonly problems: readonly Problem[]
}

/** Those of the item's words for which there is what the caller says and what the boards show, no two alike in either. */
export function playedWords(
  { words, marks, pictureOf, item }: LayoutRequest,
  { say, show }: SaidAndShown,
): PlayedWords {
  const atHand: WordAtHand = {
    promptOf: offeredPrompts,
    hasPicture: word => pictureOf(word) !== undefined,
    isMarked: word => targetsOf(word, marks).length > 0,
  }
  const wanted = {
    words,
    sides: [say, show],
    atHand,
    place: item.place,
    leftOut: { one: 'is not in the game', several: 'are not in the game' },
  } as const
  const made = pairsOfSides(wanted)
  const { pairs, problems } = apart(made.pairs, wanted)
  return {
    words: pairs.map(({ word }) => word),
    said: pairs.map(({ sides: [said] }) => said.text),
    shown: pairs.map(({ sides: [, shown] }) => shown.text),
    problems: [...made.problems, ...problems],
  }
}

const nouns: Readonly<Record<ShownKind, string>> = {
  word: 'word',
  picture: 'picture',
  clue: 'clue',
  plural: 'word for more than one',
  'past form': 'word for yesterday',
  'ing form': 'word with ing',
}

/** For children: what they hear and what they look for. */
export function whatToFind({ say, show }: SaidAndShown): string {
  if (say === show) return `Listen to the caller. Look for the ${nouns[show]} on your board.`
  return `You hear a ${nouns[say]}. Look for its ${nouns[show]} on your board.`
}

/** For the caller: what she reads out and who covers what. */
export function whatToSay({ say, show }: SaidAndShown): string {
  const said =
    say === 'word' ? 'Say the words' : `Do not say the word: read out its ${say}, which stands behind it,`
  const shown = show === 'word' ? 'the word' : `its ${show}`
  return `${said} from the top down and tick each one. Whoever has ${shown} covers it`
}
