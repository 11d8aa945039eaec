/** The words of an earlier week: of its plan, of a word list, or as they stand in this week's plan. */
import { dirname, isAbsolute, join, resolve } from 'node:path'
import { andThen, fail, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { readTextFile } from '../disk/text-file.js'
import type { PlanWord } from '../plan.js'
import { stemOf } from '../stem.js'
import { foldName } from '../values/fold-name.js'
import { readWords } from '../words/list-words.js'
import type { WordContext } from '../words/word-entry.js'
import { wordEntries } from '../words/word-list.js'
import { eachWordOnce } from '../words/word-text.js'
import type { Entry, TextEntry } from '../yaml/entry.js'
import { valueAt } from '../yaml/keys.js'
import { withSlipsMended } from '../yaml/typing-slips.js'
import { yamlEntries } from '../yaml/yaml-entries.js'
import type { WeekOfWords } from './choose-review.js'

export interface EarlierWeek extends WeekOfWords {
  /** Whether it is a plan, which says what each group worked with. */
  readonly isPlan: boolean
  /** By the folded name: what a group of that plan worked with. */
  readonly groups: ReadonlyMap<string, readonly PlanWord[]>
}

export const planForm = /\.ya?ml$/i
export const listForm = /\.(?:txt|csv)$/i

export interface EarlierContext extends WordContext {
  /** The plan to which words come back, where another file names the weeks. */
  readonly laterPlan?: string
}

/** @param entry names the file, relative to `context.file` */
export function earlierFile(entry: TextEntry, context: EarlierContext): Outcome<EarlierWeek> {
  if (listForm.test(entry.text)) return listedWords(entry, context, stemOf(entry.text))
  const path = pathFrom(entry.text, context.file)
  const content = readTextFile({ path, what: 'the earlier plan', place: entry.place }, context.files)
  const readFrom = (text: string) =>
    andThen(yamlEntries(path, text), root =>
      root?.kind === 'map'
        ? weekOfPlan(root, { ...context, file: path }, context.laterPlan ?? context.file)
        : fail<EarlierWeek>(errorAt({ file: path }, 'the earlier plan has no words', aboutWords)),
    )
  return andThen(content, text => withoutWarnings(withSlipsMended(path, text, readFrom)))
}

/** Words in brackets, or the path of a word list. */
export function listedWords(entry: Entry, context: WordContext, name = ''): Outcome<EarlierWeek> {
  const words = andThen(wordEntries(entry, context), entries => readWords(entries, context))
  return withoutWarnings(
    andThen(words, list =>
      list.length > 0
        ? succeed({ name, words: list, isPlan: false, groups: new Map() })
        : fail<EarlierWeek>(
            errorAt(entry.place, 'an earlier list has no words', 'Write its words, or take it out.'),
          ),
    ),
  )
}

export function pathFrom(named: string, file: string): string {
  return isAbsolute(named) ? named : join(dirname(file), named)
}

const aboutWords = 'Name a plan with words:, or a word list, .txt or .csv.'

function weekOfPlan(root: Entry, context: WordContext, later: string): Outcome<EarlierWeek> {
  if (namesPlan(valueAt(root, 'review'), context.file, later)) {
    const advice = 'Of two weeks only the later one can name the other under review:.'
    return fail(
      errorAt(
        { file: context.file },
        `this plan takes up words of "${later}", which takes up words of it`,
        advice,
      ),
    )
  }
  if (valueAt(root, 'weeks') !== undefined && !printsSomething(root))
    return fail(errorAt({ file: context.file }, 'this is a class file, not a plan', aboutWords))
  const words = wordsAt(root, 'words', context)
  const groups = valueAt(root, 'groups')
  const ofGroups = together(
    (groups?.kind === 'list' ? groups.items : []).map(group => groupWords(group, words, context)),
  )
  return andThen(words, ofClass =>
    andThen(ofGroups, found => {
      const week: EarlierWeek = {
        name: stemOf(context.file),
        words: ofClass,
        isPlan: true,
        groups: new Map(found.flat()),
      }
      const hasWords = [ofClass, ...week.groups.values()].some(list => list.length > 0)
      return hasWords
        ? succeed(week)
        : fail<EarlierWeek>(errorAt({ file: context.file }, 'the earlier plan has no words', aboutWords))
    }),
  )
}

/** What a group worked with; none for one whose name cannot be read. */
function groupWords(
  group: Entry,
  ofClass: Outcome<readonly PlanWord[]>,
  context: WordContext,
): Outcome<readonly (readonly [string, readonly PlanWord[]])[]> {
  const name = group.kind === 'text' ? group : valueAt(group, 'name')
  if (name?.kind !== 'text') return succeed([])
  const shared = ofClass.ok ? ofClass.value : []
  const named = (words: readonly PlanWord[]) => [[foldName(name.text), words] as const]
  return andThen(wordsAt(group, 'words', context), own =>
    andThen(wordsAt(group, 'more words', context), more =>
      succeed(named(own.length > 0 ? own : eachWordOnce([...shared, ...more]))),
    ),
  )
}

function wordsAt(map: Entry, key: string, context: WordContext): Outcome<readonly PlanWord[]> {
  const list = valueAt(map, key)
  if (list === undefined || list.kind === 'empty') return succeed([])
  return andThen(wordEntries(list, context), entries => readWords(entries, context))
}

/** Whether a plan's own `review:` names the file. */
function namesPlan(review: Entry | undefined, from: string, file: string): boolean {
  const lists = valueAt(review, 'from') ?? review
  const named = lists?.kind === 'list' ? lists.items : [lists]
  return named.some(
    each =>
      each?.kind === 'text' &&
      planForm.test(each.text) &&
      resolve(pathFrom(each.text, from)) === resolve(file),
  )
}

/** They are told when that week is made. */
function withoutWarnings<T>(outcome: Outcome<T>): Outcome<T> {
  return { ...outcome, problems: outcome.problems.filter(({ severity }) => severity === 'error') }
}

function printsSomething(root: Entry): boolean {
  return ['print', 'week'].some(key => valueAt(root, key) !== undefined)
}
