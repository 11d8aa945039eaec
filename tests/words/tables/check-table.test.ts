import { describe, expect, test } from 'vitest'
import { formatProblem } from '../../../src/problems.js'
import { checkAcross, checkTable } from '../../../src/words/tables/check-table.js'
import { readTable, type Table } from '../../../src/words/tables/table-text.js'

function tableOf(
  columns: string,
  lines: string,
  { file = 'birds.tsv', order = 'alphabetical', onceIn = '' } = {},
): Table {
  const once = onceIn === '' ? '' : `# Once in: ${onceIn}\n`
  const head = `# Birds of the marsh.\n# Source: our own\n# Columns: ${columns}\n# Order: ${order}\n${once}`
  const table = readTable(file, head + lines)
  if (!table.ok) throw new Error(table.problems.map(formatProblem).join('\n'))
  return table.value
}

function problemsOf(columns: string, lines: string, order = 'alphabetical'): readonly string[] {
  return checkTable(tableOf(columns, lines, { order })).map(formatProblem)
}

describe('the fields of a row', () => {
  test.each([
    ['bird (word) | plurals (words)', 'goose\tgeese\nheron\therons hernes\n'],
    ['bird (word)', "bird-of-paradise\nowl's\n"],
    ['words (words, capitals kept)', "I'll isle aisle\nsundae Sunday\n"],
    ['word (word, or its beginning and *)', 'egret\negrets*\n'],
    ['word (divisions)', 'her·on\nos·prey\n'],
    ['word (divisions)', 'ev·ery ev·er·y\n'],
    ['word (word+word)', 'king+fisher\nwater+hen\n'],
    ['word (word) | sounds (pronunciation)', 'tern\tT ER1 N\n'],
    ['word (word) | parts (parts of speech)', 'duck\tnoun, verb\n'],
    ['word (word) | size (one of: small; large)', 'gull\tlarge\n'],
    ['word (word) | traits (some of: swims; dives)', 'grebe\tswims, dives\n'],
    ['letters (word) | sounds (sounds without stress, or -)', 'x\tK S\nxh\t-\n'],
    ['word (word) | count (number)', 'gull\t12\ngullet\t0.5\n'],
    ['word (word) | draft (text)', 'coot\ta black bird: it nods as it swims\n'],
  ])('%s: nothing is wrong', (columns, lines) => {
    expect(problemsOf(columns, lines)).toEqual([])
  })

  test.each([
    [
      'word (word) | draft (text)',
      'coot\n',
      'This line has 1 field, not 2',
      'Write with one tab between them: word, draft.',
    ],
    [
      'word (word)',
      'coot\ta bird\n',
      'This line has 2 fields, not 1',
      'Write with one tab between them: word.',
    ],
    [
      'word (word)',
      'Coot\n',
      'The word "Coot" is no word in small letters',
      "Write letters a to z, with - or ' between them.",
    ],
    [
      'word (word)',
      'coot \n',
      'The word "coot " is no word in small letters',
      "Write letters a to z, with - or ' between them.",
    ],
    [
      'words (words)',
      'coot  teal\n',
      'The words "coot  teal": "" is no word in small letters',
      "Write letters a to z, with - or ' between them.",
    ],
    [
      'word (words, capitals kept)',
      'I sea3\n',
      'The word "I sea3": "sea3" is no word',
      "Write letters, with - or ' between them.",
    ],
    [
      'word (word, or its beginning and *)',
      'te*al\n',
      'The word "te*al" is no word, nor a beginning with a *',
      'Write letters a to z, and * for any letters that follow.',
    ],
    [
      'word (divisions)',
      'ev·ery e·ver·ey\n',
      'The word "ev·ery e·ver·ey": "e·ver·ey" does not add up to "every"',
      'Write each letter of the word once in every division.',
    ],
    [
      'word (divisions)',
      'ev··ery\n',
      'The word "ev··ery" is no division',
      'Write letters with · between syllables, and a space between two divisions: ev·ery ev·er·y.',
    ],
    [
      'word (word+word)',
      'kingfisher\n',
      'The word "kingfisher" is not made of two words',
      'Write the two words with + between them: cup+board.',
    ],
    [
      'word (word) | sounds (pronunciation)',
      'tern\tT ER N\n',
      'The sounds "T ER N": "ER" is no sound',
      'Write ARPABET with a space between sounds and the stress 0, 1 or 2 behind each vowel: M AA1 R SH.',
    ],
    [
      'word (word) | parts (parts of speech)',
      'duck\tnoun, verv\n',
      'The parts "noun, verv": "verv" is none of those that the column may have',
      'Write one or several of: noun, verb, adjective, adverb, pronoun, preposition, conjunction, determiner, interjection, number.',
    ],
    [
      'word (word) | parts (parts of speech)',
      'duck\tnoun, noun\n',
      'The parts "noun, noun" says the same twice',
      'Leave out one of them.',
    ],
    [
      'word (word) | size (one of: small; large)',
      'gull\thuge\n',
      'The size "huge" is none of those that the column may have',
      'Write one of: small, large.',
    ],
    [
      'letters (word) | sounds (sounds without stress, or -)',
      'er\tER0\n',
      'The sounds "ER0" is no sound, nor several',
      'Write ARPABET without stress and with a space between sounds, or - where there is none: K S.',
    ],
    [
      'word (word) | count (number)',
      'gull\tmany\n',
      'The count "many" is no number',
      'Write digits, with a point before parts of one.',
    ],
    [
      'word (word) | draft (text)',
      'coot\t a bird\n',
      'The draft " a bird" begins or ends with a space, or is empty',
      'Write the text without spaces around it.',
    ],
  ])('%s: tells what is wrong and what to do', (columns, lines, message, advice) => {
    expect(problemsOf(columns, lines)).toEqual([`birds.tsv:5: error: ${message}\n  ${advice}`])
  })
})

describe('the order of rows', () => {
  test('a word that stands lower than it should is told with its place', () => {
    expect(problemsOf('bird (word)', 'coot\nteal\nheron\nwigeon\n')).toEqual([
      'birds.tsv:7: error: "heron" is out of the order of the alphabet\n  Move it up, before "teal" in line 6.',
    ])
  })

  test('dots and plus signs are no letters, and capitals are as small letters', () => {
    expect(problemsOf('bird (divisions)', 'Eve·ning\neven·tide\nev·ery\n')).toEqual([])
    expect(problemsOf('bird (word+word)', 'in+side\nin+to\n')).toEqual([])
  })

  test('a word stands once', () => {
    expect(problemsOf('bird (word) | draft (text)', 'coot\ta bird\ncoot\ta fool\n')).toEqual([
      'birds.tsv:6: error: "coot" stands in line 5 already\n  Leave one of them, with all that is to be said of the word.',
    ])
    expect(problemsOf('bird (word)', 'teal\ncoot\nteal\n', 'as it stands')).toHaveLength(1)
  })

  test('as it stands, nothing is said of the order', () => {
    expect(problemsOf('bird (word)', 'teal\ncoot\n', 'as it stands')).toEqual([])
  })

  test('where a word may have several lines they keep their order, and no line stands twice', () => {
    const order = 'alphabetical, a word may have several lines'
    expect(problemsOf('bird (word) | use (text)', 'duck\tto bow\nduck\ta bird\n', order)).toEqual([])
    expect(problemsOf('bird (word) | use (text)', 'duck\ta bird\nduck\ta bird\n', order)).toHaveLength(1)
    expect(problemsOf('bird (word) | use (text)', 'duck\ta bird\ncoot\ta bird\n', order)).toHaveLength(1)
  })
})

describe('tables that are kept apart', () => {
  const columns = 'word (word) | draft (text)'
  const more = tableOf(columns, 'coot\ta fool\nteal\ta duck\n', { file: 'senses/drafts-more.tsv' })

  test('a word stands in one of them', () => {
    const first = tableOf(columns, 'coot\ta bird\n', {
      file: 'senses/drafts-birds.tsv',
      onceIn: 'drafts-*.tsv',
    })
    expect(checkAcross([first, more]).map(formatProblem)).toEqual([
      'senses/drafts-more.tsv:5: error: "coot" stands at senses/drafts-birds.tsv:6 already\n  Leave the better of the two.',
    ])
  })

  test('other folders and other names do not count', () => {
    const elsewhere = tableOf(columns, 'coot\ta bird\n', {
      file: 'fitness/drafts-birds.tsv',
      onceIn: 'drafts-*.tsv',
    })
    expect(checkAcross([elsewhere, more])).toEqual([])
  })
})
