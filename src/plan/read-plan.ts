/** The text of a plan → `Plan`, or every problem of it in one go. */

import { andThen, fail, failWith, inReadingOrder, outcomeOf, present, record, succeed } from '../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { assembled, usualPaper } from './assemble-plan.js'
import type { ItemContext } from './items/item-keys.js'
import type { Key } from './keys/key.js'
import type { Plan, PlanWord, PrintItem } from './plan.js'
import { planKeys, wordsKey } from './plan-keys.js'
import { withClassWeeks } from './review/class-weeks.js'
import type { ReviewSetting } from './review/review-key.js'
import { type ClassFile, classFileReader } from './settings/class-file.js'
import type { ClassGroup } from './settings/class-groups.js'
import { everyGroupHasWords, type ReadGroup, typedGroups, typedGroupWords } from './settings/groups.js'
import { type SettingsFile, settingsContext } from './settings/settings-context.js'
import { otherNames } from './values/other-names.js'
import { paperReader } from './values/papers.js'
import { readWeek, type WeekWish } from './week/week-key.js'
import { type WeekRequest, withWeek } from './week/with-week.js'
import { type WeekWords, weekWords } from './week-words.js'
import { readWords, typedWords, type WordEntries } from './words/list-words.js'
import type { WordContext } from './words/word-entry.js'
import { wordEntries } from './words/word-list.js'
import { type Entry, type MapEntry, misfit, type Reader } from './yaml/entry.js'
import { readKeys, valueAt } from './yaml/keys.js'
import { withSlipsMended } from './yaml/typing-slips.js'
import { yamlEntries } from './yaml/yaml-entries.js'

export interface PlanText extends SettingsFile {
  readonly text: string
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
    : wordEntries(list, settingsContext(source))
  const words = andThen(entries, found =>
    forGroupsAlone ? succeed([]) : planWords(found, list, settingsContext(source)),
  )
  const classFile = readOnce(root, 'class file', classFileReader(source))
  const classGroups = groupsOf(classFile)
  const item = itemContext({ root, source, entries, classGroups })
  const readers = planKeys(source, item, classGroups)
  const first = {
    'class file': classFile,
    groups: readOnce(root, 'groups', readers.groups),
    review: readOnce(root, 'review', readers.review),
  }
  const week = weekFrom({ ...first, words }, source)
  const old = week.ok ? [week.value, ...week.value.groups].flatMap(each => each.words) : []
  const withOld = { ...item, ...present({ words: item.words?.concat(old.map(({ text }) => text)) }) }
  const keys = readKeys(root, {
    what: 'a plan',
    readers: {
      ...readers,
      'class file': heldKey(readers['class file'], first['class file']),
      groups: heldKey(readers.groups, first.groups),
      review: heldKey(readers.review, first.review),
      print: planKeys(source, withOld, classGroups).print,
      words: wordsKey(source, () => words),
    },
    rules: [...missingKeys(root), ...week.problems],
    others: otherNames('key', source.vocabulary),
  })
  return andThen(keys, ({ values: { print: named = [], ...values } }) =>
    andThen(week, ({ words, ...others }) => {
      const print = withPartsOfWeek(values.week, named, {
        context: withOld,
        classHasWords: words.length > 0,
        marksNothing: values.marks?.length === 0,
      })
      return andThen(print, items =>
        succeed(assembled({ ...values, ...others, words, print: items }, source.file)),
      )
    }),
  )
}

function withPartsOfWeek(
  week: WeekWish | undefined,
  print: readonly PrintItem[],
  about: Omit<WeekRequest, 'week' | 'print'>,
): Outcome<readonly PrintItem[]> {
  return week === undefined ? succeed(print) : withWeek({ week, print, ...about })
}

/** Problems of what it is made from are told with their keys. */
function weekFrom(
  { words, groups, review, 'class file': classFile }: ReadFirst,
  source: PlanText,
): Outcome<WeekWords> {
  const nothing = succeed(undefined)
  const parts = record({
    words,
    groups: groups ?? succeed([]),
    review: review ?? nothing,
    classFile: classFile ?? nothing,
  })
  if (!parts.ok) return failWith([])
  return andThen(withClassWeeks(parts.value, source), read => {
    const { value, problems } = weekWords(read)
    return outcomeOf(value, problems)
  })
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
export function itemContext({ root, source, entries, classGroups }: Referred): ItemContext {
  const { vocabulary } = source
  const context = settingsContext(source)
  const [groups, paper] = ['groups', 'paper'].map(key => valueAt(root, key))
  const ofGroups = typedGroupWords(groups, context)
  const words = entries.ok ? [...typedWords(entries.value), ...ofGroups] : undefined
  const chosen = paper && paperReader(vocabulary)(paper)
  return {
    vocabulary,
    font: context.font,
    paper: chosen?.ok ? chosen.value : usualPaper(vocabulary.papers),
    groups: typedGroups(groups, classGroups),
    ...present({ words: words?.map(({ text }) => text) }),
  }
}

interface Referred {
  readonly root: MapEntry
  readonly source: PlanText
  readonly entries: Outcome<WordEntries>
  readonly classGroups: readonly ClassGroup[] | undefined
}

/** The groups of the class file; none where the plan names none, undefined where it cannot be read. */
export function groupsOf(classFile: Outcome<ClassFile> | undefined): readonly ClassGroup[] | undefined {
  if (classFile === undefined) return []
  return classFile.ok ? (classFile.value.groups ?? []) : undefined
}

function planWords(entries: WordEntries, list: Entry, context: WordContext): Outcome<readonly PlanWord[]> {
  if (entries.items.length > 0) return readWords(entries, context)
  return fail(errorAt(list.place, 'the plan has no words', 'Write at least one word under "words:".'))
}

function missingKeys(root: MapEntry): readonly Problem[] {
  const advice = {
    words:
      'Write words: and under it a dash and a word on each line, or the path of a .txt or .csv file; or give every group its words.',
    print:
      "Write print: and under it what to print, such as - layout: word-cards; or week: yes for the week's whole set.",
  }
  const isMissing = {
    words: valueAt(root, 'words') === undefined && !everyGroupHasWords(valueAt(root, 'groups')),
    print: valueAt(root, 'print') === undefined && !asksForWeek(root),
  }
  return (['words', 'print'] as const)
    .filter(key => isMissing[key])
    .map(key => errorAt(root.place, `the plan has no "${key}"`, advice[key]))
}

/** What is wrong with the wish is told with it. */
function asksForWeek(root: MapEntry): boolean {
  const wish = valueAt(root, 'week')
  const read = wish && readWeek(wish)
  return read !== undefined && !(read.ok && read.value === undefined)
}
