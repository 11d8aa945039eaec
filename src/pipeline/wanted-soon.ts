import type { PlacedItem } from '../files/printed-plan.js'
import type { KeptFiles } from '../files/write-items.js'
import { placeItem, standsAlone } from './impose/impose-plan.js'
import type { KeptWork } from './kept-work.js'
import type { SettledItem } from './settle/settle-plan.js'

/** Items that somebody looks at, or draws meanwhile: each is told as soon as it is on its sheets. */
export interface WantedSoon {
  /** By name: they come first. All of them keep their order. */
  readonly items: readonly string[] | 'all'
  /** Nothing is told of a plan that is known to have an error. */
  readonly placed: (item: PlacedItem) => Promise<void>
}

/** What somebody looks at does not wait for the others; when all are imposed, it is found among what is kept. */
export async function placeSoon(
  item: SettledItem,
  kept: KeptWork,
  soon: WantedSoon | undefined,
): Promise<void> {
  if (soon === undefined || !standsAlone(item)) return
  if (soon.items !== 'all' && !soon.items.includes(item.prepared.job.name)) return
  const placed = await placeItem(item, kept)
  if (placed.ok) await soon.placed(placed.value)
}

/** For a program that writes the plan's pages beside laying it out. */
export function drawingAhead(files: KeptFiles | undefined, dpi: number): WantedSoon | undefined {
  if (files?.thread === undefined) return undefined
  const placed = async (item: PlacedItem): Promise<void> => {
    // What is only checked does without.
    const { drawAhead } = await import('../files/draw-ahead.js')
    drawAhead(item, dpi, files)
  }
  return { items: 'all', placed }
}
