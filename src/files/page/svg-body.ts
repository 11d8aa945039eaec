import type { Art, PathShape, PlacedWord, Shape } from '../../pieces/piece.js'
import type { CutLine, Sheet } from '../../sheets/sheet.js'
import { toDecimal } from './decimal.js'
import { type DrawingGroup, drawingGroups } from './drawing-order.js'
import { escapeXml } from './xml.js'

/** Ids of the arts that are defined once and referred to. */
export type ArtIds = ReadonlyMap<Art, string>

/** Ids for the arts that stand more than once on these sheets, in order of their first appearance. */
export function sharedArtIds(sheets: readonly Sheet[], prefix: string): ArtIds {
  const uses = new Map<Art, number>()
  for (const sheet of sheets)
    for (const group of drawingGroups(sheet))
      for (const { art } of group.drawings) uses.set(art, (uses.get(art) ?? 0) + 1)
  const shared = [...uses].filter(([, count]) => count > 1)
  return new Map(shared.map(([art], index) => [art, `${prefix}${index + 1}`]))
}

/** Gives the id of something defined elsewhere that draws the path; undefined where it is to be written out. */
export type OutlineIds = (shape: PathShape) => string | undefined

const writtenOut: OutlineIds = () => undefined

export function artDefinitions(ids: ArtIds): string {
  if (ids.size === 0) return ''
  return `<defs>${[...ids].map(each => artDefinition(each)).join('')}</defs>`
}

/** Gives an art's shapes as SVG elements, in mm from the art's origin. */
export type ArtMarkup = (art: Art) => string

export function artDefinition(
  [art, id]: readonly [art: Art, id: string],
  markupOf: ArtMarkup = artMarkup,
): string {
  return `<g id="${id}">${markupOf(art)}</g>`
}

/** Everything on the sheet as SVG elements, in mm. */
export function sheetBody(sheet: Sheet, ids: ArtIds, markupOf?: ArtMarkup): string {
  return sheetTexts(sheet, ids, markupOf).join('')
}

/**
 * The same in texts that follow one another. An art that stands on many sheets is one of them, the same each time, so that a page is
 * written without its words being put together and copied again.
 */
export function sheetTexts(
  sheet: Sheet,
  ids: ArtIds,
  markupOf: ArtMarkup = writtenMarkup,
): readonly string[] {
  const texts: string[] = []
  for (const group of drawingGroups(sheet)) addGroup(texts, group, ids, markupOf)
  const cuts = cutsMarkup(sheet.cuts)
  if (cuts !== '') texts.push(texts.length === 0 ? cuts : `\n${cuts}`)
  return texts
}

export function artMarkup(art: Art, outlines: OutlineIds = writtenOut): string {
  return art.shapes.map(shape => shapeMarkup(shape, outlines)).join('')
}

/** Null for an art that was written out once: of a set of thousands of cards most are. */
const known = new WeakMap<Art, string | null>()

/** Kept from the second time on. */
function writtenMarkup(art: Art): string {
  const before = known.get(art)
  const markup = before ?? artMarkup(art)
  known.set(art, before === undefined ? null : markup)
  return markup
}

function addGroup(
  texts: string[],
  { words, drawings }: DrawingGroup,
  ids: ArtIds,
  markupOf: ArtMarkup,
): void {
  const title = words === '' ? '' : `<title>${escapeXml(words)}</title>`
  let text = `${texts.length === 0 ? '' : '\n'}<g>${title}`
  for (const { art, xMm, yMm, turn } of drawings) {
    const place = `${translation(xMm, yMm)}${turn === 180 ? ' rotate(180)' : ''}`
    const id = ids.get(art)
    if (id !== undefined) text += `<use href="#${id}" transform="${place}"/>`
    else {
      texts.push(`${text}<g transform="${place}">`, markupOf(art))
      text = '</g>'
    }
  }
  texts.push(`${text}</g>`)
}

export function shapeMarkup(shape: Shape, outlines: OutlineIds = writtenOut): string {
  if (shape.kind === 'image') {
    const { xMm, yMm, widthMm, heightMm } = shape.box
    const data = Buffer.from(shape.bytes).toString('base64')
    return (
      `<image x="${toDecimal(xMm)}" y="${toDecimal(yMm)}" width="${toDecimal(widthMm)}"` +
      ` height="${toDecimal(heightMm)}" href="data:${shape.mediaType};base64,${data}"/>`
    )
  }
  const { fill, stroke, words } = shape
  const outline = stroke === undefined ? outlines(shape) : undefined
  if (outline !== undefined) return `<use href="#${outline}" fill="${escapeXml(fill)}"/>`
  if (words !== undefined) return words.map(wordMarkup).join('')
  // Path data holds letters and numbers alone.
  return `<path d="${shape.d}" fill="${escapeXml(fill)}"${stroke ? strokeAttributes(stroke) : ''}/>`
}

/** A word's outline is the same text wherever it stands, and shorter than that of the whole line. */
function wordMarkup({ outline, xMm, yMm }: PlacedWord): string {
  return `<g transform="${translation(xMm, yMm)}">${shapeMarkup(outline)}</g>`
}

function translation(xMm: number, yMm: number): string {
  return `translate(${toDecimal(xMm)} ${toDecimal(yMm)})`
}

interface Stroke {
  readonly color: string
  readonly widthMm: number
  readonly dashMm?: readonly number[]
  readonly cap?: 'butt' | 'round'
}

function strokeAttributes({ color, widthMm, dashMm, cap }: Stroke): string {
  const dash = dashMm?.length ? ` stroke-dasharray="${dashMm.map(toDecimal).join(' ')}"` : ''
  const ends = cap === 'round' ? ' stroke-linecap="round"' : ''
  return ` stroke="${escapeXml(color)}" stroke-width="${toDecimal(widthMm)}"${dash}${ends}`
}

function cutsMarkup(cuts: readonly CutLine[]): string {
  if (cuts.length === 0) return ''
  const lines = cuts.map(
    cut =>
      `<path d="M${toDecimal(cut.x1Mm)} ${toDecimal(cut.y1Mm)}L${toDecimal(cut.x2Mm)} ${toDecimal(cut.y2Mm)}"` +
      `${cut.white ? ' stroke="#ffffff"' : ''} stroke-width="${toDecimal(cut.widthMm)}"/>`,
  )
  return `<g fill="none" stroke="#000000">${lines.join('')}</g>`
}
