import { describe, expect, it } from 'vitest'
import type { Card } from '../../src/sets/card-set.js'
import { contentsOf } from '../../src/sets/set-contents.js'

const card = (kind: Card['kind'], number: number, change: Partial<Card> = {}): Card => ({
  id: `${kind}-${number}`,
  kind,
  number,
  copy: 1,
  words: [],
  ...change,
})

describe('what a set holds', () => {
  it('is counted by kind, copies once', () => {
    const cards = [card('header', 1), card('card', 2), card('card', 3), card('card', 2, { copy: 2 })]
    expect(contentsOf({ cards })).toBe('1 header, 2 cards')
  })

  it('counts a board once that is joined from several sheets', () => {
    const cards = [1, 2].flatMap(number =>
      [1, 2].map(part => card('board', number, { part: { number: part, of: 2 } })),
    )
    expect(contentsOf({ cards })).toBe('2 boards of 2 sheets')
  })
})
