import { describe, expect, it } from 'vitest'
import { openOfferedWords } from '../../../src/words/find/offered-file.js'
import type { OfferedWord } from '../../../src/words/find/offered-word.js'
import { wordsLike } from '../../../src/words/find/words-like.js'
import type { Lexicon } from '../../../src/words/lexicon/entry.js'
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

  it('are sought once for a list that is asked about again', () => {
    let looked = 0
    const counting: Lexicon = {
      ...lexicon,
      lookUp: word => {
        looked += 1
        return lexicon.lookUp(word)
      },
    }
    const offered = openOfferedWords().slice(0, 300)
    const ask = (of: string) => [
      ...wordsLike({ words: wordsOfAWeek(of), offered: () => offered, lexicon: counting })(),
    ]
    ask(list)
    ask(list)
    expect(looked).toBe(6)
    ask('crab, cup, cave, corn, city, cellar')
    expect(looked).toBe(12)
  })

  it('are read only when they are asked for', () => {
    const offered = (): readonly OfferedWord[] => {
      throw new Error('read')
    }
    expect(() => wordsLike({ words: wordsOfAWeek(list), offered, lexicon })).not.toThrow()
  })
})
