/** Vowels that r has changed, and the consonant-le ending. */
import type { Finding } from '../word.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { soundNames } from './sound-names.js'
import { findEach, findingAt, spelledSounds } from './spelled-sounds.js'

export const rControlled: Pattern = {
  name: 'r-controlled',
  scope: 'letters',
  definition: 'a vowel changed by the r after it: ar er ir or ur, and air ear eer are ore our …',
  condition:
    'one grapheme of vowel letters and r, said /ER/ or as a vowel and /R/ in one syllable; not where the r begins the next syllable',
  example: { word: 'harbor', letters: 'ar' },
  counterExample: { word: 'around', why: 'its r begins the second syllable' },
  source: 'Moats and Tolman, six types of syllables (LETRS); from memory',
  find: findEach('r-controlled', ({ letters, sounds, kind }) => {
    if (kind !== 'vowel' || !/^[aeiouyhw]+r+[eh]*$/.test(letters)) return undefined
    if (sounds.at(-1) !== 'ER' && sounds.at(-1) !== 'R') return undefined
    return `the r changes the vowel: ${letters} spells ${soundNames(sounds)}`
  }),
}

function findConsonantLe(word: StudiedLetters): readonly Finding[] {
  const all = spelledSounds(word)
  return all.flatMap(le => {
    const consonant = all[le.index - 1]
    if (le.letters !== 'le' || le.sounds.join(' ') !== 'AH L' || consonant?.kind !== 'consonant') return []
    const ownStart = word.text.length - (word.syllables.at(-1)?.length ?? 0)
    const divided = ownStart > consonant.start && ownStart < le.start ? ownStart : consonant.start
    const letters = word.text.slice(divided, le.end)
    const why = `${letters} is a syllable of its own: the e is silent and the l is said /${le.sounds.join(' ')}/`
    return [findingAt(word, { pattern: 'consonant-le', start: divided, end: le.end, why })]
  })
}

export const consonantLe: Pattern = {
  name: 'consonant-le',
  scope: 'letters',
  definition: 'a consonant and le at the end, a syllable of its own: ble, dle, tle …',
  condition:
    'the grapheme le said /AH L/ after a consonant; of a doubled consonant the second letter only (pud·dle)',
  example: { word: 'puddle', letters: 'dle' },
  counterExample: { word: 'whale', why: 'its le is l and a silent e after a long vowel' },
  source: 'Moats and Tolman, six types of syllables (LETRS); from memory',
  find: findConsonantLe,
}
