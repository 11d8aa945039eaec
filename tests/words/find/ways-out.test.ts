import { describe, expect, it } from 'vitest'
import { type FindQuery, findWords } from '../../../src/words/find/find-words.js'
import { waysOut } from '../../../src/words/find/ways-out.js'
import { offered, offeredByHand } from './offered.js'

const ways = (query: Omit<FindQuery, 'count'>) =>
  waysOut({ ...query, count: 20 }, offeredByHand).map(
    ({ does, options, words }) => `${does} ${options.join(' ')}: ${words}`,
  )

describe('what would work where nothing fits', () => {
  it('is a wish to leave out, with as many words as are found without it', () => {
    const query = { patterns: ['digraph-blend'], place: 'beginning', syllables: 2 } as const
    expect(findWords({ ...query, count: 9 }, offeredByHand)).toEqual([])
    const { syllables: _syllables, ...without } = query
    const words = findWords({ ...without, count: 99 }, offeredByHand).length
    expect(ways(query)).toContain(`leave out --syllables 2: ${words}`)
  })

  it('is the wish that gives most words first, then another number', () => {
    expect(ways({ patterns: ['digraph-blend'], sounds: 9 })).toEqual([
      'leave out --sounds 9: 6',
      'take instead --sounds 6: 2',
    ])
    expect(ways({ patterns: ['soft-c', 'silent-e'], syllables: 4 }).slice(0, 3)).toEqual([
      'leave out --syllables 4: 1',
      'take instead --syllables 1: 1',
    ])
  })

  it('is another number where nothing else was wished', () => {
    expect(ways({ sounds: 30 })).toEqual([expect.stringMatching(/^take instead --sounds \d+: \d+$/)])
  })

  it('takes the place along with the only letters that could stand there', () => {
    expect(ways({ letters: 'zz', place: 'beginning', syllables: 1 })).toContainEqual(
      expect.stringMatching(/^leave out --letters zz --place beginning: \d+$/),
    )
  })

  it('is two wishes where no single one is enough', () => {
    expect(
      ways({ letters: 'qqq', patterns: ['soft-c'], level: 'easy', like: offered('zoo') }),
    ).toContainEqual(expect.stringMatching(/^leave out --\S+ \S+ --\S+ \S+: \d+$/))
  })

  it('is nothing for a single wish that no word meets', () => {
    expect(ways({ letters: 'qqq' })).toEqual([])
  })
})
