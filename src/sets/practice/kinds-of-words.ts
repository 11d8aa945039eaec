/** Words to be sorted by their parts of speech: into every box that they fit. */
import type { PartOfSpeech, Word } from '../../words/word.js'
import { type Practice, partedByAsking } from './practice.js'

/** Like can be five; a page for children asks for the two commonest (our own judgement, no source). */
const MOST_BOXES = 2

export interface KindsPractice extends Practice {
  /** In the order in which they first come. */
  readonly boxes: readonly PartOfSpeech[]
}

/**
 * A box for each part of speech that a word of the list most often is; where that is one alone, for each that a word can
 * be. A word's answer is the boxes of what it most often is.
 */
export function kindsPractice(words: readonly Word[]): KindsPractice {
  const { asked, leftOut } = partedByAsking(
    words,
    ({ partsOfSpeech }) =>
      partsOfSpeech.length === 0 ? { why: 'no part of speech is known' } : { asked: partsOfSpeech },
    word => word.partsOfSpeechGuessed !== true,
  )
  const first = distinct(asked.map(({ asked: parts }) => parts.slice(0, 1)))
  const boxes =
    first.length > 1 ? first : distinct(asked.map(({ asked: parts }) => parts.slice(0, MOST_BOXES)))
  // A single box is nothing to sort into.
  if (boxes.length < 2) return { items: [], leftOut, boxes }
  const items = asked.map(({ word, asked: parts }) => ({
    word,
    prompt: word.text,
    answer: parts
      .slice(0, MOST_BOXES)
      .filter(part => boxes.includes(part))
      .join(', '),
  }))
  return { items, leftOut, boxes }
}

function distinct(parts: readonly (readonly PartOfSpeech[])[]): readonly PartOfSpeech[] {
  return [...new Set(parts.flat())]
}
