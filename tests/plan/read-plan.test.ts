import { describe, expect, it } from 'vitest'
import { readPlan } from '../../src/plan/read-plan.js'
import { filesInMemory, planOf, problemsOf, weekOf } from './reading.js'
import { vocabulary } from './vocabulary.js'

describe('a plan', () => {
  it('fills in what the teacher left out', () => {
    expect(planOf('words: [reed]\nprint: [word-cards]')).toEqual({
      file: 'week.yaml',
      stem: 'week',
      title: 'Week',
      className: '',
      seed: 1,
      font: 'andika',
      accent: { rhotic: true, cotCaught: 'apart', wh: 'w' },
      countSounds: 'as taught',
      words: [{ text: 'reed', place: { file: 'week.yaml', line: 1, column: 9 }, overrides: {} }],
      marks: [],
      groups: [],
      print: [
        {
          place: { file: 'week.yaml', line: 2, column: 9 },
          layout: 'word-cards',
          name: 'word-cards',
          paper: { name: 'letter', widthMm: 215.9, heightMm: 279.4 },
          division: { kind: 'layout' },
          gapMm: 0,
          copies: 1,
          order: 'rows',
          back: 'none',
          flip: 'long edge',
          cut: 'lines',
          key: 'cover',
          cover: true,
          options: {},
        },
      ],
    })
  })

  it('reads its head', () => {
    const plan = planOf(weekOf(['reed'], 'title: Along the marsh\nclass: Room 7\nseed: 12\nfont: Lexend\n'))
    expect(plan).toMatchObject({ title: 'Along the marsh', className: 'Room 7', seed: 12, font: 'lexend' })
  })

  it('keeps YAML’s own words as words', () => {
    const words = ['no', 'on', 'yes', 'null', 'true', 'off', 'y', 'n', 'NaN', 'inf']
    expect(planOf(weekOf(words)).words.map(word => word.text)).toEqual(words)
  })

  it('takes keys in any spelling', () => {
    const plan = planOf('TITLE: x\nWords:\n  - WORD: marsh\n    Part_Of-Speech: noun\nprint: [Word_Cards]')
    expect(plan.words[0]?.overrides.partsOfSpeech).toEqual(['noun'])
    expect(plan.print[0]?.layout).toBe('word-cards')
  })

  it('reads a file with a byte-order mark and Windows line ends, columns unmoved', () => {
    const text = '\uFEFFwords:\r\n  - reed\r\n  - r2\r\nprint: [key]\r\n'
    expect(problemsOf(text)).toEqual(['week.yaml:3:5: error: "r2" has a digit in it'])
  })

  it('uses its paper for items that name none', () => {
    const plan = planOf('paper: A4\nwords: [reed]\nprint: [key, {layout: key, paper: letter}]')
    expect(plan.print.map(item => item.paper.name)).toEqual(['a4', 'letter'])
  })

  it('lets anchors and aliases stand for what they name', () => {
    const plan = planOf('words: &all [reed, marsh]\nprint: [key]\ngroups: [{name: Otters, words: *all}]')
    expect(plan.groups[0]?.words.map(word => word.text)).toEqual(['reed', 'marsh'])
  })

  it.each([
    ['weeks/along-the-marsh.yaml', 'along-the-marsh', 'Along the marsh'],
    ['harbour.week.yml', 'harbour.week', 'Harbour.week'],
    ['..yaml', 'plan', 'Plan'],
    ['...', 'plan', 'Plan'],
    ['.yaml', 'yaml', 'Yaml'],
  ])(
    'calls its output folder after the file: %s → %s, with a title where none is given',
    (file, stem, title) => {
      const text = weekOf(['reed'])
      const outcome = readPlan({ file, text, vocabulary, files: filesInMemory({}) })
      expect(outcome).toMatchObject({ ok: true, value: { stem, title } })
    },
  )
})

describe('a plan that cannot be one', () => {
  it.each([
    ['', 'week.yaml:1:1: error: the plan is empty'],
    ['# only a note\n\n', 'week.yaml:1:1: error: the plan is empty'],
    ['\uFEFF', 'week.yaml:1:1: error: the plan is empty'],
    ['- reed\n- marsh', 'week.yaml:1:1: error: expected keys with their values, found a list'],
    ['reed marsh', 'week.yaml:1:1: error: expected keys with their values, found "reed marsh"'],
    ['print: [key]', 'week.yaml:1:1: error: the plan has no "words"'],
    ['# note\nwords: [reed]', 'week.yaml:2:1: error: the plan has no "print"'],
    ['words:\nprint: [key]', 'week.yaml:1:1: error: "words" has no value'],
    ['words: []\nprint: [key]', 'week.yaml:1:8: error: the plan has no words'],
    ['words: [reed]\nprint:', 'week.yaml:2:1: error: "print" has no value'],
    ['words: [reed]\nprint: []', 'week.yaml:2:8: error: expected a list of things to print, found a list'],
    [
      'words: reed\nprint: [key]',
      'week.yaml:1:8: error: "reed" is neither a list of words nor a .txt or .csv file',
    ],
    ['words: {a: b}\nprint: [key]', 'week.yaml:1:8: error: expected a list of words, found a group of keys'],
    ['words: [reed]\nprint: [key]\nseed: 1.5', 'week.yaml:3:7: error: "1.5" is no whole number'],
    ['words: [reed]\nprint: [key]\nseed: -1', 'week.yaml:3:7: error: -1 is too small'],
    ['words: [reed]\nprint: [key]\nfont: andikka', 'week.yaml:3:7: error: unknown font "andikka"'],
    ['words: [reed]\nprint: [key]\npaper: b9', 'week.yaml:3:8: error: unknown paper "b9"'],
    ['words: [reed]\nprint: [key]\ntitle: [a]', 'week.yaml:3:8: error: expected the title, found a list'],
    [
      `words: [reed]\nprint: [key]\ntitle: ${'x'.repeat(121)}`,
      'week.yaml:3:8: error: the title is 121 characters long',
    ],
  ])('%j', (text, problem) => {
    expect(problemsOf(text)).toEqual([problem])
  })
})
