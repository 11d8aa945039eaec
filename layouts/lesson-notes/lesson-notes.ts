import type { Row } from '../../src/pieces/faces/flow-page.js'
import { tableRows, textRow, whiteRow } from '../../src/pieces/parts/table-rows.js'
import { fewestPages } from '../../src/pieces/text/fewest-pages.js'
import { lessonPatterns } from '../../src/sets/lesson/lesson-patterns.js'
import { type PatternLesson, patternLesson } from '../../src/sets/lesson/pattern-lesson.js'
import { pluralsByRule, wordsOfTwoKinds, wordsToWatch } from '../../src/sets/lesson/words-to-watch.js'
import type { RatedSort } from '../../src/sets/sorts/sort-by.js'
import { tieOf } from '../../src/sets/sorts/weights.js'
import { inPlainSounds } from '../../src/words/pronunciation/respelling.js'
import type { SortableWord } from '../../src/words/sortable-word.js'
import { ratedSortsFor } from '../chosen-sort.js'
import { grownUpPages } from '../grown-up-pages.js'
import { defineLayout, type LayoutRequest } from '../layout.js'
import { talkOver } from '../sort-talk.js'
import { wordsToLay } from '../words-to-lay.js'
import { backFromEarlier, newToClass } from './new-to-class.js'

/** What the list teaches, worked out from its words, for whoever gives the lesson. */
export const lessonNotes = defineLayout({
  kind: 'pages',
  name: 'lesson-notes',
  summary:
    'notes for you on what the list teaches: its patterns, what is new, plurals, words to watch, questions',
  inWeek: { day: 'lesson', given: 'you' },
  options: {},
  marks: 'none',
  pages: (request, room) => {
    const rowsOf = noteRows(request, room.widthMm)
    return fewestPages([forWords, forReasons], table =>
      grownUpPages(request, { kind: 'notes', what: 'what this list teaches', rows: rowsOf(table), room }),
    )
  },
})

/** Shares of a table's width. */
interface PatternTable {
  readonly letters: number
  readonly heard: number
  readonly words: number
  readonly why: number
}

/** Room for long lists of words, and for reasons, few of which then take a second line. */
const forWords: PatternTable = { letters: 0.1, heard: 0.18, words: 0.3, why: 0.42 }
const forReasons: PatternTable = { letters: 0.08, heard: 0.18, words: 0.19, why: 0.55 }

/** Sorts that any list supports invite no talk of this one. */
const MOST_SORTS = 2
const MORE_WORDS = 5

function noteRows(request: LayoutRequest, widthMm: number): (table: PatternTable) => readonly Row[] {
  const { words, marks } = request
  const say = sayingIn(request, widthMm)
  const news = newToClass(request)
  const lessons = lessonPatterns(
    words,
    marks.map(({ mark }) => mark),
  )
    .flatMap(pattern => patternLesson(pattern, words) ?? [])
    .map((lesson, index) => lessonRows(request, say, lesson, index + 1))
  const sorts = ratedSortsFor(request)
    .filter(({ family }) => tieOf(family.kind).anyWords !== true)
    .filter(({ family }, index, all) => all.findIndex(other => other.family.kind === family.kind) === index)
    .slice(0, MOST_SORTS)
  const rest = [
    ...section(say, news.heading, news.lines),
    ...section(say, 'Back from earlier weeks', backFromEarlier(request)),
    ...pluralRows(request, say),
    ...section(
      say,
      'Used in two ways',
      [...wordsOfTwoKinds(words)].map(([kinds, own]) => `${kinds}: ${own.join(', ')}`),
    ),
    ...section(say, 'Words to watch', watched(request, sorts)),
    ...sorts.flatMap(rated =>
      talkOver(request, widthMm)(rated, `To talk over, with the sort by ${rated.sort.basis}:`),
    ),
    say.white(0.6),
    say.text(
      'Each line rests on a rule that fired, or on a list of ours: oaktag study WORD --why tells which.',
    ),
  ]
  return table => [...lessons.flatMap(rowsOf => rowsOf(table)), ...rest]
}

/** How rows are set. */
interface Saying {
  readonly text: (said: string) => Row
  readonly bold: (said: string) => Row
  readonly white: (ems: number) => Row
  readonly table: (columns: readonly Column[], cells: readonly (readonly string[])[]) => readonly Row[]
}

interface Column {
  readonly heading: string
  readonly share: number
}

function sayingIn({ type, measure }: LayoutRequest, widthMm: number): Saying {
  const style = { sizeMm: type.adultTextMm }
  return {
    text: said => textRow(inPlainSounds(said), { style, widthMm, measure }),
    bold: said => ({
      ...textRow(inPlainSounds(said), { style: { ...style, weight: 700 }, widthMm, measure }),
      keepsWithNext: true,
    }),
    white: ems => whiteRow(type.adultTextMm * ems),
    table: (columns, cells) =>
      tableRows({
        columns,
        cells: cells.map(row => row.map(inPlainSounds)),
        widthMm,
        textMm: type.adultTextMm,
        measure,
      }),
  }
}

function section(say: Saying, heading: string, lines: readonly string[]): readonly Row[] {
  return lines.length === 0 ? [] : [say.white(0.6), say.bold(heading), ...lines.map(say.text)]
}

function lessonRows(
  request: LayoutRequest,
  say: Saying,
  { pattern, title, what, shown, contrasts, seems }: PatternLesson,
  number: number,
): (table: PatternTable) => readonly Row[] {
  const more = moreWords(request, pattern, new Set(shown.map(({ letters }) => letters)))
  const told = [
    ...contrasts.map(contrast => `Children mix it up with the ${contrast}.`),
    `Seems to show it, and does not: ${seems}.`,
    ...(more.length === 0 ? [] : [`More words for it: ${more.join(', ')}.`]),
  ].map(say.text)
  const cells = shown.map(({ letters, counted = '', words, why }) => [
    letters,
    counted,
    words.join(', '),
    why,
  ])
  return shares => {
    const columns = [
      { heading: 'letters', share: shares.letters },
      { heading: 'as heard', share: shares.heard },
      { heading: 'words', share: shares.words },
      { heading: 'why', share: shares.why },
    ]
    const table = say.table(columns, cells)
    return [
      ...(number === 1 ? [] : [say.white(0.6)]),
      say.bold(`${number}. ${title.charAt(0).toUpperCase()}${title.slice(1)}: ${what}`),
      ...table.slice(0, -1),
      ...together([...table.slice(-1), ...told]),
    ]
  }
}

/** On one page, as far as a page holds them. */
function together(rows: readonly Row[]): readonly Row[] {
  return rows.map((row, index) => (index + 1 < rows.length ? { ...row, keepsWithNext: true } : row))
}

/** As hard as the list's own, in the same letters, and such as the class can read. */
function moreWords(request: LayoutRequest, pattern: string, letters: ReadonlySet<string>): readonly string[] {
  const found: string[] = []
  const fits = (word: SortableWord) =>
    word.patterns.some(each => each.pattern === pattern && letters.has(each.letters.toLowerCase()))
  for (const word of wordsToLay(request)()) {
    if (found.length === MORE_WORDS) break
    if (fits(word)) found.push(word.text)
  }
  return found
}

function pluralRows({ words }: LayoutRequest, say: Saying): readonly Row[] {
  const plurals = pluralsByRule(words)
  if (plurals.length === 0) return []
  return [
    say.white(0.6),
    say.bold('Naming words, one and more than one'),
    ...say.table(
      [
        { heading: 'rule', share: 0.35 },
        { heading: 'words', share: 0.65 },
      ],
      plurals.map(({ rule, pairs }) => [rule, pairs.join('; ')]),
    ),
  ]
}

function watched({ words }: LayoutRequest, sorts: readonly RatedSort[]): readonly string[] {
  const oddballs = sorts.slice(0, 1).flatMap(({ sort }) => sort.leftoverReasons)
  return wordsToWatch(words, oddballs).map(({ word, reasons }) => `${word}: ${reasons.join('; ')}`)
}
