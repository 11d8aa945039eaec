import type { Size } from '../../geometry.js'
import type { Contrast } from '../../plan/plan.js'
import { contrastRatio } from '../marks/contrast.js'
import type { Art, PathShape, PlacedArt, Shape } from '../piece.js'
import { lineOfWords } from './line-of-words.js'
import { pathText, rectangle } from './path-text.js'
import { withLettersOf } from './placed-letters.js'

const BLACK_ON_WHITE: Contrast = { ink: '#000000', ground: '#ffffff' }

/** Whether a ground is printed on which white shows better than black. */
export function printsDark(contrast: Contrast | undefined): boolean {
  if (contrast === undefined || contrast.stock) return false
  const { ground } = contrast
  return contrastRatio(ground, '#ffffff') > contrastRatio(ground, '#000000')
}

/**
 * A piece drawn black on white, in other colours: black becomes the ink, white the ground, greys lie between them in
 * the same shares. A ground that is the card's own colour is not printed. Colours that the teacher gave to marks stay. Arts stay shared: equal ones come out as one.
 */
export function recolourer(
  contrast: Contrast | undefined,
): (art: readonly PlacedArt[], size: Size) => readonly PlacedArt[] {
  const ink = contrast?.ink ?? BLACK_ON_WHITE.ink
  const ground = contrast === undefined || contrast.stock ? BLACK_ON_WHITE.ground : contrast.ground
  if (ink === BLACK_ON_WHITE.ink && ground === BLACK_ON_WHITE.ground) return art => art
  // Only as long as somebody holds the art as it was.
  const known = new WeakMap<Art, Art>()
  const outlines = new WeakMap<PathShape, PathShape>()
  const recolourWord = (outline: PathShape): PathShape => {
    const made = outlines.get(outline) ?? recolourPath(outline, { ink, ground })
    outlines.set(outline, made)
    return made
  }
  const recolourShape = (shape: Shape): Shape => {
    if (shape.kind === 'image') return shape
    if (shape.words === undefined) return recolourPath(shape, { ink, ground })
    const words = shape.words.map(word => ({ ...word, outline: recolourWord(word.outline) }))
    return lineOfWords(words, () => shape.d)
  }
  const recoloured = (art: Art): Art => {
    const made = known.get(art) ?? { ...art, shapes: art.shapes.map(recolourShape) }
    known.set(art, made)
    return made
  }
  const grounds = new Map<string, Art>()
  return (art, size) => {
    const key = `${size.widthMm} ${size.heightMm}`
    const paper = grounds.get(key) ?? groundArt(size, ground)
    grounds.set(key, paper)
    return [
      { art: paper, xMm: 0, yMm: 0 },
      ...art.map(placed => ({ ...placed, art: recoloured(placed.art) })),
    ]
  }
}

function groundArt({ widthMm, heightMm }: Size, ground: string): Art {
  const d = pathText(rectangle(0, 0, widthMm, heightMm))
  return { widthMm, heightMm, shapes: [{ kind: 'path', d, fill: ground }], text: [] }
}

function recolourPath(shape: PathShape, contrast: Contrast): PathShape {
  const fill = shape.fill === 'none' ? 'none' : recolour(shape.fill, contrast)
  if (shape.stroke === undefined) return withLettersOf(shape, { ...shape, fill })
  return { ...shape, fill, stroke: { ...shape.stroke, color: recolour(shape.stroke.color, contrast) } }
}

/** A grey's share of white decides how far it lies from the ink towards the ground. */
export function recolour(color: string, { ink, ground }: Contrast): string {
  const [red, green, blue] = channels(color)
  if (red !== green || green !== blue) return color
  const share = red / 255
  const [from, to] = [channels(ink), channels(ground)]
  return `#${from.map((value, index) => hex(value + (to[index]! - value) * share)).join('')}`
}

function channels(color: string): readonly [number, number, number] {
  const full = /^#[0-9a-f]{3}$/i.test(color) ? color.replaceAll(/[0-9a-f]/gi, digit => digit + digit) : color
  const value = Number.parseInt(full.slice(1), 16)
  return [value >> 16, (value >> 8) & 255, value & 255]
}

function hex(value: number): string {
  return Math.round(value).toString(16).padStart(2, '0')
}
