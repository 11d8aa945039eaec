/** The words aligned by hand as `find` is offered them, and any word as the lexicon has it. */
import { type OfferedWord, offeredWord } from '../../../src/words/find/offered-word.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import { handAligned, studied } from '../patterns/hand-aligned.js'

/** In the order of the table; each less familiar than the one before. */
export const offeredByHand: readonly OfferedWord[] = [...handAligned.keys()]
  .filter(word => /^[a-z']+$/.test(word))
  .map((word, index) => offeredWord(studied(word), 3000 - 20 * index))

export const lexicon = openLexicon()

export function offered(text: string): OfferedWord {
  const word = studyWord({ text, place: { file: 'a test' }, overrides: {} }, lexicon)
  if (!word.ok) throw new Error(text)
  return offeredWord(word.value, lexicon.lookUp(text)?.familiarity ?? 0)
}
