/** Prefixes that primary grades teach. */
import { soundsOf } from '../alignment/arpabet.js'
import { byLetter } from '../by-letter.js'
import type { Finding } from '../word.js'
import { isFamiliar } from './base-words.js'
import { oncePerWord } from './once-per-word.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { findingAt, spelledSounds } from './spelled-sounds.js'
import { isInWordGroup } from './words-apart.js'

const prefixMeanings: Readonly<Record<string, string>> = {
  un: 'not, or the opposite',
  re: 'again, or back',
  dis: 'not, or the opposite',
  mis: 'wrongly',
  pre: 'before',
  in: 'not, or in',
  im: 'not, or in',
  il: 'not',
  ir: 'not',
  non: 'not',
  over: 'too much, or above',
  under: 'too little, or below',
  sub: 'under',
  fore: 'before',
  en: 'make, or put into',
  em: 'make, or put into',
  inter: 'between',
  mid: 'in the middle of',
  super: 'above, or very',
  semi: 'half',
  anti: 'against',
  trans: 'across',
  tri: 'three',
  bi: 'two',
}

/** Longest first, so that under- is tried before un-. */
const prefixes = Object.keys(prefixMeanings).sort((a, b) => b.length - a.length || (a < b ? -1 : 1))

const prefixesByFirst = byLetter(prefixes, letters => letters[0]!)

function findPrefix(word: StudiedLetters): readonly Finding[] {
  const { evidence } = word
  const text = word.text.toLowerCase()
  if (evidence === undefined) return []
  const prefix = prefixesByFirst.get(text[0]!)?.find(letters => {
    if (!text.startsWith(letters)) return false
    if (text.length < letters.length + 3 && text !== `${letters}do`) return false
    if (!dividesAt(word, letters.length) || isInWordGroup(text, 'no prefix')) return false
    const base = text.slice(letters.length)
    if (!isFamiliar(base, evidence)) return false
    return evidence.pronunciationsOf(base).some(said => endsLike(soundsOf(word.pronunciation), said))
  })
  if (prefix === undefined) return []
  const why = `${prefix}- (${prefixMeanings[prefix]}) before ${text.slice(prefix.length)}`
  return [findingAt(word, { pattern: 'prefix', start: 0, end: prefix.length, why })]
}

/** The base keeps its sounds; a first vowel without stress may be still weaker behind the prefix (obey, disobey). */
function endsLike(sounds: readonly string[], base: string): boolean {
  const own = soundsOf(base)
  const end = sounds.slice(-own.length)
  const isWeakFirst = /^[A-Z]+0/.test(base) && end[0] === 'AH'
  return (
    sounds.length > own.length && own.every((sound, at) => sound === end[at] || (at === 0 && isWeakFirst))
  )
}

/** A grapheme and a syllable begin at this letter. */
function dividesAt(word: StudiedLetters, letter: number): boolean {
  return divisions(word).includes(letter)
}

/** The letters at which a grapheme and a syllable begin, from left to right; not the first. */
const divisions = oncePerWord((word: StudiedLetters): readonly number[] => {
  const all = spelledSounds(word)
  const found: number[] = []
  for (let next = 1; next < all.length; next++) {
    if (all[next]!.syllable > all[next - 1]!.lastSyllable) found.push(all[next]!.start)
  }
  return found
})

export const prefix: Pattern = {
  name: 'prefix',
  scope: 'letters',
  definition: 'a part with a meaning before a base word: un- re- dis- mis- pre- over- …',
  condition: `${prefixes.join(' ')} before a known word of three letters or more (or do) that keeps its sounds; a list names look-alikes; de- is left out, for what follows it is rarely a word that a child knows (delay)`,
  example: { word: 'unlock', letters: 'un' },
  counterExample: { word: 'uncle', why: 'there is no word cle' },
  source: 'the commonest prefixes after White, Sowell and Yanagihara 1989; from memory',
  find: findPrefix,
}
