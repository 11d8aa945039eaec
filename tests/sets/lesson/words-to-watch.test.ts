import { describe, expect, it } from 'vitest'
import { pluralsByRule, wordsOfTwoKinds, wordsToWatch } from '../../../src/sets/lesson/words-to-watch.js'
import { wordsOfAWeek } from '../sorts/words-of-a-week.js'

const watched = (list: string) => wordsToWatch(wordsOfAWeek(list), [])

describe('words to watch', () => {
  it.each([
    ['have', 'has a silent e that makes no vowel long: e is silent: English words do not end in v'],
    ['wait', 'sounds the same as weight'],
    ['tooth', 'plural teeth: changes inside'],
    ['sheep', 'plural: stays the same'],
    ['blorf', 'is in no dictionary of ours: its sounds are a guess'],
  ])('%s: %s', (word, reason) => {
    expect(watched(word)).toEqual([{ word, reasons: expect.arrayContaining([reason]) }])
  })

  it('tell of two ways of saying, as the study notes them', () => {
    expect(watched('read')[0]!.reasons[0]).toMatch(/^is said in different ways/)
  })

  it('are those that break the rule of a sort, not those that merely stand alone', () => {
    const words = wordsOfAWeek('said, they')
    const reasons = [
      { word: 'said', why: 'its ai says /EH/ as in bed', oddball: true },
      { word: 'they', why: 'is the only one of its kind: ey', oddball: true },
    ] as const
    expect(wordsToWatch(words, reasons)).toEqual([{ word: 'said', reasons: ['its ai says /EH/ as in bed'] }])
  })

  it('are none where nothing is odd', () => {
    expect(watched('frog, marsh, jumped')).toEqual([])
  })
})

describe('words used in two ways', () => {
  it('are gathered by their two commonest uses', () => {
    expect([...wordsOfTwoKinds(wordsOfAWeek('stream, moth, spring'))]).toEqual([
      ['noun and verb', ['stream', 'spring']],
    ])
  })
})

describe('plurals', () => {
  it('are gathered by their rule, of words that mostly name something', () => {
    expect(pluralsByRule(wordsOfAWeek('fox, dish, leaf, deer, jump'))).toEqual([
      { rule: 'add es after ch, sh, s, x, z', pairs: ['fox, foxes', 'dish, dishes'] },
      { rule: 'f to v, add es', pairs: ['leaf, leaves'] },
      { rule: 'stays the same', pairs: ['deer'] },
    ])
  })
})
