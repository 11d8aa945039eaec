import { mmToPixels } from '../../geometry.js'
import type { Shape } from '../../pieces/piece.js'
import type { CutLine, Sheet } from '../../sheets/sheet.js'
import { type PageShapes, type PlacedShape, type PlacedShapes, pageShapes } from '../page/page-shapes.js'
import type { Pixels } from '../png/pixels.js'
import { blankPage, paintSprite } from './compose.js'
import { rectangleSprites } from './rectangle-sprite.js'
import type { Sprite } from './sprite.js'
import { createSpriteStore } from './sprite-store.js'

export interface Rasterizer {
  /** Draws the shapes of the page that have not been drawn before. */
  prepare(page: PageShapes): Promise<PreparedSheet>
  /** Paints a prepared sheet, in the memory given where that is large enough. */
  paint(prepared: PreparedSheet, memory?: Uint8Array): Pixels
  /** The sheet's pixels; the same whatever was drawn before. */
  draw(sheet: Sheet): Promise<Pixels>
}

export interface PreparedSheet {
  readonly widthPx: number
  readonly heightPx: number
  /** 1 where every pixel will be a grey, else 3. */
  readonly channels: 1 | 3
  readonly hasPictures: boolean
  /** In the order in which they are painted. */
  readonly drawings: readonly PlacedSprites[]
}

/** The shapes of an art on the page. */
export type PlacedSprites = readonly PlacedSprite[]

export interface PlacedSprite {
  readonly sprite: Sprite
  /** Where its origin lies on the page, in pixels. */
  readonly x: number
  readonly y: number
}

/**
 * Draws sheets at one resolution. Each distinct shape is drawn once by resvg, the origin of its art or of its word on a whole
 * pixel, and then copied to every place where it stands, the place rounded to the nearest pixel: half a pixel at most,
 * 0.04 mm at 300 DPI. Drawing every page afresh would take many times as long.
 */
/** @param keptBytes as much of what was drawn as is kept, twice; a page's own shapes take a few megabytes */
export function createRasterizer(dpi: number, keptBytes?: number): Rasterizer {
  const store = createSpriteStore(dpi, keptBytes)
  const rectangleSprite = rectangleSprites()
  // Whole numbers of 32 bits, none of them minus nought: what takes them is compiled for numbers of one kind.
  const toPixel = (mm: number): number => Math.round(mmToPixels(mm, dpi)) | 0

  async function prepare(page: PageShapes): Promise<PreparedSheet> {
    const placed = [...page.drawings, ...slanting(page)]
    // Pictures are made ready beside one another; what is drawn here is drawn one by one.
    const pictures = placed.flatMap(({ shapes, turn }) =>
      shapes.flatMap(({ shape }) => (shape.kind === 'image' ? [{ shape, turn }] : [])),
    )
    await Promise.all(pictures.map(({ shape, turn }) => store.spriteOf(shape, turn)))
    const drawings: PlacedSprites[] = []
    for (const each of placed) {
      const sprites = spritesAtHand(each)
      drawings.push(Array.isArray(sprites) ? sprites : await sprites)
    }
    const cuts = page.cuts.filter(cut => !isSlanting(cut)).map(cut => placedCut(cut, dpi, rectangleSprite))
    return {
      widthPx: toPixel(page.widthMm),
      heightPx: toPixel(page.heightMm),
      channels: drawings.some(sprites => sprites.some(({ sprite }) => sprite.channels === 3)) ? 3 : 1,
      hasPictures: pictures.length > 0,
      drawings: [...drawings, ...cuts],
    }
  }

  /** Placed at once where all of them were drawn before, as nearly all are. */
  function spritesAtHand({ shapes, turn }: PlacedShapes): PlacedSprites | Promise<PlacedSprites> {
    const sprites: PlacedSprite[] = []
    for (const placed of shapes) {
      const sprite = store.spriteOf(placed.shape, turn)
      if (sprite instanceof Promise) return spritesDrawn({ shapes, turn })
      sprites.push(placedAt(sprite, placed))
    }
    return sprites
  }

  async function spritesDrawn({ shapes, turn }: PlacedShapes): Promise<PlacedSprites> {
    const sprites: PlacedSprite[] = []
    for (const placed of shapes) sprites.push(placedAt(await store.spriteOf(placed.shape, turn), placed))
    return sprites
  }

  function placedAt(sprite: Sprite, { xMm, yMm }: PlacedShape): PlacedSprite {
    return { sprite, x: toPixel(xMm), y: toPixel(yMm) }
  }

  function paint({ widthPx, heightPx, channels, drawings }: PreparedSheet, memory?: Uint8Array): Pixels {
    const page = blankPage(widthPx, heightPx, channels, memory)
    for (const sprites of drawings) for (const { sprite, x, y } of sprites) paintSprite(page, sprite, x, y)
    return page
  }

  return { prepare, paint, draw: async sheet => paint(await prepare(pageShapes(sheet))) }
}

const isSlanting = (cut: CutLine): boolean => cut.x1Mm !== cut.x2Mm && cut.y1Mm !== cut.y2Mm

function slanting({ cuts }: PageShapes): readonly PlacedShapes[] {
  return cuts.filter(isSlanting).map(cut => ({
    shapes: [{ shape: shapeOfCut(cut), xMm: cut.x1Mm, yMm: cut.y1Mm }],
    turn: 0,
  }))
}

function shapeOfCut({ x1Mm, y1Mm, x2Mm, y2Mm, widthMm, white }: CutLine): Shape {
  const d = `M0 0L${x2Mm - x1Mm} ${y2Mm - y1Mm}`
  const stroke = { color: white ? '#ffffff' : '#000000', widthMm }
  return { kind: 'path', d, fill: 'none', stroke }
}

/** An upright or level cut is painted on whole pixels, at least one thick, so that it is black and not a smear. */
function placedCut(
  cut: CutLine,
  dpi: number,
  rectangleSprite: ReturnType<typeof rectangleSprites>,
): PlacedSprites {
  const pixels = (mm: number): number => mmToPixels(mm, dpi)
  const thick = Math.max(1, Math.round(pixels(cut.widthMm)))
  const [x1, x2] = [cut.x1Mm, cut.x2Mm].map(pixels).sort((a, b) => a - b) as [number, number]
  const [y1, y2] = [cut.y1Mm, cut.y2Mm].map(pixels).sort((a, b) => a - b) as [number, number]
  const level = cut.y1Mm === cut.y2Mm
  const x = Math.round(level ? x1 : x1 - thick / 2) | 0
  const y = Math.round(level ? y1 - thick / 2 : y1) | 0
  const right = level ? Math.round(x2) : x + thick
  const bottom = level ? y + thick : Math.round(y2)
  return [{ sprite: rectangleSprite(right - x, bottom - y, cut.white ? 255 : 0), x, y }]
}
