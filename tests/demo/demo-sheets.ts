import { join } from 'node:path'
import { drawnItem, type PrintedItem } from '../../src/files/printed-plan.js'
import { installationFolder } from '../../src/installation.js'
import type { ImposedItem } from '../../src/pipeline/impose/impose-plan.js'
import { putEachOnSheets, putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem, type Outcome } from '../../src/problems.js'
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

/** One item of a demo week, as `make --only` would write it, of its sheets the first and the cover. */
export async function drawFirstAndCover(
  week: (typeof demoWeeks)[number],
  name: string,
): Promise<PrintedItem> {
  const made = await putEachOnSheets({ ...requestOf(week), only: [name] }, ({ printed }) => {
    const sheets = printed.sheets.filter(({ kind }, index) => index === 0 || kind === 'cover')
    return drawnItem({ ...printed, sheets })
  })
  return madeOf(made).items.find(item => item.name === name)!
}

async function drawWeek(week: (typeof demoWeeks)[number]): Promise<readonly ImposedItem[]> {
  return madeOf(await putPlanOnSheets(requestOf(week))).items
}

const requestOf = (week: (typeof demoWeeks)[number]) => ({ planFile: demoPlanFile(week), kept: sharedWork })

function madeOf<T>(made: Outcome<T>): T {
  if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  return made.value
}
