import {
  type DueWord,
  dueInWords,
  type NotMet,
  type ToldClass,
  type ToldWeek,
  tellClass,
} from '../door/class-weeks.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { wrapLine } from './wrap-line.js'

export interface ClassOptions {
  readonly file?: string | undefined
  readonly week?: number | undefined
  readonly json: boolean
}

/** `oaktag class`: a class's weeks in short, and one of them in full. */
export async function classCommand({ file, week, json }: ClassOptions): Promise<CommandResult> {
  if (file === undefined)
    return wrongUsage(
      'class needs a class file',
      'Write oaktag class FILE, such as oaktag class room-7.yaml.',
    )
  if (week !== undefined && !(Number.isInteger(week) && week >= 1))
    return wrongUsage('--week takes a whole number', 'Give the number of a week, the first being 1.')
  const told = tellClass({ file, inFull: week ?? (json ? 'all' : 'last') })
  if (!told.ok) return resultOf(json ? 'null' : '', told.problems)
  const { problems, ...rest } = told.value
  const all = [...told.problems, ...problems]
  return resultOf(json ? JSON.stringify(rest, null, 2) : describeClass(told.value), all)
}

function describeClass({ file, taught, weeks }: ToldClass): string {
  const before =
    taught === undefined ? [] : wrapLine(`Taught before week 1: ${taught.join(', ') || 'nothing'}`, 80)
  if (weeks.length === 0)
    return [`${file} has no weeks yet: write weeks: and under it the plans of its weeks.`, ...before].join(
      '\n',
    )
  const width = Math.max(4, ...weeks.map(({ plan }) => plan.length))
  const head = `week  ${'plan'.padEnd(width)}  words  newly taught`
  const rows = weeks.flatMap(({ week, plan, words, taught: newly }) => {
    const row = `${String(week).padStart(4)}  ${plan.padEnd(width)}  ${String(words.length).padStart(5)}`
    return wrapRow(newly.length === 0 ? row : `${row}  ${newly.join(', ')}`, width + 15)
  })
  const full = weeks.filter(({ due }) => due !== undefined)
  return [
    `${file}: ${weeks.length === 1 ? '1 week' : `${weeks.length} weeks`}`,
    ...before,
    '',
    head,
    ...rows,
    ...full.flatMap(week => ['', ...describeWeek(week)]),
  ].join('\n')
}

/** What does not fit on the line goes on under its column. */
function wrapRow(line: string, columnAt: number): readonly string[] {
  if (columnAt > 50) return wrapLine(line, 80)
  const [first = '', ...more] = wrapLine(line, 80)
  const rest = more.map(each => each.trim()).join(' ')
  if (rest === '') return [first]
  return [first, ...wrapLine(' '.repeat(columnAt) + rest, 80)]
}

function describeWeek({ week, plan, due = [], inPlan, notMet }: ToldWeek): readonly string[] {
  return [
    `Week ${week}, ${plan}`,
    ...describeDue(due, { isFirst: week === 1, inPlan: inPlan === true }),
    ...describeNotMet(notMet),
  ].flatMap(line => wrapLine(line, 80))
}

function describeDue(
  due: readonly DueWord[],
  { isFirst, inPlan }: { isFirst: boolean; inPlan: boolean },
): readonly string[] {
  if (due.length === 0)
    return [isFirst ? '  No words can come back in the first week.' : '  No words are due to come back.']
  const lists = [...new Map(due.map(each => [`${each.group} ${each.from} ${each.weeksAgo}`, each])).values()]
  const rows = lists.map(({ from, weeksAgo, group }) => {
    const words = due.filter(each => each.from === from && each.weeksAgo === weeksAgo && each.group === group)
    const whom = group === null ? '' : `, for ${group}`
    const when = weeksAgo === 1 ? 'last week' : `${weeksAgo} weeks ago`
    return `    ${from === '' ? when : `${from}, ${when}`}${whom}: ${words.map(({ word }) => word).join(', ')}`
  })
  const head = inPlan
    ? '  Back for review:'
    : '  Due, but not in the plan (review: yes in the class file takes them in):'
  return [head, ...rows, `  Why now: ${dueInWords}.`]
}

function describeNotMet(notMet: readonly NotMet[] | undefined): readonly string[] {
  if (notMet === undefined) return ['  What the class has met is not known: write taught: in the class file.']
  if (notMet.length === 0) return ['  The class has met all that its own words show.']
  return [
    '  Not met so far, and shown by its own words:',
    ...notMet.map(({ pattern, words }) => `    ${pattern}: ${words.map(showLetters).join(', ')}`),
  ]
}

/** `marsh (ar)`. */
function showLetters({ word, letters }: NotMet['words'][number]): string {
  return `${word} (${letters})`
}
