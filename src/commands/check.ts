import { check, type PlanReport } from '../door/make.js'
import type { Problem } from '../door/problems.js'
import { type CommandResult, resultOf } from './command-result.js'
import { wrapLine } from './wrap-line.js'

export interface CheckOptions {
  readonly plan: readonly string[]
  readonly json: boolean
}

/** `oaktag check`: everything that `make` does but the writing, told in figures. */
export async function checkCommand({ plan: planFiles, json }: CheckOptions): Promise<CommandResult> {
  const problems: Problem[] = []
  const reports: PlanReport[] = []
  for (const plan of planFiles) {
    const checked = await check({ plan })
    for (const problem of checked.problems) problems.push(problem)
    if (checked.ok) reports.push(checked.value)
  }
  const output = json ? JSON.stringify(reports, null, 2) : reports.map(describe).join('\n\n')
  return resultOf(output, problems)
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
    ...report.items.flatMap(item =>
      [...item.notes, ...item.advice].flatMap(note => wrapLine(`  ${item.name}: ${note}`, 80)),
    ),
  ].join('\n')
}
