import type { Size } from '../src/geometry.js'
import { type CardFace, mm } from '../src/pieces/faces/face.js'
import { Slot } from '../src/pieces/faces/slot.js'
import { contentRoom } from '../src/pieces/parts/card-frame.js'
import { balancedLines } from '../src/pieces/text/balanced-lines.js'
import { linesHeight } from '../src/pieces/text/break-lines.js'
import type { Card, CardSet } from '../src/sets/card-set.js'
import type { Word } from '../src/words/word.js'
import { defineLayout, type LayoutRequest } from './layout.js'
import { oneCardAWord, wordCardFace } from './one-card-a-word.js'
import { shownWithWords, wordOptions } from './word-options.js'

/** Small cards to draw from a bag and call: the word, and its clue for a caller who reads that instead. */
export const callCards = defineLayout({
  kind: 'pieces',
  name: 'call-cards',
  summary: 'small cards for the caller: the word and its clue',
  inWeek: { day: 'centres', given: 'once' },
  options: wordOptions,
  marks: 'none',
  shownWithWords,
  perSheet: { columns: 3, rows: 6 },
  perSheetLarge: { columns: 1, rows: 3 },
  set: oneCardAWord,
  face: callCardFace,
  pages: () => [],
})

/** Between a clue and the set mark, so that neither is read for the other. */
const CLEAR_OF_MARK_MM = 2

function callCardFace(request: LayoutRequest, card: Card, set: CardSet, size: Size): CardFace {
  const { type, item, measure, words } = request
  const style = { sizeMm: type.textMm, align: 'centre' } as const
  const { widthMm } = contentRoom(size, item.border, type)
  const linesOf = ({ clue = '' }: Word) => balancedLines(clue, widthMm - 2, style, measure)
  // Every card of the set keeps the room that its longest clue takes.
  const clueLines = Math.max(...words.map(word => linesOf(word).length))
  const clueMm = linesHeight(clueLines, type.textMm)
  return wordCardFace(request, {
    card,
    set,
    size,
    place: { align: 'centre', paddingMm: Math.min(size.widthMm, size.heightMm) / 15 },
    content: (
      <>
        <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />
        <Slot
          name="clue"
          style={{ width: '100%', height: mm(clueMm), flexShrink: 0, marginBottom: mm(CLEAR_OF_MARK_MM) }}
        />
      </>
    ),
    moreSlots: { clue: { kind: 'text', lines: linesOf(card.words[0]!), style } },
  })
}
