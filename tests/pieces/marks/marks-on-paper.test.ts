import { describe, expect, it } from 'vitest'
import { bundledTypefaces } from '../../../fonts/index.js'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { pathTextAt } from '../../../src/pieces/art/path-text.js'
import { inkRulesFor } from '../../../src/pieces/marks/ink-rules.js'
import type { MarkSpan, StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { lineStyle, lineStyles, outlineStyles } from '../../../src/pieces/marks/styles.js'
import type { PathShape } from '../../../src/pieces/piece.js'
import { leastEmMm } from '../../../src/pieces/text/type-size.js'
import type { ShapedGlyph } from '../../../src/pieces/typeface/shaped-run.js'
import type { Typeface } from '../../../src/pieces/typeface/typeface.js'
import { openedRun } from '../../../src/pieces/word/opened-run.js'
import { drawWord } from '../../../src/pieces/word/word-art.js'
import {
  type Coverage,
  columnsOf,
  comeWithin,
  outsideOf,
  overlap,
  renderLayers,
  someInked,
} from '../pixels.js'
import { type AwkwardSpan, awkwardSpans } from './awkward-spans.js'

const dpi = 300
const pixelsPerMm = dpi / 25.4
const toleranceMm = 0.2
const place = { file: 'plan.yaml' }

const faces = bundledTypefaces.map(({ name }) => {
  const loaded = loadTypeface({ name, place })
  if (!loaded.ok) throw new Error(`${name} does not load`)
  return loaded.value
})

function markOf(looks: { readonly line?: string; readonly outline?: string }): StyledMark {
  const target = { kind: 'letters', letters: 'x' } as const
  return { mark: { place, target }, index: 0, descenders: 'clear', assigned: false, ...looks }
}

/** A marked word in pixels: the mark, the letters it stands on, and all other letters, apart. */
interface Rendered {
  readonly mark: Coverage
  readonly own: Coverage
  readonly others: Coverage
  /** Width in mm of the ink that the mark's narrowest part stands on. */
  readonly narrowestMm: number
}

function renderMarked(
  typeface: Typeface,
  { word, ranges }: AwkwardSpan,
  mark: StyledMark,
  large: boolean,
): Rendered {
  const sizeMm = leastEmMm(typeface, { kind: large ? 'large' : 'normal' })
  const spans = [{ mark, ranges: ranges as MarkSpan['ranges'] }]
  const drawn = drawWord({ typeface, word, spans, sizeMm, large })
  const shaped = typeface.shape(word, {
    letterSpacingEm: large ? 0.04 : 0,
    splitLigaturesAt: ranges.flatMap(({ start, end }) => [start, end]),
  })
  const run = openedRun(shaped, drawn.openings)
  const { xMm, baselineMm } = drawn.art.text[0]!
  const isOwn = (glyph: ShapedGlyph): boolean =>
    ranges.some(({ start, end }) => glyph.start < end && glyph.end > start)
  const letters = (wanted: (glyph: ShapedGlyph) => boolean): PathShape => ({
    kind: 'path',
    fill: '#000000',
    d: run.glyphs
      .filter(wanted)
      .map(({ outline, xEm, yEm }) =>
        pathTextAt(outline.commands, sizeMm, {
          xMm: xMm + xEm * sizeMm,
          yMm: baselineMm + yEm * sizeMm,
        }),
      )
      .join(''),
  })
  const { art } = drawn
  const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi }
  // What is drawn besides plain letters is the mark, hollow and heavy letters included.
  const plain = [letters(() => true).d, letters(glyph => !isOwn(glyph)).d]
  const markShapes = art.shapes.filter(shape => shape.kind === 'path' && !plain.includes(shape.d))
  const [markInk, own, others] = renderLayers(
    [markShapes, [letters(isOwn)], [letters(glyph => !isOwn(glyph))]],
    canvas,
  )
  const widths = ranges.map(({ start, end }) => {
    const ink = drawn.letterInk.filter(letter => letter.start < end && letter.end > start)
    return Math.max(...ink.map(({ xMm, widthMm }) => xMm + widthMm)) - Math.min(...ink.map(({ xMm }) => xMm))
  })
  return { mark: markInk!, own: own!, others: others!, narrowestMm: Math.min(...widths) }
}

/** What is wrong with the mark as it stands on paper; empty where nothing is. */
function faults(rendered: Rendered, mark: StyledMark, typeface: Typeface, large: boolean): readonly string[] {
  const { mark: ink, own, others } = rendered
  const found: string[] = []
  const [markColumns, ownColumns] = [columnsOf(ink), columnsOf(own)]
  if (markColumns === undefined || ownColumns === undefined) return ['no mark, or no letters']
  if (overlap(ink, own) > 0) found.push('covers its own letters')
  // The least gap is 0.4 mm, 4.7 pixels; half-covered pixels may stand up to one nearer.
  if (comeWithin(ink, others, 3)) found.push('comes near a neighbour')
  const short = toleranceMm * pixelsPerMm
  if (markColumns.first - ownColumns.first > short || ownColumns.last - markColumns.last > short)
    found.push('falls short of its letters')
  if (mark.line !== undefined) {
    const rules = inkRulesFor(leastEmMm(typeface, { kind: large ? 'large' : 'normal' }), large)
    // Under a letter too narrow to show the style, such as i, the line may reach half-way to the neighbours.
    const room = Math.max(0, lineStyle(mark.line).shortestMm(rules) - rendered.narrowestMm) * pixelsPerMm
    if (
      ownColumns.first - markColumns.first > short + room ||
      markColumns.last - ownColumns.last > short + room
    )
      found.push('reaches past its letters')
  } else {
    const outside = outsideOf(ink)
    if (someInked(own, index => outside[index] === 1)) found.push('lets a letter out')
    if (someInked(others, index => outside[index] === 0)) found.push('lets a neighbour in')
  }
  return found
}

const namesOf = (styles: readonly { readonly name: string }[]): readonly string[] =>
  styles.map(({ name }) => name)

const apart = [
  ...namesOf(lineStyles.filter(style => style.stands === 'under')).map(line => ({
    name: line,
    mark: markOf({ line }),
  })),
  ...namesOf(outlineStyles.filter(style => style.kind === 'frame')).map(outline => ({
    name: outline,
    mark: markOf({ outline }),
  })),
]
const sizes = [
  { name: 'normal', large: false },
  { name: 'large', large: true },
]

describe.each(faces)('marks in $family, in pixels at the smallest size allowed', typeface => {
  describe.each(sizes)('$name', ({ large }) => {
    it.each(apart)('$name covers its letters and keeps off all ink', ({ mark }) => {
      const wrong = awkwardSpans.flatMap(span =>
        faults(renderMarked(typeface, span, mark, large), mark, typeface, large).map(
          fault => `${span.written} ${fault}`,
        ),
      )
      expect(wrong).toEqual([])
    })

    it('a slash crosses its own letters and keeps off the neighbours', () => {
      const mark = markOf({ line: 'slash' })
      const wrong = awkwardSpans
        .filter(({ ranges }) => ranges.length === 1)
        .filter(span => {
          const { mark: ink, own, others } = renderMarked(typeface, span, mark, large)
          return overlap(ink, own) === 0 || comeWithin(ink, others, 1)
        })
      expect(wrong.map(({ written }) => written)).toEqual([])
    })

    it.each(['hollow', 'heavy'])('%s letters keep off their neighbours', outline => {
      const mark = markOf({ outline })
      const wrong = awkwardSpans.filter(span => {
        const { mark: painted, others } = renderMarked(typeface, span, mark, large)
        return comeWithin(painted, others, 3)
      })
      expect(wrong.map(({ written }) => written)).toEqual([])
    })
  })
})
