import { describe, expect, it } from 'vitest'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { exampleOf, type PlacedKey, placeInWords } from '../../../src/plan/keys/placed-keys.js'
import { keysOfPlan } from '../../../src/plan/plan-keys.js'
import { readPlan } from '../../../src/plan/read-plan.js'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory, problemsOf, weekOf } from '../reading.js'
import { isOfClass } from './of-class.js'

const vocabulary = planVocabulary()
const keys = keysOfPlan(vocabulary)
const named = (placed: PlacedKey) => `${placed.name}, of ${placeInWords(placed.place)}`

const png = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])

/** The example as a plan, with what a plan needs besides. */
function planWith(placed: PlacedKey): readonly string[] {
  const example = exampleOf(placed)
  const ofClass = isOfClass(placed.place)
  const plan = ofClass ? ['class file: room-7.yaml'] : example
  const has = (key: string) => plan.some(line => line.startsWith(`${key}:`))
  return [
    ...plan,
    ...(has('words') ? [] : ['words: [reed, marsh, knot, market]']),
    ...(has('print') ? [] : ['print: [word-cards]']),
    ...(has('groups') ? [] : ['groups: [{name: Otters}]']),
  ]
}

describe('every key of a plan', () => {
  it.each(keys.map(placed => [named(placed), placed] as const))(
    '%s, has an example that is read',
    (_, placed) => {
      const lines = isOfClass(placed.place) ? exampleOf(placed) : []
      const hasWeeks = lines.some(line => line.startsWith('weeks:'))
      const classFile = [...lines, ...(hasWeeks ? [] : ['weeks: []'])].join('\n')
      const earlier = { 'week-1.yaml': 'words: [gnat]', 'week-2.yaml': 'words: [wren, heron, duck]' }
      const files = filesInMemory({ 'marsh.png': png, 'room-7.yaml': classFile, ...earlier })
      const text = planWith(placed).join('\n')
      const { problems } = readPlan({ file: 'week.yaml', text, vocabulary, files })
      expect(problems.map(formatProblem)).toEqual([])
    },
  )

  it('says what it does in a clause that begins small and has no full stop', () => {
    const clauses = keys.map(({ key }) => key.text.does)
    expect(clauses.filter(does => !/^(?![A-Z])\S.{5,}[^.\s]$/.test(does))).toEqual([])
  })

  it('stands once at each place', () => {
    const places = keys.map(named)
    expect(places.filter((place, index) => places.indexOf(place) !== index)).toEqual([])
    expect(new Set(keys.map(({ place }) => place.what)).size).toBeGreaterThan(15)
  })
})

describe('a key that is written where it does not belong', () => {
  it.each([
    ['copies: 3', '"copies" is a key of an item under "print:".'],
    [
      'size: large',
      '"size" is a key of an item under "print:", of a group under "groups:" and of a group of a class file under "groups:".',
    ],
    ['clue: wet land', '"clue" is a key of a word under "words:".'],
    ['colour: red', 'Write "color", at a mark under marks:.'],
    [
      'boards: 30',
      '"boards" is a key of an item of bingo, pattern-bingo, path-board, dice-grid, four-in-a-line or word-search under "print:".',
    ],
    ['font size: 24', 'Write "size", at an item under print: or at a group.'],
    ['definition: wet land', 'Write "clue", at the word.'],
  ])('%s is told where it stands', (line, advice) => {
    const { problems } = readPlan({
      file: 'week.yaml',
      text: weekOf(['reed'], `${line}\n`),
      vocabulary,
      files: filesInMemory({}),
    })
    expect(problems.map(problem => problem.advice)).toEqual([advice])
  })

  it('is told so in an item, a mark, a word and a group too', () => {
    const text = `words: [{word: reed, layout: key}]
marks: [{letters: ee, copies: 3}]
print: [{layout: key, pattern: silent-e}]
groups: [{name: Terns, across: 3}]
`
    expect(problemsOf(text)).toHaveLength(4)
  })
})
