/** A mark's outline around one run of its letters, with what it knows of the marks that were placed before it. */
import { around, type Extent } from './letter-ink.js'
import { lettersWithin, type MarkRequest, type Part, type Placed } from './mark-parts.js'
import { outlineAir } from './outline-style.js'
import { type EdgeRoom, placeOutline } from './place-outline.js'
import { outlineStyle } from './styles.js'

export interface PlacedOutline {
  readonly placed: Placed
  readonly needed: EdgeRoom
}

export function placePartOutline(
  { span, range }: Part,
  request: MarkRequest,
  placed: readonly Placed[],
): PlacedOutline {
  const { letters, ink, sizeMm } = request
  const { start, end } = range
  const style = outlineStyle(span.mark.outline!)
  const own = lettersWithin(letters, range)
  if (style.kind === 'letters')
    return {
      placed: { span, kind: 'outline', ...range, paths: [], ...around(own)! },
      needed: { beforeMm: 0, afterMm: 0 },
    }
  const growth = ink.apartMm - outlineAir * ink.gapMm
  const away = (mark: Placed): Placed => (mark.span === span ? mark : { ...mark, ...grown(mark, growth) })
  const inside = placed.filter(other => other.start >= start && other.end <= end)
  // Where two marks share some letters, neither holding the other, the later outline passes above and below the first.
  const crossing = placed
    .filter(other => !inside.includes(other) && other.start < end && other.end > start)
    .map(other => ({ ...away(other), left: own[0]!.left, right: own[0]!.right }))
  // A sound mark is no mark of hers to be read apart from this one: what keeps strokes apart is enough.
  const apart = placed
    .filter(other => other.end <= start || other.start >= end)
    .map(other => ({ ...other, awayMm: other.span.mark.level === 'even' ? ink.gapMm : ink.apartMm }))
  const { frame, needed } = placeOutline(
    style,
    { letters: own, marks: [...inside.map(away), ...crossing], start, end },
    { outside: letters.filter(letter => !own.includes(letter)), marks: apart, ink, sizeMm },
  )
  const extent = grown(frame, ink.strokeMm / 2)
  const paths = [{ commands: style.draw(frame), strokeMm: ink.strokeMm }]
  return { placed: { span, kind: 'outline', ...range, paths, ...extent }, needed }
}

function grown({ left, right, top, bottom }: Extent, mm: number): Extent {
  return { left: left - mm, right: right + mm, top: top - mm, bottom: bottom + mm }
}
