/** Vowels that have lost their own sound. */
import type { Finding } from '../word.js'
import { endingBegins } from './endings.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { commonPractice } from './pattern.js'
import { findingAt, type SpelledSound, spelledSounds } from './spelled-sounds.js'

/**
 * The u and e that begin a word (until, except) keep enough of their sound to be taught as short.
 * /AH/ without stress, or /IH/ without stress where the letter is not i or y; dictionaries waver between the two.
 */
function isReduced({ letters, said, stress, start }: SpelledSound): boolean {
  if (stress !== 0 || letters === 'le' || !/^[aeiouy]+$/.test(letters)) return false
  if (start === 0 && /^[eu]$/.test(letters)) return false
  return said === 'AH' || (said === 'IH' && !/[iy]/.test(letters))
}

/** Where the r opens the next syllable (a·round), the dictionary's one sound /ER/ is a schwa and /R/. */
function losesItsR({ letters, syllable, lastSyllable, stress }: SpelledSound): boolean {
  return /^[aeiou]r+$/.test(letters) && syllable < lastSyllable && stress === 0
}

function lettersBeforeR(spelled: SpelledSound): string {
  return losesItsR(spelled) ? spelled.letters.slice(0, 1) : spelled.letters
}

function standsInEnding({ letters, start }: SpelledSound, word: StudiedLetters): boolean {
  if (letters !== 'e' || start < word.text.length - 3) return false
  return endingBegins(word, start, 'ed', 'es', 'est')
}

function findSchwa(word: StudiedLetters): readonly Finding[] {
  return spelledSounds(word)
    .filter(spelled => (isReduced(spelled) || losesItsR(spelled)) && !standsInEnding(spelled, word))
    .map(spelled => {
      const letters = lettersBeforeR(spelled)
      const why = `${letters} has no stress and is reduced`
      const { start } = spelled
      return findingAt(word, { pattern: 'schwa', start, end: start + letters.length, why })
    })
}

export const schwa: Pattern = {
  name: 'schwa',
  scope: 'letters',
  definition: 'a vowel without stress that has lost its own sound, said uh: a in about, o in lemon',
  condition:
    'a vowel said /AH/ without stress, or /IH/ where the letter is not i or y; not the le of table, the e of -ed, -es, -est, or e and u at the beginning of a word (except, until)',
  example: { word: 'lemon', letters: 'o' },
  counterExample: { word: 'sun', why: 'its u has the stress and is short u' },
  source: commonPractice,
  find: findSchwa,
}
