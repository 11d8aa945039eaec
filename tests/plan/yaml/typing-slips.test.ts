import { describe, expect, it } from 'vitest'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory, read } from '../reading.js'

/** All that is told of a text: `LINE:COLUMN MESSAGE → ADVICE`. */
function told(text: string, files: Readonly<Record<string, string>> = {}): readonly string[] {
  const { problems } = read(text, filesInMemory(files))
  return problems.map(problem =>
    formatProblem(problem)
      .replace(/^week\.yaml:(\S+): error:/, '$1')
      .replace('\n  ', ' → '),
  )
}

/** A plan with these lines as its words, and one thing to print. */
const words = (lines: string) => `words:\n${lines}print:\n  - key\n`

describe('a line out of its column', () => {
  it.each([
    [
      'a dash one space to the right',
      words('  - reed\n   - marsh\n  - wren\n'),
      '3:4 this dash begins in column 4, those beside it in column 3 → Type one space less before it, so that it stands as on line 2.',
    ],
    [
      'a dash one space to the left',
      words('  - reed\n - marsh\n  - wren\n'),
      '3:2 this dash begins in column 2, those beside it in column 3 → Type one space more before it, so that it stands as on line 2.',
    ],
    [
      'dashes that begin with their key',
      words('- reed\n - marsh\n'),
      '3:2 this dash begins in column 2, those beside it in column 1 → Type one space less before it, so that it stands as on line 2.',
    ],
    [
      'a key of an item one space to the left',
      'words: [reed]\nmarks:\n  - pattern: silent-e\n   line: wavy\nprint: [key]\n',
      '4:4 this key begins in column 4, those beside it in column 5 → Type one space more before it, so that it stands as on line 3.',
    ],
    [
      'a key of an item under the dash',
      'words: [reed]\nmarks:\n  - pattern: silent-e\n  line: wavy\nprint: [key]\n',
      '4:3 this key begins in column 3, those beside it in column 5 → Type 2 spaces more before it, so that it stands as on line 3.',
    ],
    [
      'several keys of an item, told once',
      'words: [reed]\nprint:\n  - layout: bingo\n     boards: 3\n     grid: 3x3\n',
      '4:6 this key begins in column 6, those beside it in column 5 → Type one space less before it, so that it stands as on line 3.',
    ],
    [
      'a key of the plan',
      'title: Marsh\n words: [reed]\nprint: [key]\n',
      '2:2 this key begins in column 2, those beside it in column 1 → Type one space less before it, so that it stands as on line 1.',
    ],
    [
      'the first key of the plan',
      ' title: Marsh\nwords: [reed]\nprint: [key]\n',
      '1:2 this key begins in column 2, the others of the plan in column 1 → Type one space less before it.',
    ],
  ])('%s', (_what, text, expected) => {
    expect(told(text)).toEqual([expected])
  })

  it('and what is wrong behind it are told where they were typed, and nowhere beyond their line', () => {
    const line = '  {letters: ea, label: "reed"}]'
    const text = `words: [reed]\nmarks: [{letters: ea, label: "reed"}]\nprint:\n  - word-cards\n${line}\nprint:\n  - key\n`
    const { problems } = read(text)
    const columns = problems.flatMap(({ place }) => (place.line === 5 ? [place.column] : []))
    expect(columns.length).toBeGreaterThan(0)
    expect(Math.max(...columns.map(column => column ?? 0))).toBeLessThanOrEqual(line.length)
  })

  it('hides no other problem of the plan', () => {
    const text = 'words: [reed]\nprint:\n  - layout: key\n   - layout: bingo\n     grid: 9x9x9\n'
    expect(told(text).map(line => line.split(' → ')[0])).toEqual([
      '4:4 this dash begins in column 4, those beside it in column 3',
      '5:12 "9x9x9" is no grid',
    ])
  })
})

describe('a dash', () => {
  it.each([
    ['an en dash', '–', 'an en dash (–)'],
    ['an em dash', '—', 'an em dash (—)'],
    ['a minus sign', '−', 'a minus sign (−)'],
    ['a bullet', '•', 'a bullet (•)'],
    ['a star', '*', 'a star (*)'],
  ])('that is %s', (_what, sign, name) => {
    const advice = `${name} stands where a list has its dash → Type a plain hyphen and a space: - marsh`
    expect(told(words(`  - reed\n  ${sign} marsh\n  - wren\n`))).toEqual([`3:3 ${advice}`])
    expect(told(words(`  ${sign} marsh\n`))).toEqual([`2:3 ${advice}`])
  })

  it.each([
    [
      'without its space',
      words('  - reed\n  -marsh\n'),
      ['3:3 there is no space behind the dash → Type a space behind it: - marsh'],
    ],
    [
      'that is missing before a word',
      words('  - reed\n  marsh\n  - wren\n'),
      ['3:3 a dash is missing before "marsh" → Type a dash and a space before it: - marsh'],
    ],
    [
      'that is missing before all words',
      words('  reed\n  marsh\n'),
      [
        '2:3 a dash is missing before "reed" → Type a dash and a space before it: - reed',
        '3:3 a dash is missing before "marsh" → Type a dash and a space before it: - marsh',
      ],
    ],
    [
      'that is missing before the only item',
      'words: [reed]\nprint:\n  layout: bingo\n  boards: 3\n',
      ['3:3 a dash is missing before "layout" → Type a dash and a space before it: - layout: bingo'],
    ],
    [
      'that is missing before the second item',
      'words: [reed]\nprint:\n  - layout: bingo\n    boards: 3\n  layout: key\n',
      ['5:3 a dash is missing before "layout" → Type a dash and a space before it: - layout: key'],
    ],
  ])('%s', (_what, text, expected) => {
    expect(told(text)).toEqual(expected)
  })
})

describe('a sign that YAML keeps for itself', () => {
  it.each([
    [
      'an exclamation mark before a word',
      words('  - !wow\n'),
      '2:5 an exclamation mark (!) cannot begin a word of a list → Take it out: - wow',
    ],
    [
      'an exclamation mark before a text',
      words('  - word: reed\n    clue: !a tall grass\n'),
      '3:11 an exclamation mark (!) cannot begin a text → Put the text in quotes: clue: "!a tall grass"',
    ],
    [
      'an exclamation mark between brackets',
      'words: [!wow, reed]\nprint: [key]\n',
      '1:13 an exclamation mark cannot begin a word or a text → Take the sign out of a word, and put a text that begins with it in quotes.',
    ],
    [
      'a question mark before a word',
      words('  - reed\n  - ? what\n'),
      '3:5 a question mark (?) cannot begin a word of a list → Take it out: - what',
    ],
    [
      'a star before a word',
      words('  - reed\n  - * planet\n'),
      '3:5 a star (*) cannot begin a word of a list → Take it out: - planet',
    ],
  ])('%s', (_what, text, expected) => {
    expect(told(text)).toEqual([expected])
  })
})

describe('colons, commas and quote marks', () => {
  it.each([
    [
      'a colon without its space',
      'words: [reed]\nprint:\n  - layout:bingo\n',
      '3:11 there is no space behind the colon → Type a space behind it: layout: bingo',
    ],
    [
      'a missing colon',
      'words: [reed]\nprint\n  - key\n',
      '2:5 a colon is missing behind "print" → Type it: print:',
    ],
    [
      'things to print without their brackets',
      'words: [reed]\nprint: word-cards, key\n',
      '2:8 "word-cards, key" is a list without its brackets → Put brackets round them: print: [word-cards, key]; or write a dash and a name on each line.',
    ],
    [
      'words without their brackets',
      'words: reed, marsh\nprint: [key]\n',
      '1:8 these words are a list without its brackets → Put brackets round them: [reed, marsh]; or write a dash and a word on each line.',
    ],
    [
      'curly quote marks round a colour',
      'words: [reed]\nmarks:\n  - letters: ee\n    color: “#00618a”\nprint: [key]\n',
      '4:12 curly quote marks stand round the colour → Type straight ones: color: "#00618a"',
    ],
    [
      'curly quote marks round a name',
      'words: [reed]\nprint:\n  - layout: “key”\n',
      '3:13 unknown layout "“key”" → Take the curly quote marks away, or type straight ones: key.',
    ],
    [
      'a colour without quote marks',
      'words: [reed]\nmarks:\n  - letters: ee\n    color: #00618a\nprint: [key]\n',
      '4:5 "color" has no value → A # begins a note; put what follows it in quotes: color: "#00618a".',
    ],
    [
      'spaces that are none, copied from a page',
      'words:\n\u00A0 - reed\nprint: [key]\n',
      '2:1 the line begins with spaces that YAML does not know (non-breaking ones) → Delete them and type spaces instead; they come along when text is copied from a page.',
    ],
  ])('%s', (_what, text, expected) => {
    expect(told(text)).toEqual([expected])
  })
})

it('finds slips in a class file too, at their place in it', () => {
  const plan = 'words: [reed]\nclass file: class.yaml\nprint: [key]\n'
  expect(told(plan, { 'class.yaml': 'words:\n  - word: reed\n     clue: a tall grass\n' })).toEqual([
    'class.yaml:3:6: error: this key begins in column 6, those beside it in column 5 → Type one space less before it, so that it stands as on line 2.',
  ])
})

describe('what only looks like a slip', () => {
  it.each([
    ['a text over several lines', 'title: >\n  – Along\n   the marsh\nwords: [reed]\nprint: [key]\n'],
    ['a text in quotes over several lines', 'title: "Along\n  – the marsh"\nwords: [reed]\nprint: [key]\n'],
    ['brackets over several lines', 'words: [reed,\n   marsh,\n  wren]\nprint: [key]\n'],
    ['a text that runs on', 'words:\n  - word: reed\n    clue: a tall\n      grass\nprint: [key]\n'],
    ['a list in the column of its key', 'words:\n- reed\n- marsh\nprint:\n- layout: key\n  paper: a4\n'],
    ['dashes of another depth', 'words:\n    - reed\nprint:\n  - key\n'],
  ])('%s is read as it stands, and is not told of where something else is wrong', (_what, text) => {
    expect(told(text)).toEqual([])
    expect(told(`${text}sead: 3\n`)).toHaveLength(1)
  })
})
