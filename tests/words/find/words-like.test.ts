import { describe, expect, it } from 'vitest'
import { openOfferedWords } from '../../../src/words/find/offered-file.js'
import type { OfferedWord } from '../../../src/words/find/offered-word.js'
import { wordsLike } from '../../../src/words/find/words-like.js'
import { wordsOfAWeek } from '../../sets/sorts/words-of-a-week.js'
import { lexicon } from './offered.js'

function like(list: string, readable?: (word: OfferedWord) => boolean) {
  const toAdd = wordsLike({ words: wordsOfAWeek(list), offered: () => openOfferedWords(), lexicon, readable })
  return [...toAdd()]
}

describe('words like those of a list', () => {
  const list = 'crab, cup, cave, corn, city, cell'

  it('have as many sounds and syllables as they', () => {
    const found = like(list)
    expect(found.length).toBeGreaterThan(100)
    expect(Math.max(...found.map(({ syllables }) => syllables.length))).toBe(2)
    expect(Math.max(...found.map(({ soundCount }) => soundCount))).toBe(4)
  })

  it('are none of them', () => {
    expect(like(list).map(({ text }) => text)).not.toContain('crab')
  })

  it('have no ending where the list has none', () => {
    const patterns = (words: string) =>
      like(words).flatMap(word => word.patterns.map(({ pattern }) => pattern))
    expect(patterns(list)).not.toContain('ending-s')
    expect(patterns('crabs, cups, caves, corn, city, cell')).toContain('ending-s')
  })

  it('are those that the class can read', () => {
    const found = like(list, ({ text }) => text.startsWith('f'))
    expect(found.length).toBeGreaterThan(5)
    expect(found.filter(({ text }) => !text.startsWith('f'))).toEqual([])
  })

  /** Words to offer, and how often one of them was looked at. */
  function counted() {
    let looked = 0
    const offered = openOfferedWords()
      .slice(0, 3000)
      .map(
        word =>
          new Proxy(word, {
            get: (of, key) => {
              if (key === 'familiarity') looked += 1
              return Reflect.get(of, key, of)
            },
          }),
      )
    const rowOf = (of: string) => wordsLike({ words: wordsOfAWeek(of), offered: () => offered, lexicon })()
    return { rowOf, looked: () => looked }
  }

  it('are sought once for all lists of one level', () => {
    const { rowOf, looked } = counted()
    const lookedFor = (of: string): number => {
      const before = looked()
      expect([...rowOf(of)].length).toBeGreaterThan(10)
      return looked() - before
    }
    expect(lookedFor(list)).toBeGreaterThanOrEqual(3000)
    expect(lookedFor(list)).toBeLessThan(3000)
    // A word in the middle makes no list easier or harder; a long one does.
    expect(lookedFor(list.replace('cup', 'bud'))).toBeLessThan(3000)
    expect(lookedFor(`${list}, cinnamon`)).toBeGreaterThanOrEqual(3000)
  })

  it('are sought no further than somebody reads', () => {
    const { rowOf, looked } = counted()
    const first = rowOf(list)[Symbol.iterator]()
    expect(first.next().done).toBe(false)
    expect(looked()).toBeLessThan(1000)
  })

  it('are read only when they are asked for', () => {
    const offered = (): readonly OfferedWord[] => {
      throw new Error('read')
    }
    expect(() => wordsLike({ words: wordsOfAWeek(list), offered, lexicon })).not.toThrow()
  })
})
