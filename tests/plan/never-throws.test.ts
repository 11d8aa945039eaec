import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { starterPlan } from '../../src/plan/starter-plan.js'
import { readWordListFile } from '../../src/plan/words/word-list.js'
import type { Outcome } from '../../src/problems.js'
import { filesInMemory, read } from './reading.js'
import { vocabulary } from './vocabulary.js'

/** An outcome is a value or an error, and every problem has its place and its words. */
function isSound(outcome: Outcome<unknown>): void {
  expect(outcome.ok).toBe(!outcome.problems.some(problem => problem.severity === 'error'))
  for (const { place, message, advice } of outcome.problems) {
    expect(place.line ?? 1).toBeGreaterThan(0)
    expect(place.column ?? 1).toBeGreaterThan(0)
    expect(message).not.toBe('')
    expect(advice).not.toBe('')
  }
}

const fragments = fc.constantFrom(
  ...[
    'words',
    'word',
    'print',
    'layout',
    'marks',
    'pattern',
    'groups',
    'name',
    'size',
    'for',
    'acuity',
    'sounds',
  ],
  ...[
    'reed',
    'bingo',
    'key',
    'Otters',
    'list.txt',
    'list.csv',
    '5x5',
    '3 mm',
    '#fff',
    '24 pt',
    'null',
    '',
    '0',
  ],
  ...[
    ': ',
    ':',
    '\n',
    '\n  ',
    '\n    ',
    '- ',
    '\n- ',
    '\n  - ',
    '[',
    ']',
    '{',
    '}',
    ', ',
    '"',
    "'",
    '|',
    '>',
    '\t',
  ],
  ...[
    '&a',
    '*a',
    '!!int ',
    '? ',
    '#',
    ' #',
    '---\n',
    '%',
    '@',
    '\\',
    '\r\n',
    '\u2028',
    '\0',
    '\uFEFF',
    '\uD800',
    '🐸',
  ],
)
const yamlish = fc.array(fragments, { maxLength: 60 }).map(parts => parts.join(''))

describe('whatever stands in a file', () => {
  it('a plan is read or refused with problems', () => {
    fc.assert(
      fc.property(yamlish, text => isSound(read(text))),
      { numRuns: 1500 },
    )
  })

  it('a plan with any text in it is read or refused with problems', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), text => isSound(read(text))),
      { numRuns: 500 },
    )
  })

  it('a good plan with something thrown in is read or refused with problems', () => {
    const place = fc.nat({ max: starterPlan.length })
    fc.assert(
      fc.property(place, place, yamlish, (at, to, text) => {
        const [from, until] = [Math.min(at, to), Math.min(Math.max(at, to), at + 40)]
        isSound(read(starterPlan.slice(0, from) + text + starterPlan.slice(until)))
      }),
      { numRuns: 300 },
    )
  })

  it('a word list is read or refused with problems', () => {
    const cells = fc.constantFrom(
      'word',
      'clue',
      'reed',
      'a b',
      ',',
      ';',
      '"',
      '\n',
      '\r',
      '\r\n',
      '\t',
      '#',
      '',
      '\uFEFF',
    )
    const text = fc.array(cells, { maxLength: 40 }).map(parts => parts.join(''))
    fc.assert(
      fc.property(text, fc.constantFrom('a.txt', 'a.csv'), (contents, path) => {
        const files = filesInMemory({ [path]: contents })
        isSound(readWordListFile({ path, files, patterns: vocabulary.patterns }))
      }),
      { numRuns: 1000 },
    )
  })
})
