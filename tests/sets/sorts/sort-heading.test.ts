import { describe, expect, it } from 'vitest'
import { sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { type HeadingsWanted, sortHeadings } from '../../../src/sets/sorts/sort-heading.js'
import { wordsByHand } from '../words-by-hand.js'

const words = wordsByHand(
  { text: 'shrub', patterns: ['consonant-digraph:sh'] },
  { text: 'chest', patterns: ['consonant-digraph:ch'] },
  { text: 'moth', patterns: ['consonant-digraph:th'] },
  { text: 'shed', patterns: ['consonant-digraph:sh'] },
  { text: 'chin', patterns: ['consonant-digraph:ch'] },
)
const sort = sortNamed(words, 'which consonant digraph')!.sort
const headings = (change: Partial<HeadingsWanted> = {}) =>
  sortHeadings({ sort, words, headedBy: 'title', leftovers: true, hasPicture: () => false, ...change })

describe('what stands over the columns of a sort', () => {
  it('is their titles, and a question mark over the words that fit none', () => {
    expect(headings().map(({ title, words }) => [title, words])).toEqual([
      ['ch', ['chest', 'chin']],
      ['sh', ['shed', 'shrub']],
      ['?', ['moth']],
    ])
  })

  it('is nothing over leftovers that stay out', () => {
    expect(headings({ leftovers: false })).toHaveLength(2)
  })

  it('is the plainest word of each column, which is then not sorted', () => {
    expect(headings({ headedBy: 'key word' }).map(({ keyWord, words }) => [keyWord?.text, words])).toEqual([
      ['chin', ['chest']],
      ['shed', ['shrub']],
      [undefined, ['moth']],
    ])
  })

  it('is a word with a picture where pictures are asked for and there is one', () => {
    const hasPicture = ({ text }: { text: string }) => text === 'shrub'
    expect(headings({ headedBy: 'key picture', hasPicture }).map(({ keyWord }) => keyWord?.text)).toEqual([
      'chin',
      'shrub',
      undefined,
    ])
  })

  it('is a title over a column whose words share only what they lack', () => {
    const without = {
      ...sort,
      columns: sort.columns.map((column, at) => (at === 1 ? { ...column, without: true as const } : column)),
    }
    expect(headings({ sort: without, headedBy: 'key word' }).map(({ keyWord }) => keyWord?.text)).toEqual([
      'chin',
      undefined,
      undefined,
    ])
  })
})
