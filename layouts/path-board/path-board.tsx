import type { Box, Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import type { Art } from '../../src/pieces/piece.js'
import { linesHeight } from '../../src/pieces/text/break-lines.js'
import { fitTexts } from '../../src/pieces/text/fit-texts.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { choice, option, wholeNumber } from '../../src/plan/values/options.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../../src/problems.js'
import { cardId } from '../../src/sets/card-id.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { NEAR_SHARE, pathBoards } from '../../src/sets/games/path-boards.js'
import { minutesOf, mostJumps, SECONDS_A_TURN } from '../../src/sets/games/track-length.js'
import type { TrackOfSet } from '../../src/sets/games/track-turns.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import {
  defineLayout,
  type LayoutRequest,
  type PageFace,
  type RequestWith,
  type RoomierOptions,
} from '../layout.js'
import { wordSlot } from '../one-card-a-word.js'
import { joinedArt } from './joined-art.js'
import { numberMakers } from './number-makers.js'
import {
  drawSpaceLabels,
  labelHeight,
  roomBehindNumber,
  type SpaceLabels,
  spaceLabels,
} from './space-labels.js'
import { bestColumns, drawTrack, type JoinedSheets, layTrack, onSheet, type Track } from './track.js'

/** How many words stand on a track where the teacher does not say. */
const SPACES = { normal: 26, large: 13 } as const

const LEAST_SPACES = 4
const MOST_SPACES = 160
/** More are too small to read. */
const MOST_ON_A_SHEET = 80
/** Of several sheets; a longer game tires children. */
const MOST_USUAL_SPACES = 80
const options = {
  spaces: option('how many words stand on a track', wholeNumber(LEAST_SPACES, MOST_SPACES, undefined), {
    example: '20',
    usual: `${SPACES.normal}, and ${SPACES.large} in large print`,
  }),
  boards: option('how many boards, their words in other orders', wholeNumber(1, 40, 1)),
  sheets: option('over how many sheets of paper a board is joined: 1, 2 or 4', wholeNumber(1, 4, 1), {
    example: '2',
  }),
  minutes: option(
    'how long a game should last; spaces that send on or back are chosen for it',
    wholeNumber(2, 90, undefined),
    { example: '15', usual: 'as long as the track takes' },
  ),
  jumps: option('how many spaces send a counter on or back', wholeNumber(0, 20, undefined), {
    example: '4',
    usual: 'none, or as many as "minutes" needs',
  }),
  players: option('for how many children "minutes" is reckoned', wholeNumber(1, 6, 3)),
  finish: option(
    'whether a throw past the finish ends there, or the counter waits for the exact throw',
    choice(['over', 'exact'], undefined),
    { example: 'exact', usual: 'over, and exact where "minutes" needs it' },
  ),
  faces: option('how many numbers the die or the disc has', wholeNumber(3, 10, 6)),
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
    const { words, item, options, itemName, plan } = request
    const spaces = spacesOf(request)
    const set = pathBoards({
      ...options,
      words,
      spaces,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
    })
    const { sheets } = options
    if (sheets === 3)
      return fail(errorAt(item.place, 'a board is not joined from 3 sheets', 'Write sheets: 2 or sheets: 4.'))
    const cards = set.cards.flatMap(card => inParts(card, sheets, options.boards))
    const value = { ...set, cards, notes: notesOn(words.length, spaces) }
    return succeed(value, lengthProblems(request, set.track))
  },
  roomier: shorterTracks,
  faces: pathFaces,
  pages: pathPages,
})

function spacesOf({ options, type }: PathRequest): number {
  const usual = SPACES[type.large ? 'large' : 'normal'] * options.sheets
  return options.spaces ?? Math.min(usual, MOST_USUAL_SPACES)
}

/** Two sheets side by side, four two by two. */
function sheetsOf({ sheets }: PathRequest['options']): JoinedSheets {
  return { across: sheets === 1 ? 1 : 2, down: sheets === 4 ? 2 : 1 }
}

/** A card for each sheet of a board; which spaces stand on it is known when it has a size. */
function inParts(card: Card, of: number, boards: number): readonly Card[] {
  if (of === 1) return [card]
  return Array.from({ length: of }, (_, index) => ({
    ...card,
    part: { number: index + 1, of },
    id: cardId({ prefix: 'board', number: card.number, copy: card.copy, of: boards, part: index + 1 }),
  }))
}

function lengthProblems(request: PathRequest, track: TrackOfSet): readonly Problem[] {
  const { options, item } = request
  const { minutes, players, faces, jumps } = options
  const spaces = spacesOf(request)
  const mostSending = mostJumps(spaces + 1)
  const tooMany =
    jumps !== undefined && track.jumps.length < jumps
      ? [
          warningAt(
            item.place,
            `${track.jumps.length} spaces send on or back, not ${jumps}`,
            `A track of ${spaces} spaces has room for ${mostSending}; give it more spaces.`,
          ),
        ]
      : []
  if (minutes === undefined || Math.abs(track.minutes - minutes) <= NEAR_SHARE * minutes) return tooMany
  const bare = (count: number) =>
    minutesOf({ finish: count + 1, jumps: [], faces, ending: track.ending }, players)
  const most = Math.min(MOST_SPACES, MOST_ON_A_SHEET * options.sheets)
  const counts = Array.from({ length: most - LEAST_SPACES + 1 }, (_, index) => index + LEAST_SPACES)
  const better = counts.find(count => bare(count) >= minutes) ?? most
  return [
    ...tooMany,
    warningAt(
      item.place,
      `a game lasts about ${Math.round(track.minutes)} minutes, not ${minutes}`,
      `That is the nearest that spaces which send on or back can do; a track with spaces: ${better} lasts about ${Math.round(bare(better))} without any.`,
    ),
  ]
}

/** Tracks with fewer and larger spaces: one word less each time. */
function shorterTracks(request: PathRequest): readonly RoomierOptions<PathRequest['options']>[] {
  const { jumps, minutes } = request.options
  const now = spacesOf(request)
  const shorter = Array.from({ length: Math.max(0, now - LEAST_SPACES) }, (_, less) => now - less - 1)
  const tracks = shorter.map(spaces => ({
    options: { spaces },
    says: `spaces: ${spaces}`,
    open: request.options.spaces === undefined,
  }))
  if (jumps === undefined && minutes === undefined) return tracks
  // Where even few spaces are too small for what they say, they say nothing.
  const withoutJumps = [now, ...shorter].map(spaces => ({
    options: { spaces, jumps: 0 },
    says: spaces === now ? 'jumps: 0' : `spaces: ${spaces}, jumps: 0`,
    open: request.options.spaces === undefined && jumps === undefined,
  }))
  return [...tracks, ...withoutJumps]
}

function notesOn(words: number, spaces: number): readonly string[] {
  return [
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
  /** Of one sheet. */
  readonly room: Size
  /** Of the whole board. */
  readonly track: Track
  readonly sheets: JoinedSheets
  readonly endsMm: number | undefined
  /** Where spaces send a counter on or back. */
  readonly labels: SpaceLabels | undefined
}

/** White between the track and the set mark below it. */
const ABOVE_MARK_MM = 1.2

/** Along the edges to which the next sheet is glued, and as much at the others, so that sheets match. */
const OVERLAP_MM = 10

function pathFaces(request: PathRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, measure, words } = request
  // In large print a corner of the board is cut off, and the track keeps clear of that cut too.
  const insetMm = type.large ? 1.5 : 0
  const inside = contentRoom(size, undefined, type)
  const sheets = sheetsOf(request.options)
  const room = {
    widthMm: inside.widthMm - 2 * insetMm - (sheets.across === 1 ? 0 : OVERLAP_MM),
    heightMm: inside.heightMm - 2 * insetMm - ABOVE_MARK_MM - (sheets.down === 1 ? 0 : OVERLAP_MM),
  }
  const spaces = set.cards[0]!.words.length + 2
  const widest = Math.max(...words.map(word => measure(word.text, 1)), measure('finish', 1, 700))
  // White around a word is about a third of its width and as much as its height.
  const columns = bestColumns(spaces, room, { widthMm: widest * 1.3, heightMm: 2.2 }, sheets)
  const track = layTrack({ spaces, columns, room, sheets })
  const endRoom = roomFor(track.spaces[0]!)
  const ends = fitTexts({
    texts: ['start', 'finish'].map(text => ({ text, on: 'the board', room: endRoom })),
    minimumMm: type.textMm,
    maximumMm: Math.max(type.textMm, endRoom.heightMm * 0.4),
    weight: 700,
    measure,
    place: item.place,
  })
  const { jumps = [] } = set.track ?? {}
  const { widthMm } = track.spaces[0]!
  const labels =
    jumps.length === 0 ? undefined : spaceLabels(jumps, { sizeMm: type.textMm, widthMm, measure })
  const labelled = fitTexts({
    texts: [...(labels?.sends ?? [])].map(([space, text]) => ({
      text,
      on: `space ${space}`,
      room: {
        widthMm: roomBehindNumber(space, { sizeMm: type.textMm, widthMm, measure }),
        heightMm: linesHeight(1, type.textMm),
      },
    })),
    minimumMm: type.textMm,
    maximumMm: type.textMm,
    weight: 700,
    measure,
    place: item.place,
  })
  if (!labelled.ok) return labelled
  // The double frames show where the track begins and ends: in large print the words may be left out.
  if (!ends.ok && !type.large) return ends
  const endsMm = ends.ok ? ends.value : undefined
  const plan: BoardPlan = { size, insetMm, room, track, sheets, endsMm, labels }
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
  { size, insetMm, room, track, sheets, endsMm, labels }: BoardPlan,
): CardFace {
  const { widthMm, heightMm } = track.spaces[0]!
  const isLabelled = labels !== undefined
  const place = {
    align: 'centre',
    paddingMm: Math.max(2, widthMm / 10),
    // Above what is written at its foot a word needs less white than above a line.
    paddingAboveMm: isLabelled ? 1 : Math.max(2, Math.min(widthMm, heightMm) / 10),
    loweredMm: isLabelled ? labelHeight(labels) / 2 : 0,
  } as const
  const part = card.part?.number ?? 1
  const here = onSheet(track, part - 1, room, sheets)
  const wordAt = (at: number) => card.words[at - 1]
  const shown = here.spaces.flatMap(space => {
    const word = wordAt(space.at)
    return word === undefined ? [] : [{ space, word, name: `space ${space.at}` }]
  })
  const rows = new Map<number, string[]>()
  for (const { space, word } of shown) rows.set(space.yMm, [...(rows.get(space.yMm) ?? []), word.text])
  const ends = here.spaces.filter(({ at }) => wordAt(at) === undefined)
  const [rightMm, belowMm] = [sheets.across, sheets.down].map(count => (count === 1 ? 0 : OVERLAP_MM))
  const whole = { widthMm: room.widthMm + rightMm!, heightMm: room.heightMm + belowMm! }
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: undefined,
    text: shown.map(({ word }) => word.text),
    // A row of cells for each row of the track, in the order walked; start and finish hold no word.
    cells: [...rows.values()],
    content: (
      <div
        style={{
          display: 'flex',
          position: 'relative',
          width: mm(whole.widthMm),
          height: mm(whole.heightMm),
          margin: mm(insetMm),
        }}
      >
        <OverlaySlot name="track" />
        {ends.map(space =>
          endsMm === undefined ? null : (
            <End said={space.at === 0 ? 'start' : 'finish'} box={space} sizeMm={endsMm} />
          ),
        )}
        {shown.map(({ name, space }) => (
          <Slot name={name} style={{ position: 'absolute', ...placed(roomForWord(space, labels)) }} />
        ))}
      </div>
    ),
    slots: {
      track: {
        kind: 'art',
        draw: () => joinedArt(drawBoard(request, here, labels, room), { part, room, whole, sheets, request }),
      },
      ...Object.fromEntries(
        shown.map(({ name, word }): [string, SlotContent] => [name, wordSlot(request, word, place)]),
      ),
    },
  })
}

function roomForWord(space: Box, labels: SpaceLabels | undefined): Box {
  if (labels === undefined) return space
  const taken = labelHeight(labels)
  return { ...space, heightMm: space.heightMm - taken }
}

function drawBoard(
  { typeface }: LayoutRequest,
  track: Track,
  labels: SpaceLabels | undefined,
  room: Size,
): Art {
  const lines = drawTrack(track, room, LINE_MM)
  if (labels === undefined) return lines
  const written = track.spaces
    .filter(({ at }) => at > 0 && at < track.count - 1)
    .flatMap(space => drawSpaceLabels(labels, space.at, space, typeface))
  return {
    ...room,
    shapes: [...lines.shapes, ...written.flatMap(({ shapes }) => shapes)],
    text: [...lines.text, ...written.flatMap(({ text }) => text)],
  }
}

/** How the sheets of a board are joined. */
function joining(sheets: number): string {
  if (sheets === 1) return ''
  const cut =
    sheets === 2
      ? 'cut the second sheet along the line at its left'
      : 'lay the sheets out as 1 2 above 3 4; cut the second and fourth along the line at their left, the third and fourth along the line at their top'
  return `${cut}, lay each on the empty strip of the sheet beside or above it so that the lines meet, and glue it there. A grown-up does the cutting. Then `
}

function pathPages(request: PathRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { players, faces } = request.options
  const { jumps, turns, minutes, numbers, ending } = set.track!
  const [each, whole] = [Math.round(turns), Math.max(1, Math.round(minutes))]
  const rounds = Math.max(1, Math.round((minutes * 60) / (SECONDS_A_TURN * players)))
  const isOn = jumps.some(({ from, to }) => to > from)
  const isBack = jumps.some(({ from, to }) => to < from)
  const sent = isOn && isBack ? 'on or back' : isOn ? 'on' : 'back'
  const read = 'Read the word on your space aloud.'
  const exactly =
    ending === 'over' ? 'You need not throw the exact number.' : 'Your last throw must be exact.'
  const makers = {
    kind: 'rules',
    what: 'instead of a die',
    rows: numberMakers(request, numbers, room),
    room,
  } as const
  return [
    ...howToPlayPages(
      request,
      {
        play: [
          'Put your counters on start. Take turns.',
          'Throw. Move as many spaces, the way the arrows point.',
          jumps.length === 0 ? read : `${read} Does it send you ${sent}? Go there. Your turn is over.`,
          `First at the finish wins. ${exactly}`,
        ],
        prepare: `${joining(request.options.sheets)}one board and a counter for each of two to four children, ${faces === 6 ? 'and a die, or' : 'and'} the disc or the grid of the next page. Counters and dice are small parts: not for children under three.`,
        help: `a word read wrongly is read together. ${players === 1 ? 'One child is home' : `The first of ${players} children is home`} after about ${rounds} turns${players === 1 ? '' : ' each'}, and with ${SECONDS_A_TURN} seconds a turn, which is our own estimate, a game lasts about ${whole === 1 ? 'a minute' : `${whole} minutes`}. Any one counter takes about ${each} turns.`,
        easier: 'read a word together with whoever gets stuck.',
        harder: 'say a sentence with the word, or spell it with the eyes shut, before the counter may stay.',
      },
      room,
    ),
    ...grownUpPages(request, makers),
  ]
}

function placed({ xMm, yMm, widthMm, heightMm }: Box) {
  return { left: mm(xMm), top: mm(yMm), width: mm(widthMm), height: mm(heightMm) }
}

function End({ said, box, sizeMm }: { readonly said: string; readonly box: Box; readonly sizeMm: number }) {
  return (
    <div style={{ display: 'flex', position: 'absolute', alignItems: 'center', ...placed(box) }}>
      <Lines lines={[said]} style={{ sizeMm, weight: 700, align: 'centre' }} box={{ width: '100%' }} />
    </div>
  )
}
