import type { Card, CardSet } from '../sets/card-set.js'
import { mm } from './face.js'
import type { TypeScale } from './type-scale.js'

/** How far a card's border stands inside its edge: trimming by hand is good to about 1 mm (common practice, no source). */
export const CARD_BORDER_INSET_MM = 2.5

/** Kept free at the foot of a piece for its set mark, so that no word comes near it. */
export function setMarkHeightMm(type: TypeScale): number {
  return type.setMarkMm === null ? 0 : type.setMarkMm * 1.3
}

/**
 * The small mark that lets a dropped pile be sorted: the set's name, this piece's number and how many there are.
 * It stands at the foot on the right, inside the border, in grey that still copies.
 */
export function SetMark({
  setName,
  card,
  set,
  type,
}: {
  readonly setName: string
  readonly card: Card
  readonly set: CardSet
  readonly type: TypeScale
}) {
  if (type.setMarkMm === null) return null
  const count = set.cards.reduce((most, other) => Math.max(most, other.number), 0)
  return (
    <div
      style={{
        display: 'flex',
        position: 'absolute',
        right: mm(CARD_BORDER_INSET_MM + 1.5),
        bottom: mm(CARD_BORDER_INSET_MM + 0.8),
        height: mm(setMarkHeightMm(type)),
        alignItems: 'center',
        fontSize: mm(type.setMarkMm),
        lineHeight: 1.2,
        color: '#595959',
        whiteSpace: 'nowrap',
      }}
    >
      {`${setName} ${card.number}/${count}`}
    </div>
  )
}
