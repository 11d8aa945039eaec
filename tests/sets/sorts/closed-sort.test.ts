import { describe, expect, it } from 'vitest'
import { closedSort } from '../../../src/sets/sorts/closed-sort.js'
import { sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { type HeadingsWanted, sortHeadings } from '../../../src/sets/sorts/sort-heading.js'
import { wordsByHand } from '../words-by-hand.js'

const words = wordsByHand(
  { text: 'shell', patterns: ['consonant-digraph:sh'] },
  { text: 'chest', patterns: ['consonant-digraph:ch'] },
  { text: 'moth', patterns: ['consonant-digraph:th'] },
  { text: 'ship', patterns: ['consonant-digraph:sh'] },
  { text: 'chin', patterns: ['consonant-digraph:ch'] },
)
const sort = sortNamed(words, 'which consonant digraph')!.sort
const headingsWith = (change: Partial<HeadingsWanted>) =>
  sortHeadings({ sort, words, headedBy: 'title', leftovers: true, hasPicture: () => false, ...change })
const wanted = {
  sort,
  words,
  headings: headingsWith({}),
  copies: 1,
  seed: 12,
  label: 'closed-sort',
} as const

describe('a closed sort', () => {
  it('has a header for each column, then a card for each word, under one run of numbers', () => {
    const { cards } = closedSort(wanted)
    expect(cards.slice(0, 4).map(card => [card.id, card.kind, card.title ?? card.words[0]!.text])).toEqual([
      ['header-01', 'header', 'ch'],
      ['header-02', 'header', 'sh'],
      ['header-03', 'header', '?'],
      ['card-04', 'card', expect.any(String)],
    ])
    expect(cards.map(card => card.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
    expect(cards.flatMap(card => card.words.map(word => word.text)).sort()).toEqual(
      words.map(word => word.text).sort(),
    )
  })

  it('tells which numbers lie under which header', () => {
    const { cards, answers } = closedSort(wanted)
    const wordsUnder = answers!.map(answer => [
      answer.text,
      answer.numbers.map(number => cards[number - 1]!.words[0]!.text).sort(),
    ])
    expect(wordsUnder).toEqual([
      ['ch', ['chest', 'chin']],
      ['sh', ['shell', 'ship']],
      ['?', ['moth']],
    ])
  })

  it('leaves the words of no column out when asked', () => {
    const { cards } = closedSort({ ...wanted, headings: headingsWith({ leftovers: false }) })
    expect(cards.filter(card => card.kind === 'header').map(card => card.title)).toEqual(['ch', 'sh'])
    expect(cards.some(card => card.words[0]?.text === 'moth')).toBe(false)
  })

  it('shows a key word in place of a title, and has no card of it', () => {
    const { cards, answers } = closedSort({ ...wanted, headings: headingsWith({ headedBy: 'key word' }) })
    const headers = cards.filter(card => card.kind === 'header')
    expect(headers.map(card => card.words.map(word => word.text))).toEqual([['chin'], ['ship'], []])
    expect(
      cards
        .filter(card => card.kind === 'card')
        .flatMap(card => card.words.map(word => word.text))
        .toSorted(),
    ).toEqual(['chest', 'moth', 'shell'])
    expect(answers!.map(({ numbers }) => numbers.length)).toEqual([1, 1, 1])
  })

  it('makes whole copies with ids of their own', () => {
    const { cards } = closedSort({ ...wanted, copies: 2 })
    expect(cards).toHaveLength(16)
    expect(new Set(cards.map(card => card.id)).size).toBe(16)
    expect(cards[8]!.id).toBe('header-01-copy-2')
  })
})
