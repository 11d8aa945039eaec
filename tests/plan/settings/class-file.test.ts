import { describe, expect, it } from 'vitest'
import { filesInMemory, planOf, problemsOf } from '../reading.js'

const plan = 'class file: room-7.yaml\nwords: [reed, {word: Marsh, plural: none}]\nprint: [key]\n'
const classFile = (text: string) => filesInMemory({ 'room-7.yaml': text })

describe('the class file', () => {
  it('carries what the teacher decided about a word; the plan wins', () => {
    const files = classFile(
      'words:\n  - {word: marsh, sounds: m ar sh, plural: marshes, clue: wet}\n  - {word: bun, not: silent-e}\naccent: r-less\nprinter: {back shift: 1 mm right}\n',
    )
    const read = planOf(plan, files)
    expect(read.classFile).toBe('room-7.yaml')
    expect(read.words).toMatchObject([
      { text: 'reed', overrides: {} },
      { text: 'Marsh', clue: 'wet', place: { file: 'week.yaml', line: 2 } },
    ])
    expect(read.words[1]?.overrides).toEqual({ sounds: ['m', 'ar', 'sh'], noPlural: true })
    expect(read.accent?.rhotic).toBe(false)
    expect(read.printer?.backShift?.rightMm).toBe(1)
  })

  it('gives way to the plan’s accent', () => {
    expect(planOf(`${plan}accent: american\n`, classFile('accent: r-less')).accent?.rhotic).toBe(true)
  })

  it('may be empty', () => {
    expect(planOf(plan, classFile('# nothing yet\n')).words).toHaveLength(2)
    expect(planOf(plan, classFile('words:\n')).words).toHaveLength(2)
  })

  it.each([
    [
      'words:\n  - {word: marsh, sounds: m sh}\n',
      'room-7.yaml:2:27: error: the sounds "m sh" do not add up to "marsh", but to "msh"',
    ],
    ['wrds: []\n', 'room-7.yaml:1:1: error: unknown key "wrds" in a class file'],
    ['- marsh\n', 'room-7.yaml:1:1: error: the class file does not begin with a key'],
    ['words: [\n', 'room-7.yaml:1:8: error: a bracket opened here is never closed'],
  ])('%j is refused, at its own place', (text, problem) => {
    expect(problemsOf(plan, classFile(text))).toEqual([problem])
  })

  it('must be there', () => {
    expect(problemsOf(plan)).toEqual(['week.yaml:1:13: error: the class file "room-7.yaml" is not there'])
  })
})
