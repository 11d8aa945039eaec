/** The key of pages for the board: in the corner or along the foot, as far as it has grown. */
import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../src/geometry.js'
import { mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { type KeyEntry, keyEntries } from '../../src/pieces/marks/key-entries.js'
import { drawKeySample, keySampleEm } from '../../src/pieces/marks/key-sample.js'
import { breakLines, linesHeight } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { wordRules } from '../../src/pieces/text/type-scale.js'
import type { BoardRequest } from './board-options.js'

/** A request with what its key takes on every page, found once. */
export interface Board extends BoardRequest {
  readonly keySizes: KeySizes
}

interface KeySizes {
  /** Width of the samples. */
  readonly sampleMm: number
  /** Width of the key in the corner. */
  readonly cornerMm: number
  /** Height of the key along the foot. */
  readonly footMm: number
}

/** What stands on a part of a page. */
export interface BoardContent {
  readonly tree: JSXNode
  readonly slots: Readonly<Record<string, SlotContent>>
}

/** Of the page's width, at least and at most, for the key in the corner. */
const CORNER_SHARE = { least: 0.22, most: 0.38 }
/** What an outline or an arc adds to the letters of a sample, in their em. */
const SAMPLE_EXTRA_EM = 0.9
/** Of the least em. */
const KEY_SAMPLE = 1.3
const BETWEEN_ENTRIES = 0.45
/** Of a name that is broken into two lines: the longer of them. */
const HALF = 0.65

export function boardOf(request: BoardRequest, room: Size): Board {
  const { words, marks, marked, measure, type } = request
  const entries = marked ? keyEntries(words, marks) : []
  const ems = entries.map(entry => keySampleEm(entry, measure, SAMPLE_EXTRA_EM))
  const sampleMm = Math.max(1, ...ems) * type.textMm * KEY_SAMPLE
  const cornerMm = cornerWidthMm(request, { entries, sampleMm, widthMm: room.widthMm })
  const board = { ...request, keySizes: { sampleMm, cornerMm, footMm: 0 } }
  return { ...board, keySizes: { sampleMm, cornerMm, footMm: marked ? footMm(board, room) : 0 } }
}

/** So wide that no name of a mark takes more than two lines, if that leaves the words their room. */
function cornerWidthMm(
  { type, measure }: BoardRequest,
  {
    entries,
    sampleMm,
    widthMm,
  }: { readonly entries: readonly KeyEntry[]; readonly sampleMm: number; readonly widthMm: number },
): number {
  const names = entries.map(({ label }) => {
    const widestMm = Math.max(...label.split(/\s+/).map(word => measure(word, type.textMm)))
    return Math.max(widestMm, measure(label, type.textMm) * HALF)
  })
  const neededMm = sampleMm + type.textMm * BETWEEN_ENTRIES + Math.max(0, ...names) + 1
  return Math.min(widthMm * CORNER_SHARE.most, Math.max(widthMm * CORNER_SHARE.least, neededMm))
}

/** So high that the key of every word of the list has room. */
function footMm(board: Board, room: Size): number {
  const heights = board.words.map(word => {
    const rows = footRows(board, keyEntries([word], board.marks), room)
    return rows.reduce((sum, { heightMm }) => sum + heightMm, 0)
  })
  return Math.max(0, ...heights)
}

interface KeyLine {
  readonly entry: KeyEntry
  readonly lines: readonly string[]
  readonly heightMm: number
}

/** A mark on its sample letters, and its name beside it, in this width. */
export function keyLines(request: Board, key: readonly KeyEntry[], widthMm: number): readonly KeyLine[] {
  const { type, measure } = request
  const sampleMm = type.textMm * KEY_SAMPLE
  const labelMm = widthMm - request.keySizes.sampleMm - type.textMm * BETWEEN_ENTRIES
  return key.map(entry => {
    const lines = breakLines(entry.label, labelMm, { sizeMm: type.textMm }, measure)
    const textMm = linesHeight(lines.length, type.textMm)
    return { entry, lines, heightMm: Math.max(sampleMm * 2, textMm) + type.textMm * BETWEEN_ENTRIES }
  })
}

export function keySlots(
  { type, typeface }: Board,
  key: readonly KeyLine[],
): Readonly<Record<string, SlotContent>> {
  return Object.fromEntries(
    key.map(({ entry: { mark, letters } }) => [
      `key ${mark.index}`,
      {
        kind: 'art' as const,
        draw: (room: Size) =>
          drawKeySample({
            typeface,
            mark,
            letters,
            sizeMm: type.textMm * KEY_SAMPLE,
            room,
            at: 'right',
            ...wordRules(type),
          }),
      },
    ]),
  )
}

export function KeyLineBox({ request, line }: { readonly request: Board; readonly line: KeyLine }) {
  const { entry, lines, heightMm } = line
  const { type } = request
  return (
    <div style={{ display: 'flex', height: mm(heightMm), alignItems: 'center', flexShrink: 0 }}>
      <Slot
        name={`key ${entry.mark.index}`}
        style={{ width: mm(request.keySizes.sampleMm), height: '100%', flexShrink: 0 }}
      />
      <Lines
        lines={lines}
        style={{ sizeMm: type.textMm }}
        box={{ marginLeft: mm(type.textMm * BETWEEN_ENTRIES) }}
      />
    </div>
  )
}

/** The key in the lower right corner: the newest marks, as many as have room. */
export function keyCorner(request: Board, key: readonly KeyEntry[], room: Size): BoardContent {
  const shown = lastWithin(keyLines(request, key, room.widthMm), room.heightMm)
  return {
    slots: keySlots(request, shown),
    tree: (
      <div
        style={{
          display: 'flex',
          flexDirection: 'column',
          justifyContent: 'flex-end',
          width: mm(room.widthMm),
          height: '100%',
          marginLeft: 'auto',
        }}
      >
        {shown.map(line => (
          <KeyLineBox request={request} line={line} />
        ))}
      </div>
    ),
  }
}

const MOST_SIDE_BY_SIDE = 3

function footRows(request: Board, key: readonly KeyEntry[], { widthMm }: Size) {
  const lines = keyLines(request, key, widthMm / MOST_SIDE_BY_SIDE)
  const count = Math.ceil(lines.length / MOST_SIDE_BY_SIDE)
  return Array.from({ length: count }, (_, row) => {
    const placed = lines.slice(row * MOST_SIDE_BY_SIDE, (row + 1) * MOST_SIDE_BY_SIDE)
    return { lines: placed, heightMm: Math.max(...placed.map(({ heightMm }) => heightMm)) }
  })
}

export function keyFoot(request: Board, key: readonly KeyEntry[], room: Size): BoardContent {
  const rows = footRows(request, key, room)
  return {
    slots: keySlots(
      request,
      rows.flatMap(({ lines }) => lines),
    ),
    tree: (
      <div style={{ display: 'flex', flexDirection: 'column', width: '100%' }}>
        {rows.map(({ lines, heightMm }) => (
          <div style={{ display: 'flex', height: mm(heightMm), width: '100%' }}>
            {lines.map(line => (
              <div style={{ display: 'flex', width: mm(room.widthMm / MOST_SIDE_BY_SIDE), height: '100%' }}>
                <KeyLineBox request={request} line={{ ...line, heightMm }} />
              </div>
            ))}
          </div>
        ))}
      </div>
    ),
  }
}

/** At least the last. */
export function lastWithin(lines: readonly KeyLine[], roomMm: number): readonly KeyLine[] {
  let usedMm = 0
  const tooMuch = lines.findLastIndex(({ heightMm }) => {
    usedMm += heightMm
    return usedMm > roomMm
  })
  return lines.slice(Math.min(tooMuch + 1, Math.max(0, lines.length - 1)))
}
