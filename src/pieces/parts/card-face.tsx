import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../geometry.js'
import type { Card, CardSet } from '../../sets/card-set.js'
import { setMarkText } from '../../sets/set-mark.js'
import { type CardFace, faceOf, type SlotContent } from '../faces/face.js'
import { OverlaySlot } from '../faces/slot.js'
import type { TypeScale } from '../text/type-scale.js'
import { cardBorder } from './card-border.js'
import { CardFrame } from './card-frame.js'
import { SetMarkSlot, setMark } from './set-mark.js'

export interface CardFaceRequest extends Pick<CardFace, 'text' | 'cells'> {
  readonly card: Card
  readonly set: CardSet
  readonly size: Size
  readonly shortSetTitle: string
  readonly type: TypeScale
  readonly border: string | undefined
  /** What stands between the border and the set mark; the same for all cards of the set that are of one shape. */
  readonly content: JSXNode
  /** What differs from card to card. */
  readonly slots: Readonly<Record<string, SlotContent>>
}

/** The face of a card or board: its border, its content inside it, its set mark at the foot. */
export function cardFace(request: CardFaceRequest): CardFace {
  const { card, set, size, type, border, text, cells, content, slots, shortSetTitle } = request
  const mark = setMarkText(shortSetTitle, card, set)
  return {
    ...faceOf(card, size),
    text,
    setMark: mark,
    ...(cells === undefined ? {} : { cells }),
    tree: (
      <CardFrame type={type} border={border}>
        <OverlaySlot name="border" />
        {content}
        <SetMarkSlot type={type} border={border} />
      </CardFrame>
    ),
    slots: { border: cardBorder(border, type), ...slots, 'set mark': setMark(mark, type) },
  }
}

/** The same face for every card of the set, but for its set mark. */
export function facesAlike(request: Omit<CardFaceRequest, 'card'>): readonly CardFace[] {
  return request.set.cards.map(card => cardFace({ ...request, card }))
}
