import type { Size } from '../../src/geometry.js'
import type { CardFace } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { tableRows } from '../../src/pieces/parts/table-rows.js'
import { choice, option } from '../../src/plan/values/options.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import {
  tilesFor,
  letterTiles as tilesForWords,
  tilesOf,
  tilesOfWord,
} from '../../src/sets/games/letter-tiles.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { defineLayout, type PageFace, type RequestWith } from '../layout.js'
import { wordSlot } from '../one-card-a-word.js'
import { plainWord } from '../plain-word.js'
import { buildingMat } from './building-mat.js'

const options = {
  build: option('what one set of tiles is enough for', choice(tilesFor, 'one word at a time'), {
    example: 'all words at once',
  }),
}

type TilesRequest = RequestWith<typeof options>

const TILES_ACROSS = { normal: 7, large: 4 } as const

/** Tiles to build the words with: a letter, or a team that spells one sound, on each. */
export const letterTiles = defineLayout({
  kind: 'pieces',
  name: 'letter-tiles',
  summary:
    'tiles to build your words with, a team of letters on one tile, as many of each as the words need; a mat with boxes',
  inWeek: { day: 'centres', given: 'each child' },
  options,
  marks: 'none',
  perSheet: { columns: TILES_ACROSS.normal, rows: 9 },
  perSheetLarge: { columns: TILES_ACROSS.large, rows: 5 },
  set: ({ words, item, options }) =>
    tilesForWords({ words, build: options.build, copies: item.copies, place: item.place }),
  face: tileFace,
  pages: tilePages,
})

function tileFace(request: TilesRequest, card: Card, set: CardSet, size: Size): CardFace {
  const letters = card.title!
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: borderOf(request, letters),
    text: [letters],
    content: <Slot name="letters" style={{ flexGrow: 1, width: '100%' }} />,
    slots: {
      letters: wordSlot({ ...request, marked: false }, plainWord(letters), {
        align: 'centre',
        paddingMm: 1.5,
      }),
    },
  })
}

/** The teacher chooses the line; the shape of its corners tells a vowel, on a copier and to a finger's eye alike. */
function borderOf({ item, words, options }: TilesRequest, letters: string): string {
  const [line = 'single'] = (item.border ?? 'single').split('-')
  const isVowel = tilesOf(words, options.build).some(tile => tile.letters === letters && tile.isVowel)
  return isVowel ? `${line}-round` : line
}

/** As the paper is divided for the tiles. */
function tileSize({ item, type }: TilesRequest, room: Size): Size {
  const { division } = item
  if (division.kind === 'card') return division.size
  const usual = type.large ? TILES_ACROSS.large : TILES_ACROSS.normal
  const { across = usual, down } = division.kind === 'count' ? division : {}
  const widthMm = room.widthMm / across
  return { widthMm, heightMm: down === undefined ? widthMm : Math.min(widthMm, room.heightMm / down) }
}

function tilePages(request: TilesRequest, _set: CardSet, room: Size): readonly PageFace[] {
  const { type, measure, words, options } = request
  const answers = tableRows({
    columns: [
      { heading: 'word', share: 0.35 },
      { heading: 'tiles', share: 0.65 },
    ],
    cells: words.map(word => [word.text, tilesOfWord(word).join(' · ')]),
    widthMm: room.widthMm,
    textMm: type.adultTextMm,
    measure,
  })
  const most = options.build === 'one word at a time' ? 1 : words.length
  const mat = buildingMat(request, { tile: tileSize(request, room), room, most })
  return [
    ...grownUpPages(request, { kind: 'list', what: 'building mat', rows: mat, room }),
    ...howToPlayPages(
      request,
      {
        play: [
          'Choose a word from the list. Say it slowly and listen to each sound.',
          'Lay a tile in a box for each sound, from left to right.',
          'More than one letter on a tile? Together they say one sound.',
          'Run a finger under the tiles and read the word. Choose the next.',
        ],
        prepare:
          options.build === 'one word at a time'
            ? 'one set of tiles and one mat for each child or pair; copies prints more sets. The tiles go back after each word.'
            : 'one set of tiles for a group that builds the whole list side by side; the mat serves for one word after another.',
        // In large print a border whose corners are square has them cut, since a corner of the tile is.
        help: `tiles with round corners spell vowels, those with ${type.large ? 'cut' : 'square'} corners consonants; the answer page divides each word as the tiles do.`,
        easier: 'give out only the tiles of the word, or lay the first tile.',
        harder:
          'fold the list at the foot of the mat away and call the words, or ask for a word that changes one tile.',
      },
      room,
    ),
    ...grownUpPages(request, { kind: 'answers', what: 'answers', rows: answers, room }),
  ]
}
