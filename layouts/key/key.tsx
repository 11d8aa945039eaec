import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import {
  flowPages,
  type Heading,
  headingHeight,
  PageHeading,
  type Row,
  rowsHeight,
} from '../../src/pieces/faces/flow-page.js'
import { choice } from '../../src/plan/values/options.js'
import { defineLayout, type LayoutRequest, type PageFace } from '../layout.js'
import { largeKeyRows, SAMPLE_SHARE, widestSampleEm } from './large-key-rows.js'

/** The class's key: each mark on sample letters with its name, only those that the words use. */
export const key = defineLayout({
  kind: 'pages',
  name: 'key',
  summary:
    'what each mark means: a page for the wall, or several small ones for the desk; only the marks that the words use',
  options: { for: choice(['wall', 'desk'], 'wall') },
  marks: 'all',
  isKey: true,
  pages: (request, room) => (request.options.for === 'wall' ? wallKey : deskKeys)(request, room),
})

function titleOf({ plan }: LayoutRequest): string {
  return `${plan.title}: our key`
}

function forWhom({ plan, group }: LayoutRequest): string {
  return [plan.className, group?.name ?? ''].filter(part => part !== '').join(' · ')
}

/** Ems in mm; a key for the wall is read from across the room. */
const WALL = { least: 13, most: 40 } as const
const DESK_SAMPLE_MM = 7

/** As large as fills the page, so that it can be read from a distance. */
function wallKey(request: LayoutRequest, room: Size): readonly PageFace[] {
  const { type, measure } = request
  const [title, subtitle] = [titleOf(request), forWhom(request)]
  const heading: Heading = { title, subtitle, textMm: Math.max(type.textMm, type.adultTextMm * 1.5), measure }
  const least = Math.max(WALL.least, type.textMm * 1.6)
  const freeMm = room.heightMm - headingHeight(heading, room.widthMm)
  // No larger than lets the widest sample stand in its column, so that all are of one size.
  const widestMm = (room.widthMm * SAMPLE_SHARE) / widestSampleEm(request)
  const sampleMm = Math.max(least, Math.min(WALL.most, widestMm))
  const sizes = Array.from({ length: Math.floor(sampleMm - least) + 1 }, (_, index) => sampleMm - index)
  const rowsAt = (size: number) => largeKeyRows(request, { widthMm: room.widthMm, sampleMm: size })
  const rows = rowsAt(sizes.find(size => rowsHeight(rowsAt(size)) <= freeMm) ?? least)
  const spareMm = Math.max(0, freeMm - rowsHeight(rows)) / Math.max(1, rows.length)
  return flowPages({ heading, rows, room, gapMm: Math.min(spareMm, 8) }).map(face => ({
    ...face,
    kind: 'key',
    title,
  }))
}

/** As many keys as a page holds, to cut apart. */
function deskKeys(request: LayoutRequest, room: Size): readonly PageFace[] {
  const { type, measure } = request
  const [title, subtitle] = [titleOf(request), forWhom(request)]
  const heading: Heading = { title, subtitle, textMm: type.textMm, measure }
  const sampleMm = Math.max(DESK_SAMPLE_MM, type.textMm * (type.large ? 1.3 : 1))
  const key = { widthMm: room.widthMm, sampleMm }
  const headingMm = headingHeight(heading, room.widthMm)
  const keyMm = headingMm + rowsHeight(largeKeyRows(request, key))
  const copies = Math.floor((room.heightMm + CUT_MM) / (keyMm + CUT_MM))
  if (copies < 2)
    return flowPages({ heading, rows: largeKeyRows(request, key), room }).map(face => ({
      ...face,
      kind: 'key',
      title,
    }))
  const keys = Array.from({ length: copies }, (_, copy) => [
    ...(copy === 0 ? [] : [cutRow]),
    { heightMm: headingMm, tree: <PageHeading heading={heading} widthMm={room.widthMm} page="" /> },
    ...largeKeyRows(request, { ...key, prefix: `copy ${copy + 1} ` }),
  ])
  const rows: readonly Row[] = keys.flat()
  const tree = (
    <div style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%' }}>
      {rows.map(row => (
        <div style={{ display: 'flex', height: mm(row.heightMm), flexShrink: 0, width: '100%' }}>
          {row.tree}
        </div>
      ))}
    </div>
  )
  const slots = Object.assign({}, ...rows.map(row => row.slots ?? {}))
  return [{ ...room, kind: 'key', title, tree, slots }]
}

/** Room for a cut between two keys, with a line to cut along. */
const CUT_MM = 10
const cutRow: Row = {
  heightMm: CUT_MM,
  tree: (
    <div style={{ display: 'flex', width: '100%', height: '100%', flexDirection: 'column' }}>
      <div
        style={{
          display: 'flex',
          width: '100%',
          height: mm(0.25),
          marginTop: mm(CUT_MM / 2),
          backgroundColor: '#000000',
        }}
      />
    </div>
  ),
}
