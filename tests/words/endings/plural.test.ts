import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pluralOf } from '../../../src/words/endings/plural.js'

const table = readFileSync(join(import.meta.dirname, 'plurals.tsv'), 'utf8')
const rows = table
  .trim()
  .split('\n')
  .map(line => line.split('\t') as [string, string, string, string | undefined])

describe('plurals.tsv', () => {
  test.each(rows)('%s → %s (%s)', (text, form, rule, other) => {
    const alternatives = other === undefined ? {} : { alternatives: [other] }
    expect(pluralOf({ text, partsOfSpeech: ['noun'] })).toEqual({ form, rule, ...alternatives })
  })
})

test('a word that is no noun has none', () => {
  expect(pluralOf({ text: 'quickly', partsOfSpeech: ['adverb'] })).toBeNull()
  expect(pluralOf({ text: 'they', partsOfSpeech: ['pronoun'] })).toBeNull()
  expect(pluralOf({ text: 'reed', partsOfSpeech: [] })).toBeNull()
})

test('a noun among other parts of speech has one', () => {
  expect(pluralOf({ text: 'run', partsOfSpeech: ['verb', 'noun'] })?.form).toBe('runs')
})

test('the pronunciation decides whether ch is /k/', () => {
  const noun = { text: 'flach', partsOfSpeech: ['noun'] } as const
  expect(pluralOf({ ...noun, pronunciation: 'F L AE1 K' })?.form).toBe('flachs')
  expect(pluralOf({ ...noun, pronunciation: 'F L AE1 CH' })?.form).toBe('flaches')
})

test('a name keeps its y, and a final s is no plural', () => {
  expect(pluralOf({ text: 'Avery', partsOfSpeech: ['noun'], properName: true })?.form).toBe('Averys')
  expect(pluralOf({ text: 'Ellis', partsOfSpeech: ['noun'], properName: true })?.form).toBe('Ellises')
  expect(pluralOf({ text: 'Waters', partsOfSpeech: ['noun'], properName: true })?.form).toBe('Waterses')
})

test('with a word list, a word in s is a plural only when the rest is a noun', () => {
  const isNoun = (text: string) => text === 'horse'
  expect(pluralOf({ text: 'horses', partsOfSpeech: ['noun'], isNoun })?.rule).toBe(
    'already plural: one horse',
  )
  expect(pluralOf({ text: 'brambles', partsOfSpeech: ['noun'], isNoun })?.form).toBe('brambleses')
})

test('any run of letters has a plural with a rule, in the capitals it came in', () => {
  const letters = fc.string({
    unit: fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz'),
    minLength: 1,
    maxLength: 30,
  })
  fc.assert(
    fc.property(letters, text => {
      const lower = pluralOf({ text, partsOfSpeech: ['noun'] })
      const upper = pluralOf({ text: text.toUpperCase(), partsOfSpeech: ['noun'] })
      return lower !== null && lower.rule !== '' && upper?.form.toLowerCase() === lower.form
    }),
  )
})
