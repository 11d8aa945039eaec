import type { Box, Size } from '../../src/geometry.js'
import { succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { fitTexts } from '../../src/pieces/text/fit-texts.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { option, wholeNumber } from '../../src/plan/values/options.js'
import type { Outcome } from '../../src/problems.js'
import { cardId } from '../../src/sets/card-id.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { pathBoards } from '../../src/sets/games/path-boards.js'
import { defineLayout, type LayoutRequest, type RequestWith, type RoomierOptions } from '../layout.js'
import { wordSlot } from '../one-card-a-word.js'
import { bestColumns, drawTrack, layTrack, type Track } from './track.js'

/** How many words stand on a track where the teacher does not say. */
const SPACES = { normal: 26, large: 13 } as const

const LEAST_SPACES = 4
const options = {
  spaces: option('how many words stand on a track', wholeNumber(LEAST_SPACES, 80, undefined), {
    example: '20',
    usual: `${SPACES.normal}, and ${SPACES.large} in large print`,
  }),
  boards: option('how many boards, their words in other orders', wholeNumber(1, 40, 1)),
}
type PathRequest = RequestWith<typeof options>

const LINE_MM = 0.6

/** A track of words from start to finish, for counters and a die. */
export const pathBoard = defineLayout({
  kind: 'pieces',
  name: 'path-board',
  summary: 'a track of words from start to finish, to move along with counters and a die',
  options,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => {
    const { words, item, options, itemName, plan, type } = request
    const { boards, spaces = SPACES[type.large ? 'large' : 'normal'] } = options
    const set = pathBoards({ words, spaces, boards, seed: plan.seed, label: itemName })
    const cards = Array.from({ length: item.copies }, (_, index) =>
      set.cards.map(card => ({
        ...card,
        copy: index + 1,
        id: cardId({ prefix: 'board', number: card.number, copy: index + 1, of: boards }),
      })),
    ).flat()
    return succeed({ ...set, cards, notes: notesOn(words.length, spaces) })
  },
  roomier: shorterTracks,
  faces: pathFaces,
  pages: () => [],
})

/** Tracks with fewer and larger spaces: one word less each time. */
function shorterTracks({ options, type }: PathRequest): readonly RoomierOptions<PathRequest['options']>[] {
  const now = options.spaces ?? SPACES[type.large ? 'large' : 'normal']
  return Array.from({ length: Math.max(0, now - LEAST_SPACES) }, (_, less) => now - less - 1).map(spaces => ({
    options: { spaces },
    says: `spaces: ${spaces}`,
    open: options.spaces === undefined,
  }))
}

function notesOn(words: number, spaces: number): readonly string[] {
  return [
    'One way to play: throw a die, move as many spaces, read the word there; whoever comes first to the finish wins.',
    ...(spaces < words
      ? [`The track has ${spaces} spaces, so each board leaves out ${words - spaces} of the ${words} words.`]
      : []),
  ]
}

/** The board's track and the size of what is written in its first and last space; undefined: nothing is. */
interface BoardPlan {
  readonly size: Size
  /** From the board's frame to the track. */
  readonly insetMm: number
  readonly room: Size
  readonly track: Track
  readonly endsMm: number | undefined
}

/** White between the track and the set mark below it. */
const ABOVE_MARK_MM = 1.2

function pathFaces(request: LayoutRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, measure, words } = request
  // In large print a corner of the board is cut off, and the track keeps clear of that cut too.
  const insetMm = type.large ? 1.5 : 0
  const inside = contentRoom(size, undefined, type)
  const room = {
    widthMm: inside.widthMm - 2 * insetMm,
    heightMm: inside.heightMm - 2 * insetMm - ABOVE_MARK_MM,
  }
  const spaces = set.cards[0]!.words.length + 2
  const widest = Math.max(...words.map(word => measure(word.text, 1)), measure('finish', 1, 700))
  // White around a word is about a third of its width and as much as its height.
  const columns = bestColumns(spaces, room, { widthMm: widest * 1.3, heightMm: 2.2 })
  const track = layTrack({ spaces, columns, room })
  const endRoom = roomFor(track.spaces[0]!)
  const ends = fitTexts({
    texts: ['start', 'finish'].map(text => ({ text, on: 'the board', room: endRoom })),
    minimumMm: type.textMm,
    maximumMm: Math.max(type.textMm, endRoom.heightMm * 0.4),
    weight: 700,
    measure,
    place: item.place,
  })
  // The double frames show where the track begins and ends: in large print the words may be left out.
  if (!ends.ok && !type.large) return ends
  const plan: BoardPlan = { size, insetMm, room, track, endsMm: ends.ok ? ends.value : undefined }
  return succeed(set.cards.map(card => boardFace(request, card, set, plan)))
}

/** Inside the two lines of the first space or the last. */
function roomFor({ widthMm, heightMm }: Box): Size {
  return { widthMm: widthMm - 10 * LINE_MM, heightMm: heightMm - 10 * LINE_MM }
}

function boardFace(
  request: LayoutRequest,
  card: Card,
  set: CardSet,
  { size, insetMm, room, track, endsMm }: BoardPlan,
): CardFace {
  const { widthMm, heightMm } = track.spaces[0]!
  const [paddingMm, paddingAboveMm] = [widthMm, Math.min(widthMm, heightMm)].map(mm => Math.max(2, mm / 10))
  const place = { align: 'centre', paddingMm: paddingMm!, paddingAboveMm: paddingAboveMm! } as const
  const words = card.words.map((word, index): [string, SlotContent] => [
    `space ${index + 1}`,
    wordSlot(request, word, place),
  ])
  const rows = Math.ceil(track.spaces.length / track.columns)
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: undefined,
    text: card.words.map(word => word.text),
    // A row of cells for each row of the track, in the order walked; start and finish hold no word.
    cells: Array.from({ length: rows }, (_, row) =>
      card.words
        .slice(Math.max(0, row * track.columns - 1), (row + 1) * track.columns - 1)
        .map(word => word.text),
    ),
    content: (
      <div
        style={{
          display: 'flex',
          position: 'relative',
          width: mm(room.widthMm),
          height: mm(room.heightMm),
          margin: mm(insetMm),
        }}
      >
        <OverlaySlot name="track" />
        {endsMm === undefined ? null : <End said="start" box={track.spaces[0]!} sizeMm={endsMm} />}
        {words.map(([name], index) => (
          <Slot name={name} style={{ position: 'absolute', ...placed(track.spaces[index + 1]!) }} />
        ))}
        {endsMm === undefined ? null : <End said="finish" box={track.spaces.at(-1)!} sizeMm={endsMm} />}
      </div>
    ),
    slots: {
      track: { kind: 'art', draw: whole => drawTrack(track, whole, LINE_MM) },
      ...Object.fromEntries(words),
    },
  })
}

function placed({ xMm, yMm, widthMm, heightMm }: Box) {
  return { left: mm(xMm), top: mm(yMm), width: mm(widthMm), height: mm(heightMm) }
}

function End({ said, box, sizeMm }: { readonly said: string; readonly box: Box; readonly sizeMm: number }) {
  return (
    <Lines
      lines={[said]}
      style={{ sizeMm, weight: 700, align: 'centre' }}
      box={{ position: 'absolute', justifyContent: 'center', ...placed(box) }}
    />
  )
}
