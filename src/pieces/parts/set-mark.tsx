import type { Card, CardSet } from '../../sets/card-set.js'
import { mm, type TextSlot } from '../faces/face.js'
import { Slot } from '../faces/slot.js'
import { breakLinesWithin, type TextMeasure } from '../text/break-lines.js'
import type { TypeScale } from '../text/type-scale.js'
import { borderDepthMm } from './card-border.js'

/** From the inside of the border to a mark in the corner. */
const CORNER_MM = 4

/** Kept free at the foot of a piece for its set mark, so that no word comes near it. */
export function setMarkHeightMm(type: TypeScale): number {
  // Large figures have white enough of their own below the baseline.
  return type.setMarkMm * (type.large ? 1.05 : 1.3)
}

/** White kept between the set mark and the edges of its piece, taken together. */
const BESIDE_MM = 3

/** The set's name, cut short where its mark would be wider than a piece of this width. */
export function shortenSetTitle({
  name,
  widthMm,
  border,
  type,
  measure,
}: {
  readonly name: string
  readonly widthMm: number
  readonly border: string | undefined
  readonly type: TypeScale
  readonly measure: TextMeasure
}): string {
  const style = { sizeMm: type.setMarkMm }
  const numbersMm = measure(' 999/999', style.sizeMm)
  const roomMm = widthMm - 2 * borderDepthMm(border) - BESIDE_MM - numbersMm
  return breakLinesWithin(name, { widthMm: roomMm, maximum: 1 }, style, measure)[0] ?? ''
}

/**
 * The small mark that lets a dropped pile be sorted: the set's name, this piece's number and how many there are.
 * It stands in the middle of the foot, inside the border and clear of its corners, in a grey that still copies.
 *
 * In large print nothing on a piece may be smaller than the size the child reads, and the set's name would be as long
 * as the card: there the mark is the numbers alone, in that size, in the corner of the foot farthest from the corner
 * that is cut off.
 */
export function setMark({
  shortSetTitle,
  card,
  set,
  type,
}: {
  readonly shortSetTitle: string
  readonly card: Card
  readonly set: CardSet
  readonly type: TypeScale
}): TextSlot {
  const count = set.cards.reduce((most, other) => Math.max(most, other.number), 0)
  const numbers = `${card.number}/${count}`
  return {
    kind: 'text',
    lines: [type.large ? numbers : `${shortSetTitle} ${numbers}`],
    style: { sizeMm: type.setMarkMm, color: '#595959', align: type.large ? 'left' : 'centre' },
  }
}

/** Where the set mark stands, named `set mark`: the same on every piece of a set. */
export function SetMarkSlot({
  type,
  border,
}: {
  readonly type: TypeScale
  /** The card's border, inside which the mark stands. */
  readonly border: string | undefined
}) {
  return (
    <Slot
      name="set mark"
      style={{
        position: 'absolute',
        left: type.large ? mm(borderDepthMm(border) + CORNER_MM) : 0,
        right: 0,
        bottom: mm(borderDepthMm(border) + 1),
        height: mm(setMarkHeightMm(type)),
      }}
    />
  )
}
