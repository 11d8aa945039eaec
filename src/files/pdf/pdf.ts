import PDFDocument from 'pdfkit'
import { mmToPoints } from '../../geometry.js'
import type { Sheet } from '../../sheets/sheet.js'
import { escapeXml } from '../page/xml.js'
import { partsWithBlanks } from '../print-runs.js'
import { createArtStore } from './pdf-art-store.js'
import { addSheet } from './pdf-tags.js'

export interface PdfRequest {
  readonly title: string
  /**
   * In print order. With more than one part, the file gets a bookmark to each, and one that is printed on both sides begins on
   * an odd page, a blank one before it where needed.
   */
  readonly parts: readonly PdfPart[]
}

export interface PdfPart {
  readonly title: string
  readonly sheets: readonly Sheet[]
}

/**
 * The sheets as one vector PDF of true page sizes, tagged as PDF/UA asks. Every piece is a figure whose alternative text
 * is its words, a list is a table, everything else with words a paragraph; the words lie unseen over their outlines, so
 * that they can be read aloud, searched and copied. Printing is set to no scaling. The creation date is fixed: the same
 * sheets give the same bytes.
 */
export async function sheetsToPdf({ title, parts }: PdfRequest): Promise<Buffer> {
  const doc = newDocument(title)
  const store = await createArtStore(
    doc,
    parts.flatMap(part => part.sheets),
  )
  const root = doc.struct('Document')
  doc.addStructure(root)
  for (const { part, blankBefore } of partsWithBlanks(parts)) {
    if (blankBefore) addBlankPage(doc, part.sheets[0]!)
    for (const [index, sheet] of part.sheets.entries()) {
      doc.addPage({ size: [mmToPoints(sheet.widthMm), mmToPoints(sheet.heightMm)], margin: 0 })
      if (index === 0 && parts.length > 1) doc.outline.addItem(part.title)
      const section = doc.struct('Sect', { title: sheet.title })
      root.add(section)
      addSheet(doc, section, sheet, store)
      section.end()
    }
  }
  root.end()
  store.end()
  return finish(doc)
}

/** Printed on both sides, what follows begins on the front of a sheet. */
function addBlankPage(doc: PDFKit.PDFDocument, { widthMm, heightMm }: Sheet): void {
  doc.addPage({ size: [mmToPoints(widthMm), mmToPoints(heightMm)], margin: 0 })
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
  inside.initSubset({ subset: 'PDF/UA' })
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
  /** Its types do not know PDF/UA yet. */
  readonly initSubset: (options: { readonly subset: 'PDF/UA' }) => void
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
