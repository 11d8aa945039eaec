import type { Size } from '../../geometry.js'
import type { Card, CardSet } from '../../sets/card-set.js'
import type { CardFace } from '../faces/face.js'
import { OverlaySlot } from '../faces/slot.js'
import { balancedLines } from '../text/balanced-lines.js'
import { Lines, type TextMeasure, type TextStyle } from '../text/text-lines.js'
import type { TypeScale } from '../text/type-scale.js'
import { cardBorder } from './card-border.js'
import { CardFrame, contentWidthMm } from './card-frame.js'
import { SetMark, setMarkHeightMm } from './set-mark.js'

/** White kept around a text, inside the border. */
const PADDING = { besideMm: 2.5, aboveMm: 0.75 }

/** The room that a card's text has: inside the border, above the set mark. */
export function textRoom(size: Size, border: string | undefined, type: TypeScale): Size {
  return {
    widthMm: contentWidthMm(size.widthMm, border) - 2 * PADDING.besideMm,
    heightMm: contentWidthMm(size.heightMm, border) - setMarkHeightMm(type) - 2 * PADDING.aboveMm,
  }
}

export interface TextCardRequest {
  readonly card: Card
  readonly set: CardSet
  readonly size: Size
  readonly text: string
  /** Of a size that `fitTexts` found for the whole set. */
  readonly style: TextStyle
  readonly border: string | undefined
  readonly shortSetTitle: string
  readonly type: TypeScale
  readonly measure: TextMeasure
}

/** A card with running text in its middle instead of a word: a header, a clue. */
export function textCardFace(request: TextCardRequest): CardFace {
  const { card, set, size, text, style, border, shortSetTitle, type, measure } = request
  const { id, kind, number, copy } = card
  const lines = balancedLines(text, textRoom(size, border, type).widthMm, style, measure)
  return {
    ...size,
    id,
    kind,
    number,
    copy,
    text: [text],
    tree: (
      <CardFrame type={type} border={border}>
        <OverlaySlot name="border" />
        <Lines lines={lines} style={style} box={{ flexGrow: 1, width: '100%', justifyContent: 'center' }} />
        <SetMark shortSetTitle={shortSetTitle} card={card} set={set} type={type} border={border} />
      </CardFrame>
    ),
    slots: { border: cardBorder(border, type) },
  }
}
