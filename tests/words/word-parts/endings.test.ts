import { describe, expect, test } from 'vitest'
import type { Finding } from '../../../src/words/word.js'
import { percent, report } from '../gold/gold.js'
import { findingsOf, rowsOf } from './word-parts.js'

const rows = [...rowsOf('endings.tsv'), ...rowsOf('endings-set-aside.tsv')].map(
  ([word = '', base = '', noEndings = '']) => {
    const found = findingsOf(word).filter(({ pattern }) => isPart(pattern))
    return {
      word,
      base,
      noEndings: noEndings.split(' '),
      found,
      told: found.map(({ why }) => why).join('; '),
    }
  },
)
const withEnding = rows.filter(({ base }) => base !== '-')
const without = rows.filter(({ base }) => base === '-')

function isPart(pattern: string): boolean {
  return pattern === 'suffix' || (pattern.startsWith('ending-') && pattern !== 'ending-blend')
}

/** -ly is a -y as well, and -ness a -s. */
function showsOneOf({ letters }: Finding, endings: readonly string[]): boolean {
  return endings.some(ending => letters.endsWith(ending) || (ending === 'y' && letters === 'ly'))
}

describe('words with an ending or a suffix', () => {
  test('are more than 150', () => expect(withEnding.length).toBeGreaterThan(150))

  test('show it after the right base, 98 of 100', () => {
    const wrong = withEnding.filter(({ base, told }) => !new RegExp(`added to ${base}\\b`).test(told))
    report(
      `endings found ${percent(withEnding.length - wrong.length, withEnding.length)}`,
      wrong.map(({ word, base, told }) => `${word}: ${base}; found ${told || 'none'}`),
    )
    expect(wrong.length / withEnding.length).toBeLessThanOrEqual(0.02)
  })
})

describe('words that only look as if they had an ending', () => {
  test('are more than 350', () => expect(without.length).toBeGreaterThan(350))

  test('show none, 99 of 100', () => {
    const wrong = without.filter(({ found, noEndings }) => found.some(each => showsOneOf(each, noEndings)))
    report(
      `look-alikes left alone ${percent(without.length - wrong.length, without.length)}`,
      wrong.map(({ word, told }) => `${word}: ${told}`),
    )
    expect(wrong.length / without.length).toBeLessThanOrEqual(0.01)
  })
})
