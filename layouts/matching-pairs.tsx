import type { Size } from '../src/geometry.js'
import { succeed } from '../src/outcomes.js'
import type { CardFace } from '../src/pieces/faces/face.js'
import { tableRows } from '../src/pieces/parts/table-rows.js'
import { textCardFace, textRoom, titlesInRoom } from '../src/pieces/parts/text-card.js'
import { fitTexts } from '../src/pieces/text/fit-texts.js'
import { choice, option } from '../src/plan/values/options.js'
import type { Outcome } from '../src/problems.js'
import type { CardSet } from '../src/sets/card-set.js'
import { matchingPairs as pairedCards } from '../src/sets/games/matching-pairs.js'
import { grownUpPages } from './grown-up-pages.js'
import { defineLayout, type RequestWith } from './layout.js'
import { wordAloneFace } from './one-card-a-word.js'
import { plainWord } from './plain-word.js'

const options = {
  pair: option(
    'what makes two cards a pair',
    choice(['same word', 'sound alike', 'plural', 'clue'], 'same word'),
    { example: 'plural' },
  ),
}

/** Cards of which two and two belong together: a word twice, sound-alikes, a word and its plural or its clue. */
export const matchingPairs = defineLayout({
  kind: 'pieces',
  name: 'matching-pairs',
  summary: 'cards of which two and two belong together, for a memory game or to lay side by side',
  options,
  marks: 'none',
  perSheet: { columns: 3, rows: 5 },
  perSheetLarge: { columns: 2, rows: 4 },
  set: ({ words, item, options, itemName, plan }) =>
    pairedCards({
      words,
      pair: options.pair,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    }),
  faces: pairFaces,
  pages: (request, set, room) => {
    const { type, measure } = request
    const rows = tableRows({
      columns: [
        { heading: 'cards', share: 0.2 },
        { heading: 'pair', share: 0.8 },
      ],
      cells: (set.answers ?? []).map(({ text, numbers }) => [numbers.join(' and '), text]),
      widthMm: room.widthMm,
      textMm: type.adultTextMm,
      measure,
    })
    return grownUpPages(request, { kind: 'answers', what: 'answers', rows, room })
  },
})

function pairFaces(
  request: RequestWith<typeof options>,
  set: CardSet,
  size: Size,
): Outcome<readonly CardFace[]> {
  const { type, item, options, measure } = request
  const plurals = options.pair === 'plural'
  const fit = fitTexts({
    texts: plurals ? [] : titlesInRoom(set.cards, textRoom(size, item.border, type)),
    minimumMm: type.textMm,
    // Running text larger than this only makes more lines.
    maximumMm: Math.max(type.textMm, size.heightMm / 8),
    weight: 400,
    measure,
    place: item.place,
  })
  if (!fit.ok) return fit
  const style = { sizeMm: fit.value, align: 'centre' } as const
  const faces = set.cards.map(card => {
    if (card.title === undefined) return wordAloneFace(request, card, set, size)
    if (plurals)
      return wordAloneFace(
        { ...request, marked: false },
        { ...card, words: [plainWord(card.title)] },
        set,
        size,
      )
    return textCardFace({ ...request, card, set, size, text: card.title, style, border: item.border })
  })
  return succeed(faces)
}
