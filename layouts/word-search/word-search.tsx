import { mmToPoints, type Size } from '../../src/geometry.js'
import { fail, present, succeed } from '../../src/outcomes.js'
import { type CardFace, mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import { choice, gridSize, option, wholeNumber } from '../../src/plan/values/options.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { type HiddenWord, searchWays } from '../../src/sets/games/word-search.js'
import { wordSearchBoards } from '../../src/sets/games/word-search-boards.js'
import { unfitWords } from '../../src/words/fitness/unfit-file.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { defineLayout, type PageFace, type RequestWith } from '../layout.js'
import { wordSlot } from '../one-card-a-word.js'
import { drawLetterGrid, letterEm, letterGridSize, placeSide } from './letter-grid-art.js'
import { GAP_MM, mostLetters, mostPlace, type SearchPlan, searchPlan } from './search-plan.js'

const options = {
  grid: option('columns x rows of letters', gridSize(4, 20, undefined), {
    example: '10x10',
    usual: 'the smallest square that the words have room in',
  }),
  ways: option('how the words may run', choice(searchWays, 'across and down'), { example: 'slanting too' }),
  boards: option('how many grids of the same words, each another', wholeNumber(1, 40, 1)),
}

type SearchRequest = RequestWith<typeof options>

/** The words hidden in a grid of letters, the list to tick below it. */
export const wordSearch = defineLayout({
  kind: 'pieces',
  name: 'word-search',
  summary:
    'your words hidden in a grid of letters, with the list to look for below it; answers on a page of their own',
  inWeek: { day: 'practice', given: 'each child' },
  options,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => {
    const { words, item, options, itemName, plan } = request
    return wordSearchBoards({
      words,
      ways: options.ways,
      boards: options.boards,
      copies: item.copies,
      mostColumns: hidden => mostLetters(request, hidden),
      unfit: unfitWords(),
      seed: plan.seed,
      label: itemName,
      place: item.place,
      ...present({ grid: options.grid }),
    })
  },
  faces: searchFaces,
  pages: searchPages,
})

function searchFaces(request: SearchRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, words } = request
  const most = Math.max(...set.cards.map(card => card.words.length))
  const plan = searchPlan(request, { words, most, room: contentRoom(size, item.border, type) })
  for (const card of set.cards) {
    const sideMm = placeSide(card.letterGrid!.rows, plan.grid, mostPlace(type))
    const emMm = letterEm(sideMm, type.mainMinimumMm)
    if (emMm < type.mainMinimumMm - 1e-6) return fail(lettersTooSmall(request, emMm))
  }
  const grids = set.cards.map(card => {
    const { rows } = card.letterGrid!
    return letterGridSize(rows, placeSide(rows, plan.grid, mostPlace(type)))
  })
  const grid = {
    widthMm: Math.max(...grids.map(({ widthMm }) => widthMm)),
    heightMm: Math.max(...grids.map(({ heightMm }) => heightMm)),
  }
  return succeed(set.cards.map(card => searchFace(request, card, set, { size, plan: { ...plan, grid } })))
}

function lettersTooSmall({ item, type }: SearchRequest, emMm: number): Problem {
  const points = (sizeMm: number) => `${Math.floor(mmToPoints(sizeMm))} pt`
  return errorAt(
    item.place,
    `the letters of the grid would be ${points(emMm)}, and ${points(type.mainMinimumMm)} is the least here`,
    'Choose a smaller grid, fewer words, larger paper, or turn the paper.',
  )
}

function searchFace(
  request: SearchRequest,
  card: Card,
  set: CardSet,
  { size, plan }: { readonly size: Size; readonly plan: SearchPlan },
): CardFace {
  const { rows } = card.letterGrid!
  const { type, typeface } = request
  const { list, grid } = plan
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: request.item.border,
    text: card.words.map(word => word.text),
    content: (
      <div
        style={{
          display: 'flex',
          flexDirection: list.at === 'foot' ? 'column' : 'row',
          justifyContent: 'center',
          flexGrow: 1,
          gap: mm(GAP_MM),
          marginBottom: mm(ABOVE_MARK_MM),
        }}
      >
        <Slot
          name="letters"
          style={
            list.at === 'foot'
              ? { height: mm(grid.heightMm), width: '100%' }
              : { width: mm(grid.widthMm), height: '100%' }
          }
        />
        <WordList list={list} count={card.words.length} />
      </div>
    ),
    slots: {
      letters: {
        kind: 'art',
        draw: room =>
          drawLetterGrid({ rows, room, typeface, leastMm: type.mainMinimumMm, mostMm: mostPlace(type) }),
      },
      ...Object.fromEntries(
        card.words.map((word, index) => [
          `word ${index}`,
          {
            ...wordSlot(request, word, { align: 'left', paddingMm: 1 }),
            maximumMm: list.wordMm,
          },
        ]),
      ),
    },
  })
}

/** White on either side of a word of the list, beside its own. */
const BESIDE_WORD_MM = 1.5

/** White between the grid and the set mark below it. */
const ABOVE_MARK_MM = 1.2

/** Column by column, as the list is read. */
function WordList({ list, count }: { readonly list: SearchPlan['list']; readonly count: number }) {
  const { columns, rows, columnMm, rowMm } = list
  return (
    <div style={{ display: 'flex', flexShrink: 0, alignItems: 'center' }}>
      {Array.from({ length: columns }, (_, column) => (
        <div
          style={{ display: 'flex', flexDirection: 'column', width: mm(columnMm), height: mm(rows * rowMm) }}
        >
          {Array.from({ length: Math.min(rows, count - column * rows) }, (_, row) => (
            <Slot
              name={`word ${column * rows + row}`}
              style={{
                width: mm(columnMm - 2 * BESIDE_WORD_MM),
                height: mm(rowMm),
                marginLeft: mm(BESIDE_WORD_MM),
              }}
            />
          ))}
        </div>
      ))}
    </div>
  )
}

/** A grid on the answer page, at most: two on a page. */
const ANSWER_MM = 92
const ANSWER_PLACE_MM = 9

/** As a finger runs. */
function directionInWords({ down, across }: Pick<HiddenWord, 'down' | 'across'>): string {
  const ways = [
    ...(down === 0 ? [] : [down > 0 ? 'down' : 'up']),
    ...(across === 0 ? [] : [across > 0 ? 'to the right' : 'to the left']),
  ]
  return ways.join(' and ')
}

function searchPages(request: SearchRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { type, typeface, measure, options } = request
  const first = set.cards.filter(card => card.copy === 1)
  const style = { sizeMm: type.adultTextMm }
  const rows = first.flatMap((card): Row[] => {
    const { rows: letters, hidden } = card.letterGrid!
    const name = `answer ${card.number}`
    const mostMm = placeSide(letters, { ...room, heightMm: ANSWER_MM }, ANSWER_PLACE_MM)
    const { heightMm } = letterGridSize(letters, mostMm)
    const draw = (box: Size) => drawLetterGrid({ rows: letters, room: box, typeface, mostMm, shown: hidden })
    const places = hidden.map(
      ({ row, column, ...step }, index) =>
        `${card.words[index]!.text}: row ${row + 1}, place ${column + 1}, ${directionInWords(step)}`,
    )
    const told = first.length > 1 ? `Grid ${card.number} · ${places.join(' · ')}` : places.join(' · ')
    return [
      {
        heightMm: heightMm + 4,
        keepsWithNext: true,
        slots: { [name]: { kind: 'art', draw } },
        tree: <Slot name={name} style={{ width: '100%', height: mm(heightMm) }} />,
      },
      textRow(told, { style, widthMm: room.widthMm, measure }),
    ]
  })
  return [
    ...howToPlayPages(
      request,
      {
        play: [
          'Read a word of the list.',
          `Look for its letters in the grid. ${runs[options.ways]}`,
          'Draw a ring round the word. Words may share a letter.',
          'Read it again and tick it in the list.',
        ],
        prepare:
          'one sheet for each child, and a pencil; in a clear sleeve with a dry-wipe pen a sheet serves many.',
        help: 'the answer page shows the words in black and tells where each begins, counted from the top and from the left.',
        easier: 'tell the row in which a word begins, or ring its first letter beforehand.',
        harder: `cover the list and read out a clue for each word${harderWays[options.ways]}.`,
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows, room }),
  ]
}

const runs = {
  'across and down': 'Words run from left to right, or from top to bottom.',
  'slanting too': 'Words run from left to right, down, or on a slant.',
  'backwards too': 'Words run in every direction, backwards too.',
} as const

const harderWays = {
  'across and down': ', or print the item again with ways: slanting too',
  'slanting too': ', or print the item again with ways: backwards too',
  'backwards too': '',
} as const
