import { expect, it } from 'vitest'
import { readSeenSheets, readStep, readTypedWords } from '../../src/desk/server/read-message.js'

const change = { kind: 'set', path: ['words', 0, 'clue'], value: 'wet', textAs: 'word' }
const step = { from: 'v', says: 'the clue', changes: [change] }

it('takes a step of the form that the page sends', () => {
  expect(readStep(JSON.parse(JSON.stringify(step)))).toEqual(step)
  const data = { kind: 'insert', path: ['print'], at: 1, values: [{ layout: 'bingo', words: ['reed'] }] }
  expect(readStep({ ...step, changes: [data] })?.changes).toEqual([data])
})

it.each([
  ['no object', 'x'],
  ['no state', { ...step, from: 1 }],
  ['a path to the top', { ...step, changes: [{ ...change, path: [] }] }],
  ['a place below nothing', { ...step, changes: [{ ...change, path: ['words', -1] }] }],
  ['a path without end', { ...step, changes: [{ ...change, path: Array.from({ length: 50 }, () => 'a') }] }],
  ['a value that is no text', { ...step, changes: [{ ...change, value: 4 }] }],
  ['a file that is no name', { ...step, changes: [{ ...change, file: 5 }] }],
  ['an unknown kind', { ...step, changes: [{ ...change, kind: 'run' }] }],
  ['changes by the thousand', { ...step, changes: Array.from({ length: 5000 }, () => change) }],
])('takes nothing of a step with %s', (_, value) => {
  expect(readStep(value)).toBeUndefined()
})

it('studies a few words at a time, and texts alone', () => {
  expect(readTypedWords({ words: ['reed'] })).toEqual(['reed'])
  expect(readTypedWords({ words: [1] })).toBeUndefined()
  expect(readTypedWords({ words: Array.from({ length: 100 }, () => 'reed') })).toBeUndefined()
})

it('takes sheets that a page shows by their places, a screen full of them', () => {
  const seen = [{ item: 'word-cards', sheet: 0 }]
  expect(readSeenSheets({ seen })).toEqual(seen)
  expect(readSeenSheets({ seen: [{ item: 'word-cards', sheet: -1 }] })).toBeUndefined()
  expect(readSeenSheets({ seen: [{ item: 4, sheet: 0 }] })).toBeUndefined()
  expect(readSeenSheets({ seen: Array.from({ length: 500 }, () => seen[0]) })).toBeUndefined()
})
