import { describe, expect, it } from 'vitest'
import { bracketsApart, dividedLetters } from '../../../src/plan/words/sound-division.js'

/** `c a k (e)`: brackets around what she calls silent. */
const read = (...pieces: string[]) =>
  dividedLetters(pieces)
    ?.map(({ letters, silent }) => (silent ? `(${letters})` : letters))
    .join(' ')

describe('the letters of a division into sounds', () => {
  it('are taken in order, a bracket making them silent', () => {
    expect(read('c', 'a', 'k', 'e')).toBe('c a k e')
    expect(read('c', 'a', 'k', '(e)')).toBe('c a k (e)')
  })

  it('behind a low line follow the next sound, and say nothing', () => {
    expect(read('c', 'a_e', 'k')).toBe('c a k (e)')
  })

  it.each([
    [['c', 'a_e']],
    [['a_e', 'k_w', 'h']],
    [['c', '(e']],
    [['()']],
    [['a_']],
    [['c', 'a__e', 'k']],
    [['']],
  ])('%j are none', pieces => {
    expect(read(...pieces)).toBeUndefined()
  })
})

describe('brackets', () => {
  it('make a piece of their own wherever they stand', () => {
    expect(bracketsApart('c a k(e)').trim()).toBe('c a k (e)')
    expect(bracketsApart('(k)n igh t').trim()).toBe('(k) n igh t')
    expect(bracketsApart('n i( gh )t').replaceAll(/\s+/g, ' ')).toBe('n i (gh) t')
  })
})
