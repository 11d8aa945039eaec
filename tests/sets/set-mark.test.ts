import { describe, expect, it } from 'vitest'
import { copyLetter, setMarkText } from '../../src/sets/set-mark.js'

const setOf = (cards: number, copies: number) => ({
  cards: Array.from({ length: cards * copies }, (_, index) => ({
    id: String(index),
    kind: 'card' as const,
    number: (index % cards) + 1,
    copy: Math.floor(index / cards) + 1,
    words: [],
  })),
})

describe('a set mark', () => {
  it('says what the set is and which number of how many', () => {
    expect(setMarkText('open sort', { number: 3, copy: 1 }, setOf(16, 1))).toBe('open sort · 3 of 16')
  })

  it('says which copy where there are several', () => {
    expect(setMarkText('open sort', { number: 3, copy: 2 }, setOf(16, 4))).toBe('open sort · B · 3 of 16')
  })

  it.each([
    [1, 'A'],
    [26, 'Z'],
    [27, 'AA'],
    [52, 'AZ'],
    [53, 'BA'],
    [500, 'SF'],
  ])('letters copy %i %s', (copy, letter) => {
    expect(copyLetter(copy)).toBe(letter)
  })
})
