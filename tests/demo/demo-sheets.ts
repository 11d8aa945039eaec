import { join } from 'node:path'
import { installationFolder } from '../../src/installation.js'
import type { ImposedItem } from '../../src/pipeline/impose/impose-plan.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'

export const demoWeeks = ['marsh', 'harbour', 'bakery'] as const

export function demoPlanFile(week: (typeof demoWeeks)[number]): string {
  return join(installationFolder, 'src/demo/plans', `${week}.yaml`)
}

/** Every item of a demo week on its sheets, as `make` would write them. */
export async function drawDemoWeek(week: (typeof demoWeeks)[number]): Promise<readonly ImposedItem[]> {
  const drawn = await putPlanOnSheets({ planFile: demoPlanFile(week) })
  if (!drawn.ok) throw new Error(drawn.problems.map(formatProblem).join('\n'))
  return drawn.value.items
}
