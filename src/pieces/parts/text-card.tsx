import type { Size } from '../../geometry.js'
import type { Card } from '../../sets/card-set.js'
import type { CardFace } from '../faces/face.js'
import { Slot } from '../faces/slot.js'
import { balancedLines } from '../text/balanced-lines.js'
import type { TextMeasure, TextStyle } from '../text/break-lines.js'
import type { TextInRoom } from '../text/fit-texts.js'
import type { TypeScale } from '../text/type-scale.js'
import { type CardFaceRequest, cardFace } from './card-face.js'
import { contentRoom } from './card-frame.js'

/** White kept around a text, inside the border. */
const PADDING = { besideMm: 2.5, aboveMm: 0.75 }

/** The room that a card's text has: inside the border, above the set mark. */
export function textRoom(size: Size, border: string | undefined, type: TypeScale): Size {
  const { widthMm, heightMm } = contentRoom(size, border, type)
  return { widthMm: widthMm - 2 * PADDING.besideMm, heightMm: heightMm - 2 * PADDING.aboveMm }
}

/** The titles of these cards, each once, for `fitTexts`. */
export function titlesInRoom(cards: readonly Card[], room: Size): readonly TextInRoom[] {
  return cards.flatMap(({ kind, number, copy, title }) =>
    title === undefined || copy > 1 ? [] : [{ text: title, on: `${kind} ${number}`, room }],
  )
}

export interface TextCardRequest
  extends Pick<CardFaceRequest, 'card' | 'set' | 'size' | 'border' | 'shortSetTitle' | 'type'> {
  readonly text: string
  /** Of a size that `fitTexts` found for the whole set. */
  readonly style: TextStyle
  readonly measure: TextMeasure
}

/** A card with running text in its middle instead of a word: a header, a clue. */
export function textCardFace(request: TextCardRequest): CardFace {
  const { size, text, style, border, type, measure } = request
  const lines = balancedLines(text, textRoom(size, border, type).widthMm, style, measure)
  return cardFace({
    ...request,
    text: [text],
    content: <Slot name="text" style={{ flexGrow: 1, width: '100%' }} />,
    slots: { text: { kind: 'text', lines, style } },
  })
}
