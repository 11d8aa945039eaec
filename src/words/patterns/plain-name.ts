/** Names in which a hyphen is not merely the space between two words. */
const written: Readonly<Record<string, string>> = {
  'three-letter-blend': 'three-letter blend',
  'y-as-vowel': 'y as a vowel',
  'r-controlled': 'r-controlled vowel',
  'r-controlled-syllable': 'r-controlled syllable',
  'consonant-le': 'consonant-le',
  'ending-s': 'ending -s',
  'ending-es': 'ending -es',
  'ending-ed': 'ending -ed',
  'ending-ing': 'ending -ing',
  'ending-er': 'ending -er',
  'ending-est': 'ending -est',
}

/** A pattern's name as one writes it in a sentence: `consonant-digraph` → `consonant digraph`. */
export function plainName(pattern: string): string {
  return Object.hasOwn(written, pattern) ? written[pattern]! : pattern.replaceAll('-', ' ')
}
