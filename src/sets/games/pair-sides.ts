/** What the two cards of a pair show. */
import type { Word } from '../../words/word.js'
import { isWord, type PromptKind, type PromptOf, promptKinds } from './prompt.js'

export const pairSides = ['word', 'marked word', 'picture', ...promptKinds, 'sound alike'] as const
/** `sound alike`: another word of the list that is said the same. */
export type PairSide = (typeof pairSides)[number]

/** What only the plan and its files tell of a word. */
export interface WordAtHand {
  readonly promptOf: PromptOf
  readonly hasPicture: (word: Word) => boolean
  /** Whether it shows any of the plan's marks. */
  readonly isMarked: (word: Word) => boolean
}

/** One card of a pair. */
export interface ShownSide {
  /** As the child has it before her: cards of one text cannot be told apart. */
  readonly text: string
  /** The word that stands on it; none where the title alone does. */
  readonly word?: Word
  readonly title?: string
  readonly shows?: 'marks' | 'picture' | 'form'
}

/** Undefined where the word has no such side. */
export function shownSide(
  word: Word,
  side: Exclude<PairSide, 'sound alike'>,
  { promptOf, hasPicture, isMarked }: WordAtHand,
): ShownSide | undefined {
  switch (side) {
    case 'word':
      return { text: word.text, word }
    case 'marked word':
      return isMarked(word) ? { text: word.text, word, shows: 'marks' } : undefined
    case 'picture':
      return hasPicture(word) ? { text: `picture of ${word.text}`, word, shows: 'picture' } : undefined
    default:
      return titled(promptOf(word, side), side)
  }
}

function titled(title: string | undefined, kind: PromptKind): ShownSide | undefined {
  return title === undefined
    ? undefined
    : { text: title, title, ...(isWord(kind) ? { shows: 'form' as const } : {}) }
}

interface SideWording {
  /** `"marsh" has no clue`. */
  readonly lacks: string
  readonly advice: string
}

const wording: Readonly<Record<Exclude<PairSide, 'word' | 'sound alike'>, SideWording>> = {
  'marked word': {
    lacks: 'shown mark',
    advice: 'Mark a pattern that the word shows, or choose another kind of pair.',
  },
  picture: { lacks: 'picture', advice: 'Give it a picture in the words.' },
  clue: { lacks: 'clue', advice: 'Give it a clue in the words.' },
  plural: { lacks: 'plural', advice: 'Only nouns that are counted have one; give it a plural in the words.' },
  sounds: { lacks: 'number of sounds', advice: 'Give its sounds in the words.' },
  'past form': { lacks: 'past form', advice: 'Only verbs have one.' },
  'ing form': { lacks: 'ing form', advice: 'Only verbs have one.' },
}

export function sideWording(side: PairSide): SideWording {
  return side === 'word' || side === 'sound alike' ? { lacks: side, advice: '' } : wording[side]
}

/** What two words may have in common, as a message names it. */
export function sideNoun(side: PairSide | PromptKind): string {
  return side === 'sounds' ? 'number of sounds' : side
}
