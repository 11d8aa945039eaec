/** A class file in place of a plan: the plans of all its weeks. */
import { dirname, isAbsolute, relative, resolve } from 'node:path'
import { andThen, fail, succeed } from '../outcomes.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../problems.js'
import { readTextFile } from './disk/text-file.js'
import { pathFrom } from './review/earlier-plan.js'
import { type ClassFile, classFileOf } from './settings/class-file.js'
import type { SettingsFile } from './settings/settings-context.js'
import type { ClassWeek } from './settings/weeks.js'
import { valueAt } from './yaml/keys.js'
import { yamlEntries } from './yaml/yaml-entries.js'

/** The class file at `source.file`; undefined where it is something else, or cannot be read at all. */
export function classFileAt(source: SettingsFile): Outcome<ClassFile> | undefined {
  const { file, files } = source
  const text = readTextFile({ path: file, what: 'the plan', place: { file } }, files)
  return text.ok && isClassFile(text.value) ? classFileOf(text.value, source) : undefined
}

/** A plan prints something, a class file never does; that one names its weeks is more than that it says `week` by mistake. */
function isClassFile(text: string): boolean {
  const has = (key: RegExp) => key.test(text)
  if (has(/^print\s*:/im)) return false
  return has(/^weeks\s*:/im) || (has(/^taught\s*:/im) && !has(/^week\s*:/im))
}

/** The class file that a plan names, as it can be opened; undefined where it names none, or is no plan. */
export function classFileNamedBy({ file, files }: SettingsFile): string | undefined {
  const text = readTextFile({ path: file, what: 'the plan', place: { file } }, files)
  const root = text.ok ? yamlEntries(file, text.value) : text
  const named = root.ok ? valueAt(root.value ?? undefined, 'class file') : undefined
  return named?.kind === 'text' ? pathFrom(named.text, file) : undefined
}

export interface ClassPlans {
  /** As they can be opened, in the order of the weeks; those that are not there are left out. */
  readonly paths: readonly string[]
  readonly problems: readonly Problem[]
}

/** The plans of a class file's weeks; undefined where the file is no class file. */
export function plansOfClass(source: SettingsFile): ClassPlans | undefined {
  const read = classFileAt(source)
  if (read === undefined) return undefined
  const plans = andThen(read, classFile => {
    const weeks = (classFile.weeks ?? []).filter(({ isPlan }) => isPlan)
    if (weeks.length > 0)
      return succeed(weeks.map(week => ({ week, problems: weekProblems(week, classFile, source) })))
    const advice = 'Write weeks: and under it the plans of its weeks, a dash before each; or give a plan.'
    return fail<readonly { week: ClassWeek; problems: readonly Problem[] }[]>(
      errorAt({ file: source.file }, 'the class file names no plans of its weeks', advice),
    )
  })
  if (!plans.ok) return { paths: [], problems: plans.problems }
  const there = plans.value.filter(({ problems }) => problems.every(({ severity }) => severity === 'warning'))
  return {
    paths: there.map(({ week }) => week.path),
    problems: [...plans.problems, ...plans.value.flatMap(({ problems }) => problems)],
  }
}

/** What of a week is told at the class file: that its plan is missing, or knows nothing of the class. */
function weekProblems(
  { path, place, named }: ClassWeek,
  classFile: ClassFile,
  { files }: SettingsFile,
): readonly Problem[] {
  const text = readTextFile({ path, what: 'the plan', place }, files)
  if (!text.ok) return text.problems
  if (isClassFile(text.value))
    return [errorAt(place, `"${named}" is a class file, not a plan`, 'Name the plans of the weeks alone.')]
  const root = yamlEntries(path, text.value)
  if (!root.ok || root.value?.kind !== 'map') return []
  const own = valueAt(root.value, 'class file')
  if (own?.kind === 'text' && resolve(pathFrom(own.text, path)) === resolve(classFile.path)) return []
  return [
    warningAt(
      place,
      `the plan "${named}" does not name this class file, so what is decided here does not hold for it`,
      `Write in it: class file: ${isAbsolute(named) ? resolve(classFile.path) : relative(dirname(path), classFile.path)}`,
    ),
  ]
}
