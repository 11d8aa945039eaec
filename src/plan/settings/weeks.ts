/** `weeks:` of a class file: the plans of its weeks in the order in which they are taught. */
import { resolve } from 'node:path'
import { andThen, fail, failWith, outcomeOf, present, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { tooMany } from '../most-entries.js'
import type { TaughtEntry } from '../plan.js'
import { listForm, pathFrom, planForm } from '../review/earlier-plan.js'
import { repetitions } from '../values/repetitions.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import type { SettingsContext } from './settings-context.js'
import { taughtReader } from './taught.js'

export interface ClassWeek {
  readonly place: Place
  /** As she typed it, relative to the class file. */
  readonly named: string
  /** As it can be opened from where she stands. */
  readonly path: string
  /** A word list of a week without a plan: its words come back, nothing is made of it. */
  readonly isPlan: boolean
  /** What is newly taught in it. */
  readonly taught: readonly TaughtEntry[]
}

const form = 'Write a dash and the path of its plan, .yaml, on each line; or plan: and its keys.'

const readPath = (context: SettingsContext): ValueReader<ClassWeek> => {
  const takes: Takes = {
    kind: 'form',
    what: 'the path of a plan, or of a word list for a week without one',
    samples: ['week-1.yaml', 'week-1.txt'],
    pattern: String.raw`\.(?:ya?ml|txt|csv)$`,
  }
  return reading(takes, entry => {
    if (entry.kind !== 'text') return misfit(entry, 'a week', form)
    const { text: named, place } = entry
    const path = pathFrom(named, context.file)
    const isPlan = planForm.test(named)
    if (!isPlan && !listForm.test(named))
      return fail(errorAt(place, `"${named}" is no plan and no word list`, form))
    if (resolve(path) === resolve(context.file))
      return fail(errorAt(place, `"${named}" is the class file itself`, 'Name the plans of its weeks.'))
    return succeed({ place, named, path, isPlan, taught: [] })
  })
}

function weekKeys(context: SettingsContext) {
  return {
    plan: key('the plan of the week', readPath(context), { example: 'week-1.yaml' }),
    taught: key('what is newly taught in it', taughtReader(context.patterns), {
      example: '[vowel-team]',
      usual: 'nothing new',
    }),
  }
}

export function weeksReader(context: SettingsContext): ValueReader<readonly ClassWeek[]> {
  const keys: Takes = {
    kind: 'keys',
    what: 'a week',
    keys: () => weekKeys(context),
    needed: ['plan'],
    beside: 'plan: week-1.yaml',
  }
  const of: Takes = { kind: 'any of', ways: [readPath(context).takes, keys] }
  const readWeek = (entry: Entry): Outcome<ClassWeek> => {
    if (entry.kind !== 'map') return readPath(context)(entry)
    const rules = valueAt(entry, 'plan') ? [] : [errorAt(entry.place, 'a week has no "plan"', form)]
    const read = readKeys(entry, { what: 'a week', readers: weekKeys(context), rules })
    return andThen(read, ({ values: { plan, taught = [] } }) => succeed({ ...plan!, taught }))
  }
  return reading({ kind: 'list', of, alone: false, empty: true }, entry => {
    if (entry.kind === 'empty') return succeed([])
    if (entry.kind !== 'list') return misfit(entry, 'a list of weeks', form)
    const tooLong = tooMany('weeks', entry.items, entry.place)
    if (tooLong.length > 0) return failWith(tooLong)
    const weeks = together(entry.items.map(readWeek))
    return andThen(weeks, read => outcomeOf(read, twice(read)))
  })
}

function twice(weeks: readonly ClassWeek[]): readonly Problem[] {
  return repetitions(weeks, ({ path }) => resolve(path)).map(({ item, lines }) =>
    errorAt(item.place, `the week "${item.named}" stands twice${lines}`, 'Take one of the two out.'),
  )
}

/** The weeks before that of a plan; all of them for a plan that they do not name, which is taken to be the next. */
export function weeksBefore(weeks: readonly ClassWeek[], planFile: string): readonly ClassWeek[] {
  const at = weeks.findIndex(({ path }) => resolve(path) === resolve(planFile))
  return at < 0 ? weeks : weeks.slice(0, at)
}

interface TaughtByWeek {
  /** Before the first week. */
  readonly taught?: readonly TaughtEntry[]
  readonly weeks?: readonly ClassWeek[]
}

/** What is taught up to the week of a plan and in it; undefined where nothing is said of it. */
export function taughtUntil({ taught, weeks = [] }: TaughtByWeek, planFile: string) {
  return taughtInAll({
    ...present({ taught }),
    weeks: weeks.slice(0, weeksBefore(weeks, planFile).length + 1),
  })
}

export function taughtInAll({ taught, weeks = [] }: TaughtByWeek): readonly TaughtEntry[] | undefined {
  const inWeeks = weeks.flatMap(week => week.taught)
  return taught === undefined && inWeeks.length === 0 ? undefined : [...(taught ?? []), ...inWeeks]
}
