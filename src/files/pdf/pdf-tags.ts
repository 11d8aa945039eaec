/** The tree of tags of a page: what a reader hears, in the order on paper (ISO 32000-1, §14.8; ISO 14289-1, PDF/UA). */
import { type Box, mmToPoints, moveBox } from '../../geometry.js'
import type { TextRun } from '../../pieces/piece.js'
import { pieceBox, type Sheet } from '../../sheets/sheet.js'
import { type DrawingGroup, drawingGroups } from '../page/drawing-order.js'
import { inkBox } from '../page/ink-box.js'
import { type PageBlock, pageBlocks, type TableBlock, type TableCell } from './page-blocks.js'
import type { ArtStore } from './pdf-art-store.js'
import { cutOperators, drawingOperators } from './pdf-operators.js'

/** Draws a sheet on the document's present page and adds what it says to `section`. */
export function addSheet(
  doc: PDFKit.PDFDocument,
  section: PDFKit.PDFStructureElement,
  sheet: Sheet,
  store: ArtStore,
): void {
  const blocks = pageBlocks(sheet)
  if (blocks.length > 0) addBlocks(doc, section, sheet, blocks, store)
  else addGroups(doc, section, sheet, store)
  if (sheet.cuts.length > 0) addArtifact(doc, cutOperators(sheet.cuts))
}

/** A page of rows: its outlines are decoration, and the words that lie over them unseen are what it says. */
function addBlocks(
  doc: PDFKit.PDFDocument,
  section: PDFKit.PDFStructureElement,
  sheet: Sheet,
  blocks: readonly PageBlock[],
  store: ArtStore,
): void {
  addArtifact(doc, store.outlines(sheet))
  const said = (runs: readonly TextRun[]) =>
    runs.length === 0
      ? []
      : [() => doc.addContent(inMillimetres(runs.map(run => store.words(run)).join('\n')))]
  for (const block of blocks) {
    if (block.kind === 'table') section.add(tableOf(doc, block, said))
    else section.add(doc.struct(block.kind === 'heading' ? 'H1' : 'P', {}, said(block.runs)))
  }
}

function tableOf(
  doc: PDFKit.PDFDocument,
  { rows }: TableBlock,
  said: (runs: readonly TextRun[]) => (() => void)[],
): PDFKit.PDFStructureElement {
  const cellOf = ({ heads, runs }: TableCell) => {
    const options: TagOptions = heads === undefined ? {} : { scope: heads }
    return doc.struct(heads === undefined ? 'TD' : 'TH', options, said(runs))
  }
  return doc.struct(
    'Table',
    {},
    rows.map(cells => doc.struct('TR', {}, cells.map(cellOf))),
  )
}

/** What pdfkit takes and its types do not know yet. */
type TagOptions = PDFKit.Mixins.StructureElementOptions & {
  /** What a heading of a table is over. */
  readonly scope?: 'Column' | 'Row'
  /** Left, top, right, bottom, in points from the page's top left corner. */
  readonly bbox?: readonly [number, number, number, number]
}

/**
 * Pieces are figures whose alternative text is their words; everything else with words is a paragraph, on a cover its
 * largest letters the heading. A page without pieces is set in the order in which it is read, column by column or label
 * by label; pieces stand in rows.
 */
function addGroups(
  doc: PDFKit.PDFDocument,
  section: PDFKit.PDFStructureElement,
  sheet: Sheet,
  store: ArtStore,
): void {
  const titleMm = sheet.kind === 'cover' ? largestText(sheet) : Number.POSITIVE_INFINITY
  const tagged: { readonly box: Box; readonly element: PDFKit.PDFStructureElement }[] = []
  for (const group of drawingGroups(sheet)) {
    const operators = group.drawings
      .map(drawing => drawingOperators(drawing, store.place(drawing.art)))
      .join('\n')
    if (group.words === '') {
      addArtifact(doc, operators)
      continue
    }
    const figure = group.piece !== undefined || group.drawings.some(({ art }) => art.shapes.some(isPicture))
    const isTitle = group.drawings.some(({ art }) => art.text.some(run => run.sizeMm >= titleMm))
    const type = figure ? 'Figure' : isTitle ? 'H1' : 'P'
    const content = doc.markStructureContent(type)
    doc.addContent(inMillimetres(operators))
    doc.endMarkedContent()
    const box = boxOf(group, sheet)
    const options: TagOptions = figure ? { title: group.words, alt: group.words, bbox: inPoints(box) } : {}
    tagged.push({ box, element: doc.struct(type, options, [content]) })
  }
  const ordered = sheet.pieces.length > 0 ? inReadingOrder(tagged) : tagged
  for (const { element } of ordered) section.add(element)
}

function largestText({ furniture }: Sheet): number {
  return Math.max(...furniture.flatMap(({ art }) => art.text.map(run => run.sizeMm)))
}

const isPicture = ({ kind }: { readonly kind: string }) => kind === 'image'

function boxOf({ piece, drawings }: DrawingGroup, sheet: Sheet): Box {
  const placed = sheet.pieces.find(each => each.piece === piece)
  if (placed !== undefined) return pieceBox(placed)
  const [{ art, xMm, yMm } = { art: { shapes: [], text: [], widthMm: 0, heightMm: 0 }, xMm: 0, yMm: 0 }] =
    drawings
  return moveBox(inkBox(art) ?? { xMm: 0, yMm: 0, widthMm: art.widthMm, heightMm: art.heightMm }, xMm, yMm)
}

/** Things whose tops are no further apart stand in one row, as cards of a row do that were set by hand. */
const ROW_MM = 3

/** Row by row from the top, each row from the left. */
function inReadingOrder<T extends { readonly box: Box }>(things: readonly T[]): readonly T[] {
  const rows: T[][] = []
  for (const thing of [...things].sort((a, b) => a.box.yMm - b.box.yMm)) {
    const row = rows.at(-1)
    if (row !== undefined && thing.box.yMm - row[0]!.box.yMm <= ROW_MM) row.push(thing)
    else rows.push([thing])
  }
  return rows.flatMap(row => row.sort((a, b) => a.box.xMm - b.box.xMm))
}

/** Marks on the paper that mean nothing to a reader: frames without words, cut lines. */
function addArtifact(doc: PDFKit.PDFDocument, operators: string): void {
  doc.markContent('Artifact', { type: 'Layout' })
  doc.addContent(inMillimetres(operators))
  doc.endMarkedContent()
}

function inMillimetres(operators: string): string {
  const scale = mmToPoints(1).toFixed(6)
  return `q ${scale} 0 0 ${scale} 0 0 cm\n${operators}\nQ`
}

function inPoints({ xMm, yMm, widthMm, heightMm }: Box): [number, number, number, number] {
  return [mmToPoints(xMm), mmToPoints(yMm), mmToPoints(xMm + widthMm), mmToPoints(yMm + heightMm)]
}
