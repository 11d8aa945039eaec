import PDFDocument from 'pdfkit'
import { mmToPoints } from '../../geometry.js'
import type { Art } from '../../pieces/piece.js'
import type { Sheet } from '../../sheets/sheet.js'
import { type DrawingGroup, drawingGroups } from '../page/drawing-order.js'
import { escapeXml } from '../page/xml.js'
import { createArtStore } from './pdf-art-store.js'
import { cutOperators, drawingOperators } from './pdf-operators.js'

export interface PdfRequest {
  readonly title: string
  /** In print order. With more than one part, the file gets a bookmark to each. */
  readonly parts: readonly PdfPart[]
}

export interface PdfPart {
  readonly title: string
  readonly sheets: readonly Sheet[]
}

/**
 * The sheets as one vector PDF of true page sizes. Every piece is a tagged figure whose alternative text is its
 * words, and everything else with words a paragraph; the words lie unseen over their outlines, so that they can
 * be read aloud, searched and copied. Printing is set to no scaling. The creation date is fixed: the same sheets give the same bytes.
 */
export async function sheetsToPdf({ title, parts }: PdfRequest): Promise<Buffer> {
  const doc = newDocument(title)
  const store = await createArtStore(
    doc,
    parts.flatMap(part => part.sheets),
  )
  const root = doc.struct('Document')
  doc.addStructure(root)
  for (const part of parts)
    for (const [index, sheet] of part.sheets.entries()) {
      doc.addPage({ size: [mmToPoints(sheet.widthMm), mmToPoints(sheet.heightMm)], margin: 0 })
      if (index === 0 && parts.length > 1) doc.outline.addItem(part.title)
      const section = doc.struct('Sect', { title: sheet.title })
      root.add(section)
      for (const group of drawingGroups(sheet)) addGroup(doc, section, group, art => store.place(art))
      if (sheet.cuts.length > 0) addArtifact(doc, cutOperators(sheet.cuts))
      section.end()
    }
  root.end()
  store.end()
  return finish(doc)
}

function newDocument(title: string): PDFKit.PDFDocument {
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: 'en-US',
    tagged: true,
    displayTitle: true,
    info: { Title: title, Creator: 'oaktag', Producer: 'oaktag', CreationDate: new Date(0) },
  })
  const inside = doc as unknown as PdfkitInside
  Object.assign(inside._root.data.ViewerPreferences.data, { PrintScaling: 'None', PickTrayByPDFSize: true })
  // pdfkit writes the title into its XML metadata as it stands; an ampersand would break it.
  const addInfo = inside._addInfo
  inside._addInfo = () => {
    doc.info.Title = escapeXml(title)
    addInfo.call(doc)
    doc.info.Title = title
  }
  return doc
}

/** What pdfkit offers no option for. */
interface PdfkitInside {
  readonly _root: { readonly data: { readonly ViewerPreferences: { readonly data: object } } }
  _addInfo: () => void
}

function addGroup(
  doc: PDFKit.PDFDocument,
  section: PDFKit.PDFStructureElement,
  { piece, words, drawings }: DrawingGroup,
  operatorsOf: (art: Art) => string,
): void {
  const operators = drawings.map(drawing => drawingOperators(drawing, operatorsOf(drawing.art))).join('\n')
  if (words === '') addArtifact(doc, operators)
  else {
    const figure = piece !== undefined || drawings.some(({ art }) => hasPicture(art))
    const content = [() => doc.addContent(inMillimetres(operators))]
    section.add(
      figure ? doc.struct('Figure', { title: words, alt: words }, content) : doc.struct('P', {}, content),
    )
  }
}

const hasPicture = (art: Art): boolean => art.shapes.some(shape => shape.kind === 'image')

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

function finish(doc: PDFKit.PDFDocument): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = []
    doc.on('data', (chunk: Buffer) => chunks.push(chunk))
    doc.on('end', () => resolve(Buffer.concat(chunks)))
    doc.on('error', reject)
    doc.end()
  })
}
