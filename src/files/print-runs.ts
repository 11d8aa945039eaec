/** What goes through the printer in one go: the sheets of all items that are printed on one stock and fed in one way. */
import type { Flip } from '../sheets/flip.js'
import type { PrintedItem, PrintedSheet } from './printed-plan.js'

export type Stock = 'card' | 'paper'
export type Feeding = 'one side' | 'both sides' | 'twice by hand'

export interface PrintRun {
  /** As a teacher says it: `card, both sides`; with the edge or the paper where the plan has runs of several. */
  readonly name: string
  readonly stock: Stock
  readonly feeding: Feeding
  /** The edge on which sheets are turned; left out where one side is printed. */
  readonly flip?: Flip
  /** The paper's name. */
  readonly paper: string
  readonly parts: readonly PrintRunPart[]
}

/** The sheets of an item that are in a run. */
export interface PrintRunPart {
  readonly item: string
  readonly sheets: readonly PrintedSheet[]
}

/** In the order in which they are best printed: card before paper, both sides before one. */
const stocks: readonly Stock[] = ['card', 'paper']
const feedings: readonly Feeding[] = ['both sides', 'twice by hand', 'one side']

export function printRuns({
  items,
}: {
  readonly items: readonly PrintedItem<PrintedSheet>[]
}): readonly PrintRun[] {
  const found = new Map<string, PrintRun>()
  for (const item of items)
    for (const part of partsOf(item)) {
      const { stock, feeding, flip, paper } = part
      const key = [stock, feeding, flip, paper].join(', ')
      const run = found.get(key) ?? {
        name: `${stock}, ${feeding}`,
        stock,
        feeding,
        ...(flip === undefined ? {} : { flip }),
        paper,
        parts: [],
      }
      found.set(key, { ...run, parts: [...run.parts, { item: item.name, sheets: part.sheets }] })
    }
  const runs = [...found.values()].sort(
    (a, b) =>
      stocks.indexOf(a.stock) - stocks.indexOf(b.stock) ||
      feedings.indexOf(a.feeding) - feedings.indexOf(b.feeding),
  )
  return runs.map(run => ({ ...run, name: nameAmong(run, runs) }))
}

/** An item's pieces and labels go on card, its pages on paper; what is for the screen is not printed. */
function partsOf({ sheets, paper, backs }: PrintedItem<PrintedSheet>) {
  if (paper.screen === true) return []
  const isCard = ({ kind }: PrintedSheet) => kind === 'pieces' || kind === 'labels'
  const onCard = sheets.filter(isCard)
  const onPaper = sheets.filter(sheet => !isCard(sheet))
  const feeding: Feeding = backs === undefined ? 'one side' : backs.fedByHand ? 'twice by hand' : 'both sides'
  const card = { stock: 'card' as const, feeding, flip: backs?.flip, paper: paper.name, sheets: onCard }
  const pages = {
    stock: 'paper' as const,
    feeding: 'one side' as const,
    flip: undefined,
    paper: paper.name,
    sheets: onPaper,
  }
  return [card, pages].filter(part => part.sheets.length > 0)
}

/** No longer than tells it from the plan's other runs. */
function nameAmong(run: PrintRun, runs: readonly PrintRun[]): string {
  const alike = runs.filter(other => other !== run && other.name === run.name)
  return [
    run.name,
    ...(alike.some(({ flip }) => flip !== run.flip) ? [`turned on the ${run.flip}`] : []),
    ...(alike.some(({ paper }) => paper !== run.paper) ? [run.paper] : []),
  ].join(', ')
}

/** What of a part decides whether a page is left blank before it. */
interface SidesOfPart {
  readonly sheets: readonly { readonly side: 'front' | 'back' }[]
}

/**
 * How many pages have to be left blank, in a file that goes through a printer of both sides, for each part that is printed on
 * both sides to begin on the front of a sheet.
 */
export function blankPages(parts: readonly SidesOfPart[]): number {
  return partsWithBlanks(parts).filter(({ blankBefore }) => blankBefore).length
}

/** The parts, and before which of them a page is left blank. */
export function partsWithBlanks<P extends SidesOfPart>(
  parts: readonly P[],
): readonly { readonly part: P; readonly blankBefore: boolean }[] {
  let pages = 0
  return parts.map(part => {
    const blankBefore = pages % 2 === 1 && part.sheets.some(sheet => sheet.side === 'back')
    pages += part.sheets.length + (blankBefore ? 1 : 0)
    return { part, blankBefore }
  })
}
