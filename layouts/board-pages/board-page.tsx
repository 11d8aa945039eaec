/** A page for the board: what to look for, what it is about, and the key as far as it has grown. */
import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { KeyEntry } from '../../src/pieces/marks/key-entries.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { PageFace } from '../layout.js'
import {
  type Board,
  type BoardContent,
  KeyLineBox,
  keyCorner,
  keyFoot,
  keyLines,
  keySlots,
  lastWithin,
} from './board-key.js'

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

/** Of the page's width. */
const KEY_GAP_SHARE = 0.02
/** Of the least em. */
const HEADING = 1.25

/** Room for the content of a page with a heading, beside a key or without one. */
export function contentRoom(request: Board, room: Size, keyAt: KeyPlace): Size {
  return {
    widthMm:
      keyAt === 'corner' ? room.widthMm * (1 - KEY_GAP_SHARE) - request.keySizes.cornerMm : room.widthMm,
    heightMm: room.heightMm - headingMm(request) - (keyAt === 'foot' ? request.keySizes.footMm : 0),
  }
}

/** Two lines, so that what stands below has the same place on every page. */
function headingMm({ type }: Board): number {
  return linesHeight(2, type.textMm * HEADING)
}

export function boardFace(
  request: Board,
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
      : keyCorner(request, key, { widthMm: request.keySizes.cornerMm, heightMm: inner.heightMm })
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

/** Whether all of the key has room in the corner of a page. */
export function fitsCorner(request: Board, key: readonly KeyEntry[], room: Size): boolean {
  const { heightMm } = contentRoom(request, room, 'corner')
  const lines = keyLines(request, key, request.keySizes.cornerMm)
  return lastWithin(lines, heightMm).length === lines.length
}

/** A page of the whole key, two marks side by side; several where it has more. */
export function wholeKey(request: Board, key: readonly KeyEntry[], room: Size): readonly BoardPage[] {
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
