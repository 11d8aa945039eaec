import { describe, expect, it } from 'vitest'
import { adviceFor, problemsOf, weekOf } from '../reading.js'

describe('keys', () => {
  it.each([
    ['tittle: x', 'week.yaml:5:1: error: unknown key "tittle" in a plan', 'title'],
    ['Wrods: x', 'week.yaml:5:1: error: unknown key "Wrods" in a plan', 'words'],
    ['class-fle: x', 'week.yaml:5:1: error: unknown key "class-fle" in a plan', 'class file'],
    [
      'marks: [{pattern: silent-e, colr: red}]',
      'week.yaml:5:29: error: unknown key "colr" in a mark',
      'color',
    ],
    ['groups: [{name: Terns, wordz: [a]}]', 'week.yaml:5:24: error: unknown key "wordz" in a group', 'words'],
  ])('name the nearest known one: %s', (more, problem, nearest) => {
    const text = weekOf(['reed'], `${more}\n`)
    expect(problemsOf(text)).toEqual([problem])
    expect(adviceFor(text)[0]).toContain(`Did you mean "${nearest}"?`)
  })

  it('tell where a key belongs that is known elsewhere', () => {
    const text = weekOf(['reed'], 'copies: 3\n')
    expect(problemsOf(text)).toEqual(['week.yaml:5:1: error: unknown key "copies" in a plan'])
    expect(adviceFor(text)).toEqual(['"copies" is a key of an item under "print:".'])
  })

  it('suggest a layout’s own keys beside those of every item', () => {
    const text = 'words: [reed]\nprint:\n  - layout: bingo\n    bords: 3\n    copys: 2\n'
    expect(problemsOf(text)).toEqual([
      'week.yaml:4:5: error: unknown key "bords" in this item',
      'week.yaml:5:5: error: unknown key "copys" in this item',
    ])
    expect(adviceFor(text)[0]).toContain('Did you mean "boards"?')
    expect(adviceFor(text)[1]).toContain('Did you mean "copies"?')
  })

  it('refuse another layout’s option', () => {
    expect(problemsOf('words: [reed]\nprint: [{layout: key, boards: 3}]')).toEqual([
      'week.yaml:2:23: error: unknown key "boards" in this item',
    ])
  })

  it('stand once, however they are spelled', () => {
    expect(problemsOf('words: [reed]\nprint: [key]\nWORDS: [marsh]\n')).toEqual([
      'week.yaml:3:1: error: the key "WORDS" stands twice (first on line 1)',
    ])
  })

  it('need a value, and an unquoted colour is found in the note that it became', () => {
    const text = weekOf(['reed'], 'marks:\n  - pattern: silent-e\n    color: #00618a\n')
    expect(problemsOf(text)).toEqual(['week.yaml:7:5: error: "color" has no value'])
    expect(adviceFor(text)[0]).toContain('color: "#00618a"')
  })

  it('explain a comma between braces', () => {
    const text = weekOf(['{word: marsh, clue: wet, grassy land}'])
    expect(problemsOf(text)).toEqual(['week.yaml:2:30: error: unknown key "grassy land" in a word'])
    expect(adviceFor(text)[0]).toContain('put a text that holds a comma in quotes')
  })
})
