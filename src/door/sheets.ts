import { sheetToSvg } from '../files/page/svg.js'
import type { PrintedItem, PrintedPlan } from '../files/printed-plan.js'
import { PIXELS_PER_SCREEN_INCH } from '../geometry.js'
import { type KeptWork, keepWork } from '../pipeline/kept-work.js'
import type { SettledPlan } from '../pipeline/settle/settle-plan.js'
import { drawAndImpose, settlePlanInHand } from '../pipeline.js'
import { disk } from '../plan/disk/disk.js'
import type { FileAccess } from '../plan/disk/file-access.js'
import type { Plan } from '../plan/plan.js'
import type { Outcome } from '../problems.js'
import type { Sheet } from '../sheets/sheet.js'

export interface Settled {
  /** Items by name; all of them where left out. */
  readonly only?: readonly string[]
  /** How pictures and fonts are read; the machine's own files where left out. */
  readonly files?: FileAccess
  /** From `keepWork()`: what a run before has done and nothing has changed is not done again. */
  readonly kept?: KeptWork
}

/**
 * Studies the words of a plan, deals every set and finds the size of every word, once: everything later reads from
 * this. The problems are those of all items.
 */
export function settle(
  plan: Plan,
  { only, files = disk, kept = keepWork() }: Settled = {},
): Promise<Outcome<SettledPlan>> {
  return settlePlanInHand(plan, { files, kept, ...(only === undefined ? {} : { only }) })
}

/** Draws what is settled and puts it on sheets: plain data in mm, fronts, backs, covers and pages in print order. */
export function draw(
  settled: SettledPlan,
  { kept = keepWork() }: Pick<Settled, 'kept'> = {},
): Promise<Outcome<PrintedPlan>> {
  return drawAndImpose(settled, kept)
}

/** The sheet as an SVG file: width and height in mm, text as outlines with the words in `<title>`. */
export function toSvg(sheet: Sheet): string {
  return sheetToSvg(sheet)
}

/** The sheet as a PNG file at `dpi` pixels an inch (300 where left out, the pixels of a screen's page as they are), its `pHYs` set. */
export async function toPng(
  sheet: Sheet,
  { dpi = sheet.kind === 'screen' ? PIXELS_PER_SCREEN_INCH : 300 }: { readonly dpi?: number } = {},
): Promise<Uint8Array> {
  const { createPngWriter } = await import('../files/png/png-writer.js')
  return createPngWriter(dpi).write(sheet)
}

/** The sheets as one vector PDF of true page sizes, tagged, the same bytes each time. */
export async function toPdf(
  sheets: readonly Sheet[],
  { title = 'Sheets' }: { readonly title?: string } = {},
): Promise<Uint8Array> {
  const { sheetsToPdf } = await import('../files/pdf/pdf.js')
  return sheetsToPdf({ title, parts: [{ title, sheets }] })
}

export { stylesPage } from '../pipeline/styles-page.js'
export { type KeptWork, keepWork, type PrintedItem, type PrintedPlan, type SettledPlan, type Sheet }
