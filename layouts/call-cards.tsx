import type { Size } from '../src/geometry.js'
import { type CardFace, faceOf, mm } from '../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../src/pieces/faces/slot.js'
import { cardBorder } from '../src/pieces/parts/card-border.js'
import { CardFrame, contentWidthMm } from '../src/pieces/parts/card-frame.js'
import { SetMark } from '../src/pieces/parts/set-mark.js'
import { breakLines, Lines, linesHeight } from '../src/pieces/text/text-lines.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import type { Word } from '../src/words/word.js'
import { defineLayout, type LayoutRequest } from './layout.js'
import { oneCardAWord } from './one-card-a-word.js'
import { shownWithWords, wordOptions } from './word-options.js'

/** Small cards to draw from a bag and call: the word, and its clue for a caller who reads that instead. */
export const callCards = defineLayout({
  kind: 'pieces',
  name: 'call-cards',
  summary: 'small cards for the caller: the word and its clue',
  options: wordOptions,
  marks: 'none',
  shownWithWords,
  perSheet: { columns: 3, rows: 6 },
  perSheetLarge: { columns: 1, rows: 3 },
  set: oneCardAWord,
  face: callCardFace,
  pages: () => [],
})

function callCardFace(request: LayoutRequest, card: Card, set: CardSet, size: Size): CardFace {
  const word = card.words[0]!
  const { type, item, measure, words } = request
  const style = { sizeMm: type.textMm, align: 'centre' as const }
  const widthMm = contentWidthMm(size.widthMm, item.border) - 2
  const linesOf = ({ clue = '' }: Word) => breakLines(clue, widthMm, style, measure)
  // Every card of the set keeps the room that its longest clue takes.
  const clueLines = Math.max(...words.map(other => linesOf(other).length))
  return {
    ...faceOf(card, size),
    text: [word.text],
    tree: (
      <CardFrame type={type} border={item.border}>
        <OverlaySlot name="border" />
        <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />
        {clueLines > 0 ? (
          <Lines
            lines={linesOf(word)}
            style={style}
            box={{
              width: '100%',
              height: mm(linesHeight(clueLines, type.textMm)),
              justifyContent: 'center',
            }}
          />
        ) : null}
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
        paddingMm: Math.min(size.widthMm, size.heightMm) / 15,
      },
    },
  }
}
