import { describe, expect, it } from 'vitest'
import { assignStyles } from '../../../src/pieces/marks/assign-styles.js'
import { missedWords } from '../../../src/pieces/marks/missed-words.js'
import type { MarkTarget } from '../../../src/plan/plan.js'
import { studied } from '../../words/patterns/hand-aligned.js'

/** What is told of marks on these targets, one line each, with the line of the mark in front. */
function told(words: readonly string[], ...targets: readonly MarkTarget[]): readonly string[] {
  const marks = targets.map((target, index) => ({ place: { file: 'week.yaml', line: index + 1 }, target }))
  return missedWords(words.map(studied), assignStyles(marks).marks).map(
    ({ severity, place, message }) => `${place.line} ${severity}: ${message}`,
  )
}

const digraph = { kind: 'pattern', pattern: 'consonant-digraph' } as const
const inBlend = 'the mark on consonant-digraph does not reach the digraph inside a blend'

describe('a mark on digraphs', () => {
  it('does not reach those inside blends, and that is told with the words', () => {
    expect(told(['marsh', 'shrug', 'thread', 'bench'], digraph)).toEqual([
      `1 warning: ${inBlend}: shrug, thread, bench`,
    ])
  })

  it('names each word once, and not all of a long list', () => {
    const list = Array.from({ length: 4 }, () => ['shrug', 'thread']).flat()
    expect(told(list, digraph)).toEqual([`1 warning: ${inBlend}: shrug, thread`])
  })

  it('looks where the mark may stand', () => {
    expect(told(['bench', 'shrug'], { ...digraph, place: 'end' })).toEqual([`1 warning: ${inBlend}: bench`])
  })

  it('is let be where the blends are marked as a whole, and where the teacher has said yes or no', () => {
    const words = ['marsh', 'shrug']
    expect(told(words, digraph, { kind: 'pattern', pattern: 'digraph-blend' })).toEqual([])
    expect(told(words, { ...digraph, insideBlends: true })).toEqual([])
    expect(told(words, { ...digraph, insideBlends: false })).toEqual([])
  })
})

describe('a mark that stands on no word', () => {
  it('is told, each with its own place', () => {
    expect(
      told(
        ['marsh'],
        { kind: 'pattern', pattern: 'soft-c' },
        digraph,
        { kind: 'letters', letters: 'oa' },
        { kind: 'letters', letters: 'm', place: 'end' },
      ),
    ).toEqual([
      '1 warning: the mark on soft-c stands on no word',
      '3 warning: the mark on "oa" stands on no word',
      '4 warning: the mark on "m" stands on no word at its end',
    ])
  })

  it('is told too when she wants none inside blends and there are none elsewhere', () => {
    expect(told(['shrug'], { ...digraph, insideBlends: false })).toEqual([
      '1 warning: the mark on consonant-digraph stands on no word',
    ])
  })
})
