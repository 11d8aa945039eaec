import type { Card, CardSet } from '../sets/card-set.js'
import { borderDepthMm } from './card-border.js'
import { mm } from './face.js'
import type { TypeScale } from './type-scale.js'

/** Kept free at the foot of a piece for its set mark, so that no word comes near it. */
export function setMarkHeightMm(type: TypeScale): number {
  return type.setMarkMm === null ? 0 : type.setMarkMm * 1.3
}

/**
 * The small mark that lets a dropped pile be sorted: the set's name, this piece's number and how many there are.
 * It stands in the middle of the foot, inside the border and clear of its corners, in a grey that still copies.
 */
export function SetMark({
  setName,
  card,
  set,
  type,
  border,
}: {
  readonly setName: string
  readonly card: Card
  readonly set: CardSet
  readonly type: TypeScale
  /** The card's border, inside which the mark stands. */
  readonly border: string | undefined
}) {
  if (type.setMarkMm === null) return null
  const count = set.cards.reduce((most, other) => Math.max(most, other.number), 0)
  return (
    <div
      style={{
        display: 'flex',
        position: 'absolute',
        left: 0,
        right: 0,
        justifyContent: 'center',
        bottom: mm(borderDepthMm(border) + 1),
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
