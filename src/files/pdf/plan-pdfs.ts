import type { Sheet } from '../../sheets/sheet.js'
import { itemPdfPath, planPdfPath, printRunPath } from '../folder/item-paths.js'
import { partsWithBlanks, printRuns } from '../print-runs.js'
import type { PrintedPlan, PrintedSheet } from '../printed-plan.js'
import type { FinishedPdf, PlanPdfs } from '../write-pdfs.js'
import { createPdfWriter, type PdfWriter } from './pdf.js'

/** A PDF for each item and, of a plan that is made whole, one of all of it and one for each way of printing. */
export function planPdfs(printed: PrintedPlan<PrintedSheet>, whole: boolean): PlanPdfs {
  const { stem, title, items } = printed
  const all = items.map(({ name, sheets }) => ({ item: name, sheets }))
  const own = all.map(part => growingPdf(itemPdfPath({ name: part.item }), `${title}: ${part.item}`, [part]))
  const printable = all.filter((_, index) => items[index]!.paper.screen !== true)
  const ofAll = whole
    ? [
        // Pages for the screen have a PDF of their own; among what is printed they would only be in the way.
        growingPdf(planPdfPath(stem), title, printable.length === 0 ? all : printable),
        ...printRuns(printed).map(run =>
          growingPdf(printRunPath(stem, run.name), `${title}: ${run.name}`, run.parts),
        ),
      ]
    : []
  return {
    add: async (item, sheet, drawn) => {
      for (const pdf of [...own, ...ofAll]) await pdf.addIfNext(item, sheet, drawn)
    },
    endItem: item => own[items.findIndex(({ name }) => name === item)],
    end: () => ofAll,
  }
}

interface GrowingPdf extends FinishedPdf {
  /** Adds the sheet where it is the next page of this PDF. */
  readonly addIfNext: (item: string, sheet: PrintedSheet, drawn: Sheet) => Promise<void>
}

interface PageToCome {
  readonly item: string
  readonly sheet: PrintedSheet
  /** Whether it is the first of its part, and a blank page comes before it. */
  readonly begins: boolean
  readonly blankBefore: boolean
}

interface Part {
  readonly item: string
  readonly sheets: readonly PrintedSheet[]
}

function growingPdf(path: string, title: string, parts: readonly Part[]): GrowingPdf {
  // In the order of the plan's sheets, and so in that in which they come.
  const pages: PageToCome[] = partsWithBlanks(parts).flatMap(({ part: { item, sheets }, blankBefore }) =>
    sheets.map((sheet, index) => ({ item, sheet, begins: index === 0, blankBefore })),
  )
  let at = 0
  let begun: PdfWriter | undefined
  const writer = () => {
    begun ??= createPdfWriter({ title, bookmarks: parts.length > 1 })
    return begun
  }
  return {
    path,
    addIfNext: async (item, sheet, drawn) => {
      const next = pages[at]
      if (next?.item !== item || next.sheet !== sheet) return
      at += 1
      if (next.begins) writer().beginPart({ title: item, blankBefore: next.blankBefore ? sheet : undefined })
      await writer().add(drawn)
    },
    contents: () => {
      const whole = writer()
      begun = undefined
      return whole.end()
    },
  }
}
