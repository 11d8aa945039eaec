import { join } from 'node:path'
import { installationFolder } from '../../src/installation.js'
import type { DrawnItem } from '../../src/pipeline/draw-item.js'
import { itemJobs } from '../../src/pipeline/item-jobs.js'
import { drawItems, readPlan } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'

export const demoWeeks = ['marsh', 'harbour', 'bakery'] as const

export function demoPlanFile(week: (typeof demoWeeks)[number]): string {
  return join(installationFolder, 'src/demo/plans', `${week}.yaml`)
}

/** Every item of a demo week on its sheets, as `make` would write them. */
export async function drawDemoWeek(week: (typeof demoWeeks)[number]): Promise<readonly DrawnItem[]> {
  const studied = readPlan(demoPlanFile(week))
  if (!studied.ok) throw new Error(studied.problems.map(formatProblem).join('\n'))
  const drawn = await drawItems(studied.value, itemJobs(studied.value.plan).jobs)
  if (!drawn.ok) throw new Error(drawn.problems.map(formatProblem).join('\n'))
  return drawn.value
}
