/** Sorts of one-syllable words by their vowel: its kind, its length, its sound, its word family. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import { plainName } from '../../words/patterns/plain-name.js'
import type { Grapheme, Word } from '../../words/word.js'
import { type BasisFamily, findingsOf } from './sort-basis.js'

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

/** AO is taught as short o where the letter o spells it (dog), and is neither short nor long elsewhere (saw). */
const vowelNames: Readonly<Record<string, string>> = {
  AE: 'short a',
  EH: 'short e',
  IH: 'short i',
  AA: 'short o',
  AH: 'short u',
  EY: 'long a',
  IY: 'long e',
  AY: 'long i',
  OW: 'long o',
  UW: 'long u',
  AW: 'ow as in cow',
  OY: 'oy as in boy',
  UH: 'oo as in book',
}

/** Why a word's vowel cannot be named. */
function unnamedVowel(word: Word): string {
  if (word.syllables.length > 1) return 'has more than one syllable'
  const vowel = soleVowel(word)
  return vowel !== undefined && hasR(word, vowel) ? 'has a vowel with an r' : 'has an unusual vowel'
}

export const kindOfVowel: BasisFamily = () => [
  {
    name: 'kind of vowel',
    basis: 'what kind of vowel the word has',
    sharpness: 1,
    titlesFor: word => {
      if (word.syllables.length !== 1) return []
      const kind = kindsInOrder.find(pattern => findingsOf(word, pattern).length > 0)
      return kind === undefined ? [] : [plainName(kind)]
    },
    noneBecause: unnamedVowel,
  },
]

export const shortOrLong: BasisFamily = () => [
  {
    name: 'short or long vowel',
    basis: 'whether the vowel is short or long',
    sharpness: 1,
    titlesFor: word => {
      const name = vowelName(word)
      if (name?.startsWith('short')) return ['short vowel']
      return name?.startsWith('long') ? ['long vowel'] : []
    },
    noneBecause: word =>
      vowelName(word) === undefined ? unnamedVowel(word) : 'has a vowel that is neither short nor long',
    order: ['short vowel', 'long vowel'],
  },
]

export const whichVowelSound: BasisFamily = () => [
  {
    name: 'which vowel sound',
    basis: 'which vowel sound the word has',
    sharpness: 0.95,
    titlesFor: word => {
      const name = vowelName(word)
      return name === undefined ? [] : [name]
    },
    noneBecause: unnamedVowel,
  },
]

/** Words that end alike from the vowel on, in letters and sounds: the rimes of primary teaching. */
export const wordFamilies: BasisFamily = () => [
  {
    name: 'word families',
    basis: 'how the word ends from its vowel on',
    sharpness: 0.9,
    titlesFor: word => {
      const vowel = soleVowel(word)
      return vowel === undefined ? [] : [`-${word.text.slice(vowel.start).toLowerCase()}`]
    },
    noneBecause: word => (word.syllables.length > 1 ? 'has more than one syllable' : 'has an unusual vowel'),
  },
]

function vowelName(word: Word): string | undefined {
  const vowel = soleVowel(word)
  if (vowel === undefined || hasR(word, vowel)) return undefined
  const sound = vowel.sounds.find(isVowelSound) ?? ''
  if (sound === 'AO') return vowel.letters.toLowerCase() === 'o' ? 'short o' : 'aw as in saw'
  return vowelNames[sound]
}

/** A vowel with an r after it is neither short nor long. */
function hasR(word: Word, vowel: Grapheme): boolean {
  const next = word.graphemes[word.graphemes.indexOf(vowel) + 1]
  return vowel.sounds.includes('R') || vowel.sounds.includes('ER') || next?.sounds[0] === 'R'
}

function soleVowel(word: Word): Grapheme | undefined {
  const vowels = word.graphemes.filter(grapheme => grapheme.sounds.some(isVowelSound))
  return word.syllables.length === 1 && vowels.length === 1 ? vowels[0] : undefined
}
