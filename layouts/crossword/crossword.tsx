import type { Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import { LINE_HEIGHT, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { choice, option } from '../../src/plan/values/options.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { crosswordBoards } from '../../src/sets/games/crossword-boards.js'
import { boardRoom } from '../board-room.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { defineLayout, type PageFace, type RequestWith } from '../layout.js'
import { clueLists, cluesOf } from './clue-lists.js'
import { cellSide, cellsHeight, drawCrossword, leastCell } from './crossword-art.js'

const options = {
  help: option('what stands in the grid beforehand', choice(['nothing', 'first letters'], 'nothing'), {
    example: 'first letters',
  }),
}

type CrosswordRequest = RequestWith<typeof options>

/** Larger cells help no pencil: our own judgement, no source. */
const MOST_CELL_MM = 18
const MOST_COLUMNS = 20

/** The words laid across one another, to be found from their clues. */
export const crossword = defineLayout({
  kind: 'pieces',
  name: 'crossword',
  summary:
    'your words laid across one another in a grid, to be found from your clues; answers on a page of their own',
  options,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => {
    const { words, item, itemName, plan, type } = request
    const room = boardRoom(request)
    const fitting = (lengthMm: number) =>
      Math.min(MOST_COLUMNS, Math.floor(lengthMm / leastCell(type, givenLetters(request))))
    return crosswordBoards({
      words,
      most: { columns: fitting(room.widthMm), rows: fitting(room.heightMm) },
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    })
  },
  faces: crosswordFaces,
  pages: crosswordPages,
})

const GUTTER_MM = 6
/** White between the board's content and the set mark below it. */
const ABOVE_MARK_MM = 1.2

function givenLetters({ options }: CrosswordRequest): 'none' | 'first' {
  return options.help === 'first letters' ? 'first' : 'none'
}

/** Clues grow by as much where that takes nothing from the cells. */
const CLUE_RATIOS = [1.45, 1.3, 1.15] as const

interface BoardPlan {
  /** Room for the grids of all boards, so that they are of one shape. */
  readonly gridMm: number
  /** Undefined where the clues have a page of their own. */
  readonly clues?: { readonly style: TextStyle; readonly heightMm: number }
}

/** The clues stand below the grids as large as leaves the cells their size, unless the cells would come out too small. */
function boardPlan(request: CrosswordRequest, set: CardSet): BoardPlan {
  const { type } = request
  const room = boardRoom(request)
  const leastMm = leastCell(type, givenLetters(request))
  const below = (ratio: number) => {
    const style = { sizeMm: type.textMm * ratio, align: 'left' } as const
    const heights = set.cards.map(
      ({ crossword }) =>
        clueLists(request, crossword!, { style, columnMm: columnOf(room) }).heightMm + GUTTER_MM,
    )
    const heightMm = Math.max(...heights)
    const left = { ...room, heightMm: Math.max(0, room.heightMm - heightMm) }
    const sides = set.cards.map(({ crossword }) => cellSide(crossword!, left, mostCell(request)))
    return { clues: { style, heightMm }, left, leastSideMm: Math.min(...sides) }
  }
  const usual = below(1)
  if (usual.leastSideMm < leastMm) return { gridMm: room.heightMm }
  const larger = type.large
    ? undefined
    : CLUE_RATIOS.map(below).find(({ leastSideMm }) => leastSideMm >= usual.leastSideMm)
  const { clues, left } = larger ?? usual
  const heights = set.cards.map(({ crossword }) =>
    cellsHeight(crossword!, cellSide(crossword!, left, mostCell(request))),
  )
  return { gridMm: Math.max(...heights), clues }
}

function mostCell(request: CrosswordRequest): number {
  return Math.max(MOST_CELL_MM, leastCell(request.type, givenLetters(request)))
}

function columnOf({ widthMm }: Size): number {
  return (widthMm - GUTTER_MM) / 2
}

function crosswordFaces(request: CrosswordRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
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

/** A solved grid on the answer page, at most. */
const ANSWER_MM = 96
const ANSWER_CELL_MM = 9

function crosswordPages(request: CrosswordRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { type, typeface, measure } = request
  const first = set.cards.filter(card => card.copy === 1)
  const row = (text: string, sizeMm: number, weight: 400 | 700 = 400): Row =>
    textRow(text, { style: { sizeMm, weight }, widthMm: room.widthMm, measure })
  const named = (number: number, way: 'across' | 'down') =>
    first.length > 1 ? `Grid ${number}, ${way}` : way === 'across' ? 'Across' : 'Down'
  const clueRows = first.flatMap(({ number, crossword }) => [
    row(named(number, 'across'), type.listTextMm, 700),
    ...cluesOf(crossword!.entries, false).map(clue => row(clue, type.listTextMm)),
    row(named(number, 'down'), type.listTextMm, 700),
    ...cluesOf(crossword!.entries, true).map(clue => row(clue, type.listTextMm)),
  ])
  const answers = first.flatMap(({ number, crossword }): Row[] => {
    const name = `answer ${number}`
    const mostMm = cellSide(crossword!, { ...room, heightMm: ANSWER_MM }, ANSWER_CELL_MM)
    const gridMm = cellsHeight(crossword!, mostMm)
    const draw = (box: Size) =>
      drawCrossword({ crossword: crossword!, room: box, typeface, leastMm: 0, mostMm, letters: 'all' })
    const solved = (down: boolean) =>
      crossword!.entries
        .filter(entry => entry.down === down)
        .map(entry => `${entry.number} ${entry.word.text}`)
        .join(', ')
    return [
      {
        heightMm: gridMm + 4,
        keepsWithNext: true,
        slots: { [name]: { kind: 'art', draw } },
        tree: <Slot name={name} style={{ width: '100%', height: mm(gridMm) }} />,
      },
      { ...row(`${named(number, 'across')}: ${solved(false)}`, type.adultTextMm), keepsWithNext: true },
      row(`${named(number, 'down')}: ${solved(true)}`, type.adultTextMm),
    ]
  })
  return [
    ...(boardPlan(request, set).clues === undefined
      ? grownUpPages(request, { kind: 'list', what: 'clues', rows: clueRows, room })
      : []),
    ...howToPlayPages(
      request,
      {
        play: [
          'Read a clue. The number behind it, in ( ), tells how many letters its word has.',
          'Find the number of the clue in the grid.',
          'Write the word, one letter in each box: to the right for “across”, downwards for “down”.',
          'Words that cross share a letter. All boxes full? Check with the answers.',
        ],
        prepare: 'one sheet for each child or pair, and a pencil.',
        help: 'the answer page shows the grid filled in.',
        easier: 'give the list of words beside it, or print the item with help: first letters.',
        harder: 'cover the numbers in brackets, or let the children write new clues for each other.',
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows: answers, room }),
  ]
}
