import { installedLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

/** The word as a plan's is studied, with nothing that the teacher settled. */
export function studied(text: string): Word {
  const word = studyWord({ text, place: { file: 'test' }, overrides: {} }, installedLexicon())
  if (!word.ok) throw new Error(`${text} cannot be studied`)
  return word.value
}
