import type { ArtSlot } from './face.js'

/** A slot over the whole face for the card's border. */
export function cardBorder(_style: string | undefined): ArtSlot {
  return { kind: 'art', draw: room => ({ ...room, shapes: [], text: [] }) }
}
