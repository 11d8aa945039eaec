import { join } from 'node:path'
import { installationFolder } from '../../src/installation.js'
import { present } from '../../src/outcomes.js'
import type { ImposedItem } from '../../src/pipeline/impose/impose-plan.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'
import { sharedWork } from '../pipeline/shared-work.js'

export const demoWeeks = ['marsh', 'harbour', 'bakery', 'pond'] as const

export function demoPlanFile(week: (typeof demoWeeks)[number]): string {
  return join(installationFolder, 'src/demo/plans', `${week}.yaml`)
}

const drawn = new Map<string, Promise<readonly ImposedItem[]>>()

/** Every item of a demo week on its sheets, as `make` would write them; each week is drawn once. */
export function drawDemoWeek(week: (typeof demoWeeks)[number]): Promise<readonly ImposedItem[]> {
  const items = drawn.get(week) ?? drawWeek(week)
  drawn.set(week, items)
  return items
}

/** Drawn sheets are large: they are let go when all has been asked. */
export function forgetDemoWeeks(): void {
  drawn.clear()
}

/** One item of a demo week, as `make --only` would write it. */
export async function drawDemoItem(week: (typeof demoWeeks)[number], name: string): Promise<ImposedItem> {
  return (await drawWeek(week, [name])).find(({ printed }) => printed.name === name)!
}

async function drawWeek(
  week: (typeof demoWeeks)[number],
  only?: readonly string[],
): Promise<readonly ImposedItem[]> {
  const made = await putPlanOnSheets({ planFile: demoPlanFile(week), kept: sharedWork, ...present({ only }) })
  if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  return made.value.items
}
