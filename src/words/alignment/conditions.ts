/** Where in a word a pair of the inventory may stand, by the name written there. */
import { isVowelSound } from './arpabet.js'

/** A stretch of letters put against a stretch of sounds. */
export interface Context {
  /** Lower case, accents folded, signs removed. */
  readonly letters: string
  readonly start: number
  readonly end: number
  readonly sounds: readonly string[]
  /** Index of the first of its sounds. */
  readonly from: number
  /** Index after the last of its sounds. */
  readonly to: number
}

export type Condition = (context: Context) => boolean

const vowelLetters = 'aeiouy'
const isVowelLetter = (letter: string | undefined) => letter !== undefined && vowelLetters.includes(letter)
const isConsonantLetter = (letter: string | undefined) =>
  letter !== undefined && !vowelLetters.includes(letter)
/** Nothing but a plural's s may follow: byes. */
const endsWord = (letters: string, end: number) =>
  end === letters.length || (end === letters.length - 1 && letters[end] === 's')

export const conditions: Readonly<Record<string, Condition>> = {
  /** The r ends its syllable (there, barred); before a vowel sound it begins the next one (very, carry). */
  closed: ({ sounds, to }) => {
    const next = sounds[to]
    return next === undefined || !isVowelSound(next)
  },
  /** Nothing or a consonant follows: antique, antiques, uniquely. */
  final: ({ letters, end }) => !isVowelLetter(letters[end]),
  /** Elsewhere a silent h makes a team with the letter before it: rhyme, Thomas. */
  'first or after a vowel': ({ letters, start }) => start === 0 || isVowelLetter(letters[start - 1]),
  'not at the beginning': ({ start }) => start > 0,
  /** The e of dyeing belongs to dye. */
  'not before ng': ({ letters, end }) => !letters.startsWith('ng', end),
  /** A vowel that is written and no longer said: chocolate, aspirin, basically. */
  'between consonants': ({ letters, start, end }) =>
    isConsonantLetter(letters[end]) &&
    start > 1 &&
    (isConsonantLetter(letters[start - 1]) || letters.startsWith('ally', start)),
  'word end': ({ letters, end }) =>
    endsWord(letters, end) || (end === letters.length - 1 && letters[end] === 'd'),
  'before a o u': ({ letters, end }) => 'aou'.includes(letters[end] ?? '-'),
  'before a e i o': ({ letters, end }) => 'aeio'.includes(letters[end] ?? '-'),
  /** The past ending, all of it one sound: jumped, played, plagued; not need, tied, argued. */
  past: ({ letters, start, end, sounds, from }) =>
    end === letters.length &&
    start > 1 &&
    !isPartOfVowelTeam(letters, start - 1) &&
    !(letters[start - 1] === 'u' && from > 0 && isVowelSound(sounds[from - 1]!)),
  'after a consonant': ({ letters, start }) => isConsonantLetter(letters[start - 1]),
  'after a vowel sound': ({ sounds, from }) => from > 0 && isVowelSound(sounds[from - 1]!),
  /** After a consonant letter; an e before a final d belongs to the ending. */
  'silent e': ({ letters, start, end }) =>
    isConsonantLetter(letters[start - 1]) && !(end === letters.length - 1 && letters[end] === 'd'),
}

/** Whether e after this letter makes a team with it (tied, toed, glued, agreed); oo, ay, gu (plagued) are whole without it. */
function isPartOfVowelTeam(letters: string, index: number): boolean {
  const letter = letters[index]!
  if (letter === 'u') return !'gq'.includes(letters[index - 1]!)
  if (letter === 'y') return !isVowelLetter(letters[index - 1])
  if (letter === 'o') return letters[index - 1] !== 'o'
  return isVowelLetter(letter)
}
