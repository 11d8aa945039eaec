/** A mark's line on one run of its letters, with what it knows of the marks that were placed before it. */
import { type InkRules, sharedLetters } from './ink-rules.js'
import { around, type Extent, type LetterInk } from './letter-ink.js'
import type { LineStyle, MarkPath } from './line-style.js'
import { lettersWithin, type Part, type Placed, type WordOfMarks } from './mark-parts.js'
import { type MarkInTheWay, placeLine } from './place-line.js'
import type { LetterRange, MarkSpan } from './styled-mark.js'
import { lineStyle } from './styles.js'

/** @param leastTopMm it hangs no higher than this */
export function placePartLine(
  part: Part,
  request: WordOfMarks,
  placed: readonly Placed[],
  leastTopMm = -Infinity,
): Placed {
  const { span, range } = part
  const { letters, ink } = request
  const { mark } = span
  const style = lineStyle(mark.line!)
  const own = lettersWithin(letters, range)
  if (style.stands === 'through') return placedThrough(style, part, own, ink)
  const others = placed.filter(other => other.span !== span)
  const { pieces } = placeLine(
    style,
    own,
    { ...request, marks: others.map(other => inTheWay(other, part, request)) },
    {
      descenders: mark.descenders,
      even: mark.level === 'even',
      // What joins two ends starts below them: nothing may hang between.
      leastTopMm:
        span.ranges.length === 2 ? Math.max(leastTopMm, lowestUnder(own, others) + ink.apartMm) : leastTopMm,
    },
  )
  const paths = pieces.flatMap(piece => style.draw(piece, ink))
  // A sound mark is narrower than the room that it is given.
  const drawn = isEven(span) ? paths.map(polygonExtent) : pieces
  return { span, kind: 'line', ...range, paths, ...around(drawn)! }
}

/** Only the letters that say nothing are crossed. */
function placedThrough(
  style: LineStyle,
  { span, range }: Part,
  own: readonly LetterInk[],
  ink: InkRules,
): Placed {
  const struck = span.struck ?? [range]
  const crossed = struck.flatMap(each => lettersWithin(own, each))
  const paths = crossed.flatMap(letter => style.draw(letter, ink))
  return { span, kind: 'line', ...range, paths, ...(around(paths.map(polygonExtent)) ?? around(own)!) }
}

/** Sound marks stand side by side on a level of their own, each within its own letters. */
function inTheWay(other: Placed, { span, range }: Part, { ink, tallestMm }: WordOfMarks): MarkInTheWay {
  if (isEven(other.span) && isEven(span)) return { ...other, awayMm: 0 }
  if (sharesLetters(other, range)) return { ...other, awayMm: sharedLetters * ink.apartMm }
  const besides =
    other.kind === 'line' &&
    !isEven(other.span) &&
    !isEven(span) &&
    (other.end === range.start || other.start === range.end)
  if (!besides) return { ...other, awayMm: ink.apartMm }
  const bottom = Math.max(other.bottom, other.top + tallestMm)
  return { ...other, bottom, awayMm: ink.apartMm, besides }
}

function isEven({ mark }: MarkSpan): boolean {
  return mark.level === 'even'
}

function sharesLetters(other: Placed, { start, end }: LetterRange): boolean {
  return other.start < end && other.end > start
}

/** The lower edge of the lowest mark under these letters; -Infinity where there is none. */
function lowestUnder(own: readonly LetterInk[], placed: readonly Placed[]): number {
  const { left, right } = around(own)!
  const under = placed.filter(mark => mark.left < right && mark.right > left)
  return Math.max(-Infinity, ...under.map(mark => mark.bottom))
}

/** Around the corners of a path, and half its stroke. */
function polygonExtent({ commands, strokeMm = 0 }: MarkPath): Extent {
  const half = strokeMm / 2
  const x = commands.flatMap(({ values }) => values.filter((_, index) => index % 2 === 0))
  const y = commands.flatMap(({ values }) => values.filter((_, index) => index % 2 === 1))
  return {
    left: Math.min(...x) - half,
    right: Math.max(...x) + half,
    top: Math.min(...y) - half,
    bottom: Math.max(...y) + half,
  }
}
