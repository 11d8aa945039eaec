/** Sorts by how words begin and end: with one consonant, a blend, a digraph, silent letters. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import { plainName } from '../../words/patterns/plain-name.js'
import type { Grapheme, Word } from '../../words/word.js'
import type { BasisFamily } from './sort-basis.js'

const openings = [
  'digraph-blend',
  'three-letter-blend',
  'trigraph',
  'silent-letters',
  'consonant-digraph',
  'beginning-blend',
]
const endings = [
  'digraph-blend',
  'trigraph',
  'silent-letters',
  'consonant-digraph',
  'ending-blend',
  'double-consonant',
  'consonant-le',
]

export const howItBegins: BasisFamily = () => [
  {
    name: 'how the word begins',
    basis: 'what kind of consonants the word begins with',
    sharpness: 0.85,
    titlesFor: word => titles(kindAt(word, openings, 'beginning') ?? single(word.graphemes[0])),
    noneBecause: () => 'has no known sounds',
  },
]

export const howItEnds: BasisFamily = () => [
  {
    name: 'how the word ends',
    basis: 'what kind of letters the word ends with',
    sharpness: 0.85,
    titlesFor: word => titles(kindAt(word, endings, 'end') ?? single(word.graphemes.at(-1))),
    noneBecause: () => 'has no known sounds',
  },
]

function kindAt(word: Word, kinds: readonly string[], place: 'beginning' | 'end'): string | undefined {
  const kind = kinds.find(pattern =>
    word.patterns.some(finding => finding.pattern === pattern && finding.place === place),
  )
  return kind === undefined ? undefined : plainName(kind)
}

function single(grapheme: Grapheme | undefined): string | undefined {
  if (grapheme === undefined) return undefined
  const { letters, sounds } = grapheme
  if (sounds.length === 0) return letters.toLowerCase() === 'e' ? 'silent e' : 'silent letter'
  if (!sounds.some(isVowelSound)) return 'single consonant'
  return /r$/i.test(letters) ? 'vowel with r' : 'vowel'
}

function titles(title: string | undefined): readonly string[] {
  return title === undefined ? [] : [title]
}
