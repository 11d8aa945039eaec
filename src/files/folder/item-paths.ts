import type { PrintedItem, PrintedSheet } from '../printed-plan.js'

export type Format = 'svg' | 'png' | 'pdf'

/** Path of a sheet's file from the plan's folder, `/` between its parts: `bingo/bingo-01.svg`. */
export function sheetPath(item: PrintedItem<PrintedSheet>, page: number, format: 'svg' | 'png'): string {
  const digits = Math.max(2, String(item.sheets.length).length)
  return `${item.name}/${item.name}-${String(page).padStart(digits, '0')}.${format}`
}

/** Path of the item's PDF from the plan's folder: `bingo/bingo.pdf`. */
export function itemPdfPath(item: Pick<PrintedItem, 'name'>): string {
  return `${item.name}/${item.name}.pdf`
}

/** Path of the whole plan's PDF from the plan's folder: `marsh.pdf`. */
export function planPdfPath(stem: string): string {
  return `${stem}.pdf`
}

/** Path of the PDF of all that is printed in one go: `marsh-card-both-sides.pdf`. */
export function printRunPath(stem: string, name: string): string {
  return `${stem}-${name
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(part => part !== '')
    .join('-')}.pdf`
}
