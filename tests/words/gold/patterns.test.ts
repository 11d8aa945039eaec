import { describe, expect, it } from 'vitest'
import { analysed, percent, report, rowsOf } from './gold.js'

/** `long-vowel a middle 1` for each finding. */
const rows = rowsOf('patterns.tsv').map(([word = '', cell = '']) => {
  const expected = new Set(cell === '-' ? [] : cell.split('; '))
  const tool = new Map<string, string>(
    analysed(word).patterns.map(
      ({ pattern, letters, place, start, why }) => [`${pattern} ${letters} ${place} ${start}`, why] as const,
    ),
  )
  return {
    word,
    expected,
    tool,
    missing: [...expected].filter(finding => !tool.has(finding)),
    strange: [...tool.keys()].filter(finding => !expected.has(finding)),
  }
})

const foundRight = rows.reduce((sum, { expected, missing }) => sum + expected.size - missing.length, 0)

describe('patterns of familiar words, by hand', () => {
  it('are of at least two hundred and fifty words', () => {
    expect(rows.length).toBeGreaterThanOrEqual(250)
  })

  it('are found', () => {
    const expected = rows.reduce((sum, row) => sum + row.expected.size, 0)
    report(
      `patterns found of those expected ${percent(foundRight, expected)}`,
      rows
        .filter(({ missing }) => missing.length > 0)
        .map(({ word, missing }) => `${word}: ${missing.join('; ')}`),
    )
    expect(foundRight / expected).toBeGreaterThanOrEqual(0.995)
  })

  it('are all that is found', () => {
    const found = rows.reduce((sum, row) => sum + row.tool.size, 0)
    report(
      `patterns expected of those found ${percent(foundRight, found)}`,
      rows
        .filter(({ strange }) => strange.length > 0)
        .map(
          ({ word, strange, tool }) =>
            `${word}: ${strange.map(finding => `${finding} (${tool.get(finding)})`).join('; ')}`,
        ),
    )
    expect(foundRight / found).toBeGreaterThanOrEqual(0.995)
  })

  it('are all right in most words', () => {
    const right = rows.filter(({ missing, strange }) => missing.length + strange.length === 0).length
    report(`words whose patterns are all as expected ${percent(right, rows.length)}`, [])
    expect(right / rows.length).toBeGreaterThanOrEqual(0.99)
  })
})
