/** Sorts by the vowel that an r has changed. */
import type { SortableWord } from '../../words/sortable-word.js'
import { type BasisFamily, distinct } from './sort-basis.js'
import { mainVowel, type SpelledVowel, soundInWords, vowelsOf } from './vowel-spelling.js'

/** What these spell in most words; where they say something else, the word is the oddball: word, warm. */
const usualWithR: Readonly<Record<string, string>> = { ar: 'AA R', or: 'AO R', er: 'ER', ir: 'ER', ur: 'ER' }

/** er, ir and ur say the same, against ar and or: by sound, whatever the letters. */
export const vowelsWithR: BasisFamily = {
  kind: 'vowels with r',
  placesOf: word => {
    const vowel = vowelWithR(word)
    return vowel === undefined || isUnusual(vowel) ? [] : [{ of: 'r', column: vowel.sound }]
  },
  basisOf: () => ({
    name: 'which vowel with r',
    basis: 'what the vowel with the r says',
    patterns: ['r-controlled'],
    titleOf: (_column, words) =>
      distinct(words.flatMap(word => vowelWithR(word)?.spelling ?? []))
        .toSorted()
        .join(', '),
    noneBecause: () => 'has no vowel with an r',
    loneIsOddball: true,
    oddball: word => {
      const vowel = vowelWithR(word)
      return vowel === undefined ? undefined : `its ${vowel.spelling} says ${soundInWords(vowel)}`
    },
  }),
}

/** The stressed one; else the only one. */
function vowelWithR(word: SortableWord): SpelledVowel | undefined {
  const main = mainVowel(word)
  if (main !== undefined && isWithR(main)) return main
  const [only, another] = vowelsOf(word).filter(isWithR)
  return another === undefined ? only : undefined
}

function isWithR({ sound }: SpelledVowel): boolean {
  return sound === 'ER' || sound.endsWith(' R')
}

function isUnusual({ spelling, sound }: SpelledVowel): boolean {
  return (usualWithR[spelling] ?? sound) !== sound
}
