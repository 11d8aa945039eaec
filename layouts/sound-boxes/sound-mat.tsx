import type { Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { facesAlike } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { tableRows } from '../../src/pieces/parts/table-rows.js'
import { errorAt, type Outcome } from '../../src/problems.js'
import { cardId } from '../../src/sets/card-id.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { soundsInWords } from '../../src/words/sounds-in-words.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { defineLayout, type LayoutRequest, type PageFace } from '../layout.js'
import { ARROW_MM, drawSoundBoxes, LEAST_BOX_MM, MOST_BOX_MM } from './sound-box-row.js'

/**
 * One sheet with a row of boxes for each number of sounds that the words have, to be used again and again. The way of
 * working is D. B. Elkonin's (1963), as on the strips of `sound-boxes`.
 */
export const soundMat = defineLayout({
  kind: 'pieces',
  name: 'sound-mat',
  summary:
    'a sheet with a row of boxes for each number of sounds your words have, to lay counters or tiles in; it can be wiped clean',
  inWeek: { day: 'practice', given: 'each child' },
  options: {},
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: ({ item }) => {
    const cards: CardSet['cards'] = Array.from({ length: item.copies }, (_, index) => ({
      id: cardId({ prefix: 'board', number: 1, copy: index + 1, of: 1 }),
      kind: 'board',
      number: 1,
      copy: index + 1,
      words: [],
    }))
    return succeed({ cards })
  },
  faces: matFaces,
  pages: matPages,
})

/** The numbers of sounds that the words have, from few to many. */
function counts({ words }: LayoutRequest): readonly number[] {
  return [...new Set(words.map(({ soundCount }) => soundCount))].sort((a, b) => a - b)
}

/** White between the mat and the set mark below it. */
const ABOVE_MARK_MM = 1.2
const BETWEEN_ROWS_MM = 6

function matFaces(request: LayoutRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, words } = request
  const room = contentRoom(size, item.border, type)
  const rows = counts(request)
  const most = rows.at(-1)!
  const eachMm = (room.heightMm - ABOVE_MARK_MM) / rows.length
  const boxMm = Math.min(MOST_BOX_MM, (room.widthMm - 1) / most, eachMm - ARROW_MM - BETWEEN_ROWS_MM)
  if (boxMm < LEAST_BOX_MM) {
    const longest = words.find(word => word.soundCount === most)!
    const message = `the boxes of the mat are ${boxMm.toFixed(1)} mm wide, because "${longest.text}" has ${most} sounds: no counter goes in`
    return fail(
      errorAt(
        item.place,
        message,
        'Choose larger paper, turn it, or leave that word out of this item with words.',
      ),
    )
  }
  const row = (boxes: number): SlotContent => ({
    kind: 'art',
    draw: place => drawSoundBoxes({ boxes, boxMm, arrow: true, align: 'left', room: place }),
  })
  return succeed(
    facesAlike({
      ...request,
      set,
      size,
      border: item.border,
      text: [],
      content: (
        <div
          style={{ display: 'flex', flexDirection: 'column', flexGrow: 1, marginBottom: mm(ABOVE_MARK_MM) }}
        >
          {rows.map(boxes => (
            <Slot name={`row ${boxes}`} style={{ flexGrow: 1, flexBasis: 0, width: '100%' }} />
          ))}
        </div>
      ),
      slots: Object.fromEntries(rows.map(boxes => [`row ${boxes}`, row(boxes)])),
    }),
  )
}

function matPages(request: LayoutRequest, _set: CardSet, room: Size): readonly PageFace[] {
  const { type, measure, words } = request
  const rows = tableRows({
    columns: [
      { heading: 'boxes', share: 0.15 },
      { heading: 'word', share: 0.3 },
      { heading: 'sounds', share: 0.55 },
    ],
    cells: words
      .toSorted((a, b) => a.soundCount - b.soundCount)
      .map(word => [String(word.soundCount), word.text, soundsInWords(word)]),
    widthMm: room.widthMm,
    textMm: type.adultTextMm,
    measure,
  })
  return [
    ...howToPlayPages(
      request,
      {
        play: [
          'Listen to the word. Say it slowly.',
          'Count its sounds. Choose the row with the same number of boxes.',
          'Say it again and push a counter into a box at each sound.',
          'Run a finger along the arrow and say the whole word. Take the counters off for the next.',
        ],
        prepare:
          'one mat for each child, and a counter for each box of its longest row; in a clear sleeve or laminated it takes a dry-wipe pen and is wiped clean. Small counters are not for children under three.',
        help: 'call the words of the answer page in any order; it tells how many boxes each one needs.',
        easier: 'show the row, or use words of one number of sounds only.',
        harder: 'write the letters of each sound into its box, or lay letter tiles.',
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows, room }),
  ]
}
