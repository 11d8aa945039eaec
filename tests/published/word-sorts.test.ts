/**
 * Open and closed sorts after Gillet and Temple, Developing Word Knowledge through Word Sorts (1978, ERIC ED158245), and
 * Gillet and Kita, Words, Kids, and Categories (1978, ERIC ED158259). Their abstracts were read, not the papers: in a
 * closed sort what the words of a group share is stated in advance; in an open sort nothing is stated, the learner finds
 * it, and redefines a group by adding and removing words.
 */
import { describe, expect, it } from 'vitest'
import { closedSort } from '../../src/sets/sorts/closed-sort.js'
import { rankSorts } from '../../src/sets/sorts/rank-sorts.js'
import { sortHeadings } from '../../src/sets/sorts/sort-heading.js'
import { marshWords, piecesOf, printItem } from '../layouts/print-item.js'
import { wordsOfAWeek } from '../sets/sorts/words-of-a-week.js'

const list = 'lake, gate, wave, rain, sail, trail, hay, clay, spray, said'

describe('a closed sort', () => {
  it('states in advance what the words of each group share', () => {
    const words = wordsOfAWeek(list)
    const sort = rankSorts(words)[0]!
    const headings = sortHeadings({
      sort,
      words,
      headedBy: 'title',
      leftovers: true,
      hasPicture: () => false,
    })
    const { cards } = closedSort({ sort, headings, words, copies: 1, seed: 12, label: 'closed-sort' })
    const headers = cards.filter(({ kind }) => kind === 'header').map(({ title }) => title)
    expect(headers).toEqual(['a_e', 'ai', 'ay', '?'])
  })
})

describe('an open sort', () => {
  it('states nothing: its cards hold the words alone', async () => {
    const pieces = piecesOf(await printItem('{layout: open-sort}'))
    expect(pieces.every(({ kind }) => kind === 'card')).toBe(true)
    expect(pieces.map(({ text }) => text.join(' ')).toSorted()).toEqual(marshWords.toSorted())
    expect(pieces.flatMap(({ marks }) => marks)).toEqual([])
  })

  it('can be sorted in more than one way, so that groups can be redefined', () => {
    const piles = rankSorts(wordsOfAWeek(list)).map(({ columns }) => JSON.stringify(columns))
    expect(new Set(piles).size).toBeGreaterThan(1)
  })
})
