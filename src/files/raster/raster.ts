import { mmToPixels } from '../../geometry.js'
import type { Shape } from '../../pieces/piece.js'
import type { CutLine, Sheet } from '../../sheets/sheet.js'
import { type Drawing, drawingGroups } from '../page/drawing-order.js'
import type { Pixels } from '../png/pixels.js'
import { blankPage, paintSprite } from './compose.js'
import { rectangleSprites } from './rectangle-sprite.js'
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

  async function prepare(sheet: Sheet): Promise<PreparedSheet> {
    const placed = [
      ...drawingGroups(sheet).flatMap(({ drawings }) => drawings.map(shapesOf)),
      ...slanting(sheet),
    ]
    // Pictures are made ready beside one another; what is drawn here is drawn one by one.
    const pictures = placed.flatMap(({ shapes, turn }) =>
      shapes.flatMap(shape => (shape.kind === 'image' ? [{ shape, turn }] : [])),
    )
    await Promise.all(pictures.map(({ shape, turn }) => store.spriteOf(shape, turn)))
    const drawings: PlacedSprites[] = []
    for (const each of placed) {
      const sprites = spritesAtHand(each)
      drawings.push(Array.isArray(sprites) ? sprites : await sprites)
    }
    const cuts = sheet.cuts.filter(cut => !isSlanting(cut)).map(cut => placedCut(cut, dpi, rectangleSprite))
    return {
      widthPx: toPixel(sheet.widthMm),
      heightPx: toPixel(sheet.heightMm),
      channels: drawings.some(sprites => sprites.some(({ sprite }) => sprite.channels === 3)) ? 3 : 1,
      hasPictures: pictures.length > 0,
      drawings: [...drawings, ...cuts],
    }
  }

  /** Placed at once where all of them were drawn before, as nearly all are. */
  function spritesAtHand(placed: PlacedShapes): PlacedSprites | Promise<PlacedSprites> {
    const parts = partsOf(placed)
    const sprites: PlacedSprite[] = []
    for (const part of parts) {
      const sprite = store.spriteOf(part.outline, placed.turn)
      if (sprite instanceof Promise) return spritesDrawn(parts, placed.turn)
      sprites.push(placedAt(sprite, part))
    }
    return sprites
  }

  async function spritesDrawn(parts: readonly PlacedPart[], turn: 0 | 180): Promise<PlacedSprites> {
    const sprites: PlacedSprite[] = []
    for (const part of parts) sprites.push(placedAt(await store.spriteOf(part.outline, turn), part))
    return sprites
  }

  function placedAt(sprite: Sprite, { xMm, yMm }: PlacedPart): PlacedSprite {
    return { sprite, x: toPixel(xMm), y: toPixel(yMm) }
  }

  function paint({ widthPx, heightPx, channels, drawings }: PreparedSheet, memory?: Uint8Array): Pixels {
    const page = blankPage(widthPx, heightPx, channels, memory)
    for (const sprites of drawings) for (const { sprite, x, y } of sprites) paintSprite(page, sprite, x, y)
    return page
  }

  return { prepare, paint, draw: async sheet => paint(await prepare(sheet)) }
}

/** A shape, or a word of one, and where its origin stands on the page. */
interface PlacedPart {
  readonly outline: Shape
  readonly xMm: number
  readonly yMm: number
}

/** A line of text is drawn word by word, for most of its words stand elsewhere too. */
function partsOf({ shapes, xMm, yMm, turn }: PlacedShapes): readonly PlacedPart[] {
  const sign = turn === 0 ? 1 : -1
  const parts: PlacedPart[] = []
  for (const shape of shapes)
    if (shape.kind === 'image' || shape.words === undefined) parts.push({ outline: shape, xMm, yMm })
    else
      for (const word of shape.words)
        parts.push({ outline: word.outline, xMm: xMm + sign * word.xMm, yMm: yMm + sign * word.yMm })
  return parts
}

interface PlacedShapes {
  readonly shapes: readonly Shape[]
  readonly xMm: number
  readonly yMm: number
  readonly turn: 0 | 180
}

function shapesOf({ art, xMm, yMm, turn }: Drawing): PlacedShapes {
  return { shapes: art.shapes, xMm, yMm, turn }
}

const isSlanting = (cut: CutLine): boolean => cut.x1Mm !== cut.x2Mm && cut.y1Mm !== cut.y2Mm

function slanting({ cuts }: Sheet): readonly PlacedShapes[] {
  return cuts.filter(isSlanting).map(cut => ({
    shapes: [shapeOfCut(cut)],
    xMm: cut.x1Mm,
    yMm: cut.y1Mm,
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
