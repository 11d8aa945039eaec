/** Reads the hand-made tables of this folder and studies their words. */
import { readFileSync } from 'node:fs'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Finding } from '../../../src/words/word.js'

const lexicon = openLexicon()

export function findingsOf(text: string): readonly Finding[] {
  const studied = studyWord({ text, place: { file: 'word parts' }, overrides: {} }, lexicon)
  if (!studied.ok) throw new Error(`${text} could not be studied`)
  return studied.value.patterns
}

/** The fields of each row. */
export function rowsOf(table: string): readonly (readonly string[])[] {
  return readFileSync(new URL(table, import.meta.url), 'utf8')
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(line => line.split('\t'))
}
