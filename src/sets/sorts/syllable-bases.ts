/** Sorts of longer words: the kind of the first syllable, the consonants behind it, the last syllable, the stress. */
import { isVowelSound, withoutStress } from '../../words/alignment/arpabet.js'
import { plainName } from '../../words/patterns/plain-name.js'
import { kindOfFirstSyllable, syllableTypes } from '../../words/patterns/syllable-types.js'
import type { SortableWord } from '../../words/sortable-word.js'
import type { BasisFamily, Placement } from './sort-basis.js'

const kinds = syllableTypes.map(({ name }) => name)

export const firstSyllable: BasisFamily = {
  kind: 'first syllable',
  placesOf: word => {
    const kind = kindOfFirst(word)
    if (kind === undefined) return []
    const between = betweenVowels(word, kind)
    return [
      { of: 'kind', column: kind },
      ...(between === undefined ? [] : [{ of: 'between', column: between }]),
    ]
  },
  basisOf: of =>
    of === 'kind'
      ? {
          name: 'kind of first syllable',
          basis: 'whether the first syllable is open or closed, or of another kind',
          patterns: kinds,
          titleOf: column => plainName(column),
          noneBecause: whyNoFirst,
          order: ['open-syllable', 'closed-syllable', ...kinds],
        }
      : {
          name: 'what stands between the vowels',
          basis: 'which consonants stand between the first two vowels',
          patterns: ['open-syllable', 'closed-syllable', 'double-consonant'],
          noneBecause: word =>
            kindOfFirst(word) === undefined ? whyNoFirst(word) : 'has other letters between its vowels',
          order: ['a doubled consonant', 'two or more consonants', 'one consonant, open syllable'],
        },
}

/** Words with a prefix or an ending are sorted by that: run·ning teaches doubling, not closed syllables. */
const isAdded = /^prefix$|^ending-(?:s|es|ed|ing|er|est)$/

function isWithAddition({ patterns }: SortableWord): boolean {
  return patterns.some(({ pattern }) => isAdded.test(pattern))
}

function whyNoFirst(word: SortableWord): string {
  if (word.syllables.length < 2) return 'has one syllable'
  return isWithAddition(word)
    ? 'has a prefix or an ending'
    : 'has a first syllable that is open by its letters and closed by its sound'
}

function kindOfFirst(word: SortableWord): string | undefined {
  if (word.syllables.length < 2 || isWithAddition(word)) return undefined
  return word.firstSyllable ?? kindOfFirstSyllable({ ...word, pronunciation: word.pronunciations[0] ?? '' })
}

/** rab·bit, bas·ket, ti·ger, cab·in. */
function betweenVowels({ graphemes }: SortableWord, kind: string): string | undefined {
  const isVowel = graphemes.map(({ sounds }) => sounds.some(isVowelSound))
  const first = isVowel.indexOf(true)
  const second = isVowel.indexOf(true, first + 1)
  if (first < 0 || second < 0 || !/^(?:open|closed)-/.test(kind)) return undefined
  const [only, ...others] = graphemes.slice(first + 1, second)
  if (only === undefined) return undefined
  if (others.length > 0) return 'two or more consonants'
  const letters = only.letters.toLowerCase()
  if (/^([a-z])\1$/.test(letters) || letters === 'ck') return 'a doubled consonant'
  return `one consonant, ${kind === 'open-syllable' ? 'open' : 'closed'} syllable`
}

/** How a last syllable without stress is spelled: le, el, al; er, or, ar; en, on; y, ey. */
export const lastSyllable: BasisFamily = {
  kind: 'last syllable',
  placesOf: word => {
    const sounds = (word.pronunciations[0] ?? '').split(' ')
    const last = sounds.findLastIndex(sound => /\d$/.test(sound))
    if (word.syllables.length < 2 || last < 0 || !sounds[last]!.endsWith('0')) return []
    const heard = sounds.slice(last).map(withoutStress).map(weakened).join(' ')
    const vowel = word.graphemes.findLast(grapheme => grapheme.sounds.some(isVowelSound))
    return vowel === undefined
      ? []
      : [{ of: heard, column: `-${word.text.slice(vowel.start).toLowerCase()}` }]
  },
  basisOf: heard => ({
    name: `spellings of the last syllable /${heard}/`,
    basis: `how the last syllable, /${heard}/, is spelled`,
    patterns: ['consonant-le', 'schwa', 'y-as-vowel', 'r-controlled'],
    noneBecause: () => `does not end with a weak /${heard}/`,
    loneIsOddball: true,
  }),
}

/** The dictionary wavers between IH and AH in a weak syllable. */
function weakened(sound: string): string {
  return sound === 'IH' ? 'AH' : sound
}

const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth']

export const whereStressed: BasisFamily = {
  kind: 'stress',
  placesOf: word => {
    const stresses: readonly string[] = (word.pronunciations[0] ?? '').match(/\d/g) ?? []
    const ordinal = ordinals[stresses.indexOf('1')]
    const isLong = word.syllables.length > 1 && stresses.length === word.syllables.length
    return isLong && ordinal !== undefined ? [place(`${ordinal} syllable`)] : []
  },
  basisOf: () => ({
    name: 'which syllable is stressed',
    basis: 'which syllable is said most strongly',
    patterns: [],
    noneBecause: word => (word.syllables.length < 2 ? 'has one syllable' : 'has no known stress'),
    order: ordinals.map(ordinal => `${ordinal} syllable`),
  }),
}

function place(column: string): Placement {
  return { of: 'stress', column }
}
