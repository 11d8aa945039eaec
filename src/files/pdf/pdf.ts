import PDFDocument from 'pdfkit'
import { mmToPoints, type Size } from '../../geometry.js'
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

/** The sheets as one PDF file. */
export async function sheetsToPdf({ title, parts }: PdfRequest): Promise<Buffer> {
  const writer = createPdfWriter({ title, bookmarks: parts.length > 1 })
  for (const { part, blankBefore } of partsWithBlanks(parts)) {
    writer.beginPart({ title: part.title, blankBefore: blankBefore ? part.sheets[0] : undefined })
    for (const sheet of part.sheets) await writer.add(sheet)
  }
  return writer.end()
}

export interface PdfWriter {
  /** `blankBefore`: a sheet as large as the blank page that comes before the part; none where left out. */
  beginPart(part: { readonly title: string; readonly blankBefore?: Size | undefined }): void
  /** The next sheet of the part; it need not be held any longer. */
  add(sheet: Sheet): Promise<void>
  end(): Promise<Buffer>
}

/**
 * Writes sheets, one after the other, as one vector PDF of true page sizes, tagged as PDF/UA asks. Every piece is a figure
 * whose alternative text is its words, a list is a table, everything else with words a paragraph; the words lie unseen over
 * their outlines, so that they can be read aloud, searched and copied. Printing is set to no scaling. The creation date is
 * fixed: the same sheets give the same bytes.
 */
export function createPdfWriter({
  title,
  bookmarks,
}: {
  readonly title: string
  /** Whether the file gets a bookmark to each part. */
  readonly bookmarks: boolean
}): PdfWriter {
  const doc = newDocument(title)
  const chunks: Buffer[] = []
  doc.on('data', (chunk: Buffer) => chunks.push(chunk))
  const store = createArtStore(doc)
  const root = doc.struct('Document')
  doc.addStructure(root)
  let bookmark: string | undefined
  return {
    beginPart(part) {
      if (part.blankBefore !== undefined) addBlankPage(doc, part.blankBefore)
      bookmark = bookmarks ? part.title : undefined
    },
    async add(sheet) {
      await store.begin(sheet)
      doc.addPage({ size: [mmToPoints(sheet.widthMm), mmToPoints(sheet.heightMm)], margin: 0 })
      if (bookmark !== undefined) doc.outline.addItem(bookmark)
      bookmark = undefined
      const section = doc.struct('Sect', { title: sheet.title })
      root.add(section)
      addSheet(doc, section, sheet, store)
      section.end()
    },
    async end() {
      root.end()
      store.end()
      await finish(doc)
      return Buffer.concat(chunks)
    },
  }
}

/** Printed on both sides, what follows begins on the front of a sheet. */
function addBlankPage(doc: PDFKit.PDFDocument, { widthMm, heightMm }: Size): void {
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

function finish(doc: PDFKit.PDFDocument): Promise<void> {
  return new Promise((resolve, reject) => {
    doc.on('end', resolve)
    doc.on('error', reject)
    doc.end()
  })
}
