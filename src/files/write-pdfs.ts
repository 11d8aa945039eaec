import type { Sheet } from '../sheets/sheet.js'
import type { PrintedSheet } from './printed-plan.js'

/** A PDF to which every page is added; its path is from the plan's folder. */
export interface FinishedPdf {
  readonly path: string
  readonly contents: () => Promise<Uint8Array>
}

/** The PDFs of a plan, all of which grow while its sheets come by. */
export interface PlanPdfs {
  readonly add: (item: string, printed: PrintedSheet, drawn: Sheet) => Promise<void>
  /** After the item's last sheet. */
  readonly endItem: (item: string) => FinishedPdf | undefined
  /** After the last item: those of several items. */
  readonly end: () => readonly FinishedPdf[]
}

export const noPdfs: PlanPdfs = { add: async () => {}, endItem: () => undefined, end: () => [] }
