/** Words as a list gives them, studied with the lexicon: for sorts that rest on more than a hand can write. */
import { expect } from 'vitest'
import { installedLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

/** `'crab, cup, city'`. */
export function wordsOfAWeek(list: string): readonly Word[] {
  return list.split(', ').map(text => {
    const studied = studyWord({ text, place: { file: 'week' }, overrides: {} }, installedLexicon())
    if (!studied.ok) throw new Error(`${text} is no word`)
    return studied.value
  })
}

interface Columns {
  readonly columns: readonly { readonly title: string; readonly words: readonly string[] }[]
}

/** `{ 'hard c': 'crab, cup' }`. */
export function columnsOf(sort: Columns | undefined): Readonly<Record<string, string>> {
  expect(sort, 'no such sort').toBeDefined()
  return Object.fromEntries(sort!.columns.map(({ title, words }) => [title, words.join(', ')]))
}
