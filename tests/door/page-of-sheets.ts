/**
 * A program such as a stranger would write with the library: a page that shows a plan's sheets while the plan is
 * being written. It gets the plan's text, never a plan file, and the files that the plan names from a place of its
 * own; it keeps its work between two texts. It imports the library's door alone.
 */
import { draw, type FileAccess, formatProblem, keepWork, readPlan, settle, toSvg } from 'oaktag'

export interface SheetsPage {
  /** The page for this text: every sheet as a drawing, or what is wrong with the plan. */
  readonly show: (planText: string) => Promise<string>
  /** How many sets of cards have been dealt since the beginning. */
  readonly dealt: () => number
}

export function openSheetsPage(files: FileAccess): SheetsPage {
  const kept = keepWork()
  return {
    show: async planText => {
      const plan = readPlan(planText, { file: 'week.yaml', files })
      if (!plan.ok) return problemsAsHtml(plan.problems.map(formatProblem))
      const settled = await settle(plan.value, { files, kept })
      if (!settled.ok) return problemsAsHtml(settled.problems.map(formatProblem))
      const printed = await draw(settled.value, { kept })
      if (!printed.ok) return problemsAsHtml(printed.problems.map(formatProblem))
      const items = printed.value.items.map(
        item => `<section><h2>${item.name}</h2>${item.sheets.map(toSvg).join('')}</section>`,
      )
      return `<!doctype html><title>${plan.value.title}</title>${items.join('')}`
    },
    dealt: () => kept.done().sets,
  }
}

function problemsAsHtml(problems: readonly string[]): string {
  const items = problems.map(
    problem => `<li>${problem.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</li>`,
  )
  return `<!doctype html><title>Problems</title><ul>${items.join('')}</ul>`
}
