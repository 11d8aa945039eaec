import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gridRows } from '../../../src/sets/games/letter-grid.js'
import {
  hideWords,
  type SearchWanted,
  searchWays,
  type WordSearch,
  wordsToHide,
} from '../../../src/sets/games/word-search.js'
import { generatorFor } from '../../../src/sets/random.js'

const week = ['marsh', 'heron', 'pond', 'thread', 'knot', 'shell', 'boat', 'frog', 'nest', 'crane']
const asked: SearchWanted = {
  words: week,
  columns: 10,
  rows: 10,
  ways: 'backwards too',
  unfit: new Set(['ham', 'den', 'rob']),
}

/** Every line of a grid, whole, in both of its directions: rows, columns, slants. */
function linesOf(rows: readonly string[]): readonly string[] {
  const height = rows.length
  const width = rows[0]!.length
  const lines = [
    ...rows,
    ...Array.from({ length: width }, (_, column) => rows.map(row => row[column]).join('')),
    ...Array.from({ length: width + height - 1 }, (_, slant) =>
      rows.map((row, index) => row[slant - index] ?? '').join(''),
    ),
    ...Array.from({ length: width + height - 1 }, (_, slant) =>
      rows.map((row, index) => row[slant - (height - 1 - index)] ?? '').join(''),
    ),
  ]
  return lines.flatMap(line => [line, [...line].reverse().join('')])
}

function timesRead(rows: readonly string[], word: string): number {
  return linesOf(rows).reduce((sum, line) => {
    const starts = [...line].filter((_, at) => line.startsWith(word, at))
    return sum + starts.length
  }, 0)
}

function hidden(wanted: SearchWanted, seed: number): WordSearch {
  const search = hideWords(wanted, generatorFor(seed, 'search'))
  if (search === undefined) throw new Error('no room')
  return search
}

describe('a word search', () => {
  const searches = Array.from({ length: 1000 }, (_, seed) => hidden(asked, seed))

  it('holds every word once, in the place told, over 1,000 seeds', () => {
    for (const { grid, placed } of searches) {
      const rows = gridRows(grid)
      expect(rows.map(row => row.length).join()).toBe('10,10,10,10,10,10,10,10,10,10')
      const found = placed.filter(({ word, row, column, down, across }) => {
        const read = [...word].map((_, step) => rows[row + down * step]![column + across * step]).join('')
        return read === word && timesRead(rows, word) === 1
      })
      expect(found.map(({ word }) => word)).toEqual(week)
    }
  })

  it('has no unfit word in any direction, over 1,000 seeds', () => {
    for (const { grid } of searches) {
      const rows = gridRows(grid)
      expect([...asked.unfit].filter(word => timesRead(rows, word) > 0)).toEqual([])
    }
  })

  it('may have an unfit word where a word of the list holds it', () => {
    const { grid } = hidden({ ...asked, words: ['pirate'], unfit: new Set(['rat']) }, 1)
    expect(timesRead(gridRows(grid), 'rat')).toBe(1)
  })

  it.each([
    ['across and down', ['0 1', '1 0']],
    ['slanting too', ['-1 1', '0 1', '1 0', '1 1']],
    ['backwards too', ['-1 -1', '-1 0', '-1 1', '0 -1', '0 1', '1 -1', '1 0', '1 1']],
  ] as const)('hides words %s', (ways, steps) => {
    const used = Array.from({ length: 60 }, (_, seed) => hidden({ ...asked, ways }, seed).placed).flat()
    expect([...new Set(used.map(({ down, across }) => `${down} ${across}`))].sort()).toEqual(
      [...steps].sort(),
    )
  })

  it('is the same for the same seed, and another for another', () => {
    expect(hidden(asked, 7)).toEqual(hidden(asked, 7))
    expect(gridRows(hidden(asked, 7).grid)).not.toEqual(gridRows(hidden(asked, 8).grid))
  })

  it('is not made where the words have no room', () => {
    expect(hideWords({ ...asked, columns: 4, rows: 4 }, generatorFor(1, 'search'))).toBeUndefined()
    expect(
      hideWords({ ...asked, words: ['marsh', 'heron', 'thread'], columns: 6, rows: 2 }, generatorFor(1, 'x')),
    ).toBeUndefined()
  })

  it('keeps its promises for words of few letters, where chance finds words easily', () => {
    const letters = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: 3, maxLength: 6 })
    const any = fc.record({
      texts: fc.array(letters, { minLength: 1, maxLength: 5 }),
      seed: fc.integer(),
      ways: fc.constantFrom(...searchWays),
    })
    fc.assert(
      fc.property(any, ({ texts, seed, ways }) => {
        const words = wordsToHide(texts).words.map(each => each.letters)
        const search = hideWords(
          { words, columns: 9, rows: 9, ways, unfit: new Set(['bab']) },
          generatorFor(seed, 'few'),
        )
        fc.pre(search !== undefined)
        const rows = gridRows(search!.grid)
        for (const word of words) expect(timesRead(rows, word)).toBe(isPalindrome(word) ? 2 : 1)
      }),
      { numRuns: 100 },
    )
  })
})

describe('words to hide', () => {
  it('are told in small letters', () => {
    expect(wordsToHide(['Heron', 'café']).words).toEqual([
      { text: 'Heron', letters: 'heron' },
      { text: 'café', letters: 'café' },
    ])
  })

  it.each([
    [['reed', 'reeds'], 'reed', 'it can be read in "reeds" as well'],
    [['deer', 'reeds'], 'deer', 'it can be read in "reeds" as well'],
    [['pot', 'top'], 'top', 'it can be read in "pot" as well'],
    [["can't", 'well'], "can't", 'a grid has no place for an apostrophe or a hyphen'],
    [['ox', 'marsh'], 'ox', 'it has fewer than 3 letters'],
  ])('of %j leave out %s', (texts, text, why) => {
    const { words, leftOut } = wordsToHide(texts)
    expect(leftOut).toEqual([{ text, why }])
    expect(words).toHaveLength(1)
  })
})

function isPalindrome(word: string): boolean {
  return word === [...word].reverse().join('')
}
