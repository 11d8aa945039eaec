import { around, type Extent } from './letter-ink.js'
import type { MarkPath } from './line-style.js'
import { lettersWithin, type MarkRequest, type Part, type Placed, type WordOfMarks } from './mark-parts.js'
import { placeLink } from './place-link.js'
import { placePartLine } from './place-part-line.js'
import { placePartOutline } from './place-part-outline.js'
import type { MarkSpan } from './styled-mark.js'
import { lineStyle } from './styles.js'

export type { MarkRequest } from './mark-parts.js'

/** A mark where it stands, in mm from the pen's start and the baseline. */
export interface DrawnMark extends Extent {
  readonly span: MarkSpan
  readonly paths: readonly MarkPath[]
}

export interface DrawnMarks {
  readonly marks: readonly DrawnMark[]
  /** What has to be added before the letter at each text index, in mm, for every outline to keep off its neighbours. */
  readonly neededMm: ReadonlyMap<number, number>
}

/**
 * Places the marks of one word from its ink. Shorter spans come first and stand nearest the letters; a line goes
 * below what is in its way, an outline encloses the marks that stand within it.
 */
export function placeMarks(marking: MarkRequest): DrawnMarks {
  const { spans, letters } = marking
  const parts = partsOf(spans).filter(({ range }) => lettersWithin(letters, range).length > 0)
  const request = { ...marking, tallestMm: tallestLine(parts, marking) }
  const placed: Placed[] = []
  const neededMm = new Map<number, number>()
  const need = (index: number, mm: number): void => {
    if (mm > 0) neededMm.set(index, Math.max(mm, neededMm.get(index) ?? 0))
  }
  parts.forEach((part, index) => {
    if (part.kind === 'line') {
      placed.push(...placeLevel(part, request, placed))
    } else {
      const outline = placePartOutline(part, request, placed)
      placed.push(outline.placed)
      need(part.range.start, outline.needed.beforeMm)
      need(part.range.end, outline.needed.afterMm)
    }
    const isLast = !parts.slice(index + 1).some(later => later.span === part.span)
    if (isLast && part.span.ranges.length === 2) placed.push(...placePartLink(part.span, request, placed))
  })
  return { marks: spans.flatMap(span => gather(span, placed)), neededMm }
}

function partsOf(spans: readonly MarkSpan[]): readonly Part[] {
  const parts = spans.flatMap(span => {
    // Sound marks come first, so that all of a word are on one level.
    const reach = span.mark.level === 'even' ? 0 : span.ranges.at(-1)!.end - span.ranges[0]!.start
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

/** The two lines of a split pattern hang on one level, the lower one's. */
function placeLevel(part: Part, request: WordOfMarks, placed: Placed[]): readonly Placed[] {
  const { span } = part
  const first = placed.findIndex(other => other.span === span && other.kind === 'line')
  const line = placePartLine(part, request, placed, placed[first]?.top)
  if (first < 0 || placed[first]!.top >= line.top - 0.01) return [line]
  const [{ start, end }] = placed.splice(first, 1) as [Placed]
  const again: Part = { ...part, range: { start, end } }
  return [placePartLine(again, request, placed, line.top), line]
}

function tallestLine(parts: readonly Part[], { letters, ink }: MarkRequest): number {
  const heights = parts
    .filter(({ kind, span }) => kind === 'line' && span.mark.level !== 'even')
    .map(({ span, range }) => {
      const { left, right } = around(lettersWithin(letters, range))!
      return lineStyle(span.mark.line!).heightMm(ink, right - left)
    })
  return Math.max(0, ...heights)
}

/** What joins the two ends of a split pattern; nothing where one end has no ink. */
function placePartLink(span: MarkSpan, request: MarkRequest, placed: readonly Placed[]): readonly Placed[] {
  const [from, to] = span.ranges.map(range =>
    around(placed.filter(part => part.span === span && part.start === range.start)),
  )
  if (from === undefined || to === undefined) return []
  const marks = placed.filter(part => part.span !== span)
  const { commands, ...extent } = placeLink([from, to], {
    ...request,
    marks,
    shape: span.mark.link ?? 'bracket',
  })
  const range = { start: span.ranges[0].start, end: span.ranges.at(-1)!.end }
  const paths = [{ commands, strokeMm: request.ink.strokeMm, square: span.mark.link !== 'arc' }]
  return [{ ...extent, ...range, span, kind: 'link', paths }]
}

function gather(span: MarkSpan, placed: readonly Placed[]): readonly DrawnMark[] {
  const mine = placed.filter(part => part.span === span)
  const extent = around(mine)
  return extent === undefined ? [] : [{ span, paths: mine.flatMap(({ paths }) => paths), ...extent }]
}
