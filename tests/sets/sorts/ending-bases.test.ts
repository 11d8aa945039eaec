import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const sort = (list: string, name: string) => sortNamed(wordsOfAWeek(list), name)?.sort
const firstOf = (list: string) => rankSorts(wordsOfAWeek(list))[0]!

describe('plurals', () => {
  it('in s, es, ies and ves are one sort, knives and leaves alike', () => {
    expect(columnsOf(firstOf('ducks, ponds, foxes, dishes, berries, puppies, leaves, knives'))).toEqual({
      'add s': 'ducks, ponds',
      'add es': 'dishes, foxes',
      'y to i': 'berries, puppies',
      'f to v': 'knives, leaves',
    })
  })

  it('without s are oddballs among them', () => {
    const { leftoverReasons } = firstOf('ducks, ponds, kites, foxes, dishes, benches, mice')
    expect(leftoverReasons).toEqual([{ word: 'mice', why: 'is plural without s: one mouse', oddball: true }])
  })

  it('still to be made are sorted by their rule', () => {
    expect(columnsOf(sort('fox, dish, kite, duck, leaf, knife', 'how the plural is made'))).toEqual({
      'add s': 'duck, kite',
      'add es': 'dish, fox',
      'f to v': 'knife, leaf',
    })
  })
})

describe('the ending -ed', () => {
  it('has three sounds in one sort, with letters doubled and e dropped', () => {
    const best = firstOf('jumped, hopped, baked, rained, hugged, waved, landed, patted, skated')
    expect(columnsOf(best)).toEqual({
      '-ed as in baked': 'baked, hopped, jumped',
      '-ed as in waved': 'hugged, rained, waved',
      '-ed as in landed': 'landed, patted, skated',
    })
  })

  it('is heard in a word of which the lexicon lacks the base', () => {
    expect(
      columnsOf(sort('jumped, baked, splooshed, rained, waved, blimmed', 'how the ending -ed sounds')),
    ).toEqual({
      '-ed as in baked': 'baked, jumped, splooshed',
      '-ed as in waved': 'blimmed, rained, waved',
    })
  })
})

describe('an ending', () => {
  it('is added with a letter doubled, an e dropped, or nothing changed', () => {
    expect(
      columnsOf(firstOf('swimming, digging, running, riding, baking, waving, fishing, jumping, rowing')),
    ).toEqual({
      'nothing changes': 'fishing, jumping, rowing',
      'double the last letter': 'digging, running, swimming',
      'drop e': 'baking, riding, waving',
    })
  })

  it('or a suffix is one sort: which was added', () => {
    expect(
      columnsOf(sort('careful, helpful, slowly, sadly, fishing, rowing', 'which ending was added')),
    ).toEqual({
      '-ful': 'careful, helpful',
      '-ing': 'fishing, rowing',
      '-ly': 'sadly, slowly',
    })
  })

  it('makes no word an open or a closed syllable', () => {
    expect(sort('hoping, waving, hopping, digging', 'kind of first syllable')).toBeUndefined()
  })
})

describe('prefixes', () => {
  it('are a sort, obey and its weak vowel in disobey not forgotten', () => {
    expect(
      columnsOf(firstOf('unlock, unhappy, untie, refill, reread, replay, dislike, disagree, disobey')),
    ).toEqual({
      'dis-': 'disagree, dislike, disobey',
      're-': 'refill, replay, reread',
      'un-': 'unhappy, unlock, untie',
    })
  })
})

describe('parts of speech', () => {
  it('are by the commonest use', () => {
    expect(columnsOf(sort('reed, marsh, swim, sing', 'part of speech'))).toEqual({
      noun: 'marsh, reed',
      verb: 'sing, swim',
    })
  })
})
