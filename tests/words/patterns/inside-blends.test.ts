import { describe, expect, it } from 'vitest'
import { digraphsInBlends } from '../../../src/words/patterns/inside-blends.js'
import { studied } from './hand-aligned.js'

const inside = (text: string) =>
  digraphsInBlends(studied(text)).map(
    ({ letters, start, end, place }) => `${letters} ${start}-${end} ${place}`,
  )

describe('digraphs inside digraph blends', () => {
  it('are found at the beginning and at the end', () => {
    expect(inside('shrug')).toEqual(['sh 0-2 beginning'])
    expect(inside('thread')).toEqual(['th 0-2 beginning'])
    expect(inside('bench')).toEqual(['ch 3-5 end'])
  })

  it('are two where two digraphs blend', () => {
    expect(inside('strength')).toEqual(['ng 4-6 middle', 'th 6-8 end'])
  })

  it('are none where the digraph stands alone', () => {
    expect(inside('marsh')).toEqual([])
  })
})
