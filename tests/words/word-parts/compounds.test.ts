import { describe, expect, test } from 'vitest'
import { percent, report } from '../gold/gold.js'
import { findingsOf, rowsOf } from './word-parts.js'

const rows = [...rowsOf('compounds.tsv'), ...rowsOf('compounds-set-aside.tsv')].map(
  ([word = '', halves = '']) => {
    const found = findingsOf(word).find(({ pattern }) => pattern === 'compound')
    return { word, halves, why: found?.why }
  },
)
const compounds = rows.filter(({ halves }) => halves !== '-')
const others = rows.filter(({ halves }) => halves === '-')

describe('everyday compounds', () => {
  test('are more than 350', () => expect(compounds.length).toBeGreaterThan(350))

  test('are found with their halves, 99 of 100', () => {
    const wrong = compounds.filter(({ halves, why }) => why?.includes(halves.replace('+', ' and ')) !== true)
    report(
      `compounds found ${percent(compounds.length - wrong.length, compounds.length)}`,
      wrong.map(({ halves, why }) => `${halves}: ${why ?? 'none found'}`),
    )
    expect(wrong.length / compounds.length).toBeLessThanOrEqual(0.01)
  })
})

describe('words that only look like compounds', () => {
  test('are more than 200', () => expect(others.length).toBeGreaterThan(200))

  test('are not taken for them, 99 of 100', () => {
    const wrong = others.filter(({ why }) => why !== undefined)
    report(
      `look-alikes left alone ${percent(others.length - wrong.length, others.length)}`,
      wrong.map(({ word, why }) => `${word}: ${why}`),
    )
    expect(wrong.length / others.length).toBeLessThanOrEqual(0.01)
  })
})
