import { describe, expect, it } from 'vitest'
import { readWordListFile } from '../../../src/plan/words/word-list.js'
import { filesInMemory, planOf, problemsOf, toldBy } from '../reading.js'
import { vocabulary } from '../vocabulary.js'

const bytes = (text: string, encoding: BufferEncoding) => new Uint8Array(Buffer.from(text, encoding))

function listOf(path: string, contents: string | Uint8Array) {
  const files = filesInMemory({ [path]: contents })
  return readWordListFile({ path, files, patterns: vocabulary.patterns })
}

function wordsOf(path: string, contents: string | Uint8Array) {
  const outcome = listOf(path, contents)
  if (!outcome.ok) throw new Error(toldBy(outcome).join('\n'))
  return outcome.value
}

describe('a .txt list', () => {
  it('has a word a line; blank lines and notes are passed over', () => {
    const words = wordsOf('marsh.txt', '# week 3\nreed\n\n  heron  # the grey one\r\ndon’t\n')
    expect(words.map(word => [word.text, word.place.line, word.place.column])).toEqual([
      ['reed', 2, 1],
      ['heron', 4, 3],
      ["don't", 5, 1],
    ])
  })

  it('is read with a byte-order mark, with Windows and with old Macintosh line ends', () => {
    expect(wordsOf('a.txt', '\uFEFFreed\r\nmarsh').map(word => word.text)).toEqual(['reed', 'marsh'])
    expect(wordsOf('a.txt', 'reed\rmarsh').map(word => word.place.line)).toEqual([1, 2])
  })

  it('tells a bad word with its line and column', () => {
    expect(toldBy(listOf('marsh.txt', 'reed\nr2d2\n  salt marsh\nReed\n🐸'))).toEqual([
      'marsh.txt:2:1: error: "r2d2" has a digit in it',
      'marsh.txt:3:3: error: "salt marsh" has a space in it',
      'marsh.txt:4:1: error: "Reed" stands twice, on line 1 and on line 4, as "reed" and "Reed"',
      'marsh.txt:5:1: error: "🐸" has the sign "🐸" in it',
    ])
  })

  it('holds ten thousand words', () => {
    const letters = (number: number) => [...String(number)].map(digit => 'abcdefghij'[Number(digit)]).join('')
    const words = Array.from({ length: 10_000 }, (_, index) => `w${letters(index)}`)
    expect(wordsOf('long.txt', words.join('\r\n'))).toHaveLength(10_000)
    expect(wordsOf('long.csv', `word,clue\n${words.join(',"a, b"\r\n')}`)).toHaveLength(10_000)
  })

  it.each([
    ['nothing in it', '', 'marsh.txt: error: the word list holds no word'],
    ['notes alone', '# a\n# b\n', 'marsh.txt: error: the word list holds no word'],
    [
      'bytes of another kind of file',
      Uint8Array.of(80, 75, 3, 4, 0, 0),
      'marsh.txt:1:5: error: the file is not plain text from here on',
    ],
    [
      'a byte that is no letter of any encoding that is read',
      Uint8Array.of(114, 101, 0x81, 100),
      'marsh.txt:1:3: error: the file is not plain text from here on',
    ],
    [
      'more than a list can hold',
      'reed\n'.repeat(200_001),
      'marsh.txt: error: the word list "marsh.txt" has 1.0 million bytes',
    ],
  ])('is refused with %s', (_what, contents, problem) => {
    expect(toldBy(listOf('marsh.txt', contents))).toEqual([problem])
  })
})

describe('a list in the encoding of a spreadsheet', () => {
  it.each([
    ['UTF-16, little end first', bytes('\uFEFFreed\ncafé\n', 'utf16le')],
    ['UTF-16, big end first', new Uint8Array(Buffer.from(bytes('\uFEFFreed\ncafé\n', 'utf16le')).swap16())],
    ['UTF-8 with a mark', bytes('\uFEFFreed\ncafé\n', 'utf8')],
  ])('is read without a word: %s', (_what, contents) => {
    const outcome = listOf('marsh.txt', contents)
    expect(outcome.ok && outcome.value.map(word => word.text)).toEqual(['reed', 'café'])
    expect(toldBy(outcome)).toEqual([])
  })

  it('is read in Windows’ Western European one with a warning at its first foreign letter', () => {
    const outcome = listOf('marsh.txt', bytes('reed\ncaf\xe9\ndon\x92t\n', 'latin1'))
    expect(outcome.ok && outcome.value.map(word => word.text)).toEqual(['reed', 'café', "don't"])
    expect(toldBy(outcome)).toEqual([
      'marsh.txt:2:4: warning: the file is not in UTF-8: from here on it is read as a Western European text of Windows',
    ])
  })
})

describe('a .csv list', () => {
  it('has the keys of a word as columns, in any spelling and order; an empty cell is a key left out', () => {
    const [marsh, fish] = wordsOf(
      'week.csv',
      'Clue,WORD,Part_of_speech,sounds\n"wet, grassy land",marsh,,m ar sh\n,fish,"noun, verb",\n',
    )
    expect(marsh).toEqual({
      text: 'marsh',
      place: { file: 'week.csv', line: 2 },
      clue: 'wet, grassy land',
      overrides: { sounds: ['m', 'ar', 'sh'] },
      overridePlaces: { sounds: { file: 'week.csv', line: 2 } },
    })
    expect(fish).toMatchObject({ text: 'fish', overrides: { partsOfSpeech: ['noun', 'verb'] } })
  })

  it.each([
    ['commas', 'word,clue\nreed,tall\n'],
    ['semicolons', 'word;clue\nreed;tall\n'],
    ['tabs', 'word\tclue\nreed\ttall\n'],
    ['a byte-order mark and Windows line ends', '\uFEFFword,clue\r\nreed,tall\r\n'],
    ['quoted names', '"word","clue"\n"reed","tall"\n'],
    ['empty rows', '\nword,clue\n,\n\nreed,tall\n,,\n'],
    ['its sign between cells named first', 'sep=;\nword;clue\nreed;tall\n'],
    ['the same in quotes, with a byte-order mark', '\uFEFF"sep=;"\r\nword;clue\r\nreed;tall\r\n'],
    ['a title above its names', 'Spelling list of Room 7,\nword,clue\nreed,tall\n'],
    ['a title and an empty row above them', 'Week 12\n\nword,clue\nreed,tall\n'],
    ['a title above names between semicolons', 'Week 12\nword;clue\nreed;tall\n'],
    ['names as a teacher has them', 'Spelling words,Definition\nreed,tall\n'],
  ])('is read with %s', (_what, text) => {
    expect(wordsOf('week.csv', text)).toMatchObject([{ text: 'reed', clue: 'tall' }])
  })

  it('may have a single column', () => {
    expect(wordsOf('week.csv', 'word\nreed\nmarsh\n').map(word => word.text)).toEqual(['reed', 'marsh'])
  })

  it('keeps lines right behind a cell of several lines', () => {
    expect(
      toldBy(listOf('week.csv', 'word,clue\nreed,"tall\nand thin"\n\nr2,x\nmarsh,"a\nb\nc"\nr3,x\n')),
    ).toEqual(['week.csv:5: error: "r2" has a digit in it', 'week.csv:9: error: "r3" has a digit in it'])
  })

  it.each([
    [
      'no column of words',
      'Room 7,tall\nRoom 8,wet\n',
      'week.csv:1: error: no column of the first row is called "word"',
    ],
    [
      'a column twice',
      'word,clue,Clue\nreed,tall,thin\n',
      'week.csv:1: error: the key "Clue" stands twice (first on line 1)',
    ],
    [
      'a comma without quotes',
      'word,clue\nmarsh,wet, grassy land\n',
      'week.csv:2: error: the row has 3 cells, the row of names has 2',
    ],
    [
      'a quote that is not closed',
      'word,clue\nreed,"tall\nmarsh,wet\n',
      'week.csv:2: error: a double quote in this row is never closed',
    ],
    [
      'a quote inside a cell',
      'word,clue\nreed,a 6" stem\n',
      'week.csv:2: error: a double quote stands inside a cell',
    ],
    [
      'a row without its word',
      'word,clue\nreed,tall\n,wet\n',
      'week.csv:3: error: an entry of the word list has no "word"',
    ],
    [
      'a word twice',
      'word\nreed\nREED\n',
      'week.csv:3: error: "REED" stands twice, on line 2 and on line 3, as "reed" and "REED"',
    ],
    [
      'sounds that do not add up',
      'word,sounds\nmarsh,m sh\n',
      'week.csv:2: error: the sounds "m sh" do not add up to "marsh", but to "msh"',
    ],
    ['a header alone', 'word,clue\n', 'week.csv: error: the word list holds no word'],
    ['nothing in it', '', 'week.csv: error: the word list holds no word'],
  ])('is refused with %s', (_what, text, problem) => {
    expect(toldBy(listOf('week.csv', text))).toEqual([problem])
  })
})

describe('a .csv list with more or less than was asked for', () => {
  it('is read without the columns that it does not know, each named once', () => {
    const outcome = listOf('week.csv', 'word,cleu,Group\nreed,tall,A\nmarsh,wet,B\n')
    expect(outcome.ok && outcome.value.map(word => [word.text, word.clue])).toEqual([
      ['reed', undefined],
      ['marsh', undefined],
    ])
    expect(toldBy(outcome)).toEqual([
      'week.csv:1: warning: the column "cleu" is not read',
      'week.csv:1: warning: the column "Group" is not read',
    ])
    expect(outcome.problems[0]!.advice).toContain('Did you mean "clue"?')
  })

  it('is read without names of its columns: words in the first one', () => {
    const outcome = listOf('week.csv', 'reed,tall\nmarsh,wet\n')
    expect(outcome.ok && outcome.value.map(word => [word.text, word.clue])).toEqual([
      ['reed', undefined],
      ['marsh', undefined],
    ])
    expect(toldBy(outcome)).toEqual([
      'week.csv:1: warning: the file has no row of column names: its first column is read as words, and the others are left out',
    ])
  })

  it('may have a title above words without names', () => {
    const outcome = listOf('week.csv', 'Spelling list 12\nreed\nmarsh\n')
    expect(outcome.ok && outcome.value.map(word => word.text)).toEqual(['reed', 'marsh'])
    expect(toldBy(outcome)).toEqual([
      'week.csv:2: warning: the file has no row of column names: its first column is read as words',
    ])
  })
})

describe('a list of several files', () => {
  const files = filesInMemory({
    'one.txt': 'reed\nmarsh\n',
    'lists/two.csv': 'word,clue,picture\nfrog,it hops,frog.jpg\nReed,tall,\n',
    'lists/frog.jpg': Uint8Array.of(0xff, 0xd8, 0xff, 0xe0),
  })

  it('has their words one after another, and words and lists between them', () => {
    const { words } = planOf('words: [moth, one.txt, [wren, gnat], lists/two.csv]\nprint: [key]\n', files)
    expect(words.map(({ text }) => text)).toEqual(['moth', 'reed', 'marsh', 'wren', 'gnat', 'frog'])
    expect(words.at(-1)!.picture).toMatch(/lists.frog\.jpg$/)
  })

  it('takes a word of two files once, with a warning', () => {
    expect(problemsOf('words: [one.txt, lists/two.csv]\nprint: [key]\n', files)).toEqual([
      'lists/two.csv:3: warning: "Reed" stands in one.txt too: it is taken once, as it stands there',
    ])
  })

  it('tells a word that stands twice in one file as ever', () => {
    expect(problemsOf('words: [reed, [reed]]\nprint: [key]\n', files)).toEqual([
      'week.yaml:1:16: error: "reed" stands twice, on line 1',
    ])
  })

  it('is refused where one of them is not there', () => {
    expect(problemsOf('words: [one.txt, three.txt]\nprint: [key]\n', files)).toEqual([
      'week.yaml:1:18: error: the word list "three.txt" is not there',
    ])
  })
})

describe('a list named in a plan', () => {
  const plan = (path: string) => `words: ${path}\nprint: [key]\n`

  it('is found beside the plan, and keeps its own places', () => {
    const words = planOf(plan('lists/marsh.txt'), filesInMemory({ 'lists/marsh.txt': '\nreed\n' })).words
    expect(words).toEqual([
      { text: 'reed', place: { file: 'lists/marsh.txt', line: 2, column: 1 }, overrides: {} },
    ])
  })

  it('looks for its pictures beside itself', () => {
    const files = filesInMemory({
      'lists/marsh.csv': 'word,picture\nreed,reed.jpg\n',
      'lists/reed.jpg': Uint8Array.of(0xff, 0xd8, 0xff, 0xe0),
    })
    expect(planOf(plan('lists/marsh.csv'), files).words[0]?.picture).toMatch(/lists.reed\.jpg$/)
  })

  it.each([
    ['not there', 'marsh.txt', {}, 'week.yaml:1:8: error: the word list "marsh.txt" is not there'],
    ['a folder', 'a.txt', { 'a.txt': null }, 'week.yaml:1:8: error: "a.txt" is a folder, not a file'],
    ['empty', 'a.txt', { 'a.txt': '' }, 'a.txt: error: the word list holds no word'],
    [
      'of another kind',
      'a.docx',
      {},
      'week.yaml:1:8: error: "a.docx" is neither a list of words nor a .txt or .csv file',
    ],
  ])('is refused when it is %s', (_what, path, files, problem) => {
    expect(problemsOf(plan(path), filesInMemory(files))).toEqual([problem])
  })
})
