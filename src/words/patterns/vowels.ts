/** Vowel sounds by their spelling: one letter, a team, a diphthong, y, a reduced vowel. */
import type { Pattern } from './pattern.js'
import { commonPractice } from './pattern.js'
import { soundName, soundNames } from './sound-names.js'
import { findEach, type SpelledSound } from './spelled-sounds.js'

/** o before f, s, th, ng, g is /AO/ in General American and taught as short o; hence two sounds for o. */
export const shortSounds: Readonly<Record<string, readonly string[]>> = {
  a: ['AE'],
  e: ['EH'],
  i: ['IH'],
  o: ['AA', 'AO'],
  u: ['AH'],
}

const longSounds: Readonly<Record<string, readonly string[]>> = {
  a: ['EY'],
  e: ['IY'],
  i: ['AY'],
  o: ['OW'],
  u: ['UW', 'Y UW'],
}

export function isShortVowel({ letters, said, stress, start }: SpelledSound): boolean {
  if (letters.length > 1 || said === '') return false
  if (letters === 'u' && stress === 0 && start > 0) return false
  if (letters === 'e' && said === 'IH') return false
  return shortSounds[letters]?.includes(said) ?? false
}

export function isLongVowel({ letters, said }: SpelledSound): boolean {
  return letters.length === 1 && (longSounds[letters]?.includes(said) ?? false)
}

export const vowelTeams = new Set(
  'ai ay au aw ae ea ee ei ey eo eu ew ie oa oe oo ou ow ue ui uy igh eigh aigh ough augh eau oul'.split(' '),
)

function isDiphthong({ letters, sounds }: SpelledSound): boolean {
  return (
    (/^(oi|oy|uoy)$/.test(letters) && sounds[0] === 'OY') ||
    (/^(ou|ow|ough|hou)$/.test(letters) && sounds[0] === 'AW')
  )
}

/** A team that has lost its sound (the ou of famous, the ai of captain) is a schwa. */
export function isVowelTeam(spelled: SpelledSound): boolean {
  if (spelled.kind !== 'vowel' || !vowelTeams.has(spelled.letters)) return false
  const reduced = spelled.stress === 0 && spelled.said === 'AH'
  return !isDiphthong(spelled) && !reduced
}

export const shortVowel: Pattern = {
  name: 'short-vowel',
  scope: 'letters',
  definition: 'a single vowel letter with its short sound: a in hat, e in bed, i in pig, o in hot, u in hut',
  condition:
    'one vowel letter (not y) with /AE/, /EH/, /IH/, /AA/ or /AO/, /AH/; u only where it has stress, e not where it is /IH/; a team with a short sound (bread) is a vowel team',
  example: { word: 'mud', letters: 'u' },
  counterExample: { word: 'son', why: 'its o is said /AH/, the short sound of u' },
  source: commonPractice,
  find: findEach('short-vowel', spelled =>
    isShortVowel(spelled)
      ? `one letter, ${spelled.letters}, with its short sound, ${soundNames(spelled.sounds)}`
      : undefined,
  ),
}

function longWhy(spelled: SpelledSound, all: readonly SpelledSound[]): string | undefined {
  if (!isLongVowel(spelled)) return undefined
  const said = `${spelled.letters} says its name, ${soundNames(spelled.sounds)}`
  const next = all[spelled.index + 1]
  const afterNext = all[spelled.index + 2]
  if (next === undefined || next.syllable > spelled.syllable) return `${said}, at the end of its syllable`
  if (next.kind === 'consonant' && afterNext?.letters === 'e' && afterNext.kind === 'silent') {
    return `${said}, with the help of the silent e`
  }
  return said
}

export const longVowel: Pattern = {
  name: 'long-vowel',
  scope: 'letters',
  definition: 'a single vowel letter that says its name: a in table, o in go, i in kind, a in cake',
  condition:
    'one vowel letter (not y) with /EY/, /IY/, /AY/, /OW/, /UW/ or /Y UW/; long teams (rain) are vowel teams',
  example: { word: 'hotel', letters: 'o' },
  counterExample: { word: 'ski', why: 'its i is said /IY/, the name of e' },
  source: commonPractice,
  find: findEach('long-vowel', longWhy),
}

export const vowelTeam: Pattern = {
  name: 'vowel-team',
  scope: 'letters',
  definition: 'two or more letters that spell one vowel sound: ai ea oa oo igh eigh …',
  condition: `one grapheme of ${[...vowelTeams].join(' ')} with one vowel sound, long, short or other; where it glides, oi oy ou ow, it is a diphthong`,
  example: { word: 'reed', letters: 'ee' },
  counterExample: { word: 'react', why: 'e and a stand in different syllables and make two sounds' },
  source: 'Moats and Tolman, six types of syllables (LETRS); from memory',
  spelledWith: /[aeiou]{2}|[aeo][wy]|uy|[aeiou]gh/,
  find: findEach('vowel-team', spelled =>
    isVowelTeam(spelled)
      ? `the letters ${spelled.letters} spell one vowel sound together, ${soundNames(spelled.sounds)}`
      : undefined,
  ),
}

export const diphthong: Pattern = {
  name: 'diphthong',
  scope: 'letters',
  definition: 'two letters whose vowel glides from one sound to another: oi oy ou ow',
  condition:
    'oi or oy as /OY/, ou, ow or ough as /AW/; au and aw do not glide in General American and are vowel teams',
  example: { word: 'cloud', letters: 'ou' },
  counterExample: { word: 'snow', why: 'its ow is long o, a vowel team' },
  source: commonPractice,
  spelledWith: /o[iyuw]/,
  find: findEach('diphthong', spelled =>
    isDiphthong(spelled) ? `${spelled.letters} glides: ${soundName(spelled.sounds[0]!)}` : undefined,
  ),
}

export const yAsVowel: Pattern = {
  name: 'y-as-vowel',
  scope: 'letters',
  definition: 'y that spells a vowel: long i in my, long e in muddy, short i in gym',
  condition: 'y alone as a grapheme with a vowel sound; not y in ay, ey, oy, and not the consonant of yes',
  example: { word: 'muddy', letters: 'y' },
  counterExample: { word: 'yarn', why: 'its y is a consonant, /Y/' },
  source: commonPractice,
  spelledWith: /y/,
  find: findEach('y-as-vowel', ({ letters, sounds, said, kind }) => {
    if (letters !== 'y' || kind !== 'vowel') return undefined
    const names: Readonly<Record<string, string>> = {
      AY: 'long i',
      IY: 'long e',
      IH: 'short i',
      AH: 'a schwa',
    }
    const name = names[said]
    return `y spells a vowel here: ${name === undefined ? soundNames(sounds) : name}`
  }),
}
