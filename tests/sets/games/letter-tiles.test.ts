import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { letterTiles, type TilesFor, tilesOf, tilesOfWord } from '../../../src/sets/games/letter-tiles.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const lexicon = openLexicon()
const place = { file: 'by hand', line: 1, column: 1 }

function studied(...texts: readonly string[]): readonly Word[] {
  return texts.map(text => {
    const word = studyWord({ text, place, overrides: {} }, lexicon)
    if (!word.ok) throw new Error(text)
    return word.value
  })
}

function tilesFor(words: readonly Word[], build: TilesFor): readonly string[] {
  const set = letterTiles({ words, build, copies: 1, place })
  if (!set.ok) throw new Error('no tiles')
  return set.value.cards.map(card => card.title!)
}

const week = studied(
  'reed',
  'marsh',
  'thread',
  'pumpkin',
  'knot',
  'boat',
  'shell',
  'cake',
  'duck',
  'puddle',
  'muddy',
  'fox',
  'queen',
)

/** Takes the word's letters from the tiles, longest tile first, from the left; what is left over, or undefined. */
function without(tiles: readonly string[], letters: string): readonly string[] | undefined {
  if (letters === '') return tiles
  for (const tile of new Set(tiles)) {
    if (!letters.startsWith(tile)) continue
    const at = tiles.indexOf(tile)
    const rest = without([...tiles.slice(0, at), ...tiles.slice(at + 1)], letters.slice(tile.length))
    if (rest !== undefined) return rest
  }
  return undefined
}

describe('letter tiles', () => {
  const some = fc.uniqueArray(fc.integer({ min: 0, max: week.length - 1 }), { minLength: 1 })

  it('build each word by itself', () => {
    fc.assert(
      fc.property(some, chosen => {
        const words = chosen.map(index => week[index]!)
        const tiles = tilesFor(words, 'one word at a time')
        for (const { text } of words) expect(without(tiles, text)).toBeDefined()
      }),
      { numRuns: 1000 },
    )
  })

  it('build all words at once, with nothing left over', () => {
    fc.assert(
      fc.property(some, chosen => {
        const words = chosen.map(index => week[index]!)
        const tiles = tilesFor(words, 'all words at once')
        expect([...tiles].sort()).toEqual(words.flatMap(tilesOfWord).sort())
      }),
      { numRuns: 1000 },
    )
  })

  it('are no more than some word needs of its kind', () => {
    const tiles = tilesOf(week, 'one word at a time')
    for (const { letters, count } of tiles)
      expect(count).toBe(
        Math.max(...week.map(word => tilesOfWord(word).filter(each => each === letters).length)),
      )
  })

  it.each([
    ['marsh', ['m', 'ar', 'sh']],
    ['cake', ['c', 'a', 'k', 'e']],
    ['knot', ['kn', 'o', 't']],
    ['shell', ['sh', 'e', 'll']],
    ['puddle', ['p', 'u', 'dd', 'le']],
  ])('of %s are its teams and letters', (text, expected) => {
    expect(studied(text).flatMap(tilesOfWord)).toEqual(expected)
  })

  it('follow a division that the teacher gives', () => {
    const word = studyWord({ text: 'marsh', place, overrides: { sounds: ['m', 'a', 'r', 'sh'] } }, lexicon)
    expect(word.ok && tilesOfWord(word.value)).toEqual(['m', 'a', 'r', 'sh'])
  })

  it('tell vowels from consonants by what they spell', () => {
    const tiles = tilesOf(studied('muddy', 'yard', 'cake', 'puddle', 'boat', 'knot'), 'one word at a time')
    const vowels = tiles.filter(({ isVowel }) => isVowel).map(({ letters }) => letters)
    expect(vowels).toEqual(['a', 'ar', 'e', 'o', 'oa', 'u', 'y'])
  })

  it('are told to a machine by count, and how they are to be used', () => {
    const set = letterTiles({ words: studied('reed', 'pond'), build: 'all words at once', copies: 2, place })
    expect(set.ok && set.value.answerData).toEqual({
      tiles: { r: 1, ee: 1, d: 2, p: 1, o: 1, n: 1 },
      each: false,
    })
    expect(set.ok && set.value.cards).toHaveLength(14)
  })

  it('of a word that is not in the dictionary are told to be a guess', () => {
    const set = letterTiles({ words: studied('blorf'), build: 'one word at a time', copies: 1, place })
    expect(set.problems.map(({ message }) => message)).toEqual([
      'the tiles of "blorf" are a guess: the word is not in the dictionary',
    ])
  })
})
