/** How many sheets of which stock, in words. */
import type { SheetKind } from '../../sheets/sheet.js'

/** What of a sheet decides the stock that it goes on. */
export interface CountedSheet {
  readonly side: 'front' | 'back'
  readonly kind: SheetKind | string
}

/** Sheets with pieces to cut out go on card stock, the rest on paper. A back is printed on its front's sheet. */
export function sheetsOfStock(sheets: readonly CountedSheet[]): string {
  const fronts = sheets.filter(sheet => sheet.side === 'front')
  const card = fronts.filter(goesOnCard).length
  const paper = fronts.length - card
  const backs = sheets.length - fronts.length
  const bothSides = backs === 0 ? '' : backs === card ? ', both sides' : `, ${backs} of them on both sides`
  return [
    ...(card > 0 ? [`${counted(card)} of card${bothSides}`] : []),
    ...(paper > 0 ? [`${card > 0 ? paper : counted(paper)} of paper`] : []),
  ].join(' and ')
}

function goesOnCard({ kind }: CountedSheet): boolean {
  return kind === 'pieces' || kind === 'labels'
}

function counted(count: number): string {
  return count === 1 ? '1 sheet' : `${count} sheets`
}
