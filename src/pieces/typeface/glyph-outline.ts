import { lazily } from '../../lazily.js'

/**
 * A glyph's outline and the ink it lays down, in em, y growing downwards from the baseline.
 * Marks are placed from `rows`: what ink stands at which height.
 */
export interface GlyphOutline {
  readonly commands: readonly PathCommand[]
  readonly hasInk: boolean
  /** Undefined where the glyph has none (a space). */
  readonly ink: GlyphInk | undefined
}

export interface PathCommand {
  readonly type: 'M' | 'L' | 'Q' | 'C' | 'Z'
  readonly values: readonly number[]
}

export interface GlyphInk {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  /** From `firstRow` down, each `rowHeightEm` high: leftmost and rightmost ink that touches the row. */
  readonly rows: readonly InkRow[]
  /** How many they are, known without them. */
  readonly rowCount: number
  /** Index of the first row; row n spans from n · `rowHeightEm` to (n + 1) · `rowHeightEm`. */
  readonly firstRow: number
}

/** Infinity and -Infinity where a row holds no ink. */
export interface InkRow {
  readonly left: number
  readonly right: number
}

export const rowHeightEm = 1 / 128

/**
 * `read` must give commands in em, y down. They are read when somebody asks for them, and ink is looked for only then, its rows
 * again only then: text that is measured needs none of it, of the letters of running text nobody asks for ink, and of those that
 * give a typeface its heights nobody asks for rows.
 */
export function readOutline(read: () => readonly PathCommand[]): GlyphOutline {
  const commands = lazily(read)
  const hasInk = () => commands().some(({ type }) => type !== 'M')
  const ink = lazily(() => (hasInk() ? inkOf(flatten(commands())) : undefined))
  return {
    get commands() {
      return commands()
    },
    get hasInk() {
      return hasInk()
    },
    get ink() {
      return ink()
    },
  }
}

function inkOf(segments: readonly Segment[]): GlyphInk {
  let left = Infinity
  let right = -Infinity
  let top = Infinity
  let bottom = -Infinity
  for (const segment of segments) {
    left = Math.min(left, segment[0], segment[2])
    right = Math.max(right, segment[0], segment[2])
    top = Math.min(top, segment[1], segment[3])
    bottom = Math.max(bottom, segment[1], segment[3])
  }
  const firstRow = Math.floor(top / rowHeightEm)
  const rowCount = Math.floor(bottom / rowHeightEm) - firstRow + 1
  let rows: readonly InkRow[] | undefined
  return {
    left,
    right,
    top,
    bottom,
    firstRow,
    rowCount,
    get rows() {
      rows ??= rowsOf(segments, firstRow, rowCount)
      return rows
    },
  }
}

type Segment = readonly [x1: number, y1: number, x2: number, y2: number]

function rowsOf(segments: readonly Segment[], firstRow: number, count: number): readonly InkRow[] {
  const rows = Array.from({ length: count }, () => ({ left: Infinity, right: -Infinity }))
  for (const segment of segments) addSegment(rows, firstRow, segment)
  return rows
}

/** Widens every row that the segment passes by the piece of the segment that lies in it. */
function addSegment(rows: { left: number; right: number }[], firstRow: number, segment: Segment): void {
  const [x1, y1, x2, y2] = segment
  const upper = Math.min(y1, y2)
  const lower = Math.max(y1, y2)
  const from = Math.floor(upper / rowHeightEm)
  const to = Math.floor(lower / rowHeightEm)
  const xAt = (y: number): number => (y1 === y2 ? x1 : x1 + ((y - y1) / (y2 - y1)) * (x2 - x1))
  for (let row = from; row <= to; row++) {
    const start = from === to ? x1 : xAt(Math.max(upper, row * rowHeightEm))
    const end = from === to ? x2 : xAt(Math.min(lower, (row + 1) * rowHeightEm))
    const target = rows[row - firstRow]!
    target.left = Math.min(target.left, start, end)
    target.right = Math.max(target.right, start, end)
  }
}

/** Straight pieces of the outline; eight a curve keep within a thousandth of an em on the bundled typefaces. */
const piecesPerCurve = 8

/** The outline as straight pieces, each `[fromX, fromY, toX, toY]`; contours are closed. */
export function flatten(commands: readonly PathCommand[]): readonly Segment[] {
  const segments: Segment[] = []
  let x = 0
  let y = 0
  let startX = 0
  let startY = 0
  const lineTo = (toX: number, toY: number): void => {
    segments.push([x, y, toX, toY])
    x = toX
    y = toY
  }
  for (const { type, values } of commands) {
    const a = values[0] ?? 0
    const b = values[1] ?? 0
    const c = values[2] ?? 0
    const d = values[3] ?? 0
    const e = values[4] ?? 0
    const f = values[5] ?? 0
    const fromX = x
    const fromY = y
    switch (type) {
      case 'M':
        x = startX = a
        y = startY = b
        break
      case 'L':
        lineTo(a, b)
        break
      case 'Q':
        for (const t of steps) lineTo(quadratic(fromX, a, c, t), quadratic(fromY, b, d, t))
        break
      case 'C':
        for (const t of steps) lineTo(cubic(fromX, a, c, e, t), cubic(fromY, b, d, f, t))
        break
      case 'Z':
        lineTo(startX, startY)
        break
    }
  }
  return segments
}

const steps = Array.from({ length: piecesPerCurve }, (_, index) => (index + 1) / piecesPerCurve)

function quadratic(p0: number, p1: number, p2: number, t: number): number {
  return (1 - t) ** 2 * p0 + 2 * (1 - t) * t * p1 + t ** 2 * p2
}

function cubic(p0: number, p1: number, p2: number, p3: number, t: number): number {
  return (1 - t) ** 3 * p0 + 3 * (1 - t) ** 2 * t * p1 + 3 * (1 - t) * t ** 2 * p2 + t ** 3 * p3
}
