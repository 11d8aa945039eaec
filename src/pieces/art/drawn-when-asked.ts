import type { Size } from '../../geometry.js'
import { lazily } from '../../lazily.js'
import type { Art, Shape } from '../piece.js'

/** An art that has its place and its text before it is drawn: it is when somebody asks for its shapes, once. */
export function drawnWhenAsked(
  { widthMm, heightMm, text }: Omit<Art, 'shapes'>,
  draw: () => readonly Shape[],
): Art {
  const shapes = lazily(draw)
  return {
    widthMm,
    heightMm,
    text,
    get shapes() {
      return shapes()
    },
  }
}

/** The same for an art of which nothing but its size is known. */
export function wholeWhenAsked({ widthMm, heightMm }: Size, draw: () => Art): Art {
  const drawn = lazily(draw)
  return {
    widthMm,
    heightMm,
    get shapes() {
      return drawn().shapes
    },
    get text() {
      return drawn().text
    },
  }
}
