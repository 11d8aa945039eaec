import type { Box, Size } from '../../src/geometry.js'
import { pathText, polygon, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'
import { type JoinedSheets, ONE_SHEET } from '../joined-sheets/joined-sheets.js'

/** A place on the track; `at` counts from 0, the start. */
export interface Space extends Box {
  readonly at: number
}

/** A track of spaces that runs to and fro: rows joined at alternate ends, from the top left. */
export interface Track {
  readonly columns: number
  /** Of the whole track. */
  readonly count: number
  /** In the order walked; on a sheet alone the last one takes what is left of its row. */
  readonly spaces: readonly Space[]
  /** The passages from one row down to the next. */
  readonly passages: readonly Box[]
}

export interface TrackRequest {
  /** Start and finish among them. */
  readonly spaces: number
  /** Over all sheets; as many on each. */
  readonly columns: number
  /** Of one sheet. */
  readonly room: Size
  readonly sheets?: JoinedSheets
}

/** Between two rows, as a share of a row's height: wide enough to see the way, our own judgement. */
const GAP_SHARE = 0.3
/** Of a space's width: too narrow to be taken for a space. */
const PASSAGE_SHARE = 0.4

export function layTrack({ spaces, columns, room, sheets = ONE_SHEET }: TrackRequest): Track {
  const rows = Math.ceil(spaces / columns)
  const isJoined = sheets.across * sheets.down > 1
  const wholeMm = room.widthMm * sheets.across
  const widthMm = wholeMm / columns
  const rowsEach = Math.ceil(rows / sheets.down)
  const heightMm = rowHeight(rows, room, sheets.down)
  const gapMm = heightMm * GAP_SHARE
  const topOf = (row: number) =>
    Math.floor(row / rowsEach) * room.heightMm + (row % rowsEach) * (heightMm + gapMm)
  const leftToRight = (row: number) => row % 2 === 0
  const boxOf = (at: number): Space => {
    const row = Math.floor(at / columns)
    const along = at % columns
    const column = leftToRight(row) ? along : columns - 1 - along
    return { at, xMm: column * widthMm, yMm: topOf(row), widthMm, heightMm }
  }
  const boxes = Array.from({ length: spaces }, (_, space) => boxOf(space))
  const last = boxes[spaces - 1]!
  const widened: Space = leftToRight(rows - 1)
    ? { ...last, widthMm: room.widthMm - last.xMm }
    : { ...last, xMm: 0, widthMm: last.xMm + last.widthMm }
  const passages = Array.from({ length: rows - 1 }, (_, row): Box => {
    const xMm = leftToRight(row) ? wholeMm - widthMm : 0
    return {
      xMm: xMm + (widthMm * (1 - PASSAGE_SHARE)) / 2,
      yMm: topOf(row) + heightMm,
      widthMm: widthMm * PASSAGE_SHARE,
      heightMm: gapMm,
    }
  })
  return { columns, count: spaces, spaces: [...boxes.slice(0, -1), isJoined ? last : widened], passages }
}

/** What of the track stands on a sheet, in its coordinates; sheets are counted row by row from 0. */
export function onSheet(track: Track, sheet: number, room: Size, { across }: JoinedSheets): Track {
  const left = (sheet % across) * room.widthMm
  const top = Math.floor(sheet / across) * room.heightMm
  const isHere = ({ xMm, yMm, widthMm, heightMm }: Box) => {
    const [x, y] = [xMm + widthMm / 2 - left, yMm + heightMm / 2 - top]
    return x > 0 && x < room.widthMm && y > 0 && y < room.heightMm
  }
  const moved = <B extends Box>(box: B): B => ({ ...box, xMm: box.xMm - left, yMm: box.yMm - top })
  return {
    ...track,
    spaces: track.spaces.filter(isHere).map(moved),
    passages: track.passages.filter(isHere).map(moved),
  }
}

/** The number of columns that lets a word of this shape (width and height for an em of 1) stand largest. */
export function bestColumns(
  spaces: number,
  room: Size,
  word: Size,
  { across, down }: JoinedSheets = ONE_SHEET,
): number {
  const size = (columns: number) => {
    const heightMm = rowHeight(Math.ceil(spaces / columns), room, down)
    return Math.min((room.widthMm * across) / columns / word.widthMm, heightMm / word.heightMm)
  }
  const counts = Array.from({ length: Math.max(1, Math.min(spaces, 10) - 1) }, (_, index) => index + 2).map(
    columns => columns * across,
  )
  return counts.reduce((best, columns) => (size(columns) > size(best) + 1e-9 ? columns : best), counts[0]!)
}

/** Of several sheets below one another each ends with the gap to the next. */
function rowHeight(rows: number, room: Size, down: number): number {
  if (down === 1) return room.heightMm / (rows + (rows - 1) * GAP_SHARE)
  return room.heightMm / (Math.ceil(rows / down) * (1 + GAP_SHARE))
}

/**
 * Across the line between two spaces; half of it reaches into the white that a space keeps beside its word, a tenth of its
 * width. On large spaces it is larger, or it would be a speck.
 */
function arrowSize({ widthMm, heightMm }: Box): number {
  return Math.max(2.4, Math.min(widthMm / 14, heightMm / 8))
}

/** The track's lines: a frame to each space, shared with its neighbour, a second one within start and finish, arrows. */
export function drawTrack({ columns, count, spaces, passages }: Track, room: Size, lineMm: number): Art {
  const frames = spaces.map(box => frameOf(grown(box, lineMm / 2, room), lineMm))
  const ends = spaces
    .filter(({ at }) => at === 0 || at === count - 1)
    .map(box => frameOf(grown(box, -3 * lineMm, room), lineMm))
  const arrows = spaces.flatMap(space => {
    const isLastOfRow = space.at % columns === columns - 1 || space.at === count - 1
    return isLastOfRow ? [] : [drawArrow(space, Math.floor(space.at / columns) % 2 === 0, room)]
  })
  return {
    ...room,
    shapes: [...frames, ...ends, ...arrows, ...passages.flatMap(passage => drawPassage(passage, lineMm))],
    text: [],
  }
}

/** Half a line wider on each side, so that neighbours' lines lie on one another, but never beyond the room. */
function grown(box: Box, byMm: number, room: Size): Box {
  const left = Math.max(0, box.xMm - byMm)
  const top = Math.max(0, box.yMm - byMm)
  return {
    xMm: left,
    yMm: top,
    widthMm: Math.min(room.widthMm, box.xMm + box.widthMm + byMm) - left,
    heightMm: Math.min(room.heightMm, box.yMm + box.heightMm + byMm) - top,
  }
}

function frameOf({ xMm, yMm, widthMm, heightMm }: Box, lineMm: number): PathShape {
  const [right, bottom] = [xMm + widthMm, yMm + heightMm]
  const bars = [
    rectangle(xMm, yMm, right, yMm + lineMm),
    rectangle(xMm, bottom - lineMm, right, bottom),
    rectangle(xMm, yMm + lineMm, xMm + lineMm, bottom - lineMm),
    rectangle(right - lineMm, yMm + lineMm, right, bottom - lineMm),
  ]
  return { kind: 'path', d: pathText(bars.flat()), fill: '#000000' }
}

/** On the line to the next space, towards it; within the sheet where the next one is on another. */
function drawArrow(space: Box, rightwards: boolean, room: Size): PathShape {
  const { xMm, yMm, widthMm, heightMm } = space
  const arrowMm = arrowSize(space)
  const half = arrowMm / 2
  const edge = rightwards ? Math.min(xMm + widthMm, room.widthMm - half) : Math.max(xMm, half)
  const towards = (rightwards ? 1 : -1) * half
  const middle = yMm + heightMm / 2
  const tall = arrowMm * 0.65
  const head = polygon([
    [edge - towards, middle - tall],
    [edge + towards, middle],
    [edge - towards, middle + tall],
  ])
  return { kind: 'path', d: pathText(head), fill: '#000000' }
}

/** Two sides and an arrow down. */
function drawPassage({ xMm, yMm, widthMm, heightMm }: Box, lineMm: number): readonly PathShape[] {
  const right = xMm + widthMm
  const bottom = yMm + heightMm
  const middle = xMm + widthMm / 2
  const arrowMm = Math.min(heightMm * 0.5, widthMm * 0.5)
  const top = yMm + (heightMm - arrowMm) / 2
  return [
    rectangle(xMm, yMm, xMm + lineMm, bottom),
    rectangle(right - lineMm, yMm, right, bottom),
    polygon([
      [middle - arrowMm / 2, top],
      [middle + arrowMm / 2, top],
      [middle, top + arrowMm],
    ]),
  ].map(commands => ({ kind: 'path', d: pathText(commands), fill: '#000000' }))
}
