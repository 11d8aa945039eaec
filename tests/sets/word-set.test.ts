import { describe, expect, it } from 'vitest'
import { findCallOrder } from '../../src/sets/bingo/call-order.js'
import { dealBoards } from '../../src/sets/bingo/deal-boards.js'
import { boardSet, cardsForWords } from '../../src/sets/word-set.js'
import { wordsByHand } from './words-by-hand.js'

const marsh = wordsByHand('reed', 'marsh', 'heron', 'mud', 'frog', 'pond', 'moss', 'crane', 'duck', 'toad')
const cards = {
  words: marsh,
  copies: 1,
  order: 'given',
  seed: 12,
  label: 'word-cards',
  prefix: 'card',
} as const

describe('cards for words', () => {
  it('makes a card for each word, numbered in set order', () => {
    const { cards: made } = cardsForWords(cards)
    expect(made.map(card => [card.id, card.number, card.words[0]!.text]).slice(0, 2)).toEqual([
      ['card-01', 1, 'reed'],
      ['card-02', 2, 'marsh'],
    ])
    expect(made).toHaveLength(10)
  })

  it('gives copies the same number and an id of their own', () => {
    const made = cardsForWords({ ...cards, copies: 3 }).cards.filter(card => card.words[0]!.text === 'mud')
    expect(made.map(card => [card.id, card.number, card.copy])).toEqual([
      ['card-04', 4, 1],
      ['card-04-copy-2', 4, 2],
      ['card-04-copy-3', 4, 3],
    ])
  })

  it('shuffles when asked, the same way for the same seed', () => {
    const texts = (seed: number) =>
      cardsForWords({ ...cards, order: 'shuffled', seed }).cards.map(card => card.words[0]!.text)
    expect(texts(12)).toEqual(texts(12))
    expect(texts(12)).not.toEqual(marsh.map(word => word.text))
    expect([...texts(12)].sort()).toEqual(marsh.map(word => word.text).sort())
  })
})

describe('a set of boards', () => {
  const grid = { columns: 3, rows: 3, freeCentre: true }
  const dealt = dealBoards({
    ...grid,
    words: 10,
    boards: 6,
    seed: 12,
    label: 'bingo',
    place: { file: 'week.yaml' },
  })
  if (!dealt.ok) throw new Error('ten words fill a 3x3 board with a free centre')
  const deal = dealt.value
  const rounds = ([1, 2] as const).map(seed =>
    findCallOrder({ boards: deal.boards, grid, words: 10, rule: 'two lines', gap: 1, seed, label: 'bingo' }),
  )
  const [calls] = rounds
  const set = boardSet({ words: marsh, game: { deal, rounds }, copies: 1 })

  it('puts the dealt words into rows of cells, with null in the middle', () => {
    const [first] = set.cards
    expect(first!.id).toBe('board-01')
    expect(first!.cells!.map(row => row.map(word => word?.text ?? null))).toEqual(
      deal.boards[0]!.map(row => row.map(word => (word === null ? null : marsh[word]!.text))),
    )
    expect(first!.cells![1]![1]).toBeNull()
    expect(first!.words).toHaveLength(8)
  })

  it('names the calls and each board’s first line', () => {
    expect([...set.deal!.callOrder].sort()).toEqual(marsh.map(word => word.text).sort())
    expect(set.deal!.wins.map(win => win.board)).toEqual(set.cards.map(card => card.id))
    expect(set.deal!.wins.map(win => win.call)).toEqual(calls!.lines)
  })

  it('names the rule and who wins by it, where that is not the first line', () => {
    expect(set.deal!.rule).toBe('two lines')
    expect(set.deal!.winsByRule!.map(win => win.call)).toEqual(calls!.wins)
  })

  it('names the calls of further rounds', () => {
    expect(set.deal!.laterRounds).toHaveLength(1)
    expect([...set.deal!.laterRounds![0]!.callOrder].sort()).toEqual(marsh.map(word => word.text).sort())
  })
})
