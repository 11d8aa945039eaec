/** The weeks of a class file as those from which words come back. */
import { andThen, succeed } from '../../outcomes.js'
import type { Outcome } from '../../problems.js'
import { type SettingsFile, settingsContext } from '../settings/settings-context.js'
import { weeksBefore } from '../settings/weeks.js'
import type { WeekWordsRead } from '../week-words.js'
import { readEarlierWeeks } from './earlier-weeks.js'

/** With the weeks before that of the plan, where the class file has weeks and anything asks for them. */
export function withClassWeeks(read: WeekWordsRead, plan: SettingsFile): Outcome<WeekWordsRead> {
  const { review, groups, classFile } = read
  const settings = [review ?? classFile?.review, ...groups.map(group => group.review)]
  const isAsked = settings.some(setting => setting !== undefined && setting.from === undefined)
  if (!isAsked || classFile?.weeks === undefined) return succeed(read)
  const before = weeksBefore(classFile.weeks, plan.file)
  const lists = before.map(({ named, place }) => ({ kind: 'text', text: named, place }) as const)
  const context = { ...settingsContext({ ...plan, file: classFile.path }), laterPlan: plan.file }
  return andThen(readEarlierWeeks(lists, context), found => succeed({ ...read, weeksBefore: found }))
}
