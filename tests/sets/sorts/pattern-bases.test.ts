import { describe, expect, it } from 'vitest'
import { rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const sort = (list: string, name: string) => sortNamed(wordsOfAWeek(list), name)?.sort
const firstOf = (list: string) => rankSorts(wordsOfAWeek(list))[0]!

describe('the letters of a pattern', () => {
  it('are its columns', () => {
    expect(columnsOf(sort('knee, knot, wren, wrist, gnat, gnaw', 'which silent letters'))).toEqual({
      gn: 'gnat, gnaw',
      kn: 'knee, knot',
      wr: 'wren, wrist',
    })
  })

  it('name a lone vowel letter with its length', () => {
    expect(columnsOf(sort('mud, duck, bed, net', 'which short vowel'))).toEqual({
      'short e': 'bed, net',
      'short u': 'duck, mud',
    })
  })

  it('are told apart by what they say, with a key word, where the same letters say two things', () => {
    expect(columnsOf(sort('leaf, seal, bread, thread, reed, weed', 'which vowel team'))).toEqual({
      'ea as in leaf': 'leaf, seal',
      'ea as in bread': 'bread, thread',
      ee: 'reed, weed',
    })
  })

  it('leave over the one word in which they say something else', () => {
    const reasons = sort('cake, lake, bike, kite, have', 'which silent e')!.leftoverReasons
    expect(reasons).toEqual([{ word: 'have', why: 'its a_e says /AE/ as in hat', oddball: true }])
  })
})

describe('hard and soft', () => {
  it('c are one sort', () => {
    const best = firstOf('crab, cup, cave, city, cell, ice')
    expect(best.name).toBe('hard and soft c')
    expect(columnsOf(best)).toEqual({ 'hard c': 'cave, crab, cup', 'soft c': 'cell, city, ice' })
  })

  it('g are one sort', () => {
    expect(columnsOf(firstOf('gull, goat, frog, gem, page, giant'))).toEqual({
      'hard g': 'frog, goat, gull',
      'soft g': 'gem, giant, page',
    })
  })

  it('c and g together are four columns', () => {
    expect(
      columnsOf(firstOf('crab, cup, cloud, city, cell, ice, gull, goat, frog, gem, page, giant')),
    ).toEqual({
      'hard c': 'cloud, crab, cup',
      'soft c': 'cell, city, ice',
      'hard g': 'frog, goat, gull',
      'soft g': 'gem, giant, page',
    })
  })

  it('leave over a word with both, and one whose c says something else', () => {
    const { leftoverReasons } = firstOf('crab, cup, cave, city, cell, ice, circus, ocean')
    expect(leftoverReasons).toEqual([
      { word: 'circus', why: 'fits more than one column: soft c, hard c', oddball: true },
      { word: 'ocean', why: 'its c says /SH/ as in ship', oddball: true },
    ])
  })
})

describe('where letters stand', () => {
  it('is one sort, though a blend has one name at the beginning and another at the end', () => {
    expect(columnsOf(sort('stop, stem, star, nest, fast, dust', 'where st stands'))).toEqual({
      beginning: 'star, stem, stop',
      end: 'dust, fast, nest',
    })
    expect(columnsOf(sort('phone, phrase, trophy, dolphin, graph, Joseph', 'where ph stands'))).toEqual({
      beginning: 'phone, phrase',
      middle: 'dolphin, trophy',
      end: 'graph, Joseph',
    })
    expect(columnsOf(sort('stop, flag, crib, pond, lamp, milk', 'where the blend stands'))).toEqual({
      beginning: 'crib, flag, stop',
      end: 'lamp, milk, pond',
    })
  })
})

describe('where a pattern stands', () => {
  it('is beginning, middle or end, in this order', () => {
    expect(sort('knee, knit, lamb, comb', 'where the silent letters stand')?.basis).toBe(
      'where in the word the silent letters stand',
    )
    const found = sort('fish, dish, ship, shed', 'where the consonant digraph stands')
    expect(columnsOf(found)).toEqual({ beginning: 'shed, ship', end: 'dish, fish' })
    expect(found!.columns[0]!.title).toBe('beginning')
  })
})

describe('hard and soft letters', () => {
  it.each([
    ['crab, cup, cave, city, cell, ice', 'hard and soft c', 'whether c is hard or soft'],
    ['crab, cup, goat, city, gem, page', 'hard or soft, c or g', 'whether c or g is hard or soft'],
    [
      'crab, cup, goat, gull, city, cell, gem, page',
      'hard and soft c and g',
      'whether c or g, and whether it is hard or soft',
    ],
  ])('of %s are %s, told as: %s', (list, name, basis) => {
    expect(sort(list, name)?.basis).toBe(basis)
  })
})
