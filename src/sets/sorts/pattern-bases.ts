/** Sorts by a pattern of the words: which letters, where they stand, whether the word has it at all. */
import { plainName } from '../../words/patterns/plain-name.js'
import { soundName } from '../../words/patterns/sound-names.js'
import { placeOf } from '../../words/patterns/spelled-sounds.js'
import type { SortableWord } from '../../words/sortable-word.js'
import { keyWordOf } from './key-word.js'
import { type BasisFamily, distinct, findingsOf, type Placement, type SortBasis } from './sort-basis.js'
import { soundInWords, vowelsOf } from './vowel-spelling.js'

/** These have families of their own, which know more of them than their letters. */
const elsewhere = /^(?:hard|soft)-[cg]$|^ending-(?!blend)|^(?:prefix|suffix|compound|contraction|homophone)$/

/** A pattern on a vowel: its letters are sorted by what they say, too, so that said is no word with ai like rain. */
const onVowels: ReadonlySet<string> = new Set([
  'silent-e',
  'vowel-team',
  'diphthong',
  'r-controlled',
  'y-as-vowel',
])

export const whichLetters: BasisFamily = {
  kind: 'letters of a pattern',
  placesOf: word => lettersPlaces(word, pattern => !inAnyWord.has(pattern)),
  basisOf: pattern => lettersBasis(pattern),
}

/** Most words have a short or a long vowel letter, whatever they are to teach. */
export const whichVowelLetters: BasisFamily = {
  kind: 'vowel letters',
  placesOf: word => lettersPlaces(word, pattern => inAnyWord.has(pattern)),
  basisOf: pattern => lettersBasis(pattern),
}

const inAnyWord: ReadonlySet<string> = new Set(['short-vowel', 'long-vowel', 'schwa'])

function lettersPlaces(word: SortableWord, isOurs: (pattern: string) => boolean): readonly Placement[] {
  return word.patterns.flatMap(({ pattern, letters, start, end }): readonly Placement[] => {
    if (elsewhere.test(pattern) || !isOurs(pattern)) return []
    if (!onVowels.has(pattern)) return [{ of: pattern, column: letters.toLowerCase(), start, end }]
    const vowel = vowelsOf(word).find(({ grapheme }) => grapheme.start === start)
    return vowel === undefined
      ? []
      : [{ of: pattern, column: `${vowel.spelling}|${vowel.sound}`, start, end }]
  })
}

function lettersBasis(pattern: string): SortBasis {
  const length = /^(short|long)-vowel$/.exec(pattern)?.[1]
  return {
    name: `which ${plainName(pattern)}`,
    basis: `which letters make the ${plainName(pattern)}`,
    patterns: [pattern],
    titleOf: (column, words, all) =>
      length === undefined ? lettersOf(column, words, all) : `${length} ${column}`,
    noneBecause: () => `has no ${plainName(pattern)}`,
    noneTitle: `no ${plainName(pattern)}`,
    loneIsOddball: true,
    oddball: word => (pattern === 'silent-e' ? unlengthened(word) : undefined),
  }
}

/** `ow`; `ow as in cow` where another column has the same letters with another sound. */
function lettersOf(column: string, words: readonly SortableWord[], all: ReadonlySet<string>): string {
  const [letters = '', sound] = column.split('|')
  if (sound === undefined) return letters
  const isShared = [...all].some(other => other !== column && other.startsWith(`${letters}|`))
  return isShared ? `${letters} as in ${keyWordOf(words)}` : letters
}

/** have, come: the e is silent and changes nothing. */
function unlengthened(word: SortableWord): string | undefined {
  const silent = findingsOf(word, 'silent-e').find(({ letters }) => letters.toLowerCase() === 'e')
  if (silent === undefined) return undefined
  const vowel = vowelsOf(word).find(({ spelling }) => spelling.endsWith('_e'))
  return vowel === undefined ? undefined : `its ${vowel.spelling} says ${soundInWords(vowel)}`
}

/** One team at the beginning, in the middle, at the end: sh in ship and fish, st in stop and nest. */
export const whereLettersStand: BasisFamily = {
  kind: 'place of letters',
  placesOf: ({ text, graphemes, patterns }) => [
    ...graphemes
      .filter(({ letters, sounds }) => letters.length > 1 && sounds.length > 0)
      .map(({ letters, start }) => ({
        of: letters.toLowerCase(),
        column: placeOf(text, start, start + letters.length),
      })),
    ...patterns
      .filter(({ pattern }) => /-blend$/.test(pattern))
      .map(({ letters, place }) => ({ of: letters.toLowerCase(), column: place })),
  ],
  basisOf: letters => ({
    name: `where ${letters} stands`,
    basis: `where in the word ${letters} stands`,
    patterns: [],
    noneBecause: () => `has no ${letters}`,
    order: placesInOrder,
  }),
}

const placesInOrder = ['beginning', 'middle', 'end', 'whole']

export const whereItStands: BasisFamily = {
  kind: 'place',
  placesOf: word =>
    word.patterns.flatMap(({ pattern, place }): readonly Placement[] => {
      if (elsewhere.test(pattern) || inAnyWord.has(pattern)) return []
      const of = /^(?:beginning|ending)-blend$/.test(pattern) ? 'blend' : pattern
      return [{ of, column: place }]
    }),
  basisOf: pattern => ({
    name: `where the ${standing(pattern)}`,
    basis: `where in the word the ${standing(pattern)}`,
    patterns: pattern === 'blend' ? ['beginning-blend', 'ending-blend'] : [pattern],
    noneBecause: () => `has no ${plainName(pattern)}`,
    order: placesInOrder,
  }),
}

/** `the vowel team stands`, `the silent letters stand`. */
function standing(pattern: string): string {
  const name = plainName(pattern)
  return `${name} ${name.endsWith('letters') ? 'stand' : 'stands'}`
}

export const hasPattern: BasisFamily = {
  kind: 'or none',
  placesOf: word =>
    distinct(word.patterns.map(({ pattern }) => pattern)).map(pattern => ({ of: pattern, column: pattern })),
  basisOf: pattern => ({
    name: `${plainName(pattern)} or none`,
    basis: `${plainName(pattern)} or none`,
    patterns: [pattern],
    titleOf: () => plainName(pattern),
    noneBecause: () => `has no ${plainName(pattern)}`,
    noneTitle: `no ${plainName(pattern)}`,
  }),
}

/** Behind c and g in the alphabet: of equal sorts the one by one letter stands first. */
const bothLetters = 'of each letter'
const eitherLetter = 'of the letters together'

/** c and g have two sounds each: hard and soft are one sort, not two patterns. */
export const hardAndSoft: BasisFamily = {
  kind: 'hard and soft',
  placesOf: word =>
    word.patterns.flatMap(({ pattern, start, end }): readonly Placement[] => {
      const [, hardness = '', letter = ''] = /^(hard|soft)-([cg])$/.exec(pattern) ?? []
      if (letter === '') return []
      const column = `${hardness} ${letter}`
      return [
        { of: letter, column, start, end },
        { of: bothLetters, column, start, end },
        { of: eitherLetter, column: hardness, start, end },
      ]
    }),
  basisOf: of => {
    const letters = of.length === 1 ? [of] : ['c', 'g']
    return {
      name: of === eitherLetter ? 'hard or soft, c or g' : `hard and soft ${letters.join(' and ')}`,
      basis: `whether ${of === bothLetters ? 'c or g, and whether it' : letters.join(' or ')} is hard or soft`,
      patterns: letters.flatMap(letter => [`hard-${letter}`, `soft-${letter}`]),
      titleOf: column => (of === eitherLetter ? `${column} c or g` : column),
      noneBecause: () => `has no ${letters.join(' or ')} that is hard or soft`,
      order: ['hard', 'soft', 'hard c', 'soft c', 'hard g', 'soft g'],
      loneIsOddball: true,
      oddball: word => otherSound(word, letters),
    }
  },
}

/** The c of ocean, the g of beige. */
function otherSound(word: SortableWord, letters: readonly string[]): string | undefined {
  const odd = word.graphemes.find(
    ({ letters: own, sounds }) =>
      letters.includes(own.charAt(0).toLowerCase()) && /^.[aeiou]?$/.test(own) && sounds.length > 0,
  )
  return odd === undefined
    ? undefined
    : `its ${odd.letters.charAt(0).toLowerCase()} says ${soundName(odd.sounds.join(' '))}`
}
