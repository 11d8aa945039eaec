/** A page for the board: what to look for, what it is about, and the key as far as it has grown. */
import type { JSXNode } from 'satori/jsx'
import type { Size } from '../../src/geometry.js'
import { mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { type KeyEntry, keyEntries } from '../../src/pieces/marks/key-entries.js'
import { drawKeySample, keySampleEm } from '../../src/pieces/marks/key-sample.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import { wordRules } from '../../src/pieces/text/type-scale.js'
import type { PageFace } from '../layout.js'
import type { BoardRequest } from './board-options.js'

/** What stands between the heading and the edges of a page, left of the key. */
export interface BoardContent {
  readonly tree: JSXNode
  readonly slots: Readonly<Record<string, SlotContent>>
}

export interface BoardPage {
  readonly heading: string
  /** What the page is, where it is read aloud: its heading where left out. */
  readonly told?: string
  /** Marks in the key of the page, the oldest first. */
  readonly key: readonly KeyEntry[]
  /** Room is kept for it there though it is empty, so that nothing moves when it grows. */
  readonly keyAt: KeyPlace
  readonly content: BoardContent
}

/** In the corner, beside the words; along the foot, below a word that stands alone. */
export type KeyPlace = 'corner' | 'foot' | 'nothing'

/** Of the page's width, at least and at most. */
const KEY_SHARE = { least: 0.22, most: 0.38 }
const KEY_GAP_SHARE = 0.02
/** What an outline or an arc adds to the letters of a sample, in their em. */
const SAMPLE_EXTRA_EM = 0.9
/** Of the least em. */
const HEADING = 1.25
const KEY_SAMPLE = 1.3
const BETWEEN_ENTRIES = 0.45

/** Room for the content of a page with a heading, beside a key or without one. */
export function contentRoom(request: BoardRequest, room: Size, keyAt: KeyPlace): Size {
  return {
    widthMm:
      keyAt === 'corner' ? room.widthMm * (1 - KEY_GAP_SHARE) - cornerWidthMm(request, room) : room.widthMm,
    heightMm: room.heightMm - headingMm(request) - (keyAt === 'foot' ? footMm(request, room) : 0),
  }
}

/** Two lines, so that what stands below has the same place on every page. */
function headingMm({ type }: BoardRequest): number {
  return linesHeight(2, type.textMm * HEADING)
}

export function boardFace(
  request: BoardRequest,
  { heading, told = heading, key, keyAt, content }: BoardPage,
  room: Size,
): PageFace {
  const { plan, item, itemTitle, type, measure } = request
  const style: TextStyle = { sizeMm: type.textMm * HEADING, weight: 700 }
  const [first = '', second] = breakLines(heading, room.widthMm, style, measure)
  const inner = contentRoom(request, room, keyAt)
  const drawn =
    keyAt === 'foot'
      ? keyFoot(request, key, room)
      : keyCorner(request, key, { widthMm: cornerWidthMm(request, room), heightMm: inner.heightMm })
  return {
    ...room,
    kind: item.paper.screen === true ? 'screen' : 'list',
    title: `${plan.title}: ${itemTitle}: ${told}`,
    slots: { ...content.slots, ...drawn.slots },
    tree: (
      <div style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%' }}>
        <div style={{ display: 'flex', height: mm(headingMm(request)), flexShrink: 0 }}>
          <Lines lines={second === undefined ? [first] : [first, second]} style={style} />
        </div>
        <div style={{ display: 'flex', height: mm(inner.heightMm), width: '100%' }}>
          <div style={{ display: 'flex', width: mm(inner.widthMm), height: '100%', flexShrink: 0 }}>
            {content.tree}
          </div>
          {keyAt === 'corner' ? drawn.tree : null}
        </div>
        {keyAt === 'foot' ? drawn.tree : null}
      </div>
    ),
  }
}

/** So wide that no name of a mark takes more than two lines, if that leaves the words their room. */
function cornerWidthMm(request: BoardRequest, { widthMm }: Size): number {
  const { type, measure, words, marks } = request
  const names = keyEntries(words, marks).map(({ label }) => {
    const widestMm = Math.max(...label.split(/\s+/).map(word => measure(word, type.textMm)))
    return Math.max(widestMm, measure(label, type.textMm) * HALF)
  })
  const neededMm = sampleWidthMm(request) + type.textMm * BETWEEN_ENTRIES + Math.max(0, ...names) + 1
  return Math.min(widthMm * KEY_SHARE.most, Math.max(widthMm * KEY_SHARE.least, neededMm))
}

/** Of a name that is broken into two lines: the longer of them. */
const HALF = 0.65

function sampleWidthMm({ type, measure, words, marks }: BoardRequest): number {
  const ems = keyEntries(words, marks).map(entry => keySampleEm(entry, measure, SAMPLE_EXTRA_EM))
  return Math.max(1, ...ems) * type.textMm * KEY_SAMPLE
}

interface KeyLine {
  readonly entry: KeyEntry
  readonly lines: readonly string[]
  readonly heightMm: number
}

/** A mark on its sample letters, and its name beside it, in this width. */
function keyLines(request: BoardRequest, key: readonly KeyEntry[], widthMm: number): readonly KeyLine[] {
  const { type, measure } = request
  const sampleMm = type.textMm * KEY_SAMPLE
  const labelMm = widthMm - sampleWidthMm(request) - type.textMm * BETWEEN_ENTRIES
  return key.map(entry => {
    const lines = breakLines(entry.label, labelMm, { sizeMm: type.textMm }, measure)
    const textMm = linesHeight(lines.length, type.textMm)
    return { entry, lines, heightMm: Math.max(sampleMm * 2, textMm) + type.textMm * BETWEEN_ENTRIES }
  })
}

function keySlots(
  { type, typeface }: BoardRequest,
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

function KeyLineBox({ request, line }: { readonly request: BoardRequest; readonly line: KeyLine }) {
  const { entry, lines, heightMm } = line
  const { type } = request
  return (
    <div style={{ display: 'flex', height: mm(heightMm), alignItems: 'center', flexShrink: 0 }}>
      <Slot
        name={`key ${entry.mark.index}`}
        style={{ width: mm(sampleWidthMm(request)), height: '100%', flexShrink: 0 }}
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
function keyCorner(request: BoardRequest, key: readonly KeyEntry[], room: Size): BoardContent {
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

/** So high that the key of every word of the list has room. */
function footMm(request: BoardRequest, room: Size): number {
  const heights = request.words.map(word => {
    const rows = footRows(request, keyEntries([word], request.marks), room)
    return rows.reduce((sum, { heightMm }) => sum + heightMm, 0)
  })
  return Math.max(0, ...heights)
}

function footRows(request: BoardRequest, key: readonly KeyEntry[], { widthMm }: Size) {
  const lines = keyLines(request, key, widthMm / MOST_SIDE_BY_SIDE)
  const count = Math.ceil(lines.length / MOST_SIDE_BY_SIDE)
  return Array.from({ length: count }, (_, row) => {
    const placed = lines.slice(row * MOST_SIDE_BY_SIDE, (row + 1) * MOST_SIDE_BY_SIDE)
    return { lines: placed, heightMm: Math.max(...placed.map(({ heightMm }) => heightMm)) }
  })
}

function keyFoot(request: BoardRequest, key: readonly KeyEntry[], room: Size): BoardContent {
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

/** Whether all of the key has room in the corner of a page. */
export function fitsCorner(request: BoardRequest, key: readonly KeyEntry[], room: Size): boolean {
  const { heightMm } = contentRoom(request, room, 'corner')
  const lines = keyLines(request, key, cornerWidthMm(request, room))
  return lastWithin(lines, heightMm).length === lines.length
}

/** A page of the whole key, two marks side by side; several where it has more. */
export function wholeKey(request: BoardRequest, key: readonly KeyEntry[], room: Size): readonly BoardPage[] {
  const inner = contentRoom(request, room, 'nothing')
  const lines = keyLines(request, key, inner.widthMm / 2)
  const rowMm = Math.max(...lines.map(({ heightMm }) => heightMm))
  const each = 2 * Math.max(1, Math.floor(inner.heightMm / rowMm))
  return Array.from({ length: Math.ceil(lines.length / each) }, (_, page) => {
    const shown = lines.slice(page * each, (page + 1) * each)
    return {
      heading: 'Our key',
      key: [],
      keyAt: 'nothing',
      content: {
        slots: keySlots(request, shown),
        tree: (
          <div style={{ display: 'flex', flexWrap: 'wrap', width: '100%', alignContent: 'flex-start' }}>
            {shown.map(line => (
              <div style={{ display: 'flex', width: '50%', height: mm(rowMm) }}>
                <KeyLineBox request={request} line={{ ...line, heightMm: rowMm }} />
              </div>
            ))}
          </div>
        ),
      },
    }
  })
}

/** At least the last. */
function lastWithin(lines: readonly KeyLine[], roomMm: number): readonly KeyLine[] {
  let usedMm = 0
  const tooMuch = lines.findLastIndex(({ heightMm }) => {
    usedMm += heightMm
    return usedMm > roomMm
  })
  return lines.slice(Math.min(tooMuch + 1, Math.max(0, lines.length - 1)))
}
