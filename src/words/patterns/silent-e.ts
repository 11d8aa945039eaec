/** The e at the end that is written and not heard, and the work it does. */
import type { Finding } from '../word.js'
import { endingBegins } from './endings.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { commonPractice } from './pattern.js'
import { soundNames } from './sound-names.js'
import { findingAt, placeOf, type SpelledSound, spelledSounds } from './spelled-sounds.js'

/**
 * The sounds that silent e gives the letter before the consonant. i has a second one in words from French (machine).
 * With r in between the vowel changes otherwise, but it changes: care is not car, nor here her.
 */
const lengthened: Readonly<Record<string, readonly string[]>> = {
  a: ['EY'],
  e: ['IY'],
  i: ['AY', 'IY'],
  o: ['OW'],
  u: ['UW', 'Y UW'],
  y: ['AY'],
  ar: ['EH R'],
  er: ['IH R', 'IY R'],
  or: ['AO R'],
  ur: ['UH R', 'Y UH R'],
}

function isSilentE({ letters, kind }: SpelledSound): boolean {
  return letters === 'e' && kind === 'silent'
}

/** The e of we've belongs to have, which is not written. */
function isShortened(e: SpelledSound, { text }: StudiedLetters): boolean {
  return text.slice(0, e.start).includes("'")
}

/** The vowel that a silent e makes long: a single letter, with consonants and no other vowel in between. */
function lengthenedVowel(e: SpelledSound, all: readonly SpelledSound[]): SpelledSound | undefined {
  const before = all.slice(0, e.index)
  const vowel = before.findLast(spelled => spelled.kind === 'vowel' && spelled.letters !== 'r')
  if (vowel === undefined) return undefined
  const between = all.slice(vowel.index + 1, e.index)
  if (between.some(spelled => spelled.kind === 'silent')) return undefined
  const withR = /^[aeou]r$/.test(vowel.letters)
  if (between.length === 0 ? !withR : withR) return undefined
  return lengthened[vowel.letters]?.includes(vowel.said) ? vowel : undefined
}

function otherWork(e: SpelledSound, all: readonly SpelledSound[]): string {
  const consonant = all[e.index - 1]
  const vowel = all.slice(0, e.index).findLast(spelled => spelled.kind === 'vowel')
  const said = consonant?.sounds.at(-1)
  if (consonant?.letters.endsWith('v') || consonant?.letters.endsWith('u')) {
    return `e is silent: English words do not end in ${consonant.letters.at(-1)}`
  }
  if (consonant?.letters.endsWith('c') && said === 'S') return 'e is silent and keeps the c soft'
  if (consonant?.letters.endsWith('g') && said === 'JH') return 'e is silent and keeps the g soft'
  if (consonant?.letters === 'th' && said === 'DH') return 'e is silent and shows that th is voiced'
  if (/^[sz]$/.test(consonant?.letters ?? '') && vowel !== undefined) {
    return 'e is silent; without it the word would look like a plural'
  }
  if (vowel?.letters.endsWith('r') && vowel.index === e.index - 1) {
    return `e is silent: ${vowel.letters}e spells ${soundNames(vowel.sounds)}`
  }
  if (vowel?.index === e.index - 2 && vowel.letters.length === 1) {
    return `e is silent and ${vowel.letters} is not long: an exception, ${vowel.letters} is said ${soundNames(vowel.sounds)}`
  }
  return 'e is silent and does not change the vowel'
}

function findSilentE(word: StudiedLetters): readonly Finding[] {
  const all = spelledSounds(word)
  return all.filter(isSilentE).flatMap(e => {
    if (!standsLast(e, all) || isShortened(e, word)) return []
    const vowel = lengthenedVowel(e, all)
    if (vowel === undefined) {
      if (belongsToEs(e, word)) return []
      return [findingAt(word, { pattern: 'silent-e', start: e.start, end: e.end, why: otherWork(e, all) })]
    }
    const { start } = vowel
    const letter = word.text.slice(start, start + 1)
    return [
      {
        pattern: 'silent-e',
        letters: `${letter}_${word.text.slice(e.start, e.end)}`,
        start,
        end: e.end,
        place: placeOf(word.text, start, e.end),
        why: whyLengthened(vowel, letter),
      },
    ]
  })
}

function whyLengthened({ letters, sounds, said }: SpelledSound, letter: string): string {
  if (letters.length > 1)
    return `e is silent and changes ${letter} before r: ${letters}e spells ${soundNames(sounds)}`
  if (letters === 'i' && said === 'IY') return 'e is silent and i is said /IY/, as in machine'
  return `e is silent and makes ${letter} long, ${soundNames(sounds)}`
}

/** The e of wolves was added with the s. */
function belongsToEs(e: SpelledSound, word: StudiedLetters): boolean {
  return e.end < word.text.length && endingBegins(word, e.start, 'es')
}

/** At the end of the word or of a syllable (home·work), or before an added s or d. A lost e (ev·ery) is another matter. */
function standsLast(e: SpelledSound, all: readonly SpelledSound[]): boolean {
  const next = all[e.index + 1]
  if (next === undefined || next.syllable > e.syllable) return true
  return next.index === all.length - 1 && (next.letters === 's' || next.letters === 'd')
}

export const silentE: Pattern = {
  name: 'silent-e',
  scope: 'letters',
  definition:
    'a final e that is not heard; where it makes the vowel before it long, both are named: a_e in cake',
  condition:
    'a silent e at the end of a word or syllable, or before an added s or d; a_e, e_e, i_e, o_e, u_e, y_e where the single vowel letter before is long or changed before r (care, here); else the e alone, with its work named (have, dance, large, house) or as an exception (come)',
  example: { word: 'wave', letters: 'a_e' },
  counterExample: { word: 'recipe', why: 'its last e is heard, /IY/' },
  source: commonPractice,
  spelledWith: /e/,
  find: findSilentE,
}
