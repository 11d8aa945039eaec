import { check, type PlanReport } from '../door/make.js'
import type { Problem } from '../door/problems.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { describeProposed } from './describe-proposed.js'
import { describeReview } from './describe-review.js'
import { planApart } from './plan-apart.js'
import { plansToMake } from './plan-files.js'
import type { Input } from './standard-input.js'
import { wrapLine } from './wrap-line.js'

export interface CheckOptions {
  readonly plan: readonly string[]
  readonly json: boolean
  /** Problems alone. */
  readonly quiet?: boolean
}

/** `oaktag check`: everything that `make` does but the writing, told in figures. */
export async function checkCommand(options: CheckOptions, input?: Input): Promise<CommandResult> {
  const { plan: given, json, quiet = false } = options
  if (given.length === 0)
    return wrongUsage('check needs a plan', 'Write oaktag check PLAN, such as oaktag check plan.yaml.')
  const { paths, problems: ofPaths, files } = await plansToMake(given, input)
  const checked: CheckedPlan[] = []
  for (const plan of paths) {
    const { problems, ...outcome } = await planApart(plan, () =>
      check({ plan, ...(files === undefined ? {} : { files }) }),
    )
    checked.push({ plan, problems, ...(outcome.ok ? { report: outcome.value } : {}) })
  }
  const all: Problem[] = [...ofPaths]
  for (const { problems } of checked) for (const problem of problems) all.push(problem)
  if (json) return resultOf(JSON.stringify(checked.map(asJson), null, 2), all)
  const reports = checked.flatMap(({ report }) => (report === undefined ? [] : [describe(report)]))
  return resultOf(quiet ? '' : reports.join('\n\n'), all)
}

interface CheckedPlan {
  readonly plan: string
  readonly problems: readonly Problem[]
  /** Left out where an error kept it from being made. */
  readonly report?: PlanReport
}

/** The report with the problems in it; of a plan with errors, these alone. */
function asJson({ plan, problems, report }: CheckedPlan) {
  const told = problems.map(({ severity, place, message, advice }) => ({
    severity,
    ...place,
    message,
    advice,
  }))
  return { ...(report ?? { plan }), problems: told }
}

function describe(report: PlanReport): string {
  const names = report.items.map(item => item.name)
  const width = Math.max(5, ...names.map(name => name.length))
  const row = (name: string, counts: readonly (string | number)[]) =>
    `  ${name.padEnd(width)}${counts.map(count => String(count).padStart(9)).join('')}`
  const figures = (of: Pick<PlanReport, 'pages' | 'sheetsOfCard' | 'pieces' | 'cuts' | 'wasteShare'>) => [
    of.pages,
    of.sheetsOfCard,
    of.pieces,
    of.cuts,
    of.sheetsOfCard === 0 ? '' : `${Math.round(of.wasteShare * 100)} %`,
  ]
  return [
    `${report.title} (${report.plan}): nothing written, this is what it would take`,
    row('', ['pages', 'card', 'pieces', 'cuts', 'waste']),
    ...report.items.map(item => row(item.name, figures(item))),
    row('in all', figures(report)),
    ...describeReview(report.review).map(line => `  ${line}`),
    ...notesOf(report).flatMap(note => wrapLine(`  ${note}`, 80)),
    ...describeProposed(report.proposed),
  ].join('\n')
}

/** `word-cards: …`, item by item; what holds of several is said once, at the end. */
function notesOf({ items }: PlanReport): readonly string[] {
  const all = items.flatMap(({ name, notes, advice }) => [...notes, ...advice].map(note => ({ name, note })))
  const uses = new Map<string, number>()
  for (const { note } of all) uses.set(note, (uses.get(note) ?? 0) + 1)
  const isShared = (note: string) => uses.get(note)! > 1
  const own = all.filter(({ note }) => !isShared(note)).map(({ name, note }) => `${name}: ${note}`)
  return [...own, ...[...uses.keys()].filter(isShared)]
}
