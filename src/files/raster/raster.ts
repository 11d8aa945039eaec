import { mmToPixels } from '../../geometry.js'
import type { Shape } from '../../pieces/piece.js'
import type { CutLine, Sheet } from '../../sheets/sheet.js'
import { drawingGroups } from '../page/drawing-order.js'
import type { Pixels } from '../png/pixels.js'
import { blankPage, paintRectangle, paintSprite } from './compose.js'
import type { Sprite } from './sprite.js'
import { createSpriteStore } from './sprite-store.js'

export interface Rasterizer {
  /** Draws the shapes of the sheet that have not been drawn before. */
  prepare(sheet: Sheet): Promise<PreparedSheet>
  /** Paints a prepared sheet, in the memory given where that is large enough. */
  paint(prepared: PreparedSheet, memory?: Uint8Array): Pixels
  /** The sheet's pixels; the same whatever was drawn before. */
  draw(sheet: Sheet): Promise<Pixels>
}

export interface PreparedSheet {
  readonly sheet: Sheet
  readonly placed: readonly PlacedShape[]
  /** One for each placed shape. */
  readonly sprites: readonly Sprite[]
}

/** A shape on the page: where its art's origin lies. */
export interface PlacedShape {
  readonly shape: Shape
  readonly xMm: number
  readonly yMm: number
  readonly turn: 0 | 180
}

/**
 * Draws sheets at one resolution. Each distinct shape is drawn once by resvg, its art's origin on a whole pixel,
 * and then copied to every place where it stands, the place rounded to the nearest pixel: half a pixel at most,
 * 0.04 mm at 300 DPI. Drawing every page afresh would take many times as long.
 */
export function createRasterizer(dpi: number): Rasterizer {
  const store = createSpriteStore(dpi)
  const toPixel = (mm: number): number => Math.round(mmToPixels(mm, dpi))

  async function prepare(sheet: Sheet): Promise<PreparedSheet> {
    const placed = placedShapes(sheet)
    // Pictures are made ready beside one another; what is drawn here is drawn one by one.
    const pictures = placed.filter(({ shape }) => shape.kind === 'image')
    await Promise.all(pictures.map(({ shape, turn }) => store.spriteOf(shape, turn)))
    const sprites: Sprite[] = []
    for (const { shape, turn } of placed) sprites.push(await store.spriteOf(shape, turn))
    return { sheet, placed, sprites }
  }

  function paint({ sheet, placed, sprites }: PreparedSheet, memory?: Uint8Array): Pixels {
    const channels = sprites.some(sprite => sprite.channels === 3) ? 3 : 1
    const page = blankPage(toPixel(sheet.widthMm), toPixel(sheet.heightMm), channels, memory)
    for (const [index, { xMm, yMm }] of placed.entries())
      paintSprite(page, sprites[index]!, toPixel(xMm), toPixel(yMm))
    for (const cut of sheet.cuts) if (!isSlanting(cut)) paintCut(page, cut, dpi)
    return page
  }

  return { prepare, paint, draw: async sheet => paint(await prepare(sheet)) }
}

function placedShapes(sheet: Sheet): readonly PlacedShape[] {
  const drawings = drawingGroups(sheet).flatMap(group => group.drawings)
  const shapes = drawings.flatMap(({ art, xMm, yMm, turn }) =>
    art.shapes.map(shape => ({ shape, xMm, yMm, turn })),
  )
  return [...shapes, ...sheet.cuts.filter(isSlanting).map(shapeOfCut)]
}

const isSlanting = (cut: CutLine): boolean => cut.x1Mm !== cut.x2Mm && cut.y1Mm !== cut.y2Mm

function shapeOfCut({ x1Mm, y1Mm, x2Mm, y2Mm, widthMm, white }: CutLine): PlacedShape {
  const d = `M0 0L${x2Mm - x1Mm} ${y2Mm - y1Mm}`
  const stroke = { color: white ? '#ffffff' : '#000000', widthMm }
  return { shape: { kind: 'path', d, fill: 'none', stroke }, xMm: x1Mm, yMm: y1Mm, turn: 0 }
}

/** An upright or level cut is painted on whole pixels, at least one thick, so that it is black and not a smear. */
function paintCut(page: Pixels, cut: CutLine, dpi: number): void {
  const pixels = (mm: number): number => mmToPixels(mm, dpi)
  const thick = Math.max(1, Math.round(pixels(cut.widthMm)))
  const [x1, x2] = [cut.x1Mm, cut.x2Mm].map(pixels).sort((a, b) => a - b) as [number, number]
  const [y1, y2] = [cut.y1Mm, cut.y2Mm].map(pixels).sort((a, b) => a - b) as [number, number]
  const level = cut.y1Mm === cut.y2Mm
  const left = Math.round(level ? x1 : x1 - thick / 2)
  const top = Math.round(level ? y1 - thick / 2 : y1)
  const right = level ? Math.round(x2) : left + thick
  const bottom = level ? top + thick : Math.round(y2)
  paintRectangle(page, { left, top, right, bottom }, cut.white ? 255 : 0)
}
