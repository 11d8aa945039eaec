/** Sorts of compounds by a part that they share, of contractions by the word that was made shorter. */
import type { SortableWord } from '../../words/sortable-word.js'
import { type BasisFamily, firstFinding, type Placement } from './sort-basis.js'

/** snowman and snowball share snow; rainbow and snowball nothing. */
export function sharedParts(words: readonly SortableWord[]): BasisFamily {
  const uses = new Map<string, number>()
  for (const word of words) for (const part of partsOf(word)) uses.set(part, (uses.get(part) ?? 0) + 1)
  return {
    kind: 'shared part',
    placesOf: word => {
      const [first, last] = partsOf(word)
      if (first === undefined || last === undefined) return []
      const shared = [first, last].filter(part => uses.get(part)! > 1)
      return [
        { of: 'first', column: first },
        { of: 'last', column: last },
        ...(shared.length > 0 ? shared : [first]).map((column): Placement => ({ of: 'either', column })),
      ]
    },
    basisOf: of => ({
      name: of === 'either' ? 'which word the compounds share' : `which word stands ${of} in the compound`,
      basis: of === 'either' ? 'which word the compounds share' : `which word stands ${of} in the compound`,
      patterns: ['compound'],
      noneBecause: () => 'is no compound',
      loneIsOddball: true,
    }),
  }
}

function partsOf(word: SortableWord): readonly string[] {
  return firstFinding(word, 'compound')?.madeOf ?? []
}

export const shortenedWord: BasisFamily = {
  kind: 'short forms',
  placesOf: word => {
    const [, behind] = firstFinding(word, 'contraction')?.madeOf ?? []
    return behind === undefined ? [] : [{ of: 'contraction', column: behind }]
  },
  basisOf: () => ({
    name: 'which word was made shorter',
    basis: 'which word the apostrophe makes shorter',
    patterns: ['contraction'],
    titleOf: (column, [word]) =>
      word === undefined ? column : `${column} (${firstFinding(word, 'contraction')?.letters.toLowerCase()})`,
    noneBecause: () => 'is no contraction',
    loneIsOddball: true,
  }),
}
