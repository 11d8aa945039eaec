/** Vowels that r has changed, and the consonant-le ending. */
import type { Accent } from '../../plan/plan.js'
import type { Finding } from '../word.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { soundNames } from './sound-names.js'
import { findingAt, type SpelledSound, spelledSounds } from './spelled-sounds.js'

/** Where the r opens the next syllable it leaves a vowel without stress alone (a·round), and colors one with stress (sto·ry). */
function keepsItsR({ syllable, lastSyllable, stress }: SpelledSound): boolean {
  return syllable === lastSyllable || stress !== 0
}

function isSilentE(spelled: SpelledSound | undefined): spelled is SpelledSound {
  return spelled?.letters === 'e' && spelled.kind === 'silent'
}

/** The e of fired, which -ed has taken. */
function isEdOfFire(spelled: SpelledSound | undefined): spelled is SpelledSound {
  return spelled?.letters === 'ed' && spelled.sounds.length === 1
}

function rWhy(
  letters: string,
  sounds: readonly string[],
  { accent, next }: { readonly accent: Accent | undefined; readonly next: SpelledSound | undefined },
): string {
  // Before a vowel the r is said in every accent: story.
  if (accent?.rhotic === false && sounds.at(-1) === 'R' && next?.kind !== 'vowel') {
    const said = soundNames(sounds.slice(0, -1))
    return `the r changes the vowel and is not said itself in this accent: ${letters} spells ${said}`
  }
  return `the r changes the vowel: ${letters} spells ${soundNames(sounds)}`
}

function findRControlled(word: StudiedLetters): readonly Finding[] {
  const all = spelledSounds(word)
  return all.flatMap(spelled => {
    const r = all[spelled.index + 1]
    const e = all[spelled.index + 2]
    if (/^[aeiou]$/.test(spelled.letters) && r?.letters === 'r' && (isSilentE(e) || isEdOfFire(e))) {
      const next = all[e.index + 1]
      const why = rWhy(`${spelled.letters}re`, [...spelled.sounds, ...r.sounds], {
        accent: word.accent,
        next,
      })
      return [findingAt(word, { pattern: 'r-controlled', start: spelled.start, end: e.start + 1, why })]
    }
    if (spelled.kind !== 'vowel' || !/^[aeiouyhw]+r+[eh]*$/.test(spelled.letters)) return []
    if (!/^E?R$/.test(spelled.sounds.at(-1)!) || !keepsItsR(spelled)) return []
    const end = isSilentE(r) && !spelled.letters.endsWith('e') ? r.end : spelled.end
    const letters = word.text.slice(spelled.start, end)
    return [
      findingAt(word, {
        pattern: 'r-controlled',
        start: spelled.start,
        end,
        why: rWhy(letters, spelled.sounds, { accent: word.accent, next: isSilentE(r) ? e : r }),
      }),
    ]
  })
}

export const rControlled: Pattern = {
  name: 'r-controlled',
  scope: 'letters',
  definition: 'a vowel changed by the r after it: ar er ir or ur, and air ear eer are ire ore …',
  condition:
    'vowel letters and r in one grapheme, said /ER/ or as a vowel and /R/, with a silent e that follows (care, fire); not where the vowel has no stress and the r begins the next syllable',
  example: { word: 'harbor', letters: 'ar' },
  counterExample: { word: 'around', why: 'its a has no stress, and the r begins the second syllable' },
  source: 'Moats and Tolman, six types of syllables (LETRS); from memory',
  spelledWith: /[aeiouy].?r/,
  find: findRControlled,
}

function findConsonantLe(word: StudiedLetters): readonly Finding[] {
  const all = spelledSounds(word)
  return all.flatMap(le => {
    const consonant = all[le.index - 1]
    if (le.letters !== 'le' || le.said !== 'AH L' || consonant?.kind !== 'consonant') return []
    const divided = consonant.start + (consonant.lastSyllable > consonant.syllable ? 1 : 0)
    const letters = word.text.slice(divided, le.end)
    const why = `${letters} is a syllable of its own: the e is silent and the l is said /${le.said}/`
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
  spelledWith: /[^aeiou]le/,
  find: findConsonantLe,
}
