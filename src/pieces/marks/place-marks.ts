import type { InkRules } from './ink-rules.js'
import { around, type Extent, type LetterInk } from './letter-ink.js'
import type { MarkPath } from './line-style.js'
import { placeLine } from './place-line.js'
import { placeLink } from './place-link.js'
import { placeOutline } from './place-outline.js'
import type { LetterRange, MarkSpan } from './styled-mark.js'
import { lineStyle, outlineStyle } from './styles.js'

export interface MarkRequest {
  /** In reading order. */
  readonly letters: readonly LetterInk[]
  readonly spans: readonly MarkSpan[]
  readonly ink: InkRules
  readonly sizeMm: number
  readonly descenderMm: number
}

/** A mark where it stands, in mm from the pen's start and the baseline. */
export interface DrawnMark extends Extent {
  readonly span: MarkSpan
  readonly paths: readonly MarkPath[]
}

export interface DrawnMarks {
  readonly marks: readonly DrawnMark[]
  /** What has to be added between all letters, in mm, before every outline keeps off its neighbours; 0 when done. */
  readonly neededMm: number
}

/** One line or outline on one run of letters; a mark may have both, a split pattern has each twice. */
interface Part {
  readonly span: MarkSpan
  readonly range: LetterRange
  readonly kind: 'line' | 'outline'
  /** Letters from the first to the last of the span: shorter spans are placed first, nearer to the letters. */
  readonly reach: number
}

/** What has been placed for a span: a part of its mark, or the link between its ends. */
interface Placed extends Extent, LetterRange {
  readonly span: MarkSpan
  readonly paths: readonly MarkPath[]
}

/**
 * Places the marks of one word from its ink. Shorter spans come first and stand nearest the letters; a line goes
 * below what is in its way, an outline encloses the marks that stand within it.
 */
export function placeMarks(request: MarkRequest): DrawnMarks {
  const { spans, letters } = request
  const parts = partsOf(spans).filter(({ range }) => lettersWithin(letters, range).length > 0)
  const placed: Placed[] = []
  let neededMm = 0
  parts.forEach((part, index) => {
    if (part.kind === 'line') {
      placed.push(placePartLine(part, request, placed, parts))
    } else {
      const outline = placePartOutline(part, request, placed)
      placed.push(outline.placed)
      neededMm = Math.max(neededMm, outline.neededMm)
    }
    const isLast = !parts.slice(index + 1).some(later => later.span === part.span)
    if (isLast && part.span.ranges.length === 2) placed.push(...placePartLink(part.span, request, placed))
  })
  return { marks: spans.flatMap(span => gather(span, placed)), neededMm }
}

function partsOf(spans: readonly MarkSpan[]): readonly Part[] {
  const parts = spans.flatMap(span => {
    const reach = span.ranges.at(-1)!.end - span.ranges[0]!.start
    const kinds = (['line', 'outline'] as const).filter(kind => span.mark[kind] !== undefined)
    return kinds.flatMap(kind => span.ranges.map((range): Part => ({ span, range, kind, reach })))
  })
  return parts.sort(
    (a, b) =>
      a.reach - b.reach ||
      Number(a.kind === 'outline') - Number(b.kind === 'outline') ||
      a.span.mark.index - b.span.mark.index ||
      a.range.start - b.range.start,
  )
}

function lettersWithin(letters: readonly LetterInk[], { start, end }: LetterRange): readonly LetterInk[] {
  return letters.filter(letter => letter.start < end && letter.end > start)
}

function placePartLine(
  { span, range }: Part,
  request: MarkRequest,
  placed: readonly Placed[],
  parts: readonly Part[],
): Placed {
  const lined = parts.filter(({ kind }) => kind === 'line')
  const { letters, ink } = request
  const { mark } = span
  const style = lineStyle(mark.line!)
  const own = lettersWithin(letters, range)
  const wishes = {
    descenders: mark.descenders,
    even: mark.level === 'even',
    besides: {
      before: lined.some(other => other.span !== span && other.range.end === range.start),
      after: lined.some(other => other.span !== span && other.range.start === range.end),
    },
    // The arc that joins two ends starts below them: nothing may hang between.
    ...(span.ranges.length === 2 ? { belowMm: lowestUnder(own, placed) } : {}),
  }
  const pieces =
    style.stands === 'through' ? own : placeLine(style, own, { ...request, marks: placed }, wishes).pieces
  const paths = pieces.flatMap(piece => style.draw(piece, ink))
  return { span, ...range, paths, ...around(style.stands === 'through' ? paths.map(polygonExtent) : pieces)! }
}

/** The lower edge of the lowest mark under these letters; -Infinity where there is none. */
function lowestUnder(own: readonly LetterInk[], placed: readonly Placed[]): number {
  const { left, right } = around(own)!
  const under = placed.filter(mark => mark.left < right && mark.right > left)
  return Math.max(-Infinity, ...under.map(mark => mark.bottom))
}

/** Around the corners of a path of straight pieces. */
function polygonExtent({ commands }: MarkPath): Extent {
  const x = commands.flatMap(({ values }) => values.filter((_, index) => index % 2 === 0))
  const y = commands.flatMap(({ values }) => values.filter((_, index) => index % 2 === 1))
  return { left: Math.min(...x), right: Math.max(...x), top: Math.min(...y), bottom: Math.max(...y) }
}

function placePartOutline(
  { span, range }: Part,
  request: MarkRequest,
  placed: readonly Placed[],
): { readonly placed: Placed; readonly neededMm: number } {
  const { letters, ink, sizeMm } = request
  const { start, end } = range
  const style = outlineStyle(span.mark.outline!)
  const own = lettersWithin(letters, range)
  if (style.kind === 'letters') return { placed: { span, ...range, paths: [], ...around(own)! }, neededMm: 0 }
  const inside = placed.filter(other => other.start >= start && other.end <= end)
  // Where two marks share some letters, neither holding the other, the later outline passes above and below the first.
  const crossing = placed
    .filter(other => !inside.includes(other) && other.start < end && other.end > start)
    .map(other => ({ ...other, left: own[0]!.left, right: own[0]!.right }))
  const apart = placed.filter(other => other.end <= start || other.start >= end)
  const { frame, neededMm } = placeOutline(
    style,
    { letters: own, marks: [...inside, ...crossing], start, end },
    { outside: letters.filter(letter => !own.includes(letter)), marks: apart, ink, sizeMm },
  )
  const half = ink.strokeMm / 2
  const extent = {
    left: frame.left - half,
    right: frame.right + half,
    top: frame.top - half,
    bottom: frame.bottom + half,
  }
  const paths = [{ commands: style.draw(frame), strokeMm: ink.strokeMm }]
  return { placed: { span, ...range, paths, ...extent }, neededMm }
}

/** The arc between the two ends of a split pattern; none where one end has no ink. */
function placePartLink(span: MarkSpan, request: MarkRequest, placed: readonly Placed[]): readonly Placed[] {
  const [from, to] = span.ranges.map(range =>
    around(placed.filter(part => part.span === span && part.start === range.start)),
  )
  if (from === undefined || to === undefined) return []
  const marks = placed.filter(part => part.span !== span)
  const { commands, ...extent } = placeLink([from, to], { ...request, marks })
  const range = { start: span.ranges[0].start, end: span.ranges.at(-1)!.end }
  return [{ ...extent, ...range, span, paths: [{ commands, strokeMm: request.ink.strokeMm }] }]
}

function gather(span: MarkSpan, placed: readonly Placed[]): readonly DrawnMark[] {
  const mine = placed.filter(part => part.span === span)
  const extent = around(mine)
  return extent === undefined ? [] : [{ span, paths: mine.flatMap(({ paths }) => paths), ...extent }]
}
