/** A class's weeks, as `oaktag class` tells them: what is taught, which words are due, what is new to the class. */
import { basename, resolve } from 'node:path'
import { andThen, fail, present, succeed } from '../outcomes.js'
import { backForReview } from '../pipeline/report/back-for-review.js'
import { planVocabulary } from '../pipeline/vocabulary.js'
import { classFileNamedBy } from '../plan/class-plans.js'
import { disk } from '../plan/disk/disk.js'
import type { FileAccess } from '../plan/disk/file-access.js'
import { loadPlan } from '../plan/load-plan.js'
import type { Plan, TaughtEntry } from '../plan/plan.js'
import { chooseReview } from '../plan/review/choose-review.js'
import type { EarlierWeek } from '../plan/review/earlier-plan.js'
import { readEarlierWeeks } from '../plan/review/earlier-weeks.js'
import { usualShare } from '../plan/review/share.js'
import { type ClassFile, readClassFile } from '../plan/settings/class-file.js'
import { settingsContext } from '../plan/settings/settings-context.js'
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { unmetIn } from '../words/find/unmet-in-words.js'
import { installedLexicon } from '../words/lexicon/lexicon.js'

export interface ToldClass {
  /** As it can be opened. */
  readonly file: string
  /** Before the first week, as she wrote it; undefined where the class file says nothing of it at all. */
  readonly taught?: readonly string[]
  readonly weeks: readonly ToldWeek[]
  /** Problems of the plans of weeks that are told in full; a week with an error is told as far as it goes. */
  readonly problems: readonly Problem[]
}

export interface ToldWeek {
  /** From 1. */
  readonly week: number
  /** Its plan or word list, as the class file names it. */
  readonly plan: string
  /** Its own words, without those that came back. */
  readonly words: readonly string[]
  /** What is newly taught in it, as she wrote it. */
  readonly taught: readonly string[]
  /** Of a week that is told in full. */
  readonly due?: readonly DueWord[]
  /** Whether the words that are due are in its plan, or would be if it asked for them. */
  readonly inPlan?: boolean
  /** Patterns that its words show and the class has not met; undefined where nothing is said of what is taught. */
  readonly notMet?: readonly NotMet[]
}

export interface DueWord {
  readonly word: string
  /** The list it was on. */
  readonly from: string
  readonly weeksAgo: number
  /** The group that it comes back for; null for the whole class. */
  readonly group: string | null
}

export interface NotMet {
  readonly pattern: string
  readonly words: readonly { readonly word: string; readonly letters: string }[]
}

export interface ClassTelling {
  /** Path of a class file, or of a plan that names one. */
  readonly file: string
  /** Weeks to tell in full, from 1; `last` is the plan's own week where a plan is given. */
  readonly inFull: 'all' | 'last' | number
  readonly files?: FileAccess
}

export function tellClass({ file, inFull, files = disk }: ClassTelling): Outcome<ToldClass> {
  const vocabulary = planVocabulary()
  const named = classFileNamedBy({ file, files, vocabulary })
  const path = named ?? file
  const source = { file: path, files, vocabulary }
  const entry = { kind: 'text', text: basename(path), place: { file: path } } as const
  return andThen(readClassFile(entry, source), read => {
    const classFile = { ...read, path }
    const { weeks = [] } = classFile
    const own = named === undefined ? -1 : weeks.findIndex(week => resolve(week.path) === resolve(file))
    const chosen = inFull === 'last' ? (own < 0 ? weeks.length : own + 1) : inFull
    if (typeof chosen === 'number' && weeks.length > 0 && (chosen < 1 || chosen > weeks.length)) {
      const advice = `Give --week from 1 to ${weeks.length}.`
      return fail(errorAt({ file: path }, `the class file has no week ${chosen}`, advice))
    }
    const lists = weeks.map(({ named: text, place }) => ({ kind: 'text', text, place }) as const)
    return andThen(readEarlierWeeks(lists, settingsContext(source)), read => {
      const told = weeks.map((week, index) => {
        const brief: ToldWeek = {
          week: index + 1,
          plan: week.named,
          words: read[index]!.words.map(({ text }) => text),
          taught: week.taught.map(asWritten),
        }
        const isFull = week.isPlan && (chosen === 'all' || chosen === index + 1)
        return isFull
          ? inFullOf(brief, { path: week.path, classFile, before: read.slice(0, index), files })
          : { week: brief, problems: [] }
      })
      const problems = told.flatMap(each => each.problems)
      return succeed({
        file: path,
        ...present({ taught: classFile.taught?.map(asWritten) }),
        weeks: told.map(({ week }) => week),
        problems,
      })
    })
  })
}

interface WeekPlan {
  readonly path: string
  readonly classFile: ClassFile
  readonly before: readonly EarlierWeek[]
  readonly files: FileAccess
}

function inFullOf(week: ToldWeek, { path, before, files }: WeekPlan) {
  const plan = loadPlan(path, planVocabulary(), files)
  if (!plan.ok) return { week, problems: plan.problems }
  const back = backForReview(plan.value)
  const due = back.length > 0 ? back : dueFor(plan.value, before)
  const notMet = newToClass(plan.value)
  const found = notMet.ok ? present({ notMet: notMet.value }) : {}
  return {
    week: { ...week, due, inPlan: back.length > 0, ...found },
    problems: [...plan.problems, ...notMet.problems],
  }
}

/** What would come back if the plan asked for it. */
function dueFor({ words }: Plan, earlier: readonly EarlierWeek[]): readonly DueWord[] {
  const { words: due } = chooseReview({ earlier, own: words, share: usualShare })
  return due.flatMap(({ text, cameBack }) =>
    cameBack === undefined ? [] : [{ word: text, ...cameBack, group: null }],
  )
}

function newToClass({ taught, words, groups, accent }: Plan): Outcome<readonly NotMet[] | undefined> {
  if (taught === undefined) return succeed(undefined)
  const own = [words, ...groups.map(group => group.words)].flat().filter(word => word.cameBack === undefined)
  return unmetIn({ taught, words: [...new Set(own)], lexicon: installedLexicon(), ways: present({ accent }) })
}

function asWritten(entry: TaughtEntry): string {
  if (entry.kind === 'pattern') return entry.pattern
  return entry.asIn === undefined ? entry.letters : `${entry.letters} as in ${entry.asIn}`
}

export { dueInWords } from '../plan/review/due.js'
