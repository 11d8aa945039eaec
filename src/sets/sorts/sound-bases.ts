/** Sorts by sound: how many, how one sound is spelled, how one spelling sounds. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import { soundName } from '../../words/patterns/sound-names.js'
import type { Grapheme, Word } from '../../words/word.js'
import { type BasisFamily, distinct } from './sort-basis.js'

export const howManySounds: BasisFamily = () => [
  {
    name: 'how many sounds',
    basis: 'how many sounds the word has',
    sharpness: 0.75,
    titlesFor: word => (word.soundCount === 0 ? [] : [counted(word.soundCount, 'sound')]),
    noneBecause: () => 'has no known sounds',
    order: Array.from({ length: 20 }, (_, index) => counted(index + 1, 'sound')),
  },
]

export const howManySyllables: BasisFamily = () => [
  {
    name: 'how many syllables',
    basis: 'how many syllables the word has',
    sharpness: 0.8,
    titlesFor: word => (word.syllables.length === 0 ? [] : [counted(word.syllables.length, 'syllable')]),
    noneBecause: () => 'has no known syllables',
    order: Array.from({ length: 12 }, (_, index) => counted(index + 1, 'syllable')),
  },
]

/** One sound, its spellings: long e in reed, leaf, pony. */
export const spellingsOfOneSound: BasisFamily = words =>
  distinct(words.flatMap(word => word.graphemes.flatMap(soleSound))).map(sound => ({
    name: `spellings of ${soundName(sound)}`,
    basis: `how the sound ${soundName(sound)} is spelled`,
    sharpness: isVowelSound(sound) ? 1 : 0.95,
    titlesFor: word =>
      distinct(
        word.graphemes
          .filter(grapheme => soleSound(grapheme).includes(sound))
          .map(grapheme => spellingOf(word, grapheme)),
      ),
    noneBecause: () => `has no ${soundName(sound)}`,
  }))

/** One spelling, its sounds: ea in leaf and bread, ow in snow and cow. */
export const soundsOfOneSpelling: BasisFamily = words =>
  distinct(words.flatMap(word => word.graphemes.map(grapheme => grapheme.letters.toLowerCase())))
    .filter(letters => letters.length > 1)
    .map(letters => {
      const soundsIn = (word: Word) =>
        distinct(
          word.graphemes
            .filter(grapheme => grapheme.letters.toLowerCase() === letters)
            .map(grapheme => grapheme.sounds.join(' ')),
        )
      const firstWith = (sounds: string) =>
        words.find(word => soundsIn(word).join() === sounds)?.text ?? sounds
      return {
        name: `how ${letters} sounds`,
        basis: `how the letters ${letters} sound`,
        sharpness: 1,
        titlesFor: (word: Word) => soundsIn(word).map(sounds => `${letters} as in ${firstWith(sounds)}`),
        noneBecause: () => `has no ${letters}`,
      }
    })

function soleSound(grapheme: Grapheme): readonly string[] {
  return grapheme.sounds.length === 1 ? grapheme.sounds : []
}

/** `a_e` where a silent e belongs to the vowel, the grapheme's letters otherwise. */
function spellingOf(word: Word, grapheme: Grapheme): string {
  const split = word.patterns.find(
    finding =>
      finding.pattern === 'silent-e' && finding.start === grapheme.start && finding.letters.includes('_'),
  )
  return (split?.letters ?? grapheme.letters).toLowerCase()
}

function counted(count: number, what: string): string {
  return count === 1 ? `1 ${what}` : `${count} ${what}s`
}
