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

interface PlacedPart extends Extent, LetterRange {
  readonly part: Part
  readonly paths: readonly MarkPath[]
}

/**
 * Places the marks of one word from its ink. Shorter spans come first and stand nearest the letters; a line goes
 * below what is in its way, an outline encloses the marks that stand within it.
 */
export function placeMarks(request: MarkRequest): DrawnMarks {
  const { spans } = request
  const placed: PlacedPart[] = []
  const links: (Extent & { readonly span: MarkSpan; readonly paths: readonly MarkPath[] })[] = []
  let neededMm = 0
  for (const part of partsOf(spans)) {
    if (lettersWithin(request.letters, part.range).length === 0) continue
    const others = [...placed, ...links]
    if (part.kind === 'line') {
      placed.push(linePart(part, request, others))
    } else {
      const outline = outlinePart(part, request, placed, others)
      placed.push(outline.placed)
      neededMm = Math.max(neededMm, outline.neededMm)
    }
    const ends = placed.filter(({ part: { span } }) => span === part.span)
    const isLast = ends.length === partsOf([part.span]).length
    if (isLast && part.span.ranges.length === 2) {
      const linked = part.span.ranges.map(range => around(ends.filter(end => end.start === range.start)))
      if (linked[0] === undefined || linked[1] === undefined) continue
      const { commands, ...extent } = placeLink([linked[0], linked[1]], {
        ...request,
        marks: [...placed, ...links].filter(other => !ends.includes(other as PlacedPart)),
      })
      links.push({ ...extent, span: part.span, paths: [{ commands, strokeMm: request.ink.strokeMm }] })
    }
  }
  return { marks: spans.flatMap(span => gather(span, placed, links)), neededMm }
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

function linePart(part: Part, request: MarkRequest, others: readonly Extent[]): PlacedPart {
  const { letters, ink } = request
  const { mark } = part.span
  const style = lineStyle(mark.line!)
  const own = lettersWithin(letters, part.range)
  const { pieces } = placeLine(style, own, { ...request, marks: others }, mark.descenders)
  const paths = pieces.flatMap(piece => style.draw(piece, ink))
  return { part, ...part.range, paths, ...around(pieces)! }
}

function outlinePart(
  part: Part,
  request: MarkRequest,
  placed: readonly PlacedPart[],
  others: readonly Extent[],
): { readonly placed: PlacedPart; readonly neededMm: number } {
  const { letters, ink, sizeMm } = request
  const { start, end } = part.range
  const style = outlineStyle(part.span.mark.outline!)
  const own = lettersWithin(letters, part.range)
  const inside = placed.filter(other => other.start >= start && other.end <= end)
  // Where two outlines share some letters, neither holding the other, the later one passes above and below the first.
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
  void others
  return { placed: { part, start, end, paths, ...extent }, neededMm }
}

function gather(
  span: MarkSpan,
  placed: readonly PlacedPart[],
  links: readonly (Extent & { readonly span: MarkSpan; readonly paths: readonly MarkPath[] })[],
): readonly DrawnMark[] {
  const mine = [
    ...placed.filter(({ part }) => part.span === span),
    ...links.filter(link => link.span === span),
  ]
  const extent = around(mine)
  return extent === undefined ? [] : [{ span, paths: mine.flatMap(({ paths }) => paths), ...extent }]
}
