import { silentRanges } from '../../words/patterns/silent-letters.js'
import type { Word } from '../../words/word.js'
import type { LetterRange } from './styled-mark.js'

/** The letters within these that say nothing: the k of kn, the e of a_e; none of sh. */
export function silentWithin(word: Word, ranges: readonly LetterRange[]): readonly LetterRange[] {
  const { text, graphemes, syllables, pronunciations } = word
  const silent = silentRanges({ text, graphemes, syllables, pronunciation: pronunciations[0] ?? '' })
  return ranges.flatMap(range =>
    silent.flatMap(({ start, end }) => {
      const within = { start: Math.max(start, range.start), end: Math.min(end, range.end) }
      return within.start < within.end ? [within] : []
    }),
  )
}
