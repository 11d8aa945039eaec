import { describe, expect, it } from 'vitest'
import { analysed, percent, report, rowsOf } from './gold.js'

const rows = rowsOf('parts-of-speech.tsv').map(([word = '', first = '', allowed = '']) => {
  const tool: readonly string[] = analysed(word).partsOfSpeech
  return { word, first, allowed: allowed.split(', '), tool }
})

describe('parts of speech of familiar words, by hand', () => {
  it('are at least three hundred', () => {
    expect(rows.length).toBeGreaterThanOrEqual(300)
  })

  it('begin with the commonest', () => {
    const wrong = rows.filter(({ first, tool }) => tool[0] !== first)
    const right = rows.length - wrong.length
    report(
      `first part of speech ${percent(right, rows.length)}`,
      wrong.map(({ word, first, tool }) => `${word}: by hand ${first}; found ${tool.join(', ')}`),
    )
    expect(right / rows.length).toBeGreaterThanOrEqual(0.99)
  })

  it('hold the commonest', () => {
    const wrong = rows.filter(({ first, tool }) => !tool.includes(first))
    const right = rows.length - wrong.length
    report(
      `first part of speech contained ${percent(right, rows.length)}`,
      wrong.map(({ word, first, tool }) => `${word}: by hand ${first}; found ${tool.join(', ')}`),
    )
    expect(right / rows.length).toBeGreaterThanOrEqual(0.99)
  })

  it('hold few that a primary dictionary would not', () => {
    const found = rows.reduce((sum, { tool }) => sum + tool.length, 0)
    const strange = rows.flatMap(({ word, allowed, tool }) =>
      tool.filter(part => !allowed.includes(part)).map(part => `${word}: ${part}`),
    )
    report(`parts of speech that the table allows ${percent(found - strange.length, found)}`, strange)
    expect((found - strange.length) / found).toBeGreaterThanOrEqual(0.95)
  })
})
