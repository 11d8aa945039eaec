/** Sorts by sound: how one sound is spelled, how one spelling sounds, how many sounds and syllables there are. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import { soundName } from '../../words/patterns/sound-names.js'
import type { SortableWord } from '../../words/sortable-word.js'
import type { Grapheme } from '../../words/word.js'
import { keyWordOf } from './key-word.js'
import { type BasisFamily, type Placement, type SortBasis, spanOf } from './sort-basis.js'
import { isShortLetter, mainVowel, soundInWords, vowelsOf } from './vowel-spelling.js'

const vowelPatterns = ['silent-e', 'vowel-team', 'long-vowel', 'diphthong', 'y-as-vowel', 'r-controlled']

/** One vowel sound, its spellings: long e in reed, leaf, pony. */
export const spellingsOfOneVowel: BasisFamily = {
  kind: 'spellings of a sound',
  placesOf: word => {
    const main = mainVowel(word)
    return vowelsOf(word)
      .filter(vowel => vowel === main || !weak.has(vowel.sound))
      .map(vowel => ({ of: vowel.sound, column: vowel.spelling, ...spanOf(vowel.grapheme) }))
  },
  basisOf: sound => ({
    ...spellingsOf(soundInWords({ sound })),
    patterns: vowelPatterns,
    titleOf: column => (isShortLetter({ spelling: column, sound }) ? `short ${column}` : column),
    oddball: (word, columns) => {
      const odd = vowelsOf(word).find(vowel => columns.has(vowel.spelling))
      return odd === undefined || odd.spelling.length === 1
        ? undefined
        : `its ${odd.spelling} says ${soundInWords(odd)}`
    },
  }),
}

/** Without stress they stand in any long word, spelled with any letter. */
const weak: ReadonlySet<string> = new Set(['AH', 'IH'])

/** One consonant sound, its spellings, anywhere and, more closely, at one end: cat, kite, duck; catch, teach. */
export const spellingsOfOneConsonant: BasisFamily = {
  kind: 'spellings of a consonant',
  placesOf: ({ graphemes }) =>
    graphemes.flatMap(grapheme => {
      const sound = consonantOf(grapheme)
      return sound === undefined
        ? []
        : [{ of: sound, column: grapheme.letters.toLowerCase(), ...spanOf(grapheme) }]
    }),
  basisOf: consonantSpellings,
}

export const spellingsAtTheEnds: BasisFamily = {
  kind: 'spellings of a sound',
  placesOf: word => {
    const [first] = word.graphemes
    const sound = first === undefined ? undefined : consonantOf(first)
    const last = lastConsonant(word)
    return [
      ...(sound === undefined
        ? []
        : [
            {
              of: `${sound} at the beginning`,
              column: first!.letters.toLowerCase(),
              ...spanOf(first!),
            },
          ]),
      ...(last === undefined
        ? []
        : [
            {
              of: `${last.sound} at the end`,
              column: last.spelling,
              start: last.start,
              end: word.text.length,
            },
          ]),
    ]
  },
  basisOf: consonantSpellings,
}

function consonantSpellings(of: string): SortBasis {
  const [sound = '', place = ''] = of.split(/ (?=at )/)
  const spellings = spellingsOf(`${soundName(sound)}${place === '' ? '' : ` ${place}`}`)
  return { ...spellings, patterns: ['consonant-digraph', 'trigraph', 'double-consonant', 'silent-letters'] }
}

function spellingsOf(sound: string): Pick<SortBasis, 'name' | 'basis' | 'noneBecause' | 'loneIsOddball'> {
  return {
    name: `spellings of ${sound}`,
    basis: `how the sound ${sound} is spelled`,
    noneBecause: () => `has no ${sound}`,
    loneIsOddball: true,
  }
}

function consonantOf({ sounds: [sound, another] }: Grapheme): string | undefined {
  return sound === undefined || another !== undefined || isVowelSound(sound) ? undefined : sound
}

/** With the silent e behind it: the ke of cake, the ge of cage. */
function lastConsonant({
  graphemes,
}: SortableWord): { readonly sound: string; readonly spelling: string; readonly start: number } | undefined {
  const last = graphemes.at(-1)
  if (last === undefined) return undefined
  const isSilentE = last.letters.toLowerCase() === 'e' && last.sounds.length === 0
  const spelled = isSilentE ? graphemes.at(-2) : last
  const sound = spelled === undefined ? undefined : consonantOf(spelled)
  if (spelled === undefined || sound === undefined) return undefined
  return {
    sound,
    spelling: `${spelled.letters}${isSilentE ? 'e' : ''}`.toLowerCase(),
    start: spelled.start,
  }
}

/** One spelling, its sounds: ea in leaf and bread, ow in snow and cow, ch in chin and school, y in cry and pony. */
export const soundsOfOneSpelling: BasisFamily = {
  kind: 'sounds of a spelling',
  placesOf: word => {
    const vowels = new Map(vowelsOf(word).map(vowel => [vowel.grapheme, vowel]))
    const last = word.graphemes.length - 1
    return word.graphemes.flatMap((grapheme, index): readonly Placement[] => {
      if (grapheme.sounds.length === 0) return []
      const vowel = vowels.get(grapheme)
      const of = vowel?.spelling ?? grapheme.letters.toLowerCase()
      const column = vowel?.sound ?? grapheme.sounds.join(' ')
      if (of === 'y') return [{ of, column }, ...(index === last ? [{ of: 'y at the end', column }] : [])]
      return of.length < 2 || of.includes('_') ? [] : [{ of, column }]
    })
  },
  basisOf: of => {
    const [letters = ''] = of.split(' ')
    return {
      name: `how ${of} sounds`,
      basis: `how the letters ${of} sound`,
      patterns: ['vowel-team', 'diphthong', 'consonant-digraph', 'y-as-vowel', 'r-controlled'],
      titleOf: (_column, words) => `${letters} as in ${keyWordOf(words)}`,
      noneBecause: () => `has no ${of}`,
      loneIsOddball: true,
    }
  },
}

export const howManySounds: BasisFamily = {
  kind: 'sounds',
  placesOf: ({ soundCount }) =>
    soundCount === 0 ? [] : [{ of: 'sounds', column: counted(soundCount, 'sound') }],
  basisOf: () => ({
    name: 'how many sounds',
    feature: 'sounds',
    basis: 'how many sounds the word has',
    patterns: [],
    noneBecause: () => 'has no known sounds',
    order: Array.from({ length: 30 }, (_, index) => counted(index + 1, 'sound')),
  }),
}

export const howManySyllables: BasisFamily = {
  kind: 'syllables',
  placesOf: ({ syllables }) =>
    syllables.length === 0 ? [] : [{ of: 'syllables', column: counted(syllables.length, 'syllable') }],
  basisOf: () => ({
    name: 'how many syllables',
    feature: 'syllables',
    basis: 'how many syllables the word has',
    patterns: [],
    noneBecause: () => 'has no known syllables',
    order: Array.from({ length: 12 }, (_, index) => counted(index + 1, 'syllable')),
  }),
}

function counted(count: number, what: string): string {
  return count === 1 ? `1 ${what}` : `${count} ${what}s`
}
