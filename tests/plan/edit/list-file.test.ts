/** Changes of a list beside the plan: what is meant is written as she would write it, and every other byte stays. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyListEdit, listFileData, plainWords } from '../../../src/plan/edit/list-file.js'
import { isSame, meant } from '../../../src/plan/edit/plan-data.js'
import type { PlanEdit } from '../../../src/plan/edit/plan-edit.js'

const plain = '# Our week\nreed\n  marsh   # wet\n\nheron\n'
const sheet = 'Our list\nWord;Meaning;Level\n"reed";tall grass;3\nmarsh;"wet; grassy";\nheron'

const written = (name: string, text: string, edit: PlanEdit): string => {
  const outcome = applyListEdit({ name, text }, edit)
  return outcome.ok ? outcome.value : (outcome.problems[0]?.message ?? '')
}
const set = (index: number, value: string, key?: string): PlanEdit => ({
  kind: 'set',
  path: key === undefined ? ['words', index] : ['words', index, key],
  value,
  textAs: 'word',
})
const insert = (at: number, ...values: readonly string[]): PlanEdit => ({
  kind: 'insert',
  path: ['words'],
  at,
  values,
})

describe('a list with a word a line', () => {
  it.each<[string, PlanEdit, string]>([
    ['changes a word', set(1, 'mud'), plain.replace('marsh', 'mud')],
    [
      'takes one out, its note stays',
      { kind: 'remove', path: ['words', 1] },
      '# Our week\nreed\n# wet\n\nheron\n',
    ],
    ['takes words in', insert(1, 'pond', 'wren'), plain.replace('reed\n', 'reed\npond\nwren\n')],
    ['takes one in at the end', insert(3, 'pond'), `${plain}pond\n`],
    [
      'moves one with its note',
      { kind: 'move', path: ['words'], from: 1, to: 2 },
      '# Our week\nreed\n\nheron\n  marsh   # wet\n',
    ],
    ['holds no clue, and says so', set(0, 'tall', 'clue'), 'week.txt holds words alone, one a line'],
  ])('%s', (_, edit, text) => {
    expect(written('week.txt', plain, edit)).toBe(text)
  })
  it('keeps its mark, its line ends and an end without a break', () => {
    expect(written('week.txt', '\uFEFFreed\r\nmarsh', insert(2, 'pond'))).toBe('\uFEFFreed\r\nmarsh\r\npond')
  })
})

describe('a spreadsheet’s file', () => {
  it.each<[string, PlanEdit, string]>([
    ['changes a word, in quotes if it was', set(0, 'rush', 'word'), sheet.replace('reed', 'rush')],
    [
      'changes a clue under her own name for it',
      set(1, 'wet; low', 'clue'),
      sheet.replace('wet; grassy', 'wet; low'),
    ],
    ['fills up a short row', set(2, 'a bird', 'clue'), `${sheet};a bird`],
    [
      'takes a column in where it has none',
      set(0, 'reeds', 'plural'),
      sheet.replace('Level', 'Level;plural').replace('grass;3', 'grass;3;reeds'),
    ],
    ['empties a cell', { kind: 'remove', path: ['words', 0, 'clue'] }, sheet.replace('tall grass', '')],
    ['takes a row out', { kind: 'remove', path: ['words', 1] }, sheet.replace('marsh;"wet; grassy";\n', '')],
    ['takes rows in', insert(1, 'pond'), sheet.replace('3\n', '3\npond;;\n')],
    [
      'moves a row',
      { kind: 'move', path: ['words'], from: 2, to: 0 },
      'Our list\nWord;Meaning;Level\nheron\n"reed";tall grass;3\nmarsh;"wet; grassy";\n',
    ],
  ])('%s', (_, edit, text) => {
    expect(written('week.csv', sheet, edit)).toBe(text)
  })
})

const words = fc.stringMatching(/^[a-z]{1,8}$/)
const cells = fc.oneof(words, fc.constantFrom('wet, grassy', 'a 6" reed', 'two\nlines', '; x'))

it.each([
  ['week.txt', plain],
  ['week.csv', sheet],
])(
  'whatever is changed in %s, fifty times over, means what was meant, or is refused and nothing changed',
  (name, begun) => {
    const index = fc.nat(6)
    const edits = fc.oneof(
      fc.record({
        kind: fc.constant('set' as const),
        path: fc.tuple(fc.constant('words'), index),
        value: words,
      }),
      fc.record({
        kind: fc.constant('set' as const),
        path: fc.tuple(fc.constant('words'), index, fc.constantFrom('clue', 'plural', 'sentence')),
        value: cells,
        textAs: fc.constant('word'),
      }),
      fc.record({ kind: fc.constant('remove' as const), path: fc.tuple(fc.constant('words'), index) }),
      fc.record({
        kind: fc.constant('insert' as const),
        path: fc.constant(['words']),
        at: index,
        values: fc.array(words, { minLength: 1, maxLength: 3 }),
      }),
      fc.record({ kind: fc.constant('move' as const), path: fc.constant(['words']), from: index, to: index }),
    )
    fc.assert(
      fc.property(fc.array(edits, { minLength: 50, maxLength: 50 }), list => {
        let text = begun
        for (const edit of list) {
          const before = listFileData({ name, text })!
          const outcome = applyListEdit({ name, text }, edit)
          if (!outcome.ok) continue
          text = outcome.value
          expect(isSame(listFileData({ name, text }), plainWords(meant(before, edit)!))).toBe(true)
        }
        expect(text).toContain(name === 'week.txt' ? '# Our week' : 'Our list')
      }),
      { numRuns: 4 },
    )
  },
)
