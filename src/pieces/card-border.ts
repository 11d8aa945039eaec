import { borderNamed, drawBorder } from './borders.js'
import type { ArtSlot } from './face.js'
import { moveArt } from './move-art.js'
import { CARD_BORDER_INSET_MM } from './set-mark.js'

const strokeMm = 0.4

/** The border's outer edge; the widest border at this stroke, wavy, reaches 1.44 mm inwards from there. */
const outerEdgeMm = CARD_BORDER_INSET_MM - 0.7

/** A slot over the whole face for the card's border: a name from `borderNames`, or none. */
export function cardBorder(style: string | undefined): ArtSlot {
  const border = style === undefined ? undefined : borderNamed(style)
  return {
    kind: 'art',
    draw: room => {
      if (border === undefined) return { ...room, shapes: [], text: [] }
      const size = { widthMm: room.widthMm - 2 * outerEdgeMm, heightMm: room.heightMm - 2 * outerEdgeMm }
      const shapes = drawBorder({ ...border, size, strokeMm })
      return moveArt({ ...size, shapes, text: [] }, outerEdgeMm, outerEdgeMm, room)
    },
  }
}
