/** Sorts by how words begin and end: which consonants, what kind, which family of blends. */
import { isVowelSound } from '../../words/alignment/arpabet.js'
import { plainName } from '../../words/patterns/plain-name.js'
import type { SortableFinding, SortableWord } from '../../words/sortable-word.js'
import type { Grapheme } from '../../words/word.js'
import type { BasisFamily, Placement } from './sort-basis.js'

type End = 'beginning' | 'end'

const kindsAt: Readonly<Record<End, readonly string[]>> = {
  beginning: [
    'digraph-blend',
    'three-letter-blend',
    'trigraph',
    'silent-letters',
    'consonant-digraph',
    'beginning-blend',
  ],
  end: [
    'digraph-blend',
    'trigraph',
    'silent-letters',
    'consonant-digraph',
    'ending-blend',
    'double-consonant',
    'consonant-le',
  ],
}

const isAt = ({ place }: SortableFinding, end: End) => place === end || place === 'whole'

/** Of several that stand there, the one named first. */
function consonantsAt(word: SortableWord, end: End): SortableFinding | undefined {
  for (const kind of kindsAt[end]) {
    const found = word.patterns.find(finding => finding.pattern === kind && isAt(finding, end))
    if (found !== undefined) return found
  }
  return undefined
}

const verbs: Readonly<Record<End, string>> = { beginning: 'begins', end: 'ends' }

/** sh, st, thr; ng, nk, mp. */
export const whichConsonants: BasisFamily = {
  kind: 'clusters',
  placesOf: word =>
    (['beginning', 'end'] as const).flatMap((end): readonly Placement[] => {
      const found = consonantsAt(word, end)
      return found === undefined ? [] : [{ of: end, column: found.letters.toLowerCase() }]
    }),
  basisOf: of => {
    const end: End = of === 'end' ? 'end' : 'beginning'
    return {
      name: `which consonants the word ${verbs[end]} with`,
      basis: `which letters the word ${verbs[end]} with`,
      patterns: kindsAt[end],
      noneBecause: () => `${verbs[end]} with a single letter`,
    }
  },
}

/** Blends by the letter that they share: bl, cl, fl against br, cr, gr against st, sn, sp. */
export const blendFamilies: BasisFamily = {
  kind: 'clusters',
  placesOf: word => {
    const found = word.patterns.find(
      finding => /^(?:beginning|three-letter)-blend$/.test(finding.pattern) && isAt(finding, 'beginning'),
    )
    const shared = /^s|^.[lrw]/.exec(found?.letters.toLowerCase() ?? '')?.[0].at(-1)
    return shared === undefined ? [] : [{ of: 'blends', column: `${shared} blends` }]
  },
  basisOf: () => ({
    name: 'which family of blends',
    basis: 'which letter the beginning blends share',
    patterns: ['beginning-blend', 'three-letter-blend'],
    noneBecause: () => 'begins with no blend',
    loneIsOddball: true,
  }),
}

export const kindOfConsonants: BasisFamily = {
  kind: 'kinds of beginning or end',
  placesOf: word =>
    (['beginning', 'end'] as const).flatMap((end): readonly Placement[] => {
      const found = consonantsAt(word, end)
      return found === undefined ? [] : [{ of: end, column: found.pattern }]
    }),
  basisOf: of => {
    const end: End = of === 'end' ? 'end' : 'beginning'
    return {
      name: `how the word ${verbs[end]}`,
      basis: `what kind of ${end === 'end' ? 'letters' : 'consonants'} the word ${verbs[end]} with`,
      patterns: kindsAt[end],
      titleOf: plainName,
      noneBecause: () => `${verbs[end]} with a single letter`,
      noneTitle: 'a single letter',
      order: kindsAt[end].toReversed(),
    }
  },
}

/** The first consonants, one or more: s, sh, c, ch; and the last. */
export const firstAndLast: BasisFamily = {
  kind: 'one letter',
  placesOf: word => [
    ...lettersAt(word, 'beginning', word.graphemes[0]),
    // What an ending -ed says is a sort of its own; of its letters there is nothing to find.
    ...(word.patterns.some(({ pattern }) => pattern === 'ending-ed')
      ? []
      : lettersAt(word, 'end', word.graphemes.at(-1))),
  ],
  basisOf: of => ({
    name: of === 'end' ? 'which letters come last' : 'which letters come first',
    basis: `which consonants the word ${of === 'end' ? 'ends' : 'begins'} with`,
    patterns: [],
    noneBecause: () => `${of === 'end' ? 'ends' : 'begins'} with a vowel`,
  }),
}

function lettersAt(word: SortableWord, end: End, grapheme: Grapheme | undefined): readonly Placement[] {
  if (grapheme === undefined || grapheme.sounds.some(isVowelSound)) return []
  const found = consonantsAt(word, end)?.letters
  if (grapheme.sounds.length > 0 || found !== undefined)
    return [{ of: end, column: (found ?? grapheme.letters).toLowerCase() }]
  // The ce of dance, the ve of leave.
  const before = end === 'end' ? word.graphemes.at(-2) : undefined
  if (before === undefined || before.sounds.length === 0 || before.sounds.some(isVowelSound)) return []
  return [{ of: end, column: `${before.letters}${grapheme.letters}`.toLowerCase() }]
}
