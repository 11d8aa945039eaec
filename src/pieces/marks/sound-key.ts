import type { Word } from '../../words/word.js'
import { commonest, type KeyEntry } from './key-entries.js'
import { type SoundShape, soundMarkName, soundSpans } from './sound-marks.js'
import type { StyledMark } from './styled-mark.js'

/** How many sounds a row of shapes stands for, in the order of the key. */
const counts = [
  'one sound',
  'two sounds',
  'three sounds',
  'four sounds',
  'five sounds',
  'six sounds',
  'seven sounds',
]

/** The sound marks that these words use, as lines of a key, on letters that no line before has taken as its sample. */
export function soundKeyEntries(
  words: readonly Word[],
  shape: SoundShape,
  taken: ReadonlySet<string>,
): readonly KeyEntry[] {
  const shown = words.flatMap(word =>
    soundSpans(word, shape).map(({ mark, ranges: [{ start, end }] }) => ({
      mark,
      word: word.text,
      letters: word.text.slice(start, end).toLowerCase(),
    })),
  )
  return counts.flatMap((label, index) => {
    const own = shown.filter(({ mark }) => mark.line === soundMarkName(shape, index + 1))
    if (own.length === 0) return []
    const mark: StyledMark = { ...own[0]!.mark, index: FIRST_INDEX + index }
    const examples = [...new Set(own.map(({ word }) => word))]
    // A team shows best that letters which spell one sound together have one mark.
    const all = own.map(entry => entry.letters)
    const free = all.filter(each => !taken.has(each))
    const teams = free.filter(each => each.length > 1)
    const letters = commonest([teams, free, all].find(each => each.length > 0)!)
    const says = index === 0 ? { says: 'a mark for each sound you hear' } : {}
    return [{ mark, label, ...says, letters, examples }]
  })
}

/** Beyond the places of the plan's own marks. */
const FIRST_INDEX = 1000
