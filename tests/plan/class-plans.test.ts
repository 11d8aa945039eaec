import { describe, expect, it } from 'vitest'
import { plansOfClass } from '../../src/plan/class-plans.js'
import { formatProblem } from '../../src/problems.js'
import { filesInMemory } from './reading.js'
import { vocabulary } from './vocabulary.js'

const plan = 'class file: ../room-7.yaml\nwords: [reed]\nprint: [key]\n'
const plansOf = (text: string, more: Readonly<Record<string, string>> = {}) => {
  const files = filesInMemory({
    'class/room-7.yaml': text,
    'class/weeks/week-1.yaml': plan,
    'class/weeks/week-2.yaml': plan,
    ...more,
  })
  const found = plansOfClass({ file: 'class/room-7.yaml', files, vocabulary })
  return found && { ...found, problems: found.problems.map(problem => formatProblem(problem).split('\n')) }
}

describe('a class file in place of a plan', () => {
  it('stands for the plans of its weeks, in their order', () => {
    expect(plansOf('weeks: [weeks/week-2.yaml, old.txt, weeks/week-1.yaml]\n')).toEqual({
      paths: ['class/weeks/week-2.yaml', 'class/weeks/week-1.yaml'],
      problems: [],
    })
  })

  it.each([
    ['a plan', 'words: [reed]\nprint: [key]\n'],
    ['a plan in which a week is named where none belongs', 'weeks: [a.yaml]\nprint: [key]\n'],
    ['a plan of a week that says what it is taught', 'words: [reed]\nweek: yes\ntaught: [vowel-team]\n'],
    ['a text that is broken', 'words: [\n'],
  ])('is not %s', (_, text) => {
    expect(plansOf(text)).toBeUndefined()
  })

  it('is told that week: belongs into its plans where it names them, not that it has no words', () => {
    expect(plansOf('weeks: [weeks/week-1.yaml]\nweek: yes\n')?.problems).toEqual([
      [
        'class/room-7.yaml: error: this is a plan, not a class file',
        '  A class file has no print: and no week:; its weeks: name the plans.',
      ],
    ])
  })

  it('leaves out a plan that is not there, and says so at its week', () => {
    expect(plansOf('weeks:\n  - weeks/week-1.yaml\n  - weeks/week-9.yaml\n')).toEqual({
      paths: ['class/weeks/week-1.yaml'],
      problems: [
        [
          'class/room-7.yaml:3:5: error: the plan "class/weeks/week-9.yaml" is not there',
          '  Check the name and the folder.',
        ],
      ],
    })
  })

  it('takes no other class file for a plan', () => {
    const found = plansOf('weeks: [weeks/week-1.yaml]\n', {
      'class/weeks/week-1.yaml': 'weeks: [../room-7.yaml]\n',
    })
    expect(found?.problems.map(([message]) => message)).toEqual([
      'class/room-7.yaml:1:9: error: "weeks/week-1.yaml" is a class file, not a plan',
    ])
  })

  it('says of a plan that knows nothing of it what to write there', () => {
    const found = plansOf('weeks: [weeks/week-1.yaml]\n', {
      'class/weeks/week-1.yaml': 'words: [reed]\nprint: [key]\n',
    })
    expect(found?.paths).toHaveLength(1)
    expect(found?.problems).toEqual([
      [
        'class/room-7.yaml:1:9: warning: the plan "weeks/week-1.yaml" does not name this class file, so what is decided here does not hold for it',
        '  Write in it: class file: ../room-7.yaml',
      ],
    ])
  })

  it.each([
    ['taught: [sh]\n', 'class/room-7.yaml: error: the class file names no plans of its weeks'],
    ['weeks: []\n', 'class/room-7.yaml: error: the class file names no plans of its weeks'],
    ['weeks: [\n', 'class/room-7.yaml:1:8: error: a bracket opened here is never closed'],
    ['weeks:\n\t- week-1.yaml\n', 'class/room-7.yaml:2:1: error: a tab at the beginning of the line'],
  ])('%j is refused', (text, problem) => {
    expect(plansOf(text)?.paths).toEqual([])
    expect(plansOf(text)?.problems.map(([message]) => message)).toEqual([problem])
  })
})
