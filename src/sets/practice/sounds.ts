/** A word and the letters that spell each of its sounds. */
import { piecesInWords } from '../../words/sounds-in-words.js'
import type { Word } from '../../words/word.js'
import { type Practice, partedByAsking } from './practice.js'

export function soundPractice(words: readonly Word[]): Practice {
  const { asked, leftOut } = partedByAsking(
    words,
    word => (word.pieces.length === 0 ? { why: 'its sounds are not known' } : { asked: piecesInWords(word) }),
    word => word.source !== 'guess',
  )
  return {
    items: asked.map(({ word, asked: pieces }) => ({ word, prompt: word.text, answer: pieces })),
    leftOut,
  }
}
