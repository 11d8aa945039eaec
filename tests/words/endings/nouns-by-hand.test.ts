/** Plurals of nouns tagged by hand; the heads of the tables tell the figures at first sight. */
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { analysed, percent, report } from '../gold/gold.js'

test.each([
  { table: 'nouns-by-hand.tsv', nouns: 271, floor: 0.99 },
  { table: 'set-aside-nouns.tsv', nouns: 120, floor: 0.965 },
  { table: 'words-by-lot.tsv', nouns: 500, floor: 0.995 },
])('$table: plurals, or none', ({ table, nouns, floor }) => {
  const rows = readFileSync(new URL(table, import.meta.url), 'utf8')
    .split('\n')
    .filter(line => line !== '' && !line.startsWith('#'))
    .map(line => {
      const [text = '', plurals = ''] = line.split('\t')
      return { text, plurals: plurals.split('|'), found: analysed(text).plural?.form ?? 'none' }
    })
  const wrong = rows.filter(({ plurals, found }) => !plurals.includes(found))
  report(
    `${table}: plurals ${percent(rows.length - wrong.length, rows.length)}`,
    wrong.map(({ text, plurals, found }) => `${text}: by hand ${plurals.join(' or ')}; found ${found}`),
  )
  expect(rows.length).toBe(nouns)
  expect(1 - wrong.length / rows.length).toBeGreaterThanOrEqual(floor)
})
