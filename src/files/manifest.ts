import type { Box } from '../geometry.js'
import type { PlacedMark } from '../pieces/piece.js'
import type { AnswerData } from '../sets/answer-data.js'
import type { Deal } from '../sets/card-set.js'
import type { Flip } from '../sheets/flip.js'
import type { PlacedPiece, Sheet } from '../sheets/sheet.js'
import { type Format, itemPdfPath, printRunPath, sheetPath } from './folder/item-paths.js'
import { toDecimal } from './page/decimal.js'
import { dpiOf } from './page/dpi-of.js'
import { blankPages, type Feeding, type PrintRun, type Stock } from './print-runs.js'
import type { PrintedItem, PrintedSheet, WeekUse } from './printed-plan.js'

/** manifest.json: what stands where in a plan's folder. Every position is mm from the page's top left corner. */
export interface Manifest {
  /** The version of oaktag that wrote it. */
  readonly oaktag: string
  readonly title: string
  readonly class: string
  readonly seed: number
  /** The whole plan in one file, where PDF was asked for. */
  readonly pdf?: string
  /** The same by stock and way of feeding, a file each, in the order in which they are best printed. */
  readonly prints?: readonly ManifestPrint[]
  readonly items: readonly ManifestItem[]
}

/** A PDF of all that is printed on one stock and fed in one way. */
export interface ManifestPrint {
  /** `card, both sides`. */
  readonly name: string
  readonly pdf: string
  readonly stock: Stock
  readonly feeding: Feeding
  /** The edge on which sheets are turned; left out where one side is printed. */
  readonly flip?: Flip
  readonly paper: string
  /** Pages of the PDF, blank ones among them. */
  readonly pages: number
  /** Sheets of card or paper. */
  readonly sheets: number
  /** Names of the items in it, in its order. */
  readonly items: readonly string[]
  /** What to do, in plain sentences. */
  readonly notes: readonly string[]
}

export interface ManifestItem {
  readonly name: string
  readonly layout: string
  readonly group: string | null
  readonly paper: { readonly name: string; readonly widthMm: number; readonly heightMm: number }
  readonly dpi: number
  readonly pdf?: string
  readonly pages: readonly ManifestPage[]
  readonly deal?: Deal
  /** What its children are to find out, for a machine to check. */
  readonly answer?: AnswerData
  /** Of a plan that has the week's set made: for which of its days it is, and how many to print. */
  readonly week?: WeekUse
  readonly notes: readonly string[]
  /** In short what it was made from: another text, another item. */
  readonly madeFrom?: string
}

export interface ManifestPage {
  readonly page: number
  readonly side: 'front' | 'back'
  readonly kind: string
  readonly title: string
  readonly svg?: string
  readonly png?: string
  readonly pieces: readonly ManifestPiece[]
}

export interface ManifestPiece extends Box {
  readonly id: string
  readonly kind: string
  readonly number: number
  readonly copy: number
  /** Present where the piece stands on its head. */
  readonly turn?: 180
  readonly text: readonly string[]
  /** The words printed small on it, unlike those of any other piece; a back has none. */
  readonly setMark?: string
  readonly cells?: readonly (readonly (string | null)[])[]
  readonly xHeightMm?: number
  readonly fontPt?: number
  readonly marks: readonly PlacedMark[]
}

export interface ManifestOptions {
  /** By item; left out where nobody compares. */
  readonly madeFrom?: ReadonlyMap<string, string>
  readonly formats: readonly Format[]
  readonly dpi: number
}

/** @param pages of the item's sheets, in their order */
export function manifestItem(
  item: PrintedItem<PrintedSheet>,
  { formats, dpi, madeFrom }: ManifestOptions,
  pages: readonly ManifestPage[],
): ManifestItem {
  const from = madeFrom?.get(item.name)
  const { name, widthMm, heightMm } = item.paper
  return {
    name: item.name,
    layout: item.layout,
    group: item.group,
    paper: { name, widthMm: toDecimal(widthMm), heightMm: toDecimal(heightMm) },
    dpi: dpiOf(item.paper, dpi),
    ...(formats.includes('pdf') && { pdf: itemPdfPath(item) }),
    pages,
    ...(item.deal && { deal: item.deal }),
    ...(item.answerData !== undefined && { answer: item.answerData }),
    ...(item.week !== undefined && { week: item.week }),
    notes: item.notes,
    ...(from !== undefined && { madeFrom: from }),
  }
}

/** @param page its number among the item's sheets, from 1 */
export function manifestPage(
  item: PrintedItem<PrintedSheet>,
  page: number,
  sheet: Sheet,
  { formats }: Pick<ManifestOptions, 'formats'>,
): ManifestPage {
  return {
    page,
    side: sheet.side,
    kind: sheet.kind,
    title: sheet.title,
    ...(formats.includes('svg') && { svg: sheetPath(item, page, 'svg') }),
    ...(formats.includes('png') && { png: sheetPath(item, page, 'png') }),
    pieces: manifestPieces(sheet),
  }
}

/** The same of an item that is drawn. */
export function manifestOf(item: PrintedItem, options: ManifestOptions): ManifestItem {
  const pages = item.sheets.map((sheet, index) => manifestPage(item, index + 1, sheet, options))
  return manifestItem(item, options, pages)
}

export function manifestPrint(stem: string, run: PrintRun): ManifestPrint {
  const { name, stock, feeding, flip, paper, parts } = run
  const sheets = parts.flatMap(part => part.sheets)
  const fronts = sheets.filter(sheet => sheet.side === 'front').length
  const blank = blankPages(parts)
  return {
    name,
    pdf: printRunPath(stem, name),
    stock,
    feeding,
    ...(flip === undefined ? {} : { flip }),
    paper,
    pages: sheets.length + blank,
    sheets: fronts,
    items: parts.map(part => part.item),
    notes: [howToFeed(run), ...(blank === 0 ? [] : [blankNote(blank)])],
  }
}

function howToFeed({ stock, feeding, flip }: PrintRun): string {
  const load = stock === 'card' ? 'Load card stock.' : 'Load ordinary paper.'
  switch (feeding) {
    case 'one side':
      return `${load} Print on one side.`
    case 'both sides':
      return `${load} Print on both sides, turned on the ${flip}.`
    case 'twice by hand':
      return `${load} Feed each set twice by hand, turned on the ${flip}, page by page as its own notes say.`
  }
}

function blankNote(pages: number): string {
  return pages === 1
    ? 'One page is left blank, so that the next set begins on the front of a sheet.'
    : `${pages} pages are left blank, so that each set begins on the front of a sheet.`
}

export function manifestText(manifest: Manifest): string {
  return `${JSON.stringify(manifest, null, 1)}\n`
}

function manifestPieces(sheet: Sheet): readonly ManifestPiece[] {
  return sheet.pieces.map(placed => {
    const { piece, xMm, yMm, turn } = placed
    return {
      id: piece.id,
      kind: piece.kind,
      number: piece.number,
      copy: piece.copy,
      ...decimalBox({ xMm, yMm, widthMm: piece.widthMm, heightMm: piece.heightMm }),
      ...(turn === 180 && { turn }),
      text: piece.text,
      ...(piece.setMark !== undefined && { setMark: piece.setMark }),
      ...(piece.cells && { cells: piece.cells }),
      ...(piece.xHeightMm !== undefined && { xHeightMm: toDecimal(piece.xHeightMm) }),
      ...(piece.fontPt !== undefined && { fontPt: toDecimal(piece.fontPt) }),
      marks: piece.marks.map(mark => markOnPage(mark, placed)),
    }
  })
}

function markOnPage(mark: PlacedMark, { piece, xMm, yMm, turn }: PlacedPiece): PlacedMark {
  const left = turn === 0 ? mark.xMm : piece.widthMm - mark.xMm - mark.widthMm
  const top = turn === 0 ? mark.yMm : piece.heightMm - mark.yMm - mark.heightMm
  const { xMm: _x, yMm: _y, widthMm, heightMm, ...about } = mark
  return { ...about, ...decimalBox({ xMm: xMm + left, yMm: yMm + top, widthMm, heightMm }) }
}

function decimalBox({ xMm, yMm, widthMm, heightMm }: Box): Box {
  return {
    xMm: toDecimal(xMm),
    yMm: toDecimal(yMm),
    widthMm: toDecimal(widthMm),
    heightMm: toDecimal(heightMm),
  }
}
