import type { Size } from '../../src/geometry.js'
import { mm } from '../../src/pieces/faces/face.js'
import {
  flowPages,
  type Heading,
  headingHeight,
  headingTextMm,
  PageHeading,
  type Row,
  rowsHeight,
} from '../../src/pieces/faces/flow-page.js'
import { canBeTooNote } from '../../src/pieces/marks/can-be-too.js'
import { keyTextMm } from '../../src/pieces/parts/key-rows.js'
import { choice, option } from '../../src/plan/values/options.js'
import { defineLayout, type LayoutRequest, type PageFace } from '../layout.js'
import {
  hasBrokenNames,
  type LargeKey,
  largeKeyRows,
  SAMPLE_SHARE,
  widestSampleEm,
} from './large-key-rows.js'

/** The class's key: each mark on sample letters with its name, only those that the words use. */
export const key = defineLayout({
  kind: 'pages',
  name: 'key',
  summary:
    'what each mark means: a page for the wall, or several small ones for the desk; only the marks that the words use',
  inWeek: { day: 'lesson', given: 'once' },
  options: {
    for: option(
      'whether the key is a page for the wall or several small ones for desks',
      choice(['wall', 'desk'], 'wall'),
    ),
  },
  marks: 'all',
  isKey: true,
  pages: (request, room) => {
    const pages = (request.options.for === 'wall' ? wallKey : deskKeys)(request, room)
    const passed = canBeTooNote(request.words, request.marks)
    return pages.map((page, index) =>
      index > 0 || passed === undefined
        ? page
        : { ...page, note: [page.note ?? [], passed].flat().join(' ') },
    )
  },
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

/** In print so large that the heading would be a good part of the page, it is as short as it can be. */
function wallHeading(request: LayoutRequest, room: Size): Heading {
  const { type, measure, plan, group } = request
  const words = { textMm: Math.max(type.textMm, type.adultTextMm * 1.5), measure }
  const heading = { title: titleOf(request), subtitle: forWhom(request), ...words }
  if (headingHeight(heading, room.widthMm) <= room.heightMm * MOST_FOR_HEADING) return heading
  return { title: 'Our key', subtitle: group?.name ?? plan.className ?? '', ...words }
}

/** Of a page. */
const MOST_FOR_HEADING = 0.3

/** As large as fills the page, so that it can be read from a distance. */
function wallKey(request: LayoutRequest, room: Size): readonly PageFace[] {
  const { type } = request
  const title = titleOf(request)
  const heading = wallHeading(request, room)
  const least = Math.max(WALL.least, keyTextMm(type.textMm, room.widthMm) * 1.6)
  const freeMm = room.heightMm - headingHeight(heading, room.widthMm)
  // No larger than lets the widest sample stand in its column, so that all are of one size.
  const widestMm = (room.widthMm * SAMPLE_SHARE) / widestSampleEm(request)
  const sampleMm = Math.max(least, Math.min(WALL.most, widestMm))
  const sizes = Array.from({ length: Math.floor(sampleMm - least) + 1 }, (_, index) => sampleMm - index)
  const rowsAt = (size: number) =>
    largeKeyRows(request, { widthMm: room.widthMm, sampleMm: size, mostMm: freeMm - 1 })
  const rows = rowsAt(sizes.find(size => rowsHeight(rowsAt(size)) <= freeMm) ?? least)
  const spareMm = Math.max(0, freeMm - rowsHeight(rows)) / Math.max(1, rows.length)
  return flowPages({ heading, rows, room, gapMm: Math.min(spareMm, 8) }).map(face => ({
    ...face,
    kind: 'key',
    title,
  }))
}

/** As many keys as a page holds, side by side and one above another, to cut apart; one alone is as large as its page. */
function deskKeys(request: LayoutRequest, room: Size): readonly PageFace[] {
  const ways = DESK_COLUMNS.map(columns =>
    deskKeyFor(request, (room.widthMm - (columns - 1) * CUT_MM) / columns),
  )
  const many = ways.map((key, index) => {
    const [columns, rows] = [index + 1, Math.floor((room.heightMm + CUT_MM) / (key.heightMm + CUT_MM))]
    return { key, columns, rows: key.broken && columns > 1 ? 0 : rows }
  })
  const best = many.reduce((most, way) => (way.columns * way.rows > most.columns * most.rows ? way : most))
  const copies = best.columns * best.rows
  if (copies < 2) return wallKey(request, room)
  const page = keysOnPage(request, best)
  const note = `${copies} keys to a page, to cut apart: print as many pages as the class needs.`
  return [{ ...room, kind: 'key', title: titleOf(request), note, ...page }]
}

/** More than this many side by side would be too narrow for a mark and its name. */
const DESK_COLUMNS = [1, 2, 3] as const

interface DeskKey {
  readonly heading: Heading
  readonly size: LargeKey
  readonly heightMm: number
  /** Whether a name has to stand below its sample, or a word of the heading to be broken. */
  readonly broken: boolean
}

function deskKeyFor(request: LayoutRequest, widthMm: number): DeskKey {
  const { type, measure } = request
  const textMm = keyTextMm(type.textMm, widthMm)
  const heading: Heading = { title: titleOf(request), subtitle: forWhom(request), textMm, measure }
  const size = { widthMm, sampleMm: Math.max(DESK_SAMPLE_MM, textMm * (type.large ? 1.3 : 1)) }
  return {
    heading,
    size,
    heightMm: headingHeight(heading, widthMm) + rowsHeight(largeKeyRows(request, size)),
    broken: headingTextMm(type, widthMm) < type.textMm || hasBrokenNames(request, size),
  }
}

/** The keys of a page, each followed by a cut where another stands beside or below it. */
function keysOnPage(
  request: LayoutRequest,
  { key, columns, rows }: { readonly key: DeskKey; readonly columns: number; readonly rows: number },
): Pick<PageFace, 'tree' | 'slots'> {
  const { heading, size, heightMm } = key
  const keys = Array.from({ length: columns * rows }, (_, copy) =>
    largeKeyRows(request, { ...size, prefix: `copy ${copy + 1} ` }),
  )
  const oneKey = (parts: readonly Row[]) => (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: mm(size.widthMm),
        height: mm(heightMm),
        flexShrink: 0,
      }}
    >
      <PageHeading heading={heading} widthMm={size.widthMm} page="" />
      {parts.map(row => (
        <div style={{ display: 'flex', height: mm(row.heightMm), flexShrink: 0, width: '100%' }}>
          {row.tree}
        </div>
      ))}
    </div>
  )
  const tree = (
    <div style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%' }}>
      {Array.from({ length: rows }, (_, row) => (
        <div style={{ display: 'flex', flexDirection: 'column', width: '100%', flexShrink: 0 }}>
          {row === 0 ? null : <Cut level />}
          <div style={{ display: 'flex', width: '100%', flexShrink: 0 }}>
            {keys
              .slice(row * columns, (row + 1) * columns)
              .flatMap((parts, column) => [...(column === 0 ? [] : [<Cut level={false} />]), oneKey(parts)])}
          </div>
        </div>
      ))}
    </div>
  )
  return { tree, slots: Object.assign({}, ...keys.flat().map(row => row.slots ?? {})) }
}

/** Room for a cut between two keys, with a line to cut along. */
const CUT_MM = 10

function Cut({ level }: { readonly level: boolean }) {
  const [long, across] = level ? (['width', 'height'] as const) : (['height', 'width'] as const)
  const middle = level ? { marginTop: mm(CUT_MM / 2) } : { marginLeft: mm(CUT_MM / 2) }
  return (
    <div style={{ display: 'flex', [long]: '100%', [across]: mm(CUT_MM), flexShrink: 0 }}>
      <div
        style={{ display: 'flex', [long]: '100%', [across]: mm(0.25), ...middle, backgroundColor: '#000000' }}
      />
    </div>
  )
}
