import type { Size } from '../src/geometry.js'
import { type CardFace, faceOf } from '../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../src/pieces/faces/slot.js'
import { cardBorder } from '../src/pieces/parts/card-border.js'
import { CardFrame } from '../src/pieces/parts/card-frame.js'
import { SetMark, setMarkHeightMm } from '../src/pieces/parts/set-mark.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import { defineLayout, type LayoutRequest } from './layout.js'
import { oneCardAWord } from './one-card-a-word.js'
import { shownWithWords, wordOptions } from './word-options.js'

/** Cut-apart cards, a word each, marked as the teacher chose. */
export const wordCards = defineLayout({
  kind: 'pieces',
  name: 'word-cards',
  summary: 'cut-apart cards, one word each, with the marks of the plan',
  options: wordOptions,
  marks: 'all',
  shownWithWords,
  perSheet: { columns: 3, rows: 4 },
  perSheetLarge: { columns: 2, rows: 3 },
  set: oneCardAWord,
  face: wordCardFace,
  pages: () => [],
})

/** A card with its word alone in the middle; the open sort uses it too. */
export function wordCardFace(request: LayoutRequest, card: Card, set: CardSet, size: Size): CardFace {
  const word = card.words[0]!
  const { type, item } = request
  return {
    ...faceOf(card, size),
    text: [word.text],
    tree: (
      <CardFrame type={type} border={item.border}>
        <OverlaySlot name="border" />
        <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />
        <SetMark
          shortSetTitle={request.shortSetTitle}
          card={card}
          set={set}
          type={type}
          border={item.border}
        />
      </CardFrame>
    ),
    slots: {
      border: cardBorder(item.border, type),
      word: {
        kind: 'word',
        word,
        marked: request.marked,
        ...request.shownWithWords,
        sizeGroup: 'main',
        align: 'centre',
        paddingMm: size.widthMm / 22,
        loweredMm: setMarkHeightMm(type) / 2,
      },
    },
  }
}
