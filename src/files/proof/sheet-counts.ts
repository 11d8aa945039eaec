/** How many sheets of which stock, in words. */
import type { SheetKind } from '../../sheets/sheet.js'

/** What of a sheet decides the stock that it goes on. */
export interface CountedSheet {
  readonly side: 'front' | 'back'
  readonly kind: SheetKind | string
}

/** Sheets with pieces to cut out go on card stock, the rest on paper. A back is printed on its front's sheet. */
export function sheetsOfStock(sheets: readonly CountedSheet[]): string {
  const stocks = [
    { name: 'card', of: sheets.filter(goesOnCard) },
    { name: 'paper', of: sheets.filter(sheet => !goesOnCard(sheet) && sheet.kind !== 'screen') },
  ].filter(({ of }) => of.length > 0)
  const shown = sheets.filter(({ kind }) => kind === 'screen').length
  const printed = stocks
    .map(({ name, of }, index) => {
      const fronts = of.filter(({ side }) => side === 'front').length
      return `${index === 0 ? counted(fronts) : fronts} of ${name}${onBothSides(fronts, of.length - fronts)}`
    })
    .join(' and ')
  if (shown === 0) return printed
  const onScreen = `${shown === 1 ? '1 page' : `${shown} pages`} for the screen`
  return printed === '' ? onScreen : `${printed}, and ${onScreen}`
}

function onBothSides(fronts: number, backs: number): string {
  if (backs === 0) return ''
  return backs === fronts ? ' (both sides)' : ` (${backs} of them on both sides)`
}

function goesOnCard({ kind }: CountedSheet): boolean {
  return kind === 'pieces' || kind === 'labels'
}

function counted(count: number): string {
  return count === 1 ? '1 sheet' : `${count} sheets`
}
