import { insetBox, type Size } from '../../geometry.js'
import { moveArt } from '../art/move-art.js'
import type { ArtSlot } from '../faces/face.js'
import type { Art } from '../piece.js'
import type { TypeScale } from '../text/type-scale.js'
import {
  type BorderCorners,
  type BorderLine,
  borderCorners,
  borderLines,
  borderWidthMm,
  drawBorder,
} from './borders.js'

/** How far a card's border stands inside its edge: trimming by hand is good to about 1 mm (common practice, no source). */
export const CARD_BORDER_INSET_MM = 2.5

/** What `border:` may name: a line, or a line and the shape of its corners (`dashed-round`). */
export const borderNames: readonly string[] = [
  ...borderLines,
  ...borderLines.flatMap(line =>
    borderCorners.filter(corners => corners !== 'square').map(corners => `${line}-${corners}`),
  ),
]

interface NamedBorder {
  readonly line: BorderLine
  readonly corners: BorderCorners
}

/** Names are checked when the plan is read; undefined where there is to be no border. */
function borderNamed(name: string | undefined): NamedBorder | undefined {
  const [line, corners = 'square'] = (name ?? 'none').split('-')
  const known = borderLines.find(each => each === line)
  const shape = borderCorners.find(each => each === corners)
  return known === undefined || shape === undefined ? undefined : { line: known, corners: shape }
}

/** From the piece's edge to where its content may begin. */
export function borderDepthMm(name: string | undefined): number {
  const border = borderNamed(name)
  return CARD_BORDER_INSET_MM + (border === undefined ? 0 : borderWidthMm(border.line))
}

/**
 * A slot over the whole face that draws the card's border inside its edges; empty where the teacher asked for none.
 * In large print, where a corner of the card is cut off, square corners are cut too, so that the border stays whole.
 */
export function cardBorder(name: string | undefined, { large }: Pick<TypeScale, 'large'>): ArtSlot {
  return { kind: 'art', draw: room => drawCardBorder(name, large, room) }
}

function drawCardBorder(name: string | undefined, large: boolean, room: Size): Art {
  const named = borderNamed(name)
  const border = large && named?.corners === 'square' ? { ...named, corners: 'cut' as const } : named
  if (border === undefined) return { ...room, shapes: [], text: [] }
  const frame = insetBox({ xMm: 0, yMm: 0, ...room }, CARD_BORDER_INSET_MM)
  const art: Art = {
    widthMm: frame.widthMm,
    heightMm: frame.heightMm,
    shapes: drawBorder({ ...border, size: frame }),
    text: [],
  }
  return moveArt(art, frame.xMm, frame.yMm, room)
}
