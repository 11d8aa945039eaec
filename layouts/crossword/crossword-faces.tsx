import type { Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { LINE_HEIGHT, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { boardRoom } from '../board-room.js'
import { type BoardPlan, boardPlan, columnOf, GUTTER_MM, mostCell } from './board-plan.js'
import { clueLists } from './clue-lists.js'
import { cellSide, drawCrossword, leastCell } from './crossword-art.js'
import { type CrosswordRequest, givenLetters } from './crossword-options.js'

/** White between the board's content and the set mark below it. */
const ABOVE_MARK_MM = 1.2

/** A face for each board; an error where a cell would be too small for its letter. */
export function crosswordFaces(
  request: CrosswordRequest,
  set: CardSet,
  size: Size,
): Outcome<readonly CardFace[]> {
  const { type, item } = request
  const plan = boardPlan(request, set)
  const inside = contentRoom(size, item.border, type)
  const room = { ...inside, heightMm: inside.heightMm - ABOVE_MARK_MM - (plan.clues?.heightMm ?? 0) }
  const sides = set.cards.map(({ crossword }) => cellSide(crossword!, room, mostCell(request)))
  const sideMm = Math.min(...sides)
  const leastMm = leastCell(type, givenLetters(request))
  const isTooNarrow = plan.clues !== undefined && inside.widthMm < boardRoom(request).widthMm - 1e-6
  if (isTooNarrow || sideMm < leastMm - 1e-6) return fail(cellsTooSmall(request, sideMm, leastMm))
  return succeed(set.cards.map(card => crosswordFace(request, card, set, { size, plan })))
}

function cellsTooSmall({ item }: CrosswordRequest, sideMm: number, leastMm: number): Problem {
  const inMm = (lengthMm: number) => `${Math.max(0, Math.floor(lengthMm * 10) / 10)} mm`
  return errorAt(
    item.place,
    `the boxes of the grid would be ${inMm(sideMm)}, and ${inMm(leastMm)} is the least for a letter here`,
    'Print fewer on a sheet, choose larger paper or a smaller size, or turn the paper.',
  )
}

function crosswordFace(
  request: CrosswordRequest,
  card: Card,
  set: CardSet,
  { size, plan: { gridMm, clues } }: { readonly size: Size; readonly plan: BoardPlan },
): CardFace {
  const { type, typeface } = request
  const columnMm = columnOf(boardRoom(request))
  const column = (heading: string, name: string, lines: readonly string[], style: TextStyle) => ({
    tree: (
      <div style={{ display: 'flex', flexDirection: 'column', width: mm(columnMm) }}>
        <Lines lines={[heading]} style={{ ...style, weight: 700 }} />
        <Slot name={name} style={{ width: '100%', height: mm(lines.length * style.sizeMm * LINE_HEIGHT) }} />
      </div>
    ),
    slots: { [name]: { kind: 'text', lines, style } satisfies SlotContent },
  })
  const columns = clues === undefined ? [] : clueColumns(clues.style)
  function clueColumns(style: TextStyle) {
    const { across, down } = clueLists(request, card.crossword!, { style, columnMm })
    return [column('Across', 'across', across, style), column('Down', 'down', down, style)]
  }
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: request.item.border,
    text: card.crossword!.entries.map(({ clue }) => clue),
    content: (
      <div
        style={{
          display: 'flex',
          flexDirection: 'column',
          justifyContent: 'center',
          flexGrow: 1,
          marginBottom: mm(ABOVE_MARK_MM),
        }}
      >
        <Slot
          name="grid"
          style={clues === undefined ? { flexGrow: 1, width: '100%' } : { height: mm(gridMm), width: '100%' }}
        />
        {clues === undefined ? null : (
          <div
            style={{
              display: 'flex',
              justifyContent: 'space-between',
              height: mm(clues.heightMm),
              paddingTop: mm(GUTTER_MM),
            }}
          >
            {columns.map(({ tree }) => tree)}
          </div>
        )}
      </div>
    ),
    slots: {
      grid: {
        kind: 'art',
        draw: room =>
          drawCrossword({
            crossword: card.crossword!,
            room,
            typeface,
            leastMm: type.large ? type.textMm : 0,
            mostMm: mostCell(request),
            letters: givenLetters(request),
          }),
      },
      ...Object.assign({}, ...columns.map(({ slots }) => slots)),
    },
  })
}
