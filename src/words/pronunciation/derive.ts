/**
 * The pronunciation of a word that the lexicon lacks and whose parts it holds: herons', well-known, mudflat, reedless.
 * Each rule either gives a pronunciation or passes; what it gives is still a guess, and is called one.
 */
import { isVowelSound, withoutStress } from '../alignment/arpabet.js'
import { isInCompoundGroup } from '../compounds/compound-groups.js'
import type { LexiconEntry } from '../lexicon/entry.js'

export interface KnownWords {
  lookUp(word: string): LexiconEntry | undefined
}

/** @param word lower case, apostrophes straight */
export function derivePronunciation(word: string, known: KnownWords): string | undefined {
  const whole = known.lookUp(word)?.pronunciations[0]
  return (
    whole ??
    possessive(word, known) ??
    hyphenated(word, known) ??
    withEnding(word, known) ??
    withBeginning(word, known) ??
    compound(word, known)
  )
}

/** herons' as herons; the marsh's as its plural ending would be. */
function possessive(word: string, known: KnownWords): string | undefined {
  if (word.endsWith("'")) return derivePronunciation(word.slice(0, -1), known)
  if (!word.endsWith("'s")) return undefined
  const base = derivePronunciation(word.slice(0, -2), known)
  return base === undefined ? undefined : `${base} ${sEnding(base)}`
}

function hyphenated(word: string, known: KnownWords): string | undefined {
  const parts = word.split('-')
  if (parts.length === 1) return undefined
  const said = parts.map(part => derivePronunciation(part, known))
  return said.every(part => part !== undefined) ? said.join(' ') : undefined
}

interface Ending {
  readonly letters: string
  /** What the base's last sound makes of it. */
  readonly sounds: (base: string) => string
  /** The base may have lost an e, doubled its consonant or turned y to i before it. */
  readonly changesBase: boolean
}

const endings: readonly Ending[] = [
  { letters: 's', sounds: sEnding, changesBase: false },
  { letters: 'es', sounds: sEnding, changesBase: true },
  { letters: 'ed', sounds: edEnding, changesBase: true },
  { letters: 'ing', sounds: () => 'IH0 NG', changesBase: true },
  { letters: 'er', sounds: () => 'ER0', changesBase: true },
  { letters: 'est', sounds: () => 'IH0 S T', changesBase: true },
  { letters: 'y', sounds: () => 'IY0', changesBase: true },
  { letters: 'ly', sounds: () => 'L IY0', changesBase: false },
  { letters: 'less', sounds: () => 'L IH0 S', changesBase: false },
  { letters: 'ness', sounds: () => 'N IH0 S', changesBase: false },
  { letters: 'ful', sounds: () => 'F AH0 L', changesBase: false },
]

const sibilants = ['S', 'Z', 'SH', 'ZH', 'CH', 'JH']
const voiceless = ['P', 'T', 'K', 'F', 'TH']

function sEnding(base: string): string {
  const last = lastSound(base)
  if (sibilants.includes(last)) return 'IH0 Z'
  return voiceless.includes(last) ? 'S' : 'Z'
}

function edEnding(base: string): string {
  const last = lastSound(base)
  if (last === 'T' || last === 'D') return 'IH0 D'
  return voiceless.includes(last) || ['S', 'SH', 'CH'].includes(last) ? 'T' : 'D'
}

/** Spellings of -s that are no ending: grass, bus, crisis. */
const noEndingS = /(?:ss|us|is)$/

function withEnding(word: string, known: KnownWords): string | undefined {
  // A base that the lexicon holds goes before one made of two words: lonely in lonelier, kitty in kitties, not kit and tie.
  for (const saidOf of [saidAlone, compound]) {
    for (const { letters, sounds, changesBase } of endings) {
      if (!word.endsWith(letters) || (letters === 's' && noEndingS.test(word))) continue
      const rest = word.slice(0, -letters.length)
      const said = firstSaid(basesBefore(rest, changesBase), base => saidOf(base, known))
      if (said !== undefined) return `${beforeVowel(rest, letters, said)} ${sounds(said)}`
    }
  }
  return undefined
}

/** nibbly and nibbling have no vowel before their l, as wobbly has none (one-writing.ts). */
function beforeVowel(rest: string, ending: string, said: string): string {
  const losesVowel = /[^aeiou]l$/.test(rest) && /^(?:ing|er|est|y)$/.test(ending)
  return losesVowel ? said.replace(/ AH0 L$/, ' L') : said
}

function basesBefore(rest: string, changesBase: boolean): readonly (string | undefined)[] {
  return changesBase ? [`${rest}e`, undoubled(rest), withY(rest), withoutK(rest), rest] : [rest]
}

function firstSaid(
  bases: readonly (string | undefined)[],
  said: (base: string) => string | undefined,
): string | undefined {
  for (const base of bases) {
    const pronunciation = base === undefined || base.length < 3 ? undefined : said(base)
    if (pronunciation !== undefined) return pronunciation
  }
  return undefined
}

function undoubled(rest: string): string | undefined {
  return rest.at(-1) === rest.at(-2) ? rest.slice(0, -1) : undefined
}

/** picnicking → picnic */
function withoutK(rest: string): string | undefined {
  return rest.endsWith('ck') ? rest.slice(0, -1) : undefined
}

function withY(rest: string): string | undefined {
  return rest.endsWith('i') ? `${rest.slice(0, -1)}y` : undefined
}

const beginnings: readonly (readonly [letters: string, sounds: string])[] = [
  ['un', 'AH0 N'],
  ['re', 'R IY0'],
  ['non', 'N AA0 N'],
  ['mis', 'M IH0 S'],
  ['over', 'OW2 V ER0'],
  ['under', 'AH2 N D ER0'],
]

function withBeginning(word: string, known: KnownWords): string | undefined {
  for (const [letters, sounds] of beginnings) {
    if (!word.startsWith(letters) || word.length < letters.length + 4) continue
    const base = word.slice(letters.length)
    const said = saidAlone(base, known) ?? compound(base, known)
    if (said !== undefined) return `${sounds} ${said}`
  }
  return undefined
}

/** Twice in a million words: of the lexicon's own words with such halves two in three are said as these are. */
const familiarHalf = 100
const shortestHalf = 3

/** Two familiar words, the less familiar of which is as familiar as can be: mud·flat; the second is stressed less. */
function compound(word: string, known: KnownWords): string | undefined {
  let best: { said: string; familiarity: number } | undefined
  for (let seam = shortestHalf; seam <= word.length - shortestHalf; seam++) {
    const [opening, closing] = [word.slice(0, seam), word.slice(seam)]
    if (isInCompoundGroup(opening, 'no first half') || isInCompoundGroup(closing, 'no second half')) continue
    const [first, second] = [known.lookUp(opening), known.lookUp(closing)]
    if (first === undefined || second === undefined || first.name || second.name) continue
    const familiarity = Math.min(first.familiarity, second.familiarity)
    const [firstSaid, secondSaid] = [first.pronunciations[0], second.pronunciations[0]]
    if (firstSaid === undefined || secondSaid === undefined || familiarity < familiarHalf) continue
    if (best === undefined || familiarity > best.familiarity) {
      best = { said: `${firstSaid} ${secondSaid.replaceAll('1', '2')}`, familiarity }
    }
  }
  return best?.said
}

function saidAlone(word: string, known: KnownWords): string | undefined {
  const entry = known.lookUp(word)
  return entry !== undefined && entry.familiarity > 0 ? entry.pronunciations[0] : undefined
}

function lastSound(pronunciation: string): string {
  const last = pronunciation.slice(pronunciation.lastIndexOf(' ') + 1)
  return isVowelSound(withoutStress(last)) ? 'vowel' : last
}
