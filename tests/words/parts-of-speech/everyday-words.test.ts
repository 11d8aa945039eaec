/** How the parts of speech of everyday words do; the heads of the tables tell the figures at first sight. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { analysed, percent, report } from '../gold/gold.js'

interface Tagged {
  readonly text: string
  readonly first: readonly string[]
  readonly contained: readonly string[]
  readonly found: readonly string[]
}

function read(table: string): readonly Tagged[] {
  return readFileSync(new URL(table, import.meta.url), 'utf8')
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(line => {
      const [text = '', first = '', others = ''] = line.split('\t')
      const either = first.includes('|')
      return {
        text,
        first: first.split('|'),
        contained: [...(either ? [] : [first]), ...(others === '-' ? [] : others.split(', '))],
        found: analysed(text).partsOfSpeech,
      }
    })
}

describe.each([
  { table: 'everyday-words.tsv', words: 873, first: 0.99, contained: 0.995 },
  { table: 'set-aside-words.tsv', words: 600, first: 0.98, contained: 0.995 },
])('$table', floor => {
  const words = read(floor.table)

  it('holds each word once', () => {
    expect(new Set(words.map(({ text }) => text)).size).toBe(floor.words)
  })

  it('begins with the part of speech that a primary teacher names', () => {
    const wrong = words.filter(({ first, found }) => !first.includes(found[0] ?? ''))
    report(
      `${floor.table}: first part of speech ${percent(words.length - wrong.length, words.length)}`,
      wrong.map(
        ({ text, first, found }) => `${text}: by hand ${first.join(' or ')}; found ${found.join(', ')}`,
      ),
    )
    expect(1 - wrong.length / words.length).toBeGreaterThanOrEqual(floor.first)
  })

  it('holds the others that children meet', () => {
    const asked = words.flatMap(({ contained }) => contained).length
    const missing = words.flatMap(({ text, contained, found }) =>
      contained
        .filter(part => !found.includes(part))
        .map(part => `${text}: no ${part}; found ${found.join(', ')}`),
    )
    report(`${floor.table}: contained ${percent(asked - missing.length, asked)}`, missing)
    expect(1 - missing.length / asked).toBeGreaterThanOrEqual(floor.contained)
  })
})
