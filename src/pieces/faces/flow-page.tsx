import type { JSXNode } from 'satori/jsx'
import { pointsToMm, type Size } from '../../geometry.js'
import { WritingLine } from '../parts/rules.js'
import type { Band, BandCells } from '../piece.js'
import { breakLines, linesHeight, type TextMeasure, type TextStyle } from '../text/break-lines.js'
import { Lines } from '../text/lines.js'
import { evenPages, type FlowingRow } from './even-pages.js'
import { type Face, mm, type SlotContent } from './face.js'

/** A row of a list: its height is fixed before it is laid out, so that a page can be filled without trying. */
export interface Row extends FlowingRow {
  readonly tree: JSXNode
  readonly slots?: Readonly<Record<string, SlotContent>>
  /** Of a row of a table. */
  readonly cells?: BandCells
}

export interface Heading {
  readonly title: string
  readonly subtitle: string
  /** The em of running text; the title is larger. */
  readonly textMm: number
  readonly measure: TextMeasure
  /** Room kept for it even where it needs less, so that two lists stand line for line. */
  readonly leastHeightMm?: number
  /** A line to write on behind the subtitle, for a name; in large print both stand beside a title that leaves them room. */
  readonly lineAfterSubtitle?: LinePlace
}

type LinePlace = 'below the title' | 'beside the title'

export function rowsHeight(rows: readonly Row[]): number {
  return rows.reduce((sum, row) => sum + row.heightMm, 0)
}

/**
 * Fills pages with rows from the top, each page under the same heading; a row never stands over two pages. Rows that take
 * several pages are shared out evenly, so that the last page is no remnant.
 */
export function flowPages({
  heading,
  rows,
  after = [],
  room,
  gapMm = 0,
}: {
  readonly heading: Heading
  readonly rows: readonly Row[]
  /** What stands below the rows, which share their pages evenly before it is put to the last, or on a page of its own. */
  readonly after?: readonly Row[]
  readonly room: Size
  readonly gapMm?: number
}): readonly Face[] {
  const headingMm = headingHeight(heading, room.widthMm)
  const pages = pagesWith(rows, after, { roomMm: room.heightMm - headingMm, gapMm })
  return pages.map((page, index) => ({
    ...room,
    tree: (
      <div
        style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%', gap: mm(gapMm) }}
      >
        <PageHeading
          heading={heading}
          widthMm={room.widthMm}
          page={pages.length > 1 ? `${index + 1} of ${pages.length}` : ''}
        />
        {page.map(row => (
          <div
            data-apart={{ widthMm: room.widthMm, heightMm: row.heightMm }}
            style={{ display: 'flex', height: mm(row.heightMm), flexShrink: 0, width: '100%' }}
          >
            {row.tree}
          </div>
        ))}
      </div>
    ),
    slots: Object.assign({}, ...page.map(row => row.slots ?? {})) as Record<string, SlotContent>,
    bands: bandsOf(page, headingMm, gapMm),
  }))
}

/** Of a page. */
const LEAST_ALONE = 0.36

/** The rows shared out evenly without regard to what comes after them, unless that takes a page more than all together. */
function pagesWith(
  rows: readonly Row[],
  after: readonly Row[],
  room: { readonly roomMm: number; readonly gapMm: number },
): readonly (readonly Row[])[] {
  const together = evenPages([...rows, ...after], room)
  if (rows.length === 0 || after.length === 0) return together
  const alone = evenPages(rows, room)
  const last = [...alone.at(-1)!, ...after]
  const fits = rowsHeight(last) + (last.length - 1) * room.gapMm <= room.roomMm
  // A page of its own is for what fills a good part of it: a remnant has rows to keep it company.
  if (!fits && rowsHeight(after) < room.roomMm * LEAST_ALONE) return together
  const apart = fits ? [...alone.slice(0, -1), last] : [...alone, ...evenPages(after, room)]
  return apart.length > together.length ? together : apart
}

function bandsOf(rows: readonly Row[], headingMm: number, gapMm: number): readonly Band[] {
  let yMm = headingMm
  return rows.map(({ heightMm, cells }) => {
    const topMm = yMm + gapMm
    yMm = topMm + heightMm
    return { yMm: topMm, heightMm, ...(cells === undefined ? {} : { cells }) }
  })
}

const TITLE_SCALE = 1.6
/** A title no smaller than the text need not be larger than this (24 pt), lest it leave no room on a small page. */
const LARGE_TITLE_MM = pointsToMm(24)

function titleSizeMm(textMm: number): number {
  return Math.max(textMm, Math.min(textMm * TITLE_SCALE, LARGE_TITLE_MM))
}

/** Of the width, for the subtitle; the rest is for the page's number or the line to write on. */
const SUBTITLE_SHARE = 0.8

/** Of the width of a page: a heading in larger print would leave no room for what stands under it. */
const HEADING_TEXT_SHARE = 1 / 11

/** The em of the subtitle on a page this wide; the title is no smaller. */
export function headingTextMm({ textMm }: Pick<Heading, 'textMm'>, widthMm: number): number {
  return Math.min(textMm, widthMm * HEADING_TEXT_SHARE)
}

/** Whatever the title's length, it stays on the page: it takes as many lines as it needs. */
function headingLines({ title, subtitle, measure, ...heading }: Heading, widthMm: number) {
  const textMm = headingTextMm(heading, widthMm)
  const titleStyle: TextStyle = { sizeMm: titleSizeMm(textMm), weight: 700 }
  const subtitleStyle: TextStyle = { sizeMm: textMm, color: '#404040' }
  const titleLines = breakLines(title, widthMm, titleStyle, measure)
  const besideMm = widthMm - Math.max(...titleLines.map(line => measure(line, titleStyle.sizeMm, 700)))
  const needMm = measure(subtitle, textMm) + NAME_LINE_MM + measure('9 of 9', textMm) + 4 * SPACE_MM
  return {
    titleStyle,
    subtitleStyle,
    titleLines,
    subtitleLines: breakLines(subtitle, widthMm * SUBTITLE_SHARE, subtitleStyle, measure),
    isOneRow:
      heading.lineAfterSubtitle === 'beside the title' && titleLines.length === 1 && needMm <= besideMm,
  }
}

/** A line to write a name on is no shorter where it stands beside the title. */
const NAME_LINE_MM = 45
/** Between the things of a row. */
const SPACE_MM = 2

export function headingHeight(heading: Heading, widthMm: number): number {
  const { titleLines, titleStyle, subtitleLines, subtitleStyle, isOneRow } = headingLines(heading, widthMm)
  const titleMm = linesHeight(Math.max(1, titleLines.length), titleStyle.sizeMm)
  const subtitleMm = linesHeight(Math.max(1, subtitleLines.length), subtitleStyle.sizeMm)
  const ownMm = isOneRow ? titleMm + heading.textMm / 2 : titleMm + subtitleMm + heading.textMm
  return Math.max(heading.leastHeightMm ?? 0, ownMm)
}

const besideTitle = { flexGrow: 1, marginLeft: mm(2 * SPACE_MM), alignItems: 'flex-end' } as const

/** Title and subtitle of a page, in a box as high as `headingHeight` says. */
export function PageHeading({
  heading,
  widthMm,
  page,
}: {
  readonly heading: Heading
  readonly widthMm: number
  readonly page: string
}) {
  const { textMm, lineAfterSubtitle } = heading
  const { titleLines, titleStyle, subtitleLines, subtitleStyle, isOneRow } = headingLines(heading, widthMm)
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: isOneRow ? 'row' : 'column',
        height: mm(headingHeight(heading, widthMm)),
        flexShrink: 0,
      }}
    >
      <Lines lines={titleLines} style={titleStyle} />
      <div
        style={{
          display: 'flex',
          justifyContent: 'space-between',
          ...(isOneRow ? { ...besideTitle, height: mm(linesHeight(1, titleStyle.sizeMm)) } : {}),
        }}
      >
        <Lines lines={subtitleLines} style={subtitleStyle} />
        {lineAfterSubtitle === undefined ? null : (
          <div
            style={{
              display: 'flex',
              ...(isOneRow ? { flexGrow: 1 } : { width: mm(textMm * 20) }),
              height: mm(textMm * 1.2),
              alignItems: 'flex-end',
              marginLeft: mm(SPACE_MM),
              marginRight: page === '' ? (isOneRow ? 0 : 'auto') : mm(SPACE_MM),
            }}
          >
            <WritingLine />
          </div>
        )}
        <Lines lines={[page]} style={subtitleStyle} />
      </div>
    </div>
  )
}
