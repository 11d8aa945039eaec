import type { Box, Size } from '../../src/geometry.js'
import { succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import type { Art } from '../../src/pieces/piece.js'
import { linesHeight } from '../../src/pieces/text/break-lines.js'
import { fitTexts } from '../../src/pieces/text/fit-texts.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { Outcome } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import { besideStrips, type JoinedSheets, joinedSheets, sheetsOf } from '../joined-sheets/joined-sheets.js'
import { jointSlot } from '../joined-sheets/joint-art.js'
import type { LayoutRequest } from '../layout.js'
import { wordSlot } from '../one-card-a-word.js'
import type { PathRequest } from './path-options.js'
import {
  drawSpaceLabels,
  labelHeight,
  roomBehindNumber,
  type SpaceLabels,
  spaceLabels,
} from './space-labels.js'
import { bestColumns, drawTrack, layTrack, onSheet, type Track } from './track.js'

const LINE_MM = 0.6

/** The board's track and the size of what is written in its first and last space; undefined: nothing is. */
interface BoardPlan {
  readonly size: Size
  /** From the board's frame to the track. */
  readonly insetMm: number
  /** Of one sheet, with the strips on which the next are glued. */
  readonly whole: Size
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

/** A face for each sheet of each board; an error where what stands in a space has no room. */
export function pathFaces(request: PathRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { type, item, measure, words } = request
  // In large print a corner of the board is cut off, and the track keeps clear of that cut too.
  const insetMm = type.large ? 1.5 : 0
  const inside = contentRoom(size, undefined, type)
  const sheets = joinedSheets(sheetsOf(request.options))
  const whole = {
    widthMm: inside.widthMm - 2 * insetMm,
    heightMm: inside.heightMm - 2 * insetMm - ABOVE_MARK_MM,
  }
  const room = besideStrips(whole, sheets)
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
  const plan: BoardPlan = { size, insetMm, whole, room, track, sheets, endsMm, labels }
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
  { size, insetMm, whole, room, track, sheets, endsMm, labels }: BoardPlan,
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
        {card.part !== undefined && <OverlaySlot name="joint" />}
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
      track: { kind: 'art', draw: () => drawBoard(request, here, labels, room) },
      ...jointSlot(card, { room, whole, request }),
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
