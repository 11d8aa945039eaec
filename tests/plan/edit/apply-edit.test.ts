/** Changes of a plan's text: what is meant is written as she would write it, and every other byte stays. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../src/plan/edit/apply-edit.js'
import { isKeys, isList, isSame, meant, planData } from '../../../src/plan/edit/plan-data.js'
import type { PlanData, PlanEdit } from '../../../src/plan/edit/plan-edit.js'
import { rebased } from '../../../src/plan/edit/rebase.js'

const plan = `# Our week at the marsh  -- keep!
title:   "Along the marsh"   # hers
class: Room 7, Heron Lane School

words:                # ten of them
  # the easy ones
  - reed              # tall
  - word: marsh       # two sounds?
    clue: wet, grassy land
    # sounds: m ar sh
  - 'heron'
  - {word: knot, clue: "a tie: in a rope"}   # in braces

  # the hard ones
  - thrush
marks: [{pattern: consonant-digraph}, {letters: ea, line: wavy}]  # two
print:
  - layout: word-cards
    across: 3         # fits the trays
    down: 4
  - layout: bingo # for Friday
    grid: 3x3
    # win at: 9
# groups:
#   - name: Otters
`

const written = (text: string, edit: PlanEdit): string => {
  const outcome = applyEdit(text, edit)
  if (!outcome.ok) throw new Error(outcome.problems[0]?.message)
  return outcome.value
}

/** Lines that are new, and those that are gone. */
function difference(before: string, after: string): readonly string[] {
  const [old, now] = [before.split('\n'), after.split('\n')]
  return [
    ...old.filter(line => !now.includes(line)).map(line => `- ${line}`),
    ...now.filter(line => !old.includes(line)).map(line => `+ ${line}`),
  ]
}

describe('a change of a plan', () => {
  it.each<[string, PlanEdit, readonly string[]]>([
    [
      'another text keeps its quotes and the column of the note behind it',
      { kind: 'set', path: ['title'], value: 'Marsh' },
      ['- title:   "Along the marsh"   # hers', '+ title:   "Marsh"             # hers'],
    ],
    [
      'a key beside a word alone is written below it',
      { kind: 'set', path: ['words', 0, 'clue'], value: 'tall grass', textAs: 'word' },
      ['-   - reed              # tall', '+   - word: reed              # tall', '+     clue: tall grass'],
    ],
    [
      'a key beside others stands under the last of them',
      { kind: 'set', path: ['words', 1, 'plural'], value: 'marshes' },
      ['+     plural: marshes'],
    ],
    [
      'a key in braces stays in them',
      { kind: 'set', path: ['words', 3, 'sounds'], value: '(k) n o t' },
      [
        '-   - {word: knot, clue: "a tie: in a rope"}   # in braces',
        '+   - {word: knot, clue: "a tie: in a rope", sounds: (k) n o t}   # in braces',
      ],
    ],
    [
      'a word goes and its notes stay',
      { kind: 'remove', path: ['words', 1] },
      [
        '-   - word: marsh       # two sounds?',
        '-     clue: wet, grassy land',
        '-     # sounds: m ar sh',
        '+   # two sounds?',
        '+   # sounds: m ar sh',
      ],
    ],
    [
      'words are put in',
      { kind: 'insert', path: ['words'], at: 2, values: ['pond', 'no'] },
      ['+   - pond', '+   - no'],
    ],
    [
      'what YAML would take for something else is put in quotes',
      { kind: 'set', path: ['print', 1, 'name'], value: 'Friday: #1' },
      ['+     name: "Friday: #1"'],
    ],
    [
      'a list that is not there is begun where it usually stands',
      { kind: 'insert', path: ['groups'], at: 0, values: [{ name: 'Otters', words: ['mud', 'pond'] }] },
      ['+ groups:', '+   - name: Otters', '+     words: [mud, pond]'],
    ],
    [
      'a mark in brackets moves within them',
      { kind: 'move', path: ['marks'], from: 1, to: 0 },
      [
        '- marks: [{pattern: consonant-digraph}, {letters: ea, line: wavy}]  # two',
        '+ marks: [{letters: ea, line: wavy}, {pattern: consonant-digraph}]  # two',
      ],
    ],
    ['a key goes', { kind: 'remove', path: ['print', 0, 'down'] }, ['-     down: 4']],
    [
      'the first key of an entry goes and the next one moves up',
      { kind: 'remove', path: ['print', 1, 'layout'] },
      ['-   - layout: bingo # for Friday', '+   -  # for Friday'],
    ],
  ])('%s', (_, edit, lines) => {
    expect(difference(plan, written(plan, edit))).toEqual(lines)
  })

  it('moves an entry with the notes in it', () => {
    const lines = written(plan, { kind: 'move', path: ['words'], from: 1, to: 0 }).split('\n')
    expect(lines.indexOf('    # sounds: m ar sh')).toBeLessThan(lines.indexOf('  - reed              # tall'))
  })

  it('keeps the line breaks and the mark at the beginning of a file from Windows', () => {
    const windows = `\uFEFF${plan.replaceAll('\n', '\r\n')}`
    const after = written(windows, { kind: 'insert', path: ['words'], at: 5, values: ['pond'] })
    expect(after).toBe(windows.replace('  - thrush\r\n', '  - thrush\r\n  - pond\r\n'))
  })

  it('ends an unfinished last line before it begins another', () => {
    expect(written('words:\n  - reed', { kind: 'insert', path: ['words'], at: 1, values: ['pond'] })).toBe(
      'words:\n  - reed\n  - pond',
    )
  })

  it('makes a list of a file’s name where words come beside it', () => {
    expect(
      written('words: week.txt  # from the office\n', {
        kind: 'insert',
        path: ['words'],
        at: 1,
        values: ['pond'],
      }),
    ).toBe('words:  # from the office\n  - week.txt\n  - pond\n')
  })

  it('leaves what is shared by an anchor as it is, and says so', () => {
    const outcome = applyEdit('a: &x reed\nwords: [*x, pond]\n', {
      kind: 'set',
      path: ['words', 0],
      value: 'mud',
    })
    expect(outcome.ok).toBe(false)
  })
})

describe('fifty random changes', () => {
  const texts = [
    'pond',
    'a: b',
    '#1',
    'no',
    "it's",
    '"x"',
    '- y',
    'é',
    '[z',
    'two  blanks',
    '3x3',
    ' end ',
    '*star',
    '{',
    'a, b',
  ]
  const step = fc.record({
    pick: fc.nat(1_000_000),
    text: fc.constantFrom(...texts),
    other: fc.nat(1_000_000),
  })

  /** A change that can be made in what stands there now. */
  function changeOf(
    data: PlanData,
    { pick, text, other }: { readonly pick: number; readonly text: string; readonly other: number },
  ): PlanEdit {
    const lists = ['words', 'marks', 'print']
    const path = [lists[pick % 3]!]
    const list = isKeys(data) ? (data[path[0]!] ?? []) : []
    const items = isList(list) ? list : []
    const index = items.length === 0 ? 0 : other % items.length
    switch (pick % 7) {
      case 0:
      case 1:
        return {
          kind: 'insert',
          path,
          at: index,
          values: [path[0] === 'words' ? text : { layout: text, name: 'x' }],
        }
      case 2:
        return { kind: 'set', path: ['title'], value: text }
      case 3:
        return items.length > 1
          ? { kind: 'remove', path: [...path, index] }
          : { kind: 'set', path: ['seed'], value: '4' }
      case 4:
        return items.length > 1
          ? { kind: 'move', path, from: index, to: (index + 1) % items.length }
          : { kind: 'set', path: ['font'], value: 'andika' }
      case 5: {
        const keys = items[index]
        const last = isKeys(keys) ? Object.keys(keys).at(-1) : undefined
        return last !== undefined && isKeys(keys) && Object.keys(keys).length > 1
          ? { kind: 'remove', path: [...path, index, last] }
          : { kind: 'set', path: ['class'], value: text }
      }
      default:
        return items.length === 0
          ? { kind: 'set', path: ['class'], value: text }
          : { kind: 'set', path: [...path, index, 'clue'], value: text, textAs: 'word' }
    }
  }

  it.each(['\n', '\r\n'])(
    'lose no note, touch no line but their own, and mean what was meant (%j)',
    lineBreak => {
      const notes = [...plan.matchAll(/(?<=^|\s)#.*/gm)].map(([note]) => note)
      fc.assert(
        fc.property(fc.array(step, { minLength: 50, maxLength: 50 }), steps => {
          let text = plan.replaceAll('\n', lineBreak)
          for (const each of steps) {
            const data = planData(text)!
            const edit = changeOf(data, each)
            const outcome = applyEdit(text, edit)
            expect(outcome.ok, `${JSON.stringify(edit)}\n${text}`).toBe(true)
            if (!outcome.ok) return
            expect(isSame(planData(outcome.value), meant(data, edit))).toBe(true)
            text = outcome.value
          }
          for (const note of notes) expect(text).toContain(note)
          expect(text.split(lineBreak).filter(line => /[\r\n]/.test(line))).toEqual([])
        }),
        { numRuns: 4, seed: 7 },
      )
    },
  )
})

describe('a change made from an older state', () => {
  const made: PlanData = { words: ['reed', { word: 'marsh', clue: 'wet' }, 'heron'] }
  it('finds its word again where others came before it', () => {
    const fresh: PlanData = { words: ['pond', 'reed', { word: 'marsh', clue: 'wet' }, 'heron'] }
    const edit: PlanEdit = { kind: 'set', path: ['words', 1, 'clue'], value: 'wet land' }
    expect(rebased(edit, made, fresh)).toEqual({ ...edit, path: ['words', 2, 'clue'] })
  })
  it('is made beside another change of the same word', () => {
    const fresh: PlanData = { words: ['reed', { word: 'marsh', clue: 'wet', plural: 'marshes' }, 'heron'] }
    const edit: PlanEdit = { kind: 'set', path: ['words', 1, 'clue'], value: 'wet land' }
    expect(rebased(edit, made, fresh)).toEqual(edit)
  })
  it('is not made over another change of the same thing', () => {
    const fresh: PlanData = { words: ['reed', { word: 'marsh', clue: 'soft ground' }, 'heron'] }
    expect(rebased({ kind: 'set', path: ['words', 1, 'clue'], value: 'x' }, made, fresh)).toBeUndefined()
  })
  it('puts a word behind the one it was to follow, or last where that is gone', () => {
    const edit: PlanEdit = { kind: 'insert', path: ['words'], at: 1, values: ['mud'] }
    expect(rebased(edit, made, { words: ['pond', 'reed', 'heron'] })).toEqual({ ...edit, at: 2 })
    expect(rebased(edit, made, { words: ['pond', 'heron'] })).toEqual({ ...edit, at: 2 })
  })
  it('puts what was put last behind all that was put there meanwhile, into an empty list too', () => {
    const last: PlanEdit = { kind: 'insert', path: ['words'], at: 3, values: ['mud'] }
    const fresh = ['reed', { word: 'marsh', clue: 'wet' }, 'heron', 'pond', 'wren']
    expect(rebased(last, made, { words: fresh })).toEqual({ ...last, at: 5 })
    const first: PlanEdit = { ...last, at: 0 }
    expect(rebased(first, { words: [] }, { words: ['pond', 'wren'] })).toEqual({ ...first, at: 2 })
    expect(rebased(first, made, { words: fresh })).toEqual(first)
  })
  it('moves an entry to where its neighbour stands now', () => {
    const edit: PlanEdit = { kind: 'move', path: ['words'], from: 0, to: 2 }
    expect(rebased(edit, made, { words: ['pond', 'reed', { word: 'marsh', clue: 'wet' }, 'heron'] })).toEqual(
      {
        kind: 'move',
        path: ['words'],
        from: 1,
        to: 3,
      },
    )
  })
})

it.each([
  ['{}\n', '{ words: [pond] }\n'],
  ['words: [\n]\n', 'words: [pond]\n'],
  ['words: [\n  # none yet\n]\n', 'words: [\n  # none yet\n  pond\n]\n'],
])('fills brackets and braces that hold nothing yet, and their notes stay: %j', (before, after) => {
  expect(written(before, { kind: 'insert', path: ['words'], at: 0, values: ['pond'] })).toBe(after)
})
