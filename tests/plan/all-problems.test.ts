import { expect, it } from 'vitest'
import { formatProblem } from '../../src/problems.js'
import { filesInMemory, problemsOf, read } from './reading.js'

it('tells all problems of a plan in one go, in the order of its lines', () => {
  const text = `title: Along the marsh
sead: 12
words:
  - reed
  - salt marsh
  - word: marsh
    sounds: m a sh
    syllables: marsch
    part of speech: thing
    picture: marsh.png
  - Reed
  - r2
  -
marks:
  - pattern: vowel-teem
    line: wavey
  - letters: ee
    pattern: vowel-team
    tag: long
print:
  - layout: bingo
    grid: 5by
    across: 3
    card: 63 x 88 mm
  - layout: binggo
  - layout: key
    words: [reed, marsch]
    groups: [Otter]
groups:
  - name: Otters
    words: [mud, mud]
`
  expect(problemsOf(text)).toEqual([
    'week.yaml:2:1: error: unknown key "sead" in a plan',
    'week.yaml:5:5: error: "salt marsh" has a space in it',
    'week.yaml:7:13: error: the sounds "m a sh" do not add up to "marsh", but to "mash"',
    'week.yaml:8:16: error: the syllables "marsch" do not add up to "marsh", but to "marsch"',
    'week.yaml:9:21: error: unknown part of speech "thing"',
    'week.yaml:10:14: error: no picture "marsh.png" is there',
    'week.yaml:11:5: error: "Reed" stands twice, on line 4 and on line 11, as "reed" and "Reed"',
    'week.yaml:12:5: error: "r2" has a digit in it',
    'week.yaml:13:3: error: a place in the list is empty',
    'week.yaml:15:14: error: unknown pattern "vowel-teem"',
    'week.yaml:16:11: error: unknown line "wavey"',
    'week.yaml:17:5: error: a mark with "pattern" and "letters"',
    'week.yaml:19:10: error: the tag "long" is too long',
    'week.yaml:22:11: error: "5by" is no grid',
    'week.yaml:24:11: error: "card" stands together with "across" or "down"',
    'week.yaml:25:13: error: unknown layout "binggo"',
    'week.yaml:27:19: error: "marsch" is not among the words of the plan',
    'week.yaml:28:14: error: unknown group "Otter"',
    'week.yaml:31:18: error: "mud" stands twice, on line 31',
  ])
})

it('puts the problems of the plan before those of the files it names, each once', () => {
  const files = filesInMemory({ 'list.csv': 'word,cleu\nreed,a\nmarsh,b\nr2,c\n' })
  expect(problemsOf('words: list.csv\nprint: [kye]', files)).toEqual([
    'week.yaml:2:9: error: unknown layout "kye"',
    'list.csv:1: warning: the column "cleu" is not read',
    'list.csv:4: error: "r2" has a digit in it',
  ])
})

it('gives every problem an advice that is a sentence, and a message that is none', () => {
  const outcome = read('words: [a b]\nprnt: [key]\nmarks: [{colour: reddish, pattern: x}]\n')
  expect(outcome.problems.length).toBe(5)
  for (const problem of outcome.problems) {
    expect(problem.advice, formatProblem(problem)).toMatch(/^[A-Z"`].*[.?]$/)
    expect(problem.message, formatProblem(problem)).not.toMatch(/\.$/)
  }
})
