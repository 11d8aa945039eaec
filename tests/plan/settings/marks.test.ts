import { describe, expect, it } from 'vitest'
import { adviceFor, planOf, problemsOf, toldAtMark, weekOf } from '../reading.js'

const marksOf = (...marks: string[]) =>
  weekOf(['reed'], `marks:\n${marks.map(mark => `  - {${mark}}\n`).join('')}`)

describe('a mark', () => {
  it('carries all that the teacher chose, and nothing that she did not', () => {
    const keys =
      'letters: EE, place: middle, line: Wavy, outline: rounded, color: "#06A", label: long e, tag: e, descenders: break'
    expect(planOf(marksOf(keys, 'pattern: Consonant Digraph')).marks).toEqual([
      {
        place: { file: 'week.yaml', line: 6, column: 5 },
        target: { kind: 'letters', letters: 'ee', place: 'middle' },
        line: 'wavy',
        outline: 'rounded',
        color: '#0066aa',
        label: 'long e',
        tag: 'e',
        descenders: 'break',
      },
      {
        place: { file: 'week.yaml', line: 7, column: 5 },
        target: { kind: 'pattern', pattern: 'consonant-digraph' },
      },
    ])
  })

  it('on digraphs can reach inside blends, or be told not to', () => {
    const reach = (answer: string) =>
      planOf(marksOf(`pattern: consonant-digraph, inside blends: ${answer}`)).marks[0]?.target
    const target = { kind: 'pattern', pattern: 'consonant-digraph' }
    expect(reach('yes')).toEqual({ ...target, insideBlends: true })
    expect(reach('No')).toEqual({ ...target, insideBlends: false })
  })

  it.each([
    ['"#00618A"', '#00618a'],
    ['"#fff"', '#ffffff'],
    ['teal', '#008080'],
    ['Dark Slate Blue', '#483d8b'],
    ['RebeccaPurple', '#663399'],
  ])('has the colour %s', (color, hex) => {
    expect(planOf(marksOf(`pattern: silent-e, colour: ${color}`)).marks[0]?.color).toBe(hex)
  })

  it.each([
    ['▸{line: wavy}', 'a mark without "pattern" or "letters"'],
    ['▸{pattern: silent-e, letters: ee}', 'a mark with "pattern" and "letters"'],
    ['{pattern: ▸silent-f}', 'unknown pattern "silent-f"'],
    ['{letters: ▸e3}', '"e3" is not letters of a word'],
    ['{letters: ▸a_b_c}', '"a_b_c" is not letters of a word'],
    ['{letters: ee, place: ▸start}', 'unknown place "start"'],
    ['{letters: ee, line: ▸wavey}', 'unknown line "wavey"'],
    ['{letters: ee, outline: ▸ovl}', 'unknown outline "ovl"'],
    ['{letters: ee, color: ▸"#12345"}', '"#12345" is no colour'],
    ['{letters: ee, color: ▸"#ggg"}', '"#ggg" is no colour'],
    ['{letters: ee, color: ▸rgb(1 2 3)}', '"rgb(1 2 3)" is no colour'],
    ['{letters: ee, color: ▸constructor}', '"constructor" is no colour'],
    ['{letters: ee, tag: ▸long}', 'the tag "long" is too long'],
    ['{letters: ee, descenders: ▸cut}', 'unknown value of "descenders" "cut"'],
    ['{pattern: consonant-digraph, inside blends: ▸maybe}', '"maybe" is neither yes nor no'],
    [
      '{pattern: silent-e, ▸inside blends: yes}',
      '"inside blends" goes with the pattern consonant-digraph alone',
    ],
    ['{letters: sh, ▸inside_blends: yes}', '"inside blends" goes with a pattern, not with letters'],
    [`{letters: ee, label: ▸${'x'.repeat(61)}}`, 'a label is 61 characters long'],
  ])('%s is refused', (mark, message) => {
    expect(toldAtMark(weekOf(['reed'], `marks:\n  - ${mark}\n`))).toEqual([`▸ ${message}`])
  })

  it('suggests the nearest colour', () => {
    expect(adviceFor(marksOf('letters: ee, color: maron'))[0]).toContain('Did you mean "maroon"?')
  })

  it('has a target of its own', () => {
    const text = marksOf('pattern: silent-e, line: wavy', 'letters: ee', 'pattern: Silent E, outline: box')
    expect(problemsOf(text)).toEqual([
      'week.yaml:8:5: error: "silent-e" is marked twice, on line 6 and on line 8',
    ])
    expect(problemsOf(marksOf('letters: ee', 'letters: ee, place: end'))).toEqual([])
  })
})

describe('the list of marks', () => {
  it('may be empty, as when every mark is switched off', () => {
    expect(planOf(weekOf(['reed'], 'marks:\n#  - pattern: silent-e\n')).marks).toEqual([])
  })

  it.each([
    ['marks: ▸silent-e', 'expected a list of marks, found "silent-e"'],
    ['marks: ▸{pattern: silent-e}', 'expected a list of marks, found a group of keys'],
    ['marks: [▸silent-e]', 'expected a mark, found "silent-e"'],
  ])('%s is refused', (more, message) => {
    expect(toldAtMark(weekOf(['reed'], more))).toEqual([`▸ ${message}`])
  })
})
