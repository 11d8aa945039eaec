/**
 * The question that opens a sort: what to do with a few of its words, and what to notice. In our own words, after what
 * word study asks for in general: say it, look at it, compare (common practice, no source).
 */
import type { SortKind } from '../weights.js'

export interface OpeningTask {
  readonly kind: SortKind
  /** Which basis of the family, as in `Placement.of`. */
  readonly of: string
  /** A word or two of different columns: `crab and city`. */
  readonly words: string
}

/** Children hear, see or think it over, as the kind of the sort asks. */
const openings: Readonly<Record<SortKind, (words: string, of: string) => string>> = {
  'sounds of a spelling': words =>
    `Say ${words}. Which letters do they share, and what do those say in each?`,
  'spellings of a sound': sharedSound,
  'spellings of a consonant': sharedSound,
  'hard and soft': (words, of) =>
    `Say ${words}. What does the ${of.length === 1 ? of : 'c or g'} say in each?`,
  'how an ending is added': words =>
    `Cover the ending of ${words}. What was each word before it was added? What has happened to that word?`,
  'sounds of an ending': words => `Say ${words}. How does the ending sound in each?`,
  'shared part': words => `Which two words is each of these made of: ${words}? What does each part mean?`,
  'short forms': words => `Say ${words} in full. Which letters does the apostrophe stand for?`,
  affixes: words => `Say ${words} with and without the part that was added. What does that part change?`,
  'vowels with r': words => `Say ${words}. What does the vowel with its r say in each?`,
  homophones: words => `Use ${words} in a sentence each. What tells you which spelling is meant?`,
  'letters of a pattern': words =>
    `Look at ${words}. Which letters belong together? What do you hear of them?`,
  'vowel letters': words => `Say ${words}. Which vowel letter do you see, and what does it say?`,
  'spellings of vowels': words => `Say ${words} and stretch the vowel. Which letters spell it in each?`,
  rimes: words => `Cover all that stands before the vowel in ${words}. What is left of each?`,
  'first syllable': (words, of) =>
    of === 'between'
      ? `Clap ${words}. Which letters stand between the first two vowels?`
      : `Clap ${words}. What does the first syllable end with?`,
  clusters: words => `Say ${words} slowly. Which consonants do you hear side by side?`,
  'last syllable': words => `Say ${words}. Which part is said weakly? How is it spelled in each?`,
  'kinds of vowel': words => `Say ${words} and stretch the vowel. Which letters tell you how to say it?`,
  'kinds of beginning or end': (words, of) =>
    `Say ${words}. How many letters do you see ${of === 'end' ? 'behind the last vowel' : 'before the first vowel'}, and how many sounds do you hear?`,
  'sounds of s': words => `Say ${words}. How does the ending sound in each?`,
  plurals: words => `Say ${words} for one and for more than one. What is added? Does the word itself change?`,
  'place of letters': (words, of) => `Point to ${of} in ${words}. Where does it stand in each?`,
  place: words => `Point to the letters that belong together in ${words}. Where do they stand?`,
  'one letter': (words, of) => `Say ${words}. What do you hear ${of === 'end' ? 'last' : 'first'} in each?`,
  stress: words => `Clap ${words}. Which syllable is the strongest?`,
  syllables: words => `Clap ${words}. How many syllables has each?`,
  'or none': words => `Look at ${words}. What has one that the other has not?`,
  sounds: words => `Tap the sounds of ${words}. How many has each?`,
  'parts of speech': words => `Use ${words} in a sentence each. What does the word do there?`,
}

function sharedSound(words: string): string {
  return `Say ${words} slowly. Which sound do you hear in all of them? Which letters spell it in each?`
}

export function openingQuestion({ kind, of, words }: OpeningTask): string {
  return openings[kind](words, of)
}
