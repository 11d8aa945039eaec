import { hash } from 'node:crypto'
import type { Box } from '../../geometry.js'
import type { Art, ImageShape, PathShape, Shape, TextRun } from '../../pieces/piece.js'
import type { Sheet } from '../../sheets/sheet.js'
import { toDecimal } from '../page/decimal.js'
import { inkBox, shapeInkBox } from '../page/ink-box.js'
import { sharedArts } from '../page/shared-arts.js'
import type { ArtIds } from '../page/svg-body.js'
import { packedOutlines } from './packed-outlines.js'
import { drawingOperators, shapeOperators } from './pdf-operators.js'
import { addPicture, type PdfPicture } from './pdf-picture.js'
import { createUnseenFont, type UnseenFont } from './pdf-unseen-font.js'

export interface ArtStore {
  /** Before anything of the sheet is drawn. */
  begin(sheet: Sheet): Promise<void>
  /** The operators that draw the art at its origin on the document's present page. */
  place(art: Art): string
  /** The operators that draw all that stands on a page of text, without its words. */
  outlines(sheet: Sheet): string
  /** Words at their place on the page, with a space behind them, so that they do not run into what follows. */
  words(run: TextRun): string
  /** Writes what pages refer to; to be called after the last page. */
  end(): void
}

/** Shorter paths are as short as a form. */
const LEAST_LENGTH = 500

/**
 * Draws arts for a document, sheet by sheet: one that comes again becomes a form that pages refer to, and so does a word of
 * the lines that tell pieces and sheets apart.
 */
export function createArtStore(doc: PDFKit.PDFDocument): ArtStore {
  const pictures = new Map<Art['shapes'][number], PdfPicture>()
  const font = createUnseenFont(doc)
  const artsOf = sharedArts('Art')
  let shared: ArtIds = new Map()
  const forms = new WeakMap<Art, PDFKit.PDFKitReference>()
  const pictureReferences: Record<string, PDFKit.PDFKitReference> = {}
  const resourcesReference = doc.ref({ Font: font.references, XObject: pictureReferences })

  function formOf(art: Art): PDFKit.PDFKitReference {
    const known = forms.get(art)
    if (known) return known
    const box = inkBox(art) ?? { xMm: 0, yMm: 0, widthMm: 0, heightMm: 0 }
    const operators = artOperators(art, font, shape =>
      shape.kind === 'path' ? shapeOperators(shape) : (pictures.get(shape)?.operators ?? ''),
    )
    const form = formIn(box, operators)
    forms.set(art, form)
    return form
  }

  function formIn(
    { xMm, yMm, widthMm, heightMm }: Box,
    operators: string | Buffer,
    packing: { readonly Filter?: 'FlateDecode' } = {},
  ): PDFKit.PDFKitReference {
    const form = doc.ref({
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [xMm, yMm, xMm + widthMm, yMm + heightMm],
      Resources: resourcesReference,
      ...packing,
    })
    form.end(Buffer.from(operators))
    return form
  }

  /** By what they look like: whether two are one shape or alike is left to what is remembered of earlier ones. */
  const words = new Map<string, { form?: PDFKit.PDFKitReference; readonly name: string }>()

  /** Written out where it stands for the first time; nothing but a digest is held of it. */
  function wordOperators(word: PathShape): string {
    if (word.d.length < LEAST_LENGTH) return shapeOperators(word)
    const look = lookOf(word)
    const known = words.get(look)
    const box = known && shapeInkBox(word)
    if (known === undefined || box === undefined) {
      words.set(look, { name: `Word${words.size + 1}` })
      return shapeOperators(word)
    }
    known.form ??= formIn(box, shapeOperators(word))
    doc.page.xobjects[known.name] = known.form
    return `/${known.name} Do`
  }

  function pageOperators(art: Art): string {
    usePictures(art)
    return artOperators(art, font, shape => {
      if (shape.kind === 'image') return pictures.get(shape)?.operators ?? ''
      return shapeOperators(shape, wordOperators)
    })
  }

  function usePictures(art: Art): void {
    for (const shape of art.shapes) {
      const picture = shape.kind === 'image' ? pictures.get(shape) : undefined
      if (picture) doc.page.xobjects[picture.name] = picture.reference
    }
  }

  return {
    async begin(sheet) {
      shared = artsOf(sheet).ids
      for (const image of picturesOf(sheet)) {
        if (pictures.has(image)) continue
        const picture = await addPicture(doc, image, `Picture${pictures.size + 1}`)
        pictures.set(image, picture)
        pictureReferences[picture.name] = picture.reference
      }
    },
    place(art) {
      const id = shared.get(art)
      if (id !== undefined) {
        doc.page.xobjects[id] = formOf(art)
        return `/${id} Do`
      }
      const operators = pageOperators(art)
      Object.assign(doc.page.fonts, font.references)
      return operators
    },
    outlines(sheet) {
      if (picturesOf(sheet).size > 0)
        return sheet.furniture
          .map(({ art, xMm, yMm }) =>
            drawingOperators({ art, xMm, yMm, turn: 0 }, pageOperators({ ...art, text: [] })),
          )
          .join('\n')
      const box = { xMm: 0, yMm: 0, widthMm: sheet.widthMm, heightMm: sheet.heightMm }
      doc.page.xobjects.Outlines = formIn(box, packedOutlines(sheet), { Filter: 'FlateDecode' })
      return '/Outlines Do'
    },
    words(run) {
      const operators = textOperators(run, font, ' ')
      Object.assign(doc.page.fonts, font.references)
      return operators
    },
    end() {
      font.end()
      resourcesReference.finalize()
    },
  }
}

const knownLooks = new WeakMap<PathShape, string>()

function lookOf(word: PathShape): string {
  const look = knownLooks.get(word) ?? hash('sha1', shapeOperators(word), 'base64url')
  knownLooks.set(word, look)
  return look
}

function picturesOf({ pieces, furniture }: Sheet): ReadonlySet<ImageShape> {
  const arts = [...pieces.flatMap(placed => placed.piece.art), ...furniture]
  return new Set(arts.flatMap(({ art }) => art.shapes.filter(shape => shape.kind === 'image')))
}

function artOperators(art: Art, font: UnseenFont, operatorsOf: (shape: Shape) => string): string {
  const shapes = art.shapes.map(operatorsOf)
  const runs = art.text.filter(run => run.text !== '').map(run => textOperators(run, font))
  return [...shapes, ...runs].filter(operators => operators !== '').join('\n')
}

/** The run's letters, unseen, stretched to the width that the drawn ones have. */
function textOperators(
  { text, xMm, baselineMm, widthMm, sizeMm }: TextRun,
  font: UnseenFont,
  behind = '',
): string {
  const natural = font.encode(text).reduce((sum, string) => sum + string.widthEm, 0) * sizeMm
  const strings = font.encode(text + behind)
  const stretch = widthMm > 0 ? (widthMm / natural) * 100 : 100
  const shown = strings.map(({ fontName, hex }) => `/${fontName} ${toDecimal(sizeMm)} Tf <${hex}> Tj`)
  return [
    `BT 3 Tr ${toDecimal(stretch)} Tz 1 0 0 -1 ${toDecimal(xMm)} ${toDecimal(baselineMm)} Tm`,
    ...shown,
    'ET',
  ].join('\n')
}
