/**
 * Each pattern in a few words for a child of seven, for the keys on walls and desks: what one sees and hears. The words
 * are ours; which of them a young reader knows is held against counts of speech (child-sentences.test.ts).
 */
const sentences: Readonly<Record<string, string>> = {
  'short-vowel': 'one vowel, its short sound',
  'double-consonant': 'the same letter two times, one sound',
  'consonant-digraph': 'two letters, one sound',
  'beginning-blend': 'two letters at the start: you hear both',
  'ending-blend': 'two letters at the end: you hear both',
  'three-letter-blend': 'three letters: you hear all three',
  'digraph-blend': 'two letters with one sound, and one more sound',
  trigraph: 'three letters, one sound',
  qu: 'q and u go together',
  x: 'one letter that can say two sounds',
  'silent-e': 'this e says nothing',
  'long-vowel': 'the vowel says its name',
  'vowel-team': 'letters that make one vowel sound together',
  diphthong: 'a vowel sound that moves in your mouth',
  'r-controlled': 'the r changes the vowel',
  'y-as-vowel': 'y sounds like a vowel',
  'hard-c': 'c sounds like k',
  'soft-c': 'c sounds like s',
  'hard-g': 'g sounds as in go',
  'soft-g': 'g sounds like j',
  'silent-letters': 'a letter you write but do not hear',
  'ending-s': 's comes at the end of the word',
  'ending-es': 'es comes at the end of the word',
  'ending-ed': 'ed comes at the end: it is done',
  'ending-ing': 'ing comes at the end: it goes on',
  'ending-er': 'er comes at the end: more, or who does it',
  'ending-est': 'est comes at the end: the most',
  compound: 'two words in one',
  contraction: 'two words made short',
  homophone: 'it sounds like another word',
  'closed-syllable': 'a letter comes after the vowel',
  'open-syllable': 'the vowel comes last',
  'silent-e-syllable': 'a vowel, a letter, and an e that says nothing',
  'vowel-team-syllable': 'letters that make one vowel sound together',
  'r-controlled-syllable': 'the r changes the vowel',
  'consonant-le': 'le at the end, with a letter before it',
  schwa: 'a vowel that only says uh',
  prefix: 'a part before the word',
  suffix: 'a part after the word',
}

/** Undefined for a pattern without one, which no pattern of ours is. */
export function childSentence(pattern: string): string | undefined {
  return Object.hasOwn(sentences, pattern) ? sentences[pattern] : undefined
}
