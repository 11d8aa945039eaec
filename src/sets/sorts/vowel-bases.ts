/** Sorts by the vowel: its spelling, its kind, its length, its sound, the rime that it opens. */
import { plainName } from '../../words/patterns/plain-name.js'
import type { SortableFinding, SortableWord } from '../../words/sortable-word.js'
import { keyWordOf } from './key-word.js'
import { type BasisFamily, findingsOf, type SortBasis } from './sort-basis.js'
import {
  isShortLetter,
  mainVowel,
  type SpelledVowel,
  soundInWords,
  vowelName,
  vowelOrder,
  vowelsOf,
} from './vowel-spelling.js'

const vowelPatterns = ['short-vowel', 'long-vowel', 'silent-e', 'vowel-team', 'diphthong', 'r-controlled']

/** Letters and sound together: short a, a_e, ai, ay; ee, oa, igh; a_e, i_e, o_e. */
export const spellingsOfVowels: BasisFamily = {
  kind: 'spellings of vowels',
  placesOf: word => {
    const vowel = mainVowel(word)
    return vowel === undefined ? [] : [{ of: 'vowel', column: keyOf(vowel) }]
  },
  basisOf: () => ({
    ...byVowelSpelling,
    name: 'which vowel spelling',
    basis: 'how the vowel is spelled and said',
  }),
}

/** Words that the list or the lexicon knows to sound like others, by the spelling that tells them apart. */
export function homophonesByVowel(words: readonly SortableWord[]): BasisFamily {
  const heard = new Map<string, number>()
  for (const {
    pronunciations: [said = ''],
  } of words)
    heard.set(said, (heard.get(said) ?? 0) + 1)
  const isOne = (word: SortableWord) =>
    (heard.get(word.pronunciations[0] ?? '') ?? 0) > 1 || findingsOf(word, 'homophone').length > 0
  return {
    kind: 'homophones',
    placesOf: word => {
      const vowel = isOne(word) ? mainVowel(word) : undefined
      return vowel === undefined ? [] : [{ of: 'homophones', column: keyOf(vowel) }]
    },
    basisOf: () => ({
      ...byVowelSpelling,
      name: 'spellings of words that sound alike',
      basis: 'how words that sound alike spell their vowel',
      patterns: ['homophone'],
      noneBecause: word =>
        isOne(word) ? byVowelSpelling.noneBecause(word) : 'sounds like no other word of the list',
    }),
  }
}

function keyOf({ spelling, sound }: SpelledVowel): string {
  return `${spelling}|${sound}`
}

function spelledAs(column: string): Pick<SpelledVowel, 'spelling' | 'sound'> {
  const [spelling = '', sound = ''] = column.split('|')
  return { spelling, sound }
}

const byVowelSpelling: Pick<SortBasis, 'patterns' | 'titleOf' | 'noneBecause' | 'oddball' | 'order'> = {
  patterns: vowelPatterns,
  titleOf: (column, words, all) => {
    const { spelling, sound } = spelledAs(column)
    if (isShortLetter({ spelling, sound })) return `short ${spelling}`
    const isShared = [...all].some(other => other !== column && other.startsWith(`${spelling}|`))
    return isShared || spelling.length === 1 ? `${spelling} as in ${keyWordOf(words)}` : spelling
  },
  noneBecause: unnamedVowel,
  oddball: (word, columns) => {
    const vowel = mainVowel(word)
    return vowel !== undefined && vowel.spelling.length > 1 && hasSpelling(columns, vowel.spelling)
      ? `its ${vowel.spelling} says ${soundInWords(vowel)}`
      : undefined
  },
  order: ['a|AE', 'e|EH', 'i|IH', 'o|AA', 'u|AH'],
}

function hasSpelling(columns: ReadonlySet<string>, spelling: string): boolean {
  return [...columns].some(column => spelledAs(column).spelling === spelling)
}

/** The first that a word shows names its vowel: a silent e's vowel is long too, a team's may be. */
const kindsInOrder = [
  'r-controlled',
  'silent-e',
  'diphthong',
  'vowel-team',
  'y-as-vowel',
  'long-vowel',
  'short-vowel',
]

/** The e of please is silent too, and its vowel is the team. */
function namesVowel({ pattern, letters }: SortableFinding): boolean {
  return pattern !== 'silent-e' || letters.includes('_')
}

export const kindOfVowel: BasisFamily = {
  kind: 'kinds of vowel',
  placesOf: word => {
    if (word.syllables.length !== 1) return []
    const kind = kindsInOrder.find(pattern => findingsOf(word, pattern).some(namesVowel))
    return kind === undefined || isUnlengthened(word) ? [] : [{ of: 'kind', column: kind }]
  },
  basisOf: () => ({
    name: 'kind of vowel',
    basis: 'what kind of vowel the word has',
    patterns: kindsInOrder,
    titleOf: plainName,
    noneBecause: unnamedVowel,
    order: kindsInOrder.toReversed(),
    oddball: isOddWithE,
  }),
}

/** have, come: a silent e, and yet no long vowel. */
function isUnlengthened(word: SortableWord): boolean {
  return (
    vowelsOf(word)[0]?.spelling.endsWith('_e') === true &&
    !findingsOf(word, 'silent-e').some(({ letters }) => letters.includes('_'))
  )
}

function isOddWithE(word: SortableWord): string | undefined {
  const [vowel] = vowelsOf(word)
  return vowel !== undefined && word.syllables.length === 1 && isUnlengthened(word)
    ? `its ${vowel.spelling} says ${soundInWords(vowel)}`
    : undefined
}

/** Why a word's vowel cannot be named. */
function unnamedVowel(word: SortableWord): string {
  if (word.syllables.length > 1) return 'has more than one syllable'
  const [vowel] = vowelsOf(word)
  return vowel !== undefined && vowelName(vowel) === undefined
    ? 'has a vowel with an r'
    : 'has an unusual vowel'
}

export const shortOrLong: BasisFamily = {
  kind: 'kinds of vowel',
  placesOf: word => {
    const length = /^(?:short|long)/.exec(nameOf(word) ?? '')?.[0]
    return length === undefined || isUnlengthened(word) ? [] : [{ of: 'length', column: `${length} vowel` }]
  },
  basisOf: () => ({
    name: 'short or long vowel',
    basis: 'whether the vowel is short or long',
    patterns: vowelPatterns,
    noneBecause: word =>
      nameOf(word) === undefined ? unnamedVowel(word) : 'has a vowel that is neither short nor long',
    order: ['short vowel', 'long vowel'],
    oddball: isOddWithE,
  }),
}

export const whichVowelSound: BasisFamily = {
  kind: 'kinds of vowel',
  placesOf: word => {
    const name = nameOf(word)
    return name === undefined ? [] : [{ of: 'sound', column: name }]
  },
  basisOf: () => ({
    name: 'which vowel sound',
    basis: 'which vowel sound the word has',
    patterns: vowelPatterns,
    noneBecause: unnamedVowel,
    order: vowelOrder,
  }),
}

/** Words that end alike from the vowel on, in letters and sounds: the rimes of primary teaching. */
export const wordFamilies: BasisFamily = {
  kind: 'rimes',
  placesOf: word => {
    const vowel = soleVowel(word)
    if (vowel === undefined) return []
    const letters = word.text.slice(vowel.grapheme.start).toLowerCase()
    return [{ of: 'rimes', column: `-${letters}|${vowel.sound}` }]
  },
  basisOf: () => ({
    name: 'word families',
    basis: 'how the word ends from its vowel on',
    patterns: [],
    titleOf: (column, words, all) => {
      const [rime = ''] = column.split('|')
      const isShared = [...all].some(other => other !== column && other.startsWith(`${rime}|`))
      return isShared ? `${rime} as in ${keyWordOf(words)}` : rime
    },
    noneBecause: word => (word.syllables.length > 1 ? 'has more than one syllable' : 'has an unusual vowel'),
  }),
}

/** The vowel's name in a word of one syllable. */
function nameOf(word: SortableWord): string | undefined {
  const vowel = soleVowel(word)
  return vowel === undefined ? undefined : vowelName(vowel)
}

function soleVowel(word: SortableWord): SpelledVowel | undefined {
  const vowels = vowelsOf(word)
  return word.syllables.length === 1 && vowels.length === 1 ? vowels[0] : undefined
}
