import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type GradedWord, gradedLists } from '../../../src/words/find/graded-lists.js'

const word = (text: string, soundCount: number, syllables = 1): GradedWord => ({
  text,
  soundCount,
  syllables: Array.from({ length: syllables }, () => text),
})

describe('lists from short words to long', () => {
  const familiar = [
    word('rabbit', 5, 2),
    word('ship', 3),
    word('splash', 5),
    word('mud', 3),
    word('frog', 4),
    word('otter', 3, 2),
  ]

  it('begin with the fewest syllables, then sounds', () => {
    const lists = gradedLists(familiar, { lists: 3, count: 5 })
    expect(lists.map(list => list.map(({ text }) => text))).toEqual([
      ['ship', 'mud'],
      ['splash', 'frog'],
      ['rabbit', 'otter'],
    ])
  })

  it('keep the most familiar of each part, as many as are wanted', () => {
    expect(gradedLists(familiar, { lists: 2, count: 1 }).map(list => list.map(({ text }) => text))).toEqual([
      ['ship'],
      ['rabbit'],
    ])
  })

  it('hold no word shorter than one of the list before, and each word once', () => {
    const anyWord = fc
      .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 9 }))
      .map(([sounds, syllables, letters]) => word('a'.repeat(letters), sounds, syllables))
    fc.assert(
      fc.property(fc.array(anyWord, { maxLength: 60 }), fc.integer({ min: 2, max: 6 }), (words, lists) => {
        const graded = gradedLists(words, { lists, count: 100 })
        const lengths = graded.map(list =>
          list.map(
            ({ syllables, soundCount, text }) => syllables.length * 1e4 + soundCount * 100 + text.length,
          ),
        )
        for (const [index, list] of lengths.slice(1).entries())
          expect(Math.min(...list)).toBeGreaterThanOrEqual(Math.max(...lengths[index]!, 0))
        expect(graded.flat()).toHaveLength(words.length)
      }),
    )
  })
})
