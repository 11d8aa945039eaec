/**
 * Weak vowels in one writing. The dictionary writes the i of cabin with AH and that of robin with IH, by chance, so that
 * one showed a schwa and the other a short i. Here the letter decides, as The American Heritage Dictionary hears it, from
 * memory: a weak i keeps its short sound, which a child can spell by, and is a schwa only where that dictionary has none
 * of it left. A weak e has it in endings and in be-, de-, e-, pre-, re-, se-. Weak a, o and u are schwas.
 * What is said between the two is a matter of speech: a class's ear may differ.
 */
import { withoutStress } from '../alignment/arpabet.js'
import type { Spoken } from './spoken.js'

/** Where a weak vowel stands. */
interface Place {
  readonly letters: string
  readonly before: string
  /** Letters up to the next vowel sound, silent ones included. */
  readonly between: string
  readonly isFirst: boolean
  readonly isLast: boolean
}

interface WeakVowel {
  readonly name: string
  readonly example: string
  /** The vowel in its one writing, or undefined where the rule has nothing to say. */
  readonly vowel: (place: Place) => 'AH' | 'IH' | 'EH' | undefined
}

/** Behind a weak e that is the last vowel, and behind one that -ly follows. */
const endsInE = /^(?:ds?|s|sts?|ts?|ttes?|ss|cts?|d?ges?|th)$/
const endsInELy = /^(?:d|st|t|ss|ct)l$|^ssn$/

/** The first that has something to say decides. */
export const weakVowels: readonly WeakVowel[] = [
  {
    name: 'a weak i or y before one l is a schwa, and inside a word before b, f, l, m, n, p, v and a vowel: pen·cil, fam·i·ly',
    example: 'animal with AH, nostril with AH',
    vowel: ({ letters, between, isFirst, isLast }) => {
      if (!/^[iy]$/.test(letters) || isFirst) return undefined
      if (isLast) return /^l(?:e|s|ed|es)?$/.test(between) ? 'AH' : undefined
      return /^(?:[bflmnpv]|pp|nn|mm|ff|ph|bl|br|fl|fr|pl|pr|phr)$/.test(between) ? 'AH' : undefined
    },
  },
  {
    name: 'every other weak i or y is short i: rab·bit, rob·in, cab·in, hol·i·day, di·rect',
    example: 'cabin with IH',
    vowel: ({ letters, between }) => (/^[iy]$/.test(letters) && between !== '' ? 'IH' : undefined),
  },
  {
    name: '-age with short i: vil·lage, man·ag·er',
    example: 'orphanage with IH',
    vowel: ({ letters, between, isFirst }) =>
      letters === 'a' && !isFirst && /^ge?(?:[sdr]|rs|ment)?$/.test(between) ? 'IH' : undefined,
  },
  {
    name: 'every other weak a, and ai, is a schwa: sep·a·rate, pal·ace, moun·tain',
    example: 'desperate with AH',
    vowel: ({ letters, between }) => (/^(?:a|ai)$/.test(letters) && between !== '' ? 'AH' : undefined),
  },
  {
    name: 'weak o and u are schwas: per·son·al, mi·nus',
    example: 'personal with AH',
    vowel: ({ letters, between }) => (/^[ou]$/.test(letters) && between !== '' ? 'AH' : undefined),
  },
  {
    name: 'en- and em- before a consonant with short e: en·joy, em·ploy',
    example: 'entire with EH',
    vowel: ({ letters, before, isFirst, between }) =>
      letters === 'e' && isFirst && before === '' && /^(?:n[^aeiouyn]|m[^aeiouym])/.test(between)
        ? 'EH'
        : undefined,
  },
  {
    name: 'be-, de-, e-, pre-, re-, se- with short i: re·turn, e·nough, pre·fer',
    example: 'prefer with IH',
    vowel: ({ letters, before, isFirst, between }) =>
      letters === 'e' && isFirst && between !== '' && /^(?:|b|d|pr|r|s)$/.test(before) ? 'IH' : undefined,
  },
  {
    name: '-ed, -es, -est, -et, -ess, -less, -ness, -ect, -ege with short i: want·ed, box·es, for·est, tar·get, use·less, use·less·ly',
    example: 'pocket with IH',
    vowel: ({ letters, between, isLast }) =>
      letters === 'e' && (isLast ? endsInE : endsInELy).test(between) ? 'IH' : undefined,
  },
  {
    name: 'every other weak e is a schwa: o·pen, lev·el, mo·ment, se·ren·i·ty',
    example: 'competent with AH',
    vowel: ({ letters, between }) => (letters === 'e' && between !== '' ? 'AH' : undefined),
  },
]

/** Full vowels stay, though without stress. */
const reduced: ReadonlySet<string> = new Set(['AH0', 'IH0'])

/** The sounds of the grapheme at `index` in the one writing, or undefined where it is no weak vowel. */
export function weakVowelIn(all: readonly Spoken[], index: number): readonly string[] | undefined {
  const place = placeOf(all, index)
  if (place === undefined) return undefined
  for (const { vowel } of weakVowels) {
    const found = vowel(place)
    if (found !== undefined) return [`${found}0`]
  }
  return undefined
}

function placeOf(all: readonly Spoken[], index: number): Place | undefined {
  const { letters, said } = all[index]!
  if (said.length !== 1 || !(reduced.has(said[0]!) || isOfLess(all, index))) return undefined
  const next = all.findIndex((spoken, at) => at > index && spoken.said.some(isVowel))
  const last = next === -1 ? all.length : next
  return {
    letters,
    before: lettersOf(all.slice(0, index)),
    between: lettersOf(all.slice(index + 1, last)),
    isFirst: !all.slice(0, index).some(spoken => spoken.said.some(isVowel)),
    isLast: next === -1,
  }
}

/** The e of -less and -ness, which some entries write as short e. */
function isOfLess(all: readonly Spoken[], index: number): boolean {
  const { letters, said } = all[index]!
  const isLast = all.slice(index + 1).every(spoken => spoken.letters === 'ss')
  return letters === 'e' && said[0] === 'EH0' && isLast && /[ln]$/.test(lettersOf(all.slice(0, index)))
}

function lettersOf(all: readonly Spoken[]): string {
  return all.map(({ letters }) => letters).join('')
}

function isVowel(sound: string): boolean {
  return sound !== withoutStress(sound)
}
