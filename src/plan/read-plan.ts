/** The text of a plan → `Plan`, or every problem of it in one go. */

import { andThen, fail, inReadingOrder, present, succeed } from '../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { assembled, usualPaper } from './assemble-plan.js'
import type { FileAccess } from './disk/file-access.js'
import { type ItemContext, itemReaders } from './items/item-keys.js'
import { readPrintList } from './items/print-list.js'
import type { Plan, PlanWord } from './plan.js'
import { readAccent } from './settings/accent.js'
import { readClassFile } from './settings/class-file.js'
import { readContrast } from './settings/contrast.js'
import { readCountSounds } from './settings/count-sounds.js'
import { fontReader } from './settings/fonts.js'
import { readGroups, typedGroups, typedGroupWords } from './settings/groups.js'
import { readMarks } from './settings/marks.js'
import { readPrinter } from './settings/printer.js'
import { LARGEST_SEED, wholeNumberReader } from './values/numbers.js'
import { paperReader } from './values/papers.js'
import { textReader } from './values/texts.js'
import { typeSizeReader } from './values/type-size.js'
import type { Vocabulary } from './vocabulary.js'
import { readWords, typedWords, type WordEntries } from './words/list-words.js'
import type { WordContext } from './words/word-entry.js'
import { wordEntries } from './words/word-list.js'
import { type Entry, type MapEntry, misfit, type Reader } from './yaml/entry.js'
import { readKeys, valueAt } from './yaml/keys.js'
import { withSlipsMended } from './yaml/typing-slips.js'
import { yamlEntries } from './yaml/yaml-entries.js'

export interface PlanText {
  /** Path as the teacher gave it. */
  readonly file: string
  readonly text: string
  readonly vocabulary: Vocabulary
  /** For the word lists, pictures, fonts and class file that the plan names. */
  readonly files: FileAccess
}

const newAdvice = 'Run "oaktag new" for a plan to begin with.'

/** Problems stand in the order of the text. Never throws, whatever the text. */
export function readPlan(source: PlanText): Outcome<Plan> {
  const plan = withSlipsMended(source.file, source.text, text => readMended({ ...source, text }))
  return { ...plan, problems: inReadingOrder(plan.problems, source.file) }
}

function readMended(source: PlanText): Outcome<Plan> {
  const { file, text } = source
  return andThen(yamlEntries(file, text), (root): Outcome<Plan> => {
    if (root === null) return fail(errorAt({ file, line: 1, column: 1 }, 'the plan is empty', newAdvice))
    if (root.kind === 'map') return planFrom(root, source)
    return misfit(
      root,
      'keys with their values',
      `Begin with a key and a colon, such as words:. ${newAdvice}`,
    )
  })
}

/** The plan that the keys and values of `root` make. */
export function planFrom(root: MapEntry, source: PlanText): Outcome<Plan> {
  const list = valueAt(root, 'words') ?? { kind: 'empty', place: root.place }
  // Once for the words themselves and for what refers to them: the list may be a long file.
  const entries = wordEntries(list, wordContext(source))
  const item = itemContext(root, source, entries)
  const words = andThen(entries, found => planWords(found, list, wordContext(source)))
  const keys = readKeys(root, {
    what: 'a plan',
    readers: { ...planReaders(source, item), words: () => words },
    rules: missingKeys(root),
    belongsTo: keysOfItems(item),
  })
  return andThen(keys, ({ values }) => {
    const { words = [], print = [] } = values
    return succeed(assembled({ ...values, words, print }, source.file))
  })
}

/** What items refer to, taken from the text before it is read, so that one bad word hides no other problem. */
export function itemContext(root: MapEntry, source: PlanText, entries: Outcome<WordEntries>): ItemContext {
  const { vocabulary } = source
  const [groups, paper] = ['groups', 'paper'].map(key => valueAt(root, key))
  const ofGroups = typedGroupWords(groups, wordContext(source))
  const words = entries.ok ? [...typedWords(entries.value), ...ofGroups] : undefined
  const chosen = paper && paperReader(vocabulary)(paper)
  return {
    vocabulary,
    font: planFont(source),
    paper: chosen?.ok ? chosen.value : usualPaper(vocabulary.papers),
    groups: typedGroups(groups).map(({ text }) => text),
    ...present({ words: words?.map(({ text }) => text) }),
  }
}

export function planReaders(source: PlanText, item: ItemContext) {
  const context = wordContext(source)
  const { vocabulary, font } = item
  return {
    title: textReader('the title', 120),
    class: textReader('the name of the class', 120),
    seed: wholeNumberReader('the seed', 0, LARGEST_SEED),
    font,
    paper: paperReader(vocabulary),
    marks: (entry: Entry) => readMarks(entry, vocabulary),
    print: (entry: Entry) => readPrintList(entry, item),
    groups: (entry: Entry) => readGroups(entry, { ...context, font, size: typeSizeReader(vocabulary) }),
    accent: readAccent,
    'count sounds': readCountSounds,
    'class file': (entry: Entry) => readClassFile(entry, context),
    printer: readPrinter,
    contrast: readContrast,
  }
}

export function wordContext({ file, vocabulary, files }: PlanText): WordContext {
  return { patterns: vocabulary.patterns, files, file }
}

function planFont({ file, vocabulary, files }: PlanText): Reader<string> {
  return fontReader({ known: vocabulary.fonts, faultOfFont: vocabulary.faultOfFont, files, namedIn: file })
}

function keysOfItems(context: ItemContext): Readonly<Record<string, string>> {
  const options = [...context.vocabulary.layouts.values()].flatMap(layout => Object.keys(layout.options))
  const keys = [...Object.keys(itemReaders(context)), ...options]
  return Object.fromEntries(keys.map(key => [key, 'an item under "print:"']))
}

function planWords(entries: WordEntries, list: Entry, context: WordContext): Outcome<readonly PlanWord[]> {
  if (entries.items.length > 0) return readWords(entries, context)
  return fail(errorAt(list.place, 'the plan has no words', 'Write at least one word under "words:".'))
}

function missingKeys(root: MapEntry): readonly Problem[] {
  const advice = {
    words: 'Write words: and under it a dash and a word on each line, or the path of a .txt or .csv file.',
    print: 'Write print: and under it what to print, such as - layout: word-cards.',
  }
  return (['words', 'print'] as const)
    .filter(key => valueAt(root, key) === undefined)
    .map(key => errorAt(root.place, `the plan has no "${key}"`, advice[key]))
}
