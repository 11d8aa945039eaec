/** Plans, lists, class files and arguments as somebody might write them, and as nobody should. */

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import fc from 'fast-check'
import { commandNames } from '../../../src/commands/first-help.js'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { classFileTaken, planTaken } from '../../../src/plan/plan-keys.js'
import { keysText, type Quality, valueText, words } from './value-texts.js'

/** Files by name: the plan itself and what it may refer to. */
export type Folder = Readonly<Record<string, string | Uint8Array>>

export const planFile = 'week.yaml'
const vocabulary = planVocabulary()
const planKeys = planTaken(vocabulary)
const apart = ['words', 'print', 'groups', 'marks', 'class file', 'review']
const settings = Object.fromEntries(Object.entries(planKeys.keys()).filter(([name]) => !apart.includes(name)))
const takenBy = (name: string) => planKeys.keys()[name]!.takes

/** One red pixel (PNG, W3C, 3rd edition). */
const picture = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR4nGP4z8DwHwAFAAH/iZk9HQAAAABJRU5ErkJggg==',
  'base64',
)

/** A font file of the teacher's own. */
const font = readFileSync(
  createRequire(import.meta.url).resolve('@fontsource/lexend/files/lexend-latin-400-normal.woff'),
)

/** Largest number of copies, boards and the like in a plan that is to be printed soon. */
const most = 4

export const wordLists = (quality: Quality): fc.Arbitrary<string> =>
  fc
    .array(fc.oneof(fc.constantFrom(...words), oddLines(quality)), { maxLength: 12 })
    .map(lines => lines.join('\n'))

export const spreadsheets = (quality: Quality): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(
        'word,clue',
        'word;clue;plural',
        'Word\tclue',
        'clue,word',
        'word',
        quality === 'valid' ? 'word' : 'clue',
      ),
      fc.array(fc.array(fc.oneof(fc.constantFrom(...words), oddLines(quality)), { maxLength: 4 }), {
        maxLength: 6,
      }),
    )
    .map(([head, rows]) => {
      const sign = /[;\t]/.exec(head)?.[0] ?? ','
      return [head, ...rows.map(cells => cells.join(sign))].join('\n')
    })

function oddLines(quality: Quality): fc.Arbitrary<string> {
  if (quality === 'valid') return fc.constantFrom('', '# a note', 'reed # a note')
  return fc.oneof(
    fc.constantFrom(
      '',
      '"',
      '"a',
      'a"b',
      '\u202Ereed',
      '\0',
      'a\rb',
      '7',
      'reed marsh',
      '\uFEFF',
      ',,,',
      '#',
      '- reed',
    ),
    fc.string({ unit: quality === 'hostile' ? 'binary' : 'grapheme', maxLength: 10 }),
  )
}

export const classFiles = (quality: Quality): fc.Arbitrary<string> =>
  keysText(classFileTaken(vocabulary), quality, most).map(lines => lines.join('\n'))

/** A plan with the files that it may name. */
export const plans = (quality: Quality): fc.Arbitrary<Folder> =>
  fc
    .record({
      words: wordsOfPlan(quality),
      print: fc.array(valueText(itemTaken(), quality, most), { minLength: 1, maxLength: 3 }),
      marks: fc.option(quality === 'valid' ? goodMarks : valueText(takenBy('marks'), quality, most)),
      groups: fc.option(quality === 'valid' ? goodGroups : valueText(takenBy('groups'), quality, most), {
        freq: 2,
      }),
      review: fc.option(quality === 'valid' ? goodReviews : valueText(takenBy('review'), quality, most), {
        freq: 3,
      }),
      settings: keysText({ kind: 'keys', what: 'settings', keys: () => settings, needed: [] }, quality, most),
      classFile: fc.option(classFiles(quality), { freq: 2 }),
      list: wordLists(quality),
      table: spreadsheets(quality),
      disorder: disorders(quality),
    })
    .map(parts => ({
      [planFile]: parts.disorder(
        [
          ...parts.settings,
          `words: ${parts.words}`,
          ...(parts.marks === null ? [] : [`marks: ${parts.marks}`]),
          'print:',
          ...parts.print.map(item => `  - ${item}`),
          ...(parts.groups === null ? [] : [`groups: ${parts.groups}`]),
          ...(parts.review === null ? [] : [`review: ${parts.review}`]),
          ...(parts.classFile === null ? [] : ['class file: room-7.yaml']),
        ].join('\n'),
      ),
      'room-7.yaml': parts.classFile ?? '',
      'week-1.yaml': `words: ${parts.words}\ngroups: ${parts.groups ?? ''}\nreview: ${parts.review ?? 'no'}`,
      'week-2.txt': 'newt\nmoss\nfern\n',
      'words.txt': parts.list,
      'words.csv': parts.table,
      'marsh.png': picture,
      'school-hand.ttf': font,
    }))

const goodReviews = fc.constantFrom(
  'no',
  'week-2.txt',
  '[week-2.txt, [gull, crow]]',
  '{from: [[gull, crow], week-2.txt], share: 1/2}',
)

const goodMarks = fc
  .uniqueArray(
    fc.constantFrom(
      ...vocabulary.patterns.map(name => `pattern: ${name}`),
      ...[
        'letters: sh',
        'letters: a_e',
        'sounds: 3',
        'syllables: 2',
        'part of speech: noun',
        'plural: add s',
      ],
    ),
    { maxLength: 5 },
  )
  .map(marks => `[${marks.map(mark => `{${mark}}`).join(', ')}]`)

const goodGroups = fc
  .uniqueArray(fc.constantFrom('Otters', 'Herons', 'Terns'), { maxLength: 2 })
  .chain(names =>
    fc.tuple(
      ...names.map(name =>
        fc
          .constantFrom(
            'words: [mud, pond, frog, moss, fish, cake, leaf, wren]',
            'size: large',
            'font: lexend',
          )
          .map(own => `{name: ${name}, ${own}}`),
      ),
    ),
  )
  .map(groups => `[${groups.join(', ')}]`)

function itemTaken() {
  const takes = takenBy('print')
  if (takes.kind !== 'list') throw new TypeError('print takes a list')
  return takes.of
}

function wordsOfPlan(quality: Quality): fc.Arbitrary<string> {
  const plain = fc.uniqueArray(fc.constantFrom(...words), {
    minLength: quality === 'valid' ? 10 : 1,
    maxLength: 16,
  })
  const listed = fc.tuple(plain, fc.boolean()).map(([chosen, clued]) => {
    const quoted = chosen.map(word => JSON.stringify(word))
    const entries = clued ? quoted.map((word, at) => `{word: ${word}, clue: clue ${at + 1}}`) : quoted
    return `[${entries.join(', ')}]`
  })
  if (quality === 'valid') return listed
  const taken = takenBy('words')
  return fc.oneof(
    { weight: 3, arbitrary: listed },
    { weight: 1, arbitrary: valueText(taken, quality, most) },
    {
      weight: 1,
      arbitrary: fc.constantFrom('words.txt', 'words.csv', '[words.txt, words.csv]', 'marsh.png', '.'),
    },
  )
}

/** What befalls a whole text: nothing, a part lost, doubled or put elsewhere, its end cut off. */
function disorders(quality: Quality): fc.Arbitrary<(text: string) => string> {
  if (quality === 'valid') return fc.constant(text => text)
  const spot = fc.nat({ max: 1000 })
  const within = (text: string, at: number) => Math.floor((at / 1001) * text.length)
  const disorder = fc
    .tuple(fc.constantFrom('cut', 'lose', 'double', 'tabs', 'returns', 'indent'), spot, spot)
    .map(([kind, one, other]) => (text: string): string => {
      const [from, to] = [within(text, Math.min(one, other)), within(text, Math.max(one, other))]
      switch (kind) {
        case 'cut':
          return text.slice(0, to)
        case 'lose':
          return text.slice(0, from) + text.slice(Math.min(to, from + 5))
        case 'double':
          return text.slice(0, to) + text.slice(from)
        case 'tabs':
          return text.replaceAll('  - ', '\t- ')
        case 'returns':
          return text.replaceAll('\n', '\r\n')
        default:
          return text.replace(/\n(?=\S)/, '\n ')
      }
    })
  const whole = fc.constant((text: string) => text)
  return fc.oneof(
    { weight: quality === 'nearly' ? 4 : 1, arbitrary: whole },
    { weight: 1, arbitrary: disorder },
  )
}

/** The desk goes on until somebody closes it. */
const commands = [...commandNames.filter(name => name !== 'desk'), 'mkae', '']

const options = [
  ...['--out', '--only', '--format', '--dpi', '--jobs', '--seed', '--json', '--why', '--file', '--pattern'],
  ...[
    '--letters',
    '--place',
    '--sounds',
    '--like',
    '--count',
    '--taught',
    '--for',
    '--quiet',
    '--help',
    '--version',
  ],
  ...[
    '--',
    '-',
    '-x',
    '--no-json',
    '--out=',
    '--dpi=300',
    '--seed=-1',
    '---',
    '--__proto__',
    '--constructor=1',
  ],
]

const values = [
  ...[
    planFile,
    'words.txt',
    'words.csv',
    'room-7.yaml',
    'nowhere.yaml',
    'marsh.png',
    '.',
    '/',
    '/dev/null',
    '',
  ],
  ...[
    'svg',
    'pdf,png',
    'gif',
    '300',
    '72',
    '0',
    '-1',
    '1e9',
    'NaN',
    'key',
    'papers',
    'beginning',
    'digraph-blend',
  ],
  ...[
    'reed',
    'marsh',
    '7',
    'a b',
    '\u202Ereed',
    'ñ',
    '🐸',
    'x'.repeat(300),
    '*',
    '$(id)',
    '~',
    '\\',
    '"',
    "'",
  ],
]

/** Arguments as they are typed; none starts a program that never ends (the desk, `--watch`). */
export const argumentLists: fc.Arbitrary<readonly string[]> = fc
  .tuple(
    fc.constantFrom(...commands),
    fc.array(fc.oneof(fc.constantFrom(...values), fc.constantFrom(...options)), { maxLength: 6 }),
  )
  .map(([command, rest]) => [...(command === '' ? [] : [command]), ...rest])
