import type { Word } from '../../words/word.js'
import { commonest, type KeyEntry } from './key-entries.js'
import { soundDotsName, soundSpans } from './sound-marks.js'
import type { StyledMark } from './styled-mark.js'

/** What each of the sound marks says, in the order of the key. */
const meanings: Readonly<Record<string, string>> = {
  [soundDotsName(1)]: 'one letter, one sound',
  single: 'letters that spell one sound together',
  ...Object.fromEntries(
    ['two', 'three', 'four', 'five', 'six', 'seven'].map((count, index) => [
      soundDotsName(index + 2),
      `${count} sounds`,
    ]),
  ),
}

/** The sound marks that these words use, as lines of a key. */
export function soundKeyEntries(words: readonly Word[]): readonly KeyEntry[] {
  const shown = words.flatMap(word =>
    soundSpans(word).map(({ mark, ranges: [{ start, end }] }) => ({
      mark,
      word: word.text,
      letters: word.text.slice(start, end).toLowerCase(),
    })),
  )
  return Object.entries(meanings).flatMap(([line, label], index) => {
    const own = shown.filter(({ mark }) => mark.line === line)
    if (own.length === 0) return []
    const mark: StyledMark = { ...own[0]!.mark, index: FIRST_INDEX + index }
    const examples = [...new Set(own.map(({ word }) => word))]
    return [{ mark, label, letters: commonest(own.map(({ letters }) => letters)), examples }]
  })
}

/** Beyond the places of the plan's own marks. */
const FIRST_INDEX = 1000
