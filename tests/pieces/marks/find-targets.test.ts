import { describe, expect, it } from 'vitest'
import { targetsOf } from '../../../src/pieces/marks/find-targets.js'
import type { StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import type { MarkTarget } from '../../../src/plan/plan.js'
import type { Finding, Word } from '../../../src/words/word.js'
import { studied } from '../../words/patterns/hand-aligned.js'

function wordOf(text: string, patterns: readonly Finding[] = []): Word {
  return {
    text,
    known: true,
    source: 'lexicon',
    pronunciations: [],
    graphemes: [],
    soundCount: 0,
    phonemeCount: 0,
    pieces: [],
    syllables: [text],
    patterns,
    partsOfSpeech: [],
    plural: null,
  }
}

function markOn(target: MarkTarget): StyledMark {
  return {
    mark: { place: { file: 'plan.yaml' }, target },
    index: 0,
    line: 'single',
    descenders: 'clear',
    assigned: false,
  }
}

/** Where the mark stands, as `2-4`; a split pattern as `1-2 & 3-4`. */
function ranges(word: Word, target: MarkTarget): readonly string[] {
  return targetsOf(word, [markOn(target)]).map(span =>
    span.ranges.map(({ start, end }) => `${start}-${end}`).join(' & '),
  )
}

const letters = (text: string, target: string, place?: 'beginning' | 'middle' | 'end') =>
  ranges(wordOf(text), { kind: 'letters', letters: target, ...(place === undefined ? {} : { place }) })

describe('a mark on exact letters', () => {
  it('stands on every occurrence, capitals or not', () => {
    expect(letters('Shellfish', 'sh')).toEqual(['0-2', '7-9'])
  })

  it('does not count a letter twice', () => {
    expect(letters('zeee', 'ee')).toEqual(['1-3'])
  })

  it('keeps to its place in the word', () => {
    expect(letters('shellfish', 'sh', 'beginning')).toEqual(['0-2'])
    expect(letters('shellfish', 'l', 'middle')).toEqual(['3-4', '4-5'])
    expect(letters('shellfish', 'sh', 'end')).toEqual(['7-9'])
  })

  it('that is the whole word stands at its beginning and at its end, not in its middle', () => {
    expect(letters('eye', 'eye', 'beginning')).toEqual(['0-3'])
    expect(letters('eye', 'eye', 'end')).toEqual(['0-3'])
    expect(letters('eye', 'eye', 'middle')).toEqual([])
  })

  it('joins two parts over the consonants between', () => {
    expect(letters('lake', 'a_e')).toEqual(['1-2 & 3-4'])
    expect(letters('paste', 'a_e')).toEqual(['1-2 & 4-5'])
    expect(letters('area', 'a_e')).toEqual(['0-1 & 2-3'])
    expect(letters('bread', 'e_d')).toEqual([])
  })

  it('is nowhere in a word without them', () => {
    expect(letters('reed', 'sh')).toEqual([])
  })
})

describe('a mark on a pattern', () => {
  const why = 'from a test'
  const thread = wordOf('thread', [
    { pattern: 'vowel-team', letters: 'ea', start: 3, end: 5, place: 'middle', why },
    { pattern: 'digraph-blend', letters: 'thr', start: 0, end: 3, place: 'beginning', why },
  ])

  it('stands where the analysis found it', () => {
    expect(ranges(thread, { kind: 'pattern', pattern: 'vowel-team' })).toEqual(['3-5'])
    expect(ranges(thread, { kind: 'pattern', pattern: 'digraph-blend', place: 'beginning' })).toEqual(['0-3'])
    expect(ranges(thread, { kind: 'pattern', pattern: 'digraph-blend', place: 'end' })).toEqual([])
    expect(ranges(thread, { kind: 'pattern', pattern: 'trigraph' })).toEqual([])
  })

  it('reaches the digraph inside a blend where it is to, from left to right', () => {
    const digraphs = { kind: 'pattern', pattern: 'consonant-digraph' } as const
    expect(ranges(studied('strength'), digraphs)).toEqual([])
    expect(ranges(studied('strength'), { ...digraphs, insideBlends: true })).toEqual(['4-6', '6-8'])
    expect(ranges(studied('strength'), { ...digraphs, insideBlends: true, place: 'end' })).toEqual(['6-8'])
  })

  it('stands on both ends of a split one', () => {
    const tide = wordOf('tide', [
      { pattern: 'silent-e', letters: 'i_e', start: 1, end: 4, place: 'end', why },
    ])
    expect(ranges(tide, { kind: 'pattern', pattern: 'silent-e' })).toEqual(['1-2 & 3-4'])
  })
})
