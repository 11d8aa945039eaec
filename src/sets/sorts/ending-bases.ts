/** Sorts by what was added to a word: how it is joined, how it is said, which one it is. */
import { pluralRuleName } from '../../words/endings/plural-rule-names.js'
import type { SortableFinding, SortableWord } from '../../words/sortable-word.js'
import { keyWordOf } from './key-word.js'
import type { BasisFamily, Placement } from './sort-basis.js'

const inflected = ['ending-s', 'ending-es', 'ending-ed', 'ending-ing', 'ending-er', 'ending-est']

function inflection(word: SortableWord): SortableFinding | undefined {
  return word.patterns.find(({ pattern }) => inflected.includes(pattern))
}

const isS = ({ pattern }: SortableFinding) => /^ending-e?s$/.test(pattern)

/** Doubled, e dropped, y to i; s, es, ves, ies: what happens to the base. */
export const howEndingIsAdded: BasisFamily = {
  kind: 'how an ending is added',
  placesOf: word => {
    const ending = inflection(word)
    if (ending?.rule === undefined) return []
    if (isS(ending)) return [{ of: 's', column: pluralRuleName(ending.rule) }]
    const [change = '', added] = ending.rule.split(', ')
    return [{ of: 'vowel', column: added === undefined ? 'nothing changes' : change }]
  },
  basisOf: of => ({
    name: of === 's' ? 'how s or es is added' : 'how the ending is added',
    basis: of === 's' ? 'how the s or es is added' : 'what happens to the word before its ending',
    patterns: of === 's' ? inflected.slice(0, 2) : inflected.slice(2),
    noneBecause: () => `has no ending ${of === 's' ? '-s or -es' : '-ed, -ing, -er or -est'}`,
    order: ['add s', 'add es', 'y to i', 'f to v', 'nothing changes', 'double the last letter', 'drop e'],
    loneIsOddball: true,
    oddball: word => (of === 's' ? otherPlural(word) : undefined),
  }),
}

/** mice, sheep among cats and boxes. */
function otherPlural({ plural }: SortableWord): string | undefined {
  const one = /^already plural: (one .+)$/.exec(plural?.rule ?? '')?.[1]
  return one === undefined ? undefined : `is plural without s: ${one}`
}

/** /T/, /D/ or a syllable; /S/, /Z/ or a syllable. In an ending the dictionary writes one weak vowel now AH, now IH. */
export const howEndingSounds: BasisFamily = {
  kind: 'sounds of an ending',
  placesOf: word => {
    const ending = inflection(word)
    if (ending?.pattern === 'ending-ed') return soundOf(ending, word, 'ed')
    return ending === undefined ? soundOfUnknownEd(word) : []
  },
  basisOf: () => ({
    ...endingSounds('ed'),
    patterns: ['ending-ed'],
    order: ['T', 'D', 'IH D'],
  }),
}

export const howSSounds: BasisFamily = {
  kind: 'sounds of s',
  placesOf: word => {
    const ending = inflection(word)
    return ending !== undefined && isS(ending) ? soundOf(ending, word, 's') : []
  },
  basisOf: () => ({
    ...endingSounds('s'),
    patterns: inflected.slice(0, 2),
    order: ['S', 'Z', 'IH Z'],
  }),
}

/** Of a word whose base the lexicon lacks (zonked): ed said as no part of a word but this ending is. */
function soundOfUnknownEd({ text, graphemes }: SortableWord): readonly Placement[] {
  const last = graphemes.at(-1)
  const isEd = last?.letters.toLowerCase() === 'ed' && text.length > 4
  return isEd ? [{ of: 'ed', column: last.sounds.join(' ') }] : []
}

function soundOf({ start, end }: SortableFinding, word: SortableWord, of: string): readonly Placement[] {
  const sounds = word.graphemes
    // Of tried and ponies the ie belongs to the base.
    .filter(grapheme => grapheme.start >= start && grapheme.start < end)
    .flatMap(grapheme => grapheme.sounds)
    .map(sound => (/^(?:AH|EH)$/.test(sound) ? 'IH' : sound))
  return sounds.length === 0 ? [] : [{ of, column: sounds.join(' ') }]
}

function endingSounds(letters: string) {
  return {
    name: `how the ending -${letters} sounds`,
    basis: `how the ending -${letters} sounds`,
    titleOf: (_column: string, words: readonly SortableWord[]) => `-${letters} as in ${keyWordOf(words)}`,
    noneBecause: () => `has no ending -${letters}`,
    loneIsOddball: true,
  } as const
}

/** -ed, -ing, -er, -ful, un-: which one. */
export const whichAffix: BasisFamily = {
  kind: 'affixes',
  placesOf: word =>
    word.patterns.flatMap(({ pattern, letters }): readonly Placement[] => {
      const written = letters.toLowerCase()
      if (pattern === 'prefix') return [{ of: 'prefix', column: `${written}-` }]
      if (pattern === 'suffix') return [{ of: 'ending', column: `-${written}` }]
      if (!inflected.includes(pattern)) return []
      return [{ of: 'ending', column: /^e?s$/.test(written) ? '-s' : `-${written}` }]
    }),
  basisOf: of => ({
    name: of === 'prefix' ? 'which prefix' : 'which ending was added',
    basis:
      of === 'prefix'
        ? 'which prefix stands before the word'
        : 'which ending or suffix was added to the word',
    patterns: of === 'prefix' ? ['prefix'] : ['suffix', ...inflected],
    titleOf: column => (column === '-s' ? '-s or -es' : column),
    noneBecause: () => `has no ${of === 'prefix' ? 'prefix' : 'ending'}`,
    loneIsOddball: true,
  }),
}

export const pluralRule: BasisFamily = {
  kind: 'plurals',
  placesOf: ({ plural }) =>
    plural === null || /^(?:already|always) plural/.test(plural.rule)
      ? []
      : [{ of: 'plural', column: pluralRuleName(plural.rule) }],
  basisOf: () => ({
    name: 'how the plural is made',
    feature: 'plural',
    basis: 'the rule for the plural',
    patterns: [],
    noneBecause: () => 'has no plural',
    order: ['add s', 'add es', 'y to i', 'f to v', 'changes inside', 'stays the same'],
    loneIsOddball: true,
  }),
}

export const partOfSpeech: BasisFamily = {
  kind: 'parts of speech',
  placesOf: ({ partsOfSpeech: [first] }) => (first === undefined ? [] : [{ of: 'part', column: first }]),
  basisOf: () => ({
    name: 'part of speech',
    feature: 'part of speech',
    basis: 'which part of speech the word most often is',
    patterns: [],
    noneBecause: () => 'has no known part of speech',
    order: ['noun', 'verb', 'adjective', 'adverb'],
  }),
}
