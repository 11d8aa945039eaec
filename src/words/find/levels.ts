/** How hard a word is to meet: by its syllables and by how familiar it is. The bounds are our own. */
import type { OfferedWord } from './offered-word.js'

export const levels = ['easy', 'middle', 'hard'] as const

export type Level = (typeof levels)[number]

/** Uses in the 51 million words of SUBTLEX-US: 20 and 5 in a million. */
const easyFamiliarity = 1020
const middleFamiliarity = 255

export const levelMeanings: Readonly<Record<Level, string>> = {
  easy: 'one syllable, heard 20 times or more in a million words',
  middle: 'no easy word, one or two syllables, heard 5 times or more in a million words',
  hard: 'three syllables or more, or heard less often',
}

export function levelOf({ syllableCount, familiarity }: OfferedWord): Level {
  if (syllableCount === 1 && familiarity >= easyFamiliarity) return 'easy'
  return syllableCount <= 2 && familiarity >= middleFamiliarity ? 'middle' : 'hard'
}
