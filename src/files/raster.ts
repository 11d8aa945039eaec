import { mmToPixels } from '../geometry.js'
import type { Art } from '../pieces/piece.js'
import type { CutMark, Sheet } from '../sheets/sheet.js'
import { blankPage, paintRectangle, paintSprite } from './compose.js'
import { drawArt } from './draw-art.js'
import { type Drawing, drawingGroups } from './drawing-order.js'
import type { Pixels } from './png/encode-png.js'
import { blankSprite, type Sprite, spriteFromPixels } from './sprite.js'

export interface Rasterizer {
  readonly dpi: number
  /** The sheet's pixels; the same whatever was drawn before. */
  draw(sheet: Sheet): Promise<Pixels>
}

/**
 * Draws sheets at one resolution. Each distinct art is drawn once by resvg, its origin on a whole pixel, and
 * then copied to every place where it stands, the place rounded to the nearest pixel: half a pixel at most,
 * 0.04 mm at 300 DPI. Drawing the whole page afresh would take twenty times as long.
 */
export function createRasterizer(dpi: number): Rasterizer {
  const upright = new Map<Art, Promise<Sprite>>()
  const turned = new Map<Art, Promise<Sprite>>()

  function spriteOf({ art, turn }: Drawing): Promise<Sprite> {
    const cache = turn === 0 ? upright : turned
    const known = cache.get(art)
    if (known) return known
    const sprite = drawSprite(art, turn, dpi)
    cache.set(art, sprite)
    return sprite
  }

  return {
    dpi,
    async draw(sheet) {
      const toPixel = (mm: number): number => Math.round(mmToPixels(mm, dpi))
      const drawings = [
        ...drawingGroups(sheet).flatMap(group => group.drawings),
        ...sheet.cuts.filter(isSlanting).map(drawingOfCut),
      ]
      const sprites = await Promise.all(drawings.map(spriteOf))
      const channels = sprites.some(sprite => sprite.channels === 3) ? 3 : 1
      const page = blankPage(toPixel(sheet.widthMm), toPixel(sheet.heightMm), channels)
      for (const [index, { xMm, yMm }] of drawings.entries())
        paintSprite(page, sprites[index]!, toPixel(xMm), toPixel(yMm))
      for (const cut of sheet.cuts) if (!isSlanting(cut)) paintCut(page, cut, dpi)
      return page
    },
  }
}

async function drawSprite(art: Art, turn: 0 | 180, dpi: number): Promise<Sprite> {
  const pixels = await drawArt(art, turn, dpi)
  return pixels === undefined ? blankSprite : spriteFromPixels(pixels)
}

const isSlanting = (cut: CutMark): boolean => cut.x1Mm !== cut.x2Mm && cut.y1Mm !== cut.y2Mm

/** An upright or level cut is painted on whole pixels, at least one thick, so that it is black and not a smear. */
function paintCut(page: Pixels, cut: CutMark, dpi: number): void {
  const pixels = (mm: number): number => mmToPixels(mm, dpi)
  const thick = Math.max(1, Math.round(pixels(cut.widthMm)))
  const [x1, x2] = [cut.x1Mm, cut.x2Mm].map(pixels).sort((a, b) => a - b) as [number, number]
  const [y1, y2] = [cut.y1Mm, cut.y2Mm].map(pixels).sort((a, b) => a - b) as [number, number]
  const level = cut.y1Mm === cut.y2Mm
  const left = Math.round(level ? x1 : x1 - thick / 2)
  const top = Math.round(level ? y1 - thick / 2 : y1)
  const right = level ? Math.round(x2) : left + thick
  const bottom = level ? top + thick : Math.round(y2)
  paintRectangle(page, left, top, right, bottom)
}

function drawingOfCut({ x1Mm, y1Mm, x2Mm, y2Mm, widthMm }: CutMark): Drawing {
  const d = `M0 0L${x2Mm - x1Mm} ${y2Mm - y1Mm}`
  const art: Art = {
    widthMm: Math.abs(x2Mm - x1Mm),
    heightMm: Math.abs(y2Mm - y1Mm),
    shapes: [{ kind: 'path', d, fill: 'none', stroke: { color: '#000000', widthMm } }],
    text: [],
  }
  return { art, xMm: x1Mm, yMm: y1Mm, turn: 0 }
}
