import { describe, expect, it } from 'vitest'
import { isParted, partedAt, writtenPieces } from '../../src/desk/divided.js'
import {
  broughtIn,
  keysBeside,
  listChange,
  partsChange,
  partsIn,
  textChange,
} from '../../src/desk/plan-values.js'

describe('a value that is emptied', () => {
  it('takes its key out, where there is one', () => {
    expect(textChange({ word: 'reed', clue: 'x' }, ['words', 0, 'clue'], '')).toEqual([
      { kind: 'remove', path: ['words', 0, 'clue'] },
    ])
    expect(textChange('reed', ['words', 0, 'clue'], '', 'word')).toEqual([])
  })
})

describe('a list of which some is ticked', () => {
  const path = ['print', 0, 'words']
  it('is written whole where there was none, and taken out where nothing is left of it', () => {
    expect(listChange('bingo', path, ['reed'], 'layout')).toEqual([
      { kind: 'set', path, value: ['reed'], textAs: 'layout' },
    ])
    expect(listChange({ words: ['reed'] }, path, [])).toEqual([{ kind: 'remove', path }])
  })
  it('is changed by what comes and what goes, the last first', () => {
    expect(listChange({ words: ['reed', 'marsh', 'pond'] }, path, ['marsh', 'mud'])).toEqual([
      { kind: 'insert', path, at: 3, values: ['mud'] },
      { kind: 'remove', path: [...path, 2] },
      { kind: 'remove', path: [...path, 0] },
    ])
  })
})

describe('a word divided by pointing', () => {
  const pieces = ['m', 'ar', 'sh'].map(letters => ({ letters, silent: false }))
  it('is parted within a piece and joined between two', () => {
    expect(writtenPieces(partedAt(pieces, 2))).toBe('m a r sh')
    expect(writtenPieces(partedAt(pieces, 3))).toBe('m arsh')
    expect([0, 1, 2, 3, 4].map(at => isParted(pieces, at))).toEqual([false, true, false, true, false])
  })
  it('keeps what says nothing in brackets', () => {
    const knot = [
      { letters: 'kn', silent: false },
      { letters: 'o', silent: false },
      { letters: 't', silent: true },
    ]
    expect(writtenPieces(partedAt(knot, 1))).toBe('k n o (t)')
    expect(writtenPieces(partedAt(knot, 3))).toBe('kn ot')
  })
})

it('puts the words of a list where its name stood, each once, and leaves those that are there', () => {
  const words = ['reed', 'week.txt', { word: 'Marsh', clue: 'wet land' }]
  expect(broughtIn(words, 1, ['marsh', 'pond', 'pond', 'reed'])).toEqual([
    { kind: 'insert', path: ['words'], at: 2, values: ['pond'] },
    { kind: 'remove', path: ['words', 1] },
  ])
})

it('sets parts of speech in her order, one by its name and several as a list', () => {
  const path = ['words', 0, 'part of speech']
  const set = { kind: 'set', path, textAs: 'word' }
  expect(partsChange('run', ['words', 0], ['verb'])).toEqual([{ ...set, value: 'verb' }])
  expect(partsChange({ word: 'run', 'part of speech': 'verb' }, ['words', 0], ['verb', 'noun'])).toEqual([
    { ...set, value: ['verb', 'noun'] },
  ])
  const both = { word: 'run', 'part of speech': ['verb', 'noun'] }
  expect(partsIn(both)).toEqual(['verb', 'noun'])
  expect(partsChange(both, ['words', 0], ['noun'])).toEqual([
    { kind: 'remove', path },
    { ...set, value: 'noun' },
  ])
  expect(partsChange(both, ['words', 0], [])).toEqual([{ kind: 'remove', path }])
})

it('tells what the page has no control for, however its key is spelled', () => {
  const plan = { Title: 'Marsh', count_sounds: 'as taught', review: 'last.txt' }
  expect(keysBeside(plan, ['title', 'count sounds'])).toEqual([['review', 'last.txt']])
})
