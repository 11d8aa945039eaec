import type { Box, Size } from '../../src/geometry.js'
import { pathText, polygon, rectangle } from '../../src/pieces/art/path-text.js'
import type { Art, PathShape } from '../../src/pieces/piece.js'

/** A track of spaces that runs to and fro: rows joined at alternate ends, from the top left. */
export interface Track {
  readonly columns: number
  /** In the order walked; the last one takes what is left of its row. */
  readonly spaces: readonly Box[]
  /** The passages from one row down to the next. */
  readonly passages: readonly Box[]
}

export interface TrackRequest {
  /** Start and finish among them. */
  readonly spaces: number
  readonly columns: number
  readonly room: Size
}

/** Between two rows, as a share of a row's height: wide enough to see the way, our own judgement. */
const GAP_SHARE = 0.3
/** Of a space's width: too narrow to be taken for a space. */
const PASSAGE_SHARE = 0.4

export function layTrack({ spaces, columns, room }: TrackRequest): Track {
  const rows = Math.ceil(spaces / columns)
  const widthMm = room.widthMm / columns
  const heightMm = rowHeight(rows, room)
  const stepMm = heightMm * (1 + GAP_SHARE)
  const leftToRight = (row: number) => row % 2 === 0
  const boxOf = (space: number): Box => {
    const row = Math.floor(space / columns)
    const along = space % columns
    const column = leftToRight(row) ? along : columns - 1 - along
    return { xMm: column * widthMm, yMm: row * stepMm, widthMm, heightMm }
  }
  const boxes = Array.from({ length: spaces }, (_, space) => boxOf(space))
  const last = boxes[spaces - 1]!
  const endsAtRight = leftToRight(rows - 1)
  const finish: Box = endsAtRight
    ? { ...last, widthMm: room.widthMm - last.xMm }
    : { ...last, xMm: 0, widthMm: last.xMm + last.widthMm }
  const passages = Array.from({ length: rows - 1 }, (_, row): Box => {
    const xMm = leftToRight(row) ? room.widthMm - widthMm : 0
    return {
      xMm: xMm + (widthMm * (1 - PASSAGE_SHARE)) / 2,
      yMm: row * stepMm + heightMm,
      widthMm: widthMm * PASSAGE_SHARE,
      heightMm: stepMm - heightMm,
    }
  })
  return { columns, spaces: [...boxes.slice(0, -1), finish], passages }
}

/** The number of columns that lets a word of this shape (width and height for an em of 1) stand largest. */
export function bestColumns(spaces: number, room: Size, word: Size): number {
  const size = (columns: number) => {
    const heightMm = rowHeight(Math.ceil(spaces / columns), room)
    return Math.min(room.widthMm / columns / word.widthMm, heightMm / word.heightMm)
  }
  const counts = Array.from({ length: Math.min(spaces, 10) - 1 }, (_, index) => index + 2)
  return counts.reduce((best, columns) => (size(columns) > size(best) + 1e-9 ? columns : best), counts[0]!)
}

function rowHeight(rows: number, room: Size): number {
  return room.heightMm / (rows + (rows - 1) * GAP_SHARE)
}

/**
 * Across the line between two spaces; half of it reaches into the white that a space keeps beside its word, a tenth of its
 * width. On large spaces it is larger, or it would be a speck.
 */
function arrowSize({ widthMm, heightMm }: Box): number {
  return Math.max(2.4, Math.min(widthMm / 14, heightMm / 8))
}

/** The track's lines: a frame to each space, shared with its neighbour, a second one within start and finish, arrows. */
export function drawTrack({ columns, spaces, passages }: Track, room: Size, lineMm: number): Art {
  const frames = spaces.map(box => frameOf(grown(box, lineMm / 2, room), lineMm))
  const ends = [spaces[0]!, spaces.at(-1)!].map(box => frameOf(grown(box, -3 * lineMm, room), lineMm))
  const arrows = spaces.flatMap((box, space) => {
    const isLastOfRow = space % columns === columns - 1 || space === spaces.length - 1
    return isLastOfRow ? [] : [drawArrow(box, Math.floor(space / columns) % 2 === 0)]
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

/** On the line to the next space, towards it. */
function drawArrow(space: Box, rightwards: boolean): PathShape {
  const { xMm, yMm, widthMm, heightMm } = space
  const arrowMm = arrowSize(space)
  const edge = rightwards ? xMm + widthMm : xMm
  const towards = (rightwards ? 1 : -1) * (arrowMm / 2)
  const middle = yMm + heightMm / 2
  const half = arrowMm * 0.65
  const head = polygon([
    [edge - towards, middle - half],
    [edge + towards, middle],
    [edge - towards, middle + half],
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
