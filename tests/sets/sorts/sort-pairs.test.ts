import { describe, expect, it } from 'vitest'
import { closedSort } from '../../../src/sets/sorts/closed-sort.js'
import { rankedSorts } from '../../../src/sets/sorts/rank-sorts.js'
import { sortHeadings } from '../../../src/sets/sorts/sort-heading.js'
import { partnersIn } from '../../../src/sets/sorts/sort-pairs.js'
import { type SortKind, ties } from '../../../src/sets/sorts/weights.js'
import { wordsOfAWeek } from './words-of-a-week.js'

const isKind = (kind: string): kind is SortKind => kind in ties
const partner = (kind: SortKind, text: string) => partnersIn(kind)?.(wordsOfAWeek(text)[0]!)

describe('the partner of a word', () => {
  it.each([
    ['how an ending is added', 'hopping', 'hop'],
    ['how an ending is added', 'baking', 'bake'],
    ['how an ending is added', 'boxes', 'box'],
    ['sounds of an ending', 'waited', 'wait'],
    ['affixes', 'nicest', 'nice'],
    ['plurals', 'fox', 'foxes'],
    ['plurals', 'leaf', 'leaves'],
    ['plurals', 'mouse', 'mice'],
    ['plurals', 'sheep', 'sheep'],
  ] as const)('in a sort by %s is of %s %s', (kind, word, expected) => {
    expect(partner(kind, word)).toBe(expected)
  })

  it.each([
    ['plurals', 'mice', 'it is plural already'],
    ['plurals', 'mud', 'it is not counted'],
    ['how an ending is added', 'bend', 'it has no ending, though it ends with a blend'],
    ['plurals', 'blorf', 'that it is a noun is a guess'],
  ] as const)('in a sort by %s is none of %s: %s', (kind, word, _why) => {
    expect(partner(kind, word)).toBeUndefined()
  })

  it('is known in sorts by ending and plural alone', () => {
    expect(Object.keys(ties).filter(kind => isKind(kind) && partnersIn(kind) !== undefined)).toEqual([
      'how an ending is added',
      'sounds of an ending',
      'affixes',
      'sounds of s',
      'plurals',
    ])
  })
})

describe('a closed sort of pairs', () => {
  const setOf = (list: string, leftovers = false) => {
    const words = wordsOfAWeek(list)
    const { sort, family } = rankedSorts(words)[0]!
    const headings = sortHeadings({
      sort,
      words,
      headedBy: 'title',
      leftovers,
      hasPicture: () => false,
    })
    const partnerOf = partnersIn(family.kind)!
    return closedSort({ sort, headings, words, partnerOf, copies: 1, seed: 12, label: 'pairs' })
  }
  const hopping = 'running, hopping, digging, riding, baking, hiking'

  it('has the word and its partner under one header', () => {
    const { cards, answers } = setOf(hopping)
    const under = answers!.map(({ numbers }) =>
      numbers.map(number => cards[number - 1]!).map(({ title, words }) => title ?? words[0]!.text),
    )
    expect(under.map(texts => texts.toSorted().join(' '))).toEqual([
      'dig digging hop hopping run running',
      'bake baking hike hiking ride riding',
    ])
  })

  it('has no second card where the partner is a word of the list', () => {
    const texts = setOf(`${hopping}, hop`, true).cards.map(({ title, words }) => title ?? words[0]?.text)
    expect(texts.filter(text => text === 'hop')).toHaveLength(1)
  })
})
