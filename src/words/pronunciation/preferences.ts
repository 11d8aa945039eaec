/**
 * Which of a word's listed pronunciations to teach first. Each preference counts against a variant; the variant with
 * the least against it comes first, and the dictionary's order decides between equals.
 */

import { isVowelSound } from '../alignment/arpabet.js'
import type { Grapheme } from '../word.js'

export interface Variant {
  readonly word: string
  /** ARPABET with stress. */
  readonly sounds: readonly string[]
  readonly graphemes: readonly Grapheme[]
  /** What the grapheme table does not explain. */
  readonly exceptions: readonly string[]
}

interface Preference {
  readonly name: string
  /** A word for which it decides. */
  readonly example: string
  readonly weight: number
  /** How often the variant offends against it. */
  readonly against: (variant: Variant) => number
}

export const preferences: readonly Preference[] = [
  {
    name: 'every sound is spelled by its letters',
    example: 'around, not "aroun"',
    weight: 8,
    against: variant => variant.exceptions.length,
  },
  {
    name: 'the full form, not the weak one of running speech',
    example: 'and with AE',
    weight: 8,
    against: ({ word, sounds }) => (spokenWeakly.has(word) || sounds.some(isStressed) ? 0 : 1),
  },
  {
    name: 'no written vowel is passed over',
    example: 'sev-er-al, not sev-ral',
    weight: 4,
    against: ({ graphemes }) =>
      count(graphemes, ({ letters, sounds }) => sounds.length === 0 && /^[aiou]$/i.test(letters)) +
      count(graphemes, ({ letters, sounds, start }) => {
        const after = graphemes.find(next => next.start > start)
        return letters === 'e' && sounds.length === 0 && after?.letters.startsWith('r') === true
      }),
  },
  {
    name: 'no vowel is said that is not written',
    example: 'gam-bling, not gam-bul-ing',
    weight: 3,
    against: ({ graphemes, word }) =>
      count(graphemes, ({ letters, sounds, start }) => {
        const inner = start + 1 < word.length
        return sounds.length > 1 && ((letters === 'l' && inner) || (letters === 'u' && sounds.at(-1) === 'W'))
      }),
  },
  {
    name: 'fire and hour in one syllable',
    example: 'fire as F AY R',
    weight: 3,
    against: ({ graphemes }) =>
      count(graphemes, ({ letters, sounds }) => letters === 'r' && sounds[0] === 'ER'),
  },
  {
    name: 'cot and caught apart: /AO/ where it is spelled au, aw, al, augh, or o before f, s, th, ng, g',
    example: 'caught, chalk, coffee, dog',
    weight: 3,
    against: ({ word, graphemes }) =>
      count(graphemes, ({ letters, sounds, start }) => {
        if (sounds[0] !== 'AA' || sounds.length > 1) return false
        const rest = word.slice(start)
        return (
          /^(au|aw|ough|ou|al[^lm]|all(?!ow)|o(f[^e]|s[st]|th|ng(?!o)|gs?$))/.test(rest) ||
          /^a(ll?)$/.test(rest) ||
          letters === 'au'
        )
      }),
  },
  {
    name: '/AA/ where o is spelled before other letters, and a after w',
    example: 'on, top, want',
    weight: 3,
    against: ({ word, graphemes }) =>
      count(graphemes, ({ letters, sounds, start }) => {
        if (sounds.length !== 1 || sounds[0] !== 'AO') return false
        const rest = word.slice(start)
        if (letters === 'o') return !/^o(f[^e]|s[st]|th|ng(?!o)|gs?$)/.test(rest)
        return letters === 'a' && /wh?$/.test(word.slice(0, start)) && !/^a[lr]/.test(rest)
      }),
  },
  {
    name: 'an unstressed i, y, -age, -ed, -es, -et has /IH/ where it may',
    example: 'rabbit, village, needed, boxes, ticket',
    weight: 2,
    against: ({ word, graphemes }) =>
      count(graphemes, ({ sounds, start }) => {
        if (sounds[0] !== 'AH' || sounds.length > 1) return false
        return /^[iy](?!le)/.test(word.slice(start)) || /^(age(s|d)?|e[ds]|ets?)$/.test(word.slice(start))
      }),
  },
  {
    name: 'the names of days end in /EY/',
    example: 'Friday',
    weight: 3,
    against: ({ word, sounds }) =>
      Number(/days?$/.test(word) && sounds.includes('IY0') && !sounds.includes('EY2')),
  },
  {
    name: 'short a before rr, where the dictionary keeps it',
    example: 'narrow with AE',
    weight: 2,
    against: ({ word, graphemes }) =>
      count(
        graphemes,
        ({ letters, sounds, start }) =>
          letters === 'a' && sounds[0] === 'EH' && word.startsWith('arr', start),
      ),
  },
  {
    name: 'ear and here with /IH R/, as in the rest of their family',
    example: 'ear as IH R',
    weight: 2,
    against: ({ sounds }) => Number(/IY\d R/.test(sounds.join(' '))),
  },
  {
    name: 'your with /AO R/',
    example: 'yours, yourself',
    weight: 3,
    against: ({ word, sounds }) => Number(word.startsWith('your') && !sounds.includes('AO1')),
  },
  {
    name: 'a written t or d is said',
    example: 'plenty, hands',
    weight: 3,
    against: ({ graphemes }) =>
      count(graphemes, ({ letters, sounds }) => /^[td]$/.test(letters) && sounds.length === 0),
  },
]

/** Said weakly whenever they are not named: their everyday form is the one to teach. */
const spokenWeakly: ReadonlySet<string> = new Set(['a', 'the'])

/** What speaks against a variant, all told. */
export function countAgainst(variant: Variant): number {
  return preferences.reduce((sum, { weight, against }) => sum + weight * against(variant), 0)
}

function count(graphemes: readonly Grapheme[], matches: (grapheme: Grapheme) => boolean): number {
  return graphemes.filter(matches).length
}

function isStressed(sound: string): boolean {
  return isVowelSound(sound.slice(0, -1)) && !sound.endsWith('0')
}
