import { defineLayout } from '../../layouts/layout.js'
import { oneCardAWord, wordSlot } from '../../layouts/one-card-a-word.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { Rule } from '../../src/pieces/parts/rules.js'
import { choice, option } from '../../src/plan/values/options.js'

/** A word on the lower half of a card that is folded at its middle and stood up. */
export const tentCards = defineLayout({
  kind: 'pieces',
  name: 'tent-cards',
  summary: 'cards to fold and stand on a table, a word on each',
  inWeek: { day: 'centres', given: 'each child' },
  options: { above: option('what stands on the upper half', choice(['line', 'nothing'], 'line')) },
  marks: 'all',
  perSheet: { columns: 2, rows: 3 },
  perSheetLarge: { columns: 1, rows: 3 },
  set: oneCardAWord,
  face: (request, card, set, size) => {
    const word = card.words[0]!
    return cardFace({
      ...request,
      card,
      set,
      size,
      border: request.item.border,
      text: [word.text],
      content: (
        <>
          <div style={{ display: 'flex', position: 'relative', height: '50%', width: '100%' }}>
            {request.options.above === 'line' ? <Rule color="#c4c4c4" /> : null}
          </div>
          <Slot name="word" style={{ flexGrow: 1, width: '100%' }} />
        </>
      ),
      slots: { word: wordSlot(request, word, { align: 'centre', paddingMm: size.widthMm / 22 }) },
    })
  },
  pages: () => [],
})
