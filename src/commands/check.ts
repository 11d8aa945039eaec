import { type ItemReport, reportItems } from '../pipeline/report/item-report.js'
import { putPlanOnSheets } from '../pipeline.js'
import type { Problem } from '../problems.js'
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
  for (const planFile of planFiles) {
    const drawn = await putPlanOnSheets({ planFile })
    problems.push(...drawn.problems)
    if (drawn.ok)
      reports.push(totalled(planFile, drawn.value.plan.title, await reportItems(drawn.value.items)))
  }
  const output = json ? JSON.stringify(reports, null, 2) : reports.map(describe).join('\n\n')
  return resultOf(output, problems)
}

interface PlanReport {
  readonly plan: string
  readonly title: string
  readonly items: readonly ItemReport[]
  readonly pages: number
  readonly sheetsOfCard: number
  readonly pieces: number
  readonly cuts: number
  /** Share of the card, 0 to 1, that ends in the bin. */
  readonly wasteShare: number
}

function totalled(plan: string, title: string, items: readonly ItemReport[]): PlanReport {
  const sum = (of: (item: ItemReport) => number) => items.reduce((total, item) => total + of(item), 0)
  const sheetsOfCard = sum(item => item.sheetsOfCard)
  const wasted = sum(item => item.wasteShare * item.sheetsOfCard)
  return {
    plan,
    title,
    items,
    pages: sum(item => item.pages),
    sheetsOfCard,
    pieces: sum(item => item.pieces),
    cuts: sum(item => item.cuts),
    wasteShare: sheetsOfCard === 0 ? 0 : Math.round((wasted / sheetsOfCard) * 1000) / 1000,
  }
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
