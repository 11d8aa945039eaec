/**
 * How sorts are ranked. The formula and every weight are our own judgement of what a word-study teacher looks for
 * (common practice, no source): a sort is the better, the closer its words are tied together by one thing, the more of
 * them have a column, the more evenly they fill a handful of columns.
 *
 *   score = tie × placed × evenness × fullness × breadth × contrast
 *
 * tie       how closely the words of such a sort belong together: the table below
 * placed    (words in columns + oddball × oddballs) ÷ all words
 * evenness  Simpson's index of the columns' sizes against that of equal columns: 1 where all are equal
 * fullness  1 where every column has three words, down to `thin` where none has: two words show a rule poorly
 * breadth   1 for two to four columns, less for more: common practice, no source, is to sort by few
 * contrast  less where one column is of words that merely lack what the others have
 *
 * What the plan marks is what she teaches: a sort that is about it makes up `marked` of what it lacks of 1. The kinds
 * of the second half fit any words whatever, and so say little of these: their score is taken times `anyWords`, which
 * keeps them below `leastScore`, and so below every sort on what the words share or the plan marks.
 */
export const weights = {
  oddball: 0.75,
  thin: 0.75,
  breadth: { 5: 0.92, 6: 0.8 } as Readonly<Record<number, number>>,
  without: 0.85,
  marked: 0.4,
  anyWords: 0.33,
  /** Sorts below it are none: mostly too lop-sided. */
  leastScore: 0.4,
  mostColumns: 6,
} as const

interface Tie {
  readonly tie: number
  /** What the words have in common, for a teacher; `any words` for what fits all lists. */
  readonly shared: string
  readonly anyWords?: true
}

/** By the kind of sort; from one sound or one spelling, which ties words closely, to what merely counts them. */
export const ties = {
  'sounds of a spelling': { tie: 1, shared: 'the same letters, said in different ways' },
  'spellings of a sound': { tie: 1, shared: 'one sound, spelled in different ways' },
  'spellings of a consonant': { tie: 0.9, shared: 'one consonant sound, spelled in different ways' },
  'hard and soft': { tie: 1, shared: 'c or g, hard or soft' },
  'how an ending is added': { tie: 0.97, shared: 'an ending, added in different ways' },
  'sounds of an ending': { tie: 1, shared: 'one ending, said in different ways' },
  'shared part': { tie: 1, shared: 'two words joined, with a part in common' },
  'short forms': { tie: 1, shared: 'an apostrophe for letters left out' },
  affixes: { tie: 0.97, shared: 'a part added before or behind a word' },
  'vowels with r': { tie: 1, shared: 'a vowel with an r' },
  homophones: { tie: 0.97, shared: 'words that sound alike' },
  'letters of a pattern': { tie: 0.95, shared: 'one pattern' },
  'vowel letters': { tie: 0.75, shared: 'short vowels, or long ones' },
  'spellings of vowels': { tie: 0.88, shared: 'vowels, told apart by letters and sound' },
  rimes: { tie: 0.95, shared: 'the end of the word from its vowel on' },
  'first syllable': { tie: 0.8, shared: 'two syllables or more' },
  clusters: { tie: 0.9, shared: 'consonants side by side' },
  'last syllable': { tie: 0.95, shared: 'a last syllable that sounds alike' },
  'kinds of vowel': { tie: 0.72, shared: 'one syllable each' },
  'kinds of beginning or end': { tie: 0.85, shared: 'consonants at the same end of the word' },
  'sounds of s': { tie: 0.85, shared: 's added, said in different ways' },
  plurals: { tie: 0.8, shared: 'naming words' },
  'place of letters': { tie: 0.85, shared: 'the same letters, in different places' },
  place: { tie: 0.7, shared: 'one pattern, in different places' },
  'one letter': { tie: 0.86, shared: 'the sound that they begin or end with' },
  stress: { tie: 0.6, shared: 'two syllables or more' },

  syllables: { tie: 0.95, shared: 'any words', anyWords: true },
  'or none': { tie: 0.75, shared: 'any words', anyWords: true },
  sounds: { tie: 0.7, shared: 'any words', anyWords: true },
  'parts of speech': { tie: 0.65, shared: 'any words', anyWords: true },
} as const satisfies Readonly<Record<string, Tie>>

/** Looser kinds are nearly there in any list: no word is asked for to make one. */
export const closeTie = 0.85

export type SortKind = keyof typeof ties

export function tieOf(kind: SortKind): Tie {
  return ties[kind]
}
