import { describe, expect, it } from 'vitest'
import { hintsIn, orderWithoutHints } from '../../../src/sets/sorts/order-without-hints.js'
import { rankSorts } from '../../../src/sets/sorts/rank-sorts.js'
import { wordsByHand } from '../words-by-hand.js'

const words = wordsByHand(
  { text: 'chest', patterns: ['consonant-digraph:ch'], partsOfSpeech: ['noun'] },
  { text: 'chill', patterns: ['consonant-digraph:ch'], partsOfSpeech: ['verb'] },
  { text: 'chin', patterns: ['consonant-digraph:ch'], partsOfSpeech: ['noun'] },
  { text: 'chop', patterns: ['consonant-digraph:ch'], partsOfSpeech: ['verb'] },
  { text: 'shed', patterns: ['consonant-digraph:sh'], partsOfSpeech: ['noun'] },
  { text: 'shell', patterns: ['consonant-digraph:sh'], partsOfSpeech: ['noun'] },
  { text: 'ship', patterns: ['consonant-digraph:sh'], partsOfSpeech: ['verb'] },
  { text: 'shut', patterns: ['consonant-digraph:sh'], partsOfSpeech: ['verb'] },
  { text: 'than', patterns: ['consonant-digraph:th'], partsOfSpeech: ['noun'] },
  { text: 'think', patterns: ['consonant-digraph:th'], partsOfSpeech: ['verb'] },
  { text: 'thumb', patterns: ['consonant-digraph:th'], partsOfSpeech: ['noun'] },
  { text: 'thump', patterns: ['consonant-digraph:th'], partsOfSpeech: ['verb'] },
)
const sorts = rankSorts(words)

describe('an order without hints', () => {
  it.each(Array.from({ length: 20 }, (_, seed) => seed))(
    'lays no three of a column side by side, seed %i',
    seed => {
      const order = orderWithoutHints({ words, sorts, seed, label: 'open-sort' })
      expect(sorts.length).toBeGreaterThan(1)
      for (const sort of sorts) {
        const columns = order.map(word => sort.columns.findIndex(column => column.words.includes(word.text)))
        const threes = columns.filter(
          (column, index) => index > 1 && column === columns[index - 1] && column === columns[index - 2],
        )
        expect(threes).toEqual([])
      }
    },
  )

  it('keeps every word', () => {
    const order = orderWithoutHints({ words, sorts, seed: 12, label: 'open-sort' })
    expect(order.map(word => word.text).sort()).toEqual(words.map(word => word.text))
  })

  it('is the same for the same seed, another for another', () => {
    const texts = (seed: number) =>
      orderWithoutHints({ words, sorts, seed, label: 'x' }).map(word => word.text)
    expect(texts(12)).toEqual(texts(12))
    expect(texts(12)).not.toEqual(texts(13))
  })

  it('counts an alphabetical list, a list by columns and columns in turn as hints', () => {
    expect(hintsIn(words, [])).toBe(9)
    expect(hintsIn(words, sorts)).toBeGreaterThan(9)
    const two = wordsByHand('reed', 'boat', 'pond', 'quay', 'mud', 'sail')
    const marshOrHarbour = {
      ...sorts[0]!,
      columns: [
        { title: 'marsh', words: ['reed', 'pond', 'mud'] },
        { title: 'harbour', words: ['boat', 'quay', 'sail'] },
      ],
    }
    expect(hintsIn(two, [marshOrHarbour])).toBe(2)
  })

  it('does its best with words that must lie together', () => {
    const same = wordsByHand('reed', 'mud', 'pond')
    expect(orderWithoutHints({ words: same, sorts: [], seed: 1, label: 'x' })).toHaveLength(3)
  })
})
