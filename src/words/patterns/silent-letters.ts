/** Letters that are written and not heard, with the letter they lean on. The silent e has a file of its own. */
import type { Pattern, StudiedLetters } from './pattern.js'
import { commonPractice } from './pattern.js'
import { soundName } from './sound-names.js'
import { findEach, type SpelledSound, spelledSounds } from './spelled-sounds.js'

interface SilentTeam {
  readonly sound: string
  readonly silent: string
}

/** A team and what is silent in it when it spells this one sound. */
const silentTeams: Readonly<Record<string, SilentTeam>> = {
  kn: { sound: 'N', silent: 'k' },
  gn: { sound: 'N', silent: 'g' },
  pn: { sound: 'N', silent: 'p' },
  mn: { sound: 'M', silent: 'n' },
  mb: { sound: 'M', silent: 'b' },
  gm: { sound: 'M', silent: 'g' },
  lm: { sound: 'M', silent: 'l' },
  wr: { sound: 'R', silent: 'w' },
  rh: { sound: 'R', silent: 'h' },
  rrh: { sound: 'R', silent: 'rh' },
  gh: { sound: 'G', silent: 'h' },
  gu: { sound: 'G', silent: 'u' },
  gue: { sound: 'G', silent: 'ue' },
  bu: { sound: 'B', silent: 'u' },
  pb: { sound: 'B', silent: 'p' },
  bt: { sound: 'T', silent: 'b' },
  pt: { sound: 'T', silent: 'p' },
  ct: { sound: 'T', silent: 'c' },
  th: { sound: 'T', silent: 'h' },
  tw: { sound: 'T', silent: 'w' },
  cht: { sound: 'T', silent: 'ch' },
  ght: { sound: 'T', silent: 'gh' },
  st: { sound: 'S', silent: 't' },
  sc: { sound: 'S', silent: 'c' },
  sw: { sound: 'S', silent: 'w' },
  ps: { sound: 'S', silent: 'p' },
  sth: { sound: 'S', silent: 'th' },
  lk: { sound: 'K', silent: 'l' },
  kh: { sound: 'K', silent: 'h' },
  ch: { sound: 'K', silent: 'h' },
  cq: { sound: 'K', silent: 'c' },
  cqu: { sound: 'K', silent: 'u' },
  qu: { sound: 'K', silent: 'u' },
  que: { sound: 'K', silent: 'ue' },
  ft: { sound: 'F', silent: 't' },
  lf: { sound: 'F', silent: 'l' },
  lv: { sound: 'V', silent: 'l' },
  ld: { sound: 'D', silent: 'l' },
  dn: { sound: 'N', silent: 'd' },
  ln: { sound: 'N', silent: 'l' },
  dj: { sound: 'JH', silent: 'd' },
  dh: { sound: 'D', silent: 'h' },
  wh: { sound: 'HH', silent: 'w' },
  xh: { sound: 'G Z', silent: 'h' },
  sl: { sound: 'L', silent: 's' },
}

/** Vowel letters with a silent l among them: the oul of could, the al of walk and half. */
const silentInVowelTeam: Readonly<Record<string, string>> = { oul: 'l', al: 'l', ol: 'l', ais: 's', is: 's' }

function silentWhy(spelled: SpelledSound): string | undefined {
  const { letters, sounds, said, kind } = spelled
  if (kind === 'silent') {
    return /^[bcdfghjklmnpqrstvwxz]+$/.test(letters) ? `${letters} is written and not heard` : undefined
  }
  if (letters.length === 1) return undefined
  const team = silentTeams[letters]
  if (team !== undefined && team.sound === said) {
    return `${team.silent} is silent: ${letters} spells ${sounds.length === 1 ? soundName(team.sound) : `/${team.sound}/`}`
  }
  const silent = silentInVowelTeam[letters]
  if (kind === 'vowel' && silent !== undefined && !sounds.includes('L') && !sounds.includes('S')) {
    return `${silent} is silent: ${letters} spells ${soundName(sounds[0]!)}`
  }
  return undefined
}

/** The letters of a grapheme that say nothing: all of a silent one, the k of kn, the l of oul. */
function silentPart(spelled: SpelledSound): { readonly start: number; readonly end: number } | undefined {
  const { letters, start, end, sounds, said, kind } = spelled
  if (kind === 'silent') return { start, end }
  const team = silentTeams[letters]
  const inVowels = kind === 'vowel' && !sounds.includes('L') && !sounds.includes('S')
  const silent = team?.sound === said ? team.silent : inVowels ? silentInVowelTeam[letters] : undefined
  if (silent === undefined) return undefined
  const at = start + letters.indexOf(silent)
  return { start: at, end: at + silent.length }
}

/** What says nothing in a team that a key shows on its own: the k of kn; undefined where the letters are no such team. */
export function silentInTeam(letters: string): string | undefined {
  return silentTeams[letters]?.silent ?? silentInVowelTeam[letters]
}

/** Where in the word letters stand that are written and not heard, the silent e among them. */
export function silentRanges(
  word: StudiedLetters,
): readonly { readonly start: number; readonly end: number }[] {
  return spelledSounds(word).flatMap(spelled => silentPart(spelled) ?? [])
}

export const silentLetters: Pattern = {
  name: 'silent-letters',
  scope: 'letters',
  definition: 'a letter that is not heard, with its team: kn wr gn mb rh gh bt sc lk, ch in school …',
  condition:
    'one grapheme of two or more letters in which one is silent, or a silent consonant alone (the h of hour); not igh, eigh, ough, augh, which are vowel teams, and not the silent e',
  example: { word: 'knot', letters: 'kn' },
  counterExample: { word: 'number', why: 'm and b are both heard, in different syllables' },
  source: commonPractice,
  find: findEach('silent-letters', silentWhy),
}
