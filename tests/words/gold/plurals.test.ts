import { describe, expect, it } from 'vitest'
import type { Plural } from '../../../src/words/word.js'
import { analysed, percent, report, rowsOf } from './gold.js'

/** The kind of rule of the table, as our wording of the rule shows it. */
const kinds: Readonly<Record<string, RegExp>> = {
  s: /add s\b/,
  es: /^add es\b|double/,
  'y to i': /y to i/,
  'f to v': /to v/,
  'es after o': /es.*\bo\b|\bo\b.*es/,
  'double z, es': /double/,
  'two forms': /two forms|add es/,
  changes: /change|irregular ending/,
  same: /same/,
  other: /./,
}

function forms(plural: Plural | null): readonly string[] {
  return plural === null ? [] : [plural.form, ...(plural.alternatives ?? [])]
}

const rows = rowsOf('plurals.tsv').map(([word = '', plurals = '', kind = '']) => {
  const expected = plurals === '-' ? [] : plurals.split(', ')
  return { word, expected, kind, plural: analysed(word).plural }
})

describe('plurals, by hand', () => {
  it('are at least one hundred and fifty', () => {
    expect(rows.length).toBeGreaterThanOrEqual(150)
  })

  it('have the first form that the table gives, or none where it gives none', () => {
    const wrong = rows.filter(({ expected, plural }) => plural?.form !== expected[0])
    const right = rows.length - wrong.length
    report(
      `plurals, first form ${percent(right, rows.length)}`,
      wrong.map(
        ({ word, expected, plural }) =>
          `${word}: by hand ${expected.join(', ') || 'none'}; found ${forms(plural).join(', ') || 'none'}`,
      ),
    )
    expect(right / rows.length).toBeGreaterThanOrEqual(0.99)
  })

  it('hold every form that the table gives and no other', () => {
    const sorted = (words: readonly string[]) => [...words].sort().join(', ')
    const wrong = rows.filter(({ expected, plural }) => sorted(forms(plural)) !== sorted(expected))
    const right = rows.length - wrong.length
    report(
      `plurals, all forms ${percent(right, rows.length)}`,
      wrong.map(
        ({ word, expected, plural }) =>
          `${word}: by hand ${sorted(expected) || 'none'}; found ${sorted(forms(plural)) || 'none'}`,
      ),
    )
    expect(right / rows.length).toBeGreaterThanOrEqual(0.99)
  })

  it('are explained by the right kind of rule', () => {
    const ruled = rows.filter(({ plural, expected }) => plural !== null && plural.form === expected[0])
    const wrong = ruled.filter(({ plural, kind }) => !kinds[kind]!.test(plural!.rule))
    const right = ruled.length - wrong.length
    report(
      `kinds of rule ${percent(right, ruled.length)}`,
      wrong.map(({ word, kind, plural }) => `${word}: by hand "${kind}"; found "${plural!.rule}"`),
    )
    expect(right / ruled.length).toBeGreaterThanOrEqual(0.99)
  })
})
