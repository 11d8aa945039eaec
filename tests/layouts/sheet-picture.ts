/** Sheets as small SVG pictures that stand beside the test that prints them, so that a change of look is seen in review. */
import { drawingGroups } from '../../src/files/page/drawing-order.js'
import { shapeInkBox } from '../../src/files/page/ink-box.js'
import { escapeXml } from '../../src/files/page/xml.js'
import type { Art, PathShape, Shape, TextRun } from '../../src/pieces/piece.js'
import type { CutLine, Sheet } from '../../src/sheets/sheet.js'
import { rounded, short } from '../pieces/expected-picture.js'

/** Between two sheets that stand side by side. */
const betweenMm = 5

/** The sheets side by side on grey, an element a line; text is shown as text, as wide as its letters are drawn. */
export function pictureOfSheets(title: string, sheets: readonly Sheet[]): string {
  const lefts = sheets.map((_, index) =>
    sheets.slice(0, index).reduce((sum, { widthMm }) => sum + widthMm + betweenMm, betweenMm),
  )
  const width = sheets.reduce((sum, { widthMm }) => sum + widthMm + betweenMm, betweenMm)
  const height = Math.max(...sheets.map(({ heightMm }) => heightMm)) + 2 * betweenMm
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${short(width)}mm" height="${short(height)}mm" viewBox="0 0 ${short(width)} ${short(height)}" font-family="Andika, sans-serif">`,
    `<title>${escapeXml(title)}</title>`,
    `<rect width="${short(width)}" height="${short(height)}" fill="#bbbbbb"/>`,
    ...sheets.flatMap((sheet, index) => [
      `<g transform="translate(${short(lefts[index]!)} ${betweenMm})">`,
      `<title>${escapeXml(`${sheet.kind}, ${sheet.side}`)}</title>`,
      `<rect width="${short(sheet.widthMm)}" height="${short(sheet.heightMm)}" fill="#ffffff"/>`,
      ...sheetElements(sheet),
      '</g>',
    ]),
    '</svg>',
    '',
  ].join('\n')
}

function sheetElements(sheet: Sheet): readonly string[] {
  const drawings = drawingGroups(sheet).flatMap(group => group.drawings)
  return [
    ...drawings.flatMap(({ art, xMm, yMm, turn }) => {
      const elements = artElements(art)
      if (elements.length === 0) return []
      const turned = turn === 180 ? ' rotate(180)' : ''
      return [`<g transform="translate(${short(xMm)} ${short(yMm)})${turned}">`, ...elements, '</g>']
    }),
    ...sheet.cuts.map(cutElement),
  ]
}

/** Paths, pictures as grey boxes, and in place of the letters of each line of text the text. */
function artElements({ shapes, text }: Art): readonly string[] {
  const letters = new Map(text.map(run => [run, shapes.filter(shape => isInkOf(shape, run))]))
  const ofText = new Set([...letters.values()].flat())
  return [
    ...shapes.filter(shape => !ofText.has(shape)).map(shapeElement),
    ...[...letters].map(([run, ink]) => textElement(run, ink)),
  ]
}

/** Letters reach above their baseline and stay within their line; lines and bars of marks lie below it. */
function isInkOf(shape: Shape, { xMm, baselineMm, widthMm, sizeMm }: TextRun): boolean {
  if (shape.kind !== 'path' || shape.stroke !== undefined) return false
  const box = shapeInkBox(shape)
  if (box === undefined) return false
  const [left, right] = [xMm - 0.15 * sizeMm, xMm + widthMm + 0.3 * sizeMm]
  const [top, bottom] = [baselineMm - 1.1 * sizeMm, baselineMm + 0.4 * sizeMm]
  return (
    box.xMm >= left &&
    box.xMm + box.widthMm <= right &&
    box.yMm >= top &&
    box.yMm + box.heightMm <= bottom &&
    box.yMm < baselineMm
  )
}

function textElement({ text, xMm, baselineMm, widthMm, sizeMm }: TextRun, ink: readonly Shape[]): string {
  const fill = ink.flatMap(shape => (shape.kind === 'path' ? [shape.fill] : []))[0]
  if (fill === undefined) throw new Error(`"${text}" has no ink where it says that it stands`)
  const color = fill === '#000000' ? '' : ` fill="${fill}"`
  return `<text x="${short(xMm)}" y="${short(baselineMm)}" font-size="${short(sizeMm)}" textLength="${short(widthMm)}"${color}>${escapeXml(text)}</text>`
}

function shapeElement(shape: Shape): string {
  if (shape.kind === 'path') return pathElement(shape)
  const { xMm, yMm, widthMm, heightMm } = shape.box
  return `<rect x="${short(xMm)}" y="${short(yMm)}" width="${short(widthMm)}" height="${short(heightMm)}" fill="#999999"><title>${escapeXml(shape.description)}</title></rect>`
}

function pathElement({ d, fill, stroke }: PathShape): string {
  if (stroke === undefined) return `<path d="${rounded(d)}" fill="${fill}"/>`
  const dashes = stroke.dashMm?.length ? ` stroke-dasharray="${stroke.dashMm.map(short).join(' ')}"` : ''
  const cap = stroke.cap === 'round' ? ' stroke-linecap="round"' : ''
  return `<path d="${rounded(d)}" fill="${fill}" stroke="${stroke.color}" stroke-width="${short(stroke.widthMm)}"${dashes}${cap}/>`
}

function cutElement({ x1Mm, y1Mm, x2Mm, y2Mm, widthMm, white }: CutLine): string {
  return `<path d="M${short(x1Mm)} ${short(y1Mm)}L${short(x2Mm)} ${short(y2Mm)}" stroke="${white ? '#ffffff' : '#000000'}" stroke-width="${short(widthMm)}"/>`
}
