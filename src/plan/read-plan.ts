/** The text of a plan → `Plan`, or every problem of it in one go. */

import { andThen, fail, failWith, inReadingOrder, outcomeOf, present, record, succeed } from '../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { assembled, usualPaper } from './assemble-plan.js'
import { disk } from './disk/disk.js'
import type { FileAccess } from './disk/file-access.js'
import type { ItemContext } from './items/item-keys.js'
import { printListReader } from './items/print-list.js'
import { type Schema, schemaOf } from './keys/json-schema.js'
import { type Key, key, reading, type ValueReader } from './keys/key.js'
import { type PlacedKey, placedKeys } from './keys/placed-keys.js'
import type { KeysTaken } from './keys/takes.js'
import type { Plan, PlanWord } from './plan.js'
import { type ReviewSetting, reviewReader } from './review/review-key.js'
import { readAccent } from './settings/accent.js'
import { type ClassFile, classFileKeys, classFileReader } from './settings/class-file.js'
import { readCluesFrom } from './settings/clues.js'
import { readContrast } from './settings/contrast.js'
import { readCountSounds } from './settings/count-sounds.js'
import { fontReader } from './settings/fonts.js'
import {
  everyGroupHasWords,
  groupListReader,
  type ReadGroup,
  typedGroups,
  typedGroupWords,
} from './settings/groups.js'
import { marksReader } from './settings/marks.js'
import { printerExample, readPrinter } from './settings/printer.js'
import { LARGEST_SEED, wholeNumberReader } from './values/numbers.js'
import { otherNames } from './values/other-names.js'
import { paperReader } from './values/papers.js'
import { textReader } from './values/texts.js'
import type { Vocabulary } from './vocabulary.js'
import { type WeekWords, weekWords } from './week-words.js'
import { readWords, typedWords, type WordEntries } from './words/list-words.js'
import type { WordContext } from './words/word-entry.js'
import { wordEntries, wordListTaken } from './words/word-list.js'
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
  const given = valueAt(root, 'words')
  const list = given ?? { kind: 'empty', place: root.place }
  const forGroupsAlone = given === undefined && everyGroupHasWords(valueAt(root, 'groups'))
  // Once for the words themselves and for what refers to them: the list may be a long file.
  const entries = forGroupsAlone
    ? succeed({ items: [], file: source.file })
    : wordEntries(list, wordContext(source))
  const words = andThen(entries, found =>
    forGroupsAlone ? succeed([]) : planWords(found, list, wordContext(source)),
  )
  const item = itemContext(root, source, entries)
  const readers = planKeys(source, item)
  const first = {
    'class file': readOnce(root, 'class file', readers['class file']),
    groups: readOnce(root, 'groups', readers.groups),
    review: readOnce(root, 'review', readers.review),
  }
  const week = weekFrom({ ...first, words })
  const old = week.ok ? [week.value, ...week.value.groups].flatMap(each => each.words) : []
  const withOld = { ...item, ...present({ words: item.words?.concat(old.map(({ text }) => text)) }) }
  const keys = readKeys(root, {
    what: 'a plan',
    readers: {
      ...readers,
      'class file': heldKey(readers['class file'], first['class file']),
      groups: heldKey(readers.groups, first.groups),
      review: heldKey(readers.review, first.review),
      print: planKeys(source, withOld).print,
      words: wordsKey(source, () => words),
    },
    rules: [...missingKeys(root), ...week.problems],
    others: otherNames('key', source.vocabulary),
  })
  return andThen(keys, ({ values: { print = [], ...values } }) =>
    andThen(week, ({ words, groups }) =>
      succeed(assembled({ ...values, words, groups, print }, source.file)),
    ),
  )
}

/** Problems of what it is made from are told with their keys. */
function weekFrom({ words, groups, review, 'class file': classFile }: ReadFirst): Outcome<WeekWords> {
  const nothing = succeed(undefined)
  const parts = record({
    words,
    groups: groups ?? succeed([]),
    review: review ?? nothing,
    classFile: classFile ?? nothing,
  })
  if (!parts.ok) return failWith([])
  const { value, problems } = weekWords(parts.value)
  return outcomeOf(value, problems)
}

interface ReadFirst {
  readonly words: Outcome<readonly PlanWord[]>
  readonly groups: Outcome<readonly ReadGroup[]> | undefined
  readonly review: Outcome<ReviewSetting> | undefined
  readonly 'class file': Outcome<ClassFile> | undefined
}

/** What other keys build on is read before them, and not again. */
function readOnce<T>(root: MapEntry, name: string, read: Reader<T>): Outcome<T> | undefined {
  const entry = valueAt(root, name)
  return entry === undefined ? undefined : read(entry)
}

function heldKey<T>(read: Key<T>, outcome: Outcome<T> | undefined): Key<T> {
  const { takes, text } = read
  return Object.assign((entry: Entry) => outcome ?? read(entry), { takes, text })
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

/** The keys of a plan itself; `words` is read apart, since items refer to them. */
export function planKeys(source: PlanText, item: ItemContext) {
  const context = wordContext(source)
  const { vocabulary, font } = item
  return {
    title: key('what stands at the head of every page', textReader('the title', 120), {
      usual: "the file's name",
    }),
    class: key('your class, under the title', textReader('the name of the class', 120), {
      example: 'Room 7, Heron Lane School',
    }),
    seed: key(
      'a number from which boards and orders are dealt; the same number deals the same',
      wholeNumberReader('the seed', 0, LARGEST_SEED),
      { example: '12', usual: '1' },
    ),
    font: key('the typeface', font, { example: 'lexend', usual: 'andika' }),
    paper: key('the paper of all items that name none', paperReader(vocabulary), {
      example: 'letter',
      usual: 'letter',
    }),
    marks: key('what is marked, in the order in which the key shows it', marksReader(vocabulary)),
    print: key('what is printed', printListReader(item), { example: '[word-cards, bingo]' }),
    groups: key('other children in the same week', groupListReader({ ...context, font, vocabulary })),
    review: key('which words of earlier weeks come back', reviewReader(context), {
      example: '[week-1.yaml, week-2.yaml]',
    }),
    accent: key('how your class speaks', readAccent, { usual: 'american' }),
    'count sounds': key('what counts as a sound', readCountSounds, { usual: 'as taught' }),
    clues: key('whether words without a clue of yours take one of our drafts', readCluesFrom, {
      example: 'drafts',
      usual: 'own, your own alone',
    }),
    'class file': key(
      'a file with what you have decided about words, your printer and your class, for every week',
      classFileReader(context),
    ),
    printer: key('what is known of your printer', readPrinter, { example: printerExample }),
    contrast: key('the colours of ink and card', readContrast, { usual: 'black on white' }),
  }
}

/** Words as a key of the plan, in the reading that `planFrom` has made of them. */
function wordsKey(source: PlanText, words: () => Outcome<readonly PlanWord[]>) {
  const taken = wordListTaken(wordContext(source), { empty: false })
  return key('the words of the week', reading(taken, words), { example: '[reed, marsh, wren]' })
}

/** All that a plan takes, as one value. */
export function planTaken(vocabulary: Vocabulary): KeysTaken {
  const source: PlanText = { file: 'plan.yaml', text: '', vocabulary, files: disk }
  const item: ItemContext = {
    vocabulary,
    font: planFont(source),
    paper: usualPaper(vocabulary.papers),
    groups: [],
  }
  const words = wordsKey(source, () => succeed([]))
  const keys = () => {
    const { title, class: ofClass, ...rest } = planKeys(source, item)
    return { title, class: ofClass, words, ...rest }
  }
  return { kind: 'keys', what: 'a plan', keys, needed: [['words', 'groups'], 'print'] }
}

/** Every key of a plan and of a class file, at each place where it can stand. */
export function keysOfPlan(vocabulary: Vocabulary): readonly PlacedKey[] {
  const inPlan = placedKeys(planTaken(vocabulary))
  const places = new Set(inPlan.map(({ place }) => place.what))
  const inClassFile = placedKeys(classFileTaken(vocabulary))
  return [...inPlan, ...inClassFile.filter(({ place }) => !places.has(place.what))]
}

export function planSchema(vocabulary: Vocabulary): Schema {
  return schemaOf(planTaken(vocabulary), { id: 'urn:oaktag:plan', title: 'A plan of oaktag' })
}

export function classFileSchema(vocabulary: Vocabulary): Schema {
  return schemaOf(classFileTaken(vocabulary), {
    id: 'urn:oaktag:class-file',
    title: 'A class file of oaktag',
  })
}

/** All that a class file takes. */
export function classFileTaken(vocabulary: Vocabulary): KeysTaken {
  const context: WordContext = { patterns: vocabulary.patterns, files: disk, file: 'class.yaml' }
  return { kind: 'keys', what: 'a class file', keys: () => classFileKeys(context), needed: [] }
}

export function wordContext({ file, vocabulary, files }: PlanText): WordContext {
  return { patterns: vocabulary.patterns, files, file, otherKeys: otherNames('key', vocabulary) }
}

function planFont({ file, vocabulary, files }: PlanText): ValueReader<string> {
  return fontReader({ known: vocabulary.fonts, faultOfFont: vocabulary.faultOfFont, files, namedIn: file })
}

function planWords(entries: WordEntries, list: Entry, context: WordContext): Outcome<readonly PlanWord[]> {
  if (entries.items.length > 0) return readWords(entries, context)
  return fail(errorAt(list.place, 'the plan has no words', 'Write at least one word under "words:".'))
}

function missingKeys(root: MapEntry): readonly Problem[] {
  const advice = {
    words:
      'Write words: and under it a dash and a word on each line, or the path of a .txt or .csv file; or give every group its words.',
    print: 'Write print: and under it what to print, such as - layout: word-cards.',
  }
  const isMissing = {
    words: valueAt(root, 'words') === undefined && !everyGroupHasWords(valueAt(root, 'groups')),
    print: valueAt(root, 'print') === undefined,
  }
  return (['words', 'print'] as const)
    .filter(key => isMissing[key])
    .map(key => errorAt(root.place, `the plan has no "${key}"`, advice[key]))
}
