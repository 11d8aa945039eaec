import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pluralOf } from '../../../src/words/endings/plural.js'
import type { PartOfSpeech } from '../../../src/words/word.js'

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
  expect(pluralOf({ text: 'sting', partsOfSpeech: ['verb', 'noun'] })?.form).toBe('stings')
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

describe('with a word list, a word in s is a plural', () => {
  const listed: Readonly<Record<string, { partsOfSpeech: readonly PartOfSpeech[]; familiarity: number }>> = {
    horse: { partsOfSpeech: ['noun'], familiarity: 9 },
    cooky: { partsOfSpeech: ['noun'], familiarity: 1 },
    cookie: { partsOfSpeech: ['noun'], familiarity: 9 },
    final: { partsOfSpeech: ['adjective'], familiarity: 9 },
    taxi: { partsOfSpeech: ['noun'], familiarity: 9 },
    menu: { partsOfSpeech: ['noun'], familiarity: 9 },
  }
  const plural = (text: string) => pluralOf({ text, partsOfSpeech: ['noun'], lookUp: word => listed[word] })

  test.each([
    ['horses', 'horses', 'already plural: one horse', 'when the rest is a noun'],
    ['cookies', 'cookies', 'already plural: one cookie', 'of the commoner of two nouns'],
    ['taxis', 'taxis', 'already plural: one taxi', 'of a noun in i'],
    ['menus', 'menus', 'already plural: one menu', 'of a noun in u'],
    ['finals', 'finals', 'always plural: stays the same', 'of no noun, when the rest is another word'],
    ['civics', 'civics', 'not counted: stays the same', 'of no noun, and not counted, in -ics'],
    ['brambles', 'brambleses', 'add es after ch, sh, s, x, z', 'not when the rest is no word'],
  ])('%s → %s (%s): %s', (text, form, rule) => expect(plural(text)).toEqual({ form, rule }))
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
