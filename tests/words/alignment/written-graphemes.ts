import { alignWord } from '../../../src/words/alignment/graphemes.js'
import type { Grapheme } from '../../../src/words/word.js'

/** As the fixture writes them: `th:TH r:R ea:EH d:D`, `-` for no sound. */
export function written(graphemes: readonly Grapheme[]): string {
  return graphemes.map(({ letters, sounds }) => `${letters}:${sounds.join('+') || '-'}`).join(' ')
}

export function aligned(text: string, pronunciation: string): string {
  return written(alignWord(text, pronunciation).graphemes)
}
