import { copyLetter } from '../../sets/set-mark.js'
import { mm, type TextSlot } from '../faces/face.js'
import { Slot } from '../faces/slot.js'
import type { TextMeasure } from '../text/break-lines.js'
import type { TypeScale } from '../text/type-scale.js'
import { borderDepthMm } from './card-border.js'

/** Kept free at the foot of a piece for its set mark, so that no word comes near it. */
export function setMarkHeightMm(type: TypeScale): number {
  return type.setMarkMm * 1.3
}

/** White kept between the set mark and the edges of its piece, taken together; a third figure in a number takes some of it. */
const BESIDE_MM = 3

/** The fullest title with which the set mark is no wider than a piece; the shortest where none is. */
export function fittingSetTitle({
  titles,
  copies,
  widthMm,
  border,
  type,
  measure,
}: {
  /** The fullest first. */
  readonly titles: readonly string[]
  /** How many sets are printed: their letters stand behind the title. */
  readonly copies: number
  readonly widthMm: number
  readonly border: string | undefined
  readonly type: TypeScale
  readonly measure: TextMeasure
}): string {
  const roomMm = widthMm - 2 * borderDepthMm(border) - BESIDE_MM
  const copy = copies > 1 ? ` · ${'M'.repeat(copyLetter(copies).length)}` : ''
  const fits = (title: string) => measure(`${title}${copy} · 88 of 88`, type.setMarkMm) <= roomMm
  return titles.find(fits) ?? titles.at(-1) ?? ''
}

/**
 * The small mark that lets a dropped pile be sorted, in the middle of the foot, inside the border, in a grey that still
 * copies. It is for whoever sorts the pieces, not for the child, so it stays small in large print too, where a large
 * number would be read for the word.
 */
export function setMark(text: string, { setMarkMm }: TypeScale): TextSlot {
  return { kind: 'text', lines: [text], style: { sizeMm: setMarkMm, color: '#595959', align: 'centre' } }
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
        left: 0,
        right: 0,
        bottom: mm(borderDepthMm(border) + 1),
        height: mm(setMarkHeightMm(type)),
      }}
    />
  )
}
