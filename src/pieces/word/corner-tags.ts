/** The tags of marks on whole words, small in the upper right corner of the word's room: at its side in a list. */
import { type Box, pointsToMm, type Size } from '../../geometry.js'
import { pathTextAt } from '../art/path-text.js'
import { around, type Extent } from '../marks/letter-ink.js'
import type { MarkSpan } from '../marks/styled-mark.js'
import { tagIn } from '../marks/word-features.js'
import type { Art, PlacedMark } from '../piece.js'
import type { ShapedRun } from '../typeface/shaped-run.js'
import type { Typeface } from '../typeface/typeface.js'
import { placedMark } from './word-art.js'

export interface CornerTagRequest {
  readonly typeface: Typeface
  readonly word: string
  readonly tags: readonly MarkSpan[]
  readonly roomHeightMm: number
  /** In a list, where words stand at the left, the tags stand beside them. */
  readonly align: 'centre' | 'left'
  /** They do so beside a word in the middle too. */
  readonly tagsBeside?: true | undefined
  /** No tag may be smaller, as far as there is room. */
  readonly leastTextMm?: number
}

/** What the tags take up, with the white that keeps the word off them. */
export interface CornerRoom extends Size {
  readonly besides: boolean
}

export interface CornerTags {
  /** As large as its ink. */
  readonly art: Art
  readonly marks: readonly PlacedMark[]
}

/** Small beside a word of any size, but no smaller than seven points: our own judgement, no source. */
const leastMm = pointsToMm(7)
const mostMm = pointsToMm(15)
const shareOfRoom = 0.16
/** A tag that may be no smaller than the words of large print still leaves most of the room to the word. */
const mostOfRoom = 0.3

/** In ems of a tag: between two tags, and between tags and the word. */
const betweenEm = 0.6
const aroundEm = 0.5

interface TagInk {
  readonly span: MarkSpan
  readonly run: ShapedRun
  readonly ink: Extent
  /** Where its pen starts, from the left of the whole row. */
  readonly startEm: number
}

/** Undefined where there is nothing to show. */
export function cornerRoom(request: CornerTagRequest): CornerRoom | undefined {
  const ink = around(rowOf(request).map(({ ink: own }) => own))
  if (ink === undefined) return undefined
  const sizeMm = tagSizeMm(request)
  const { align, tagsBeside } = request
  const besides = align === 'left' || tagsBeside === true
  // So that a word stays in the middle, it gives up as much on its other side.
  const sides = besides && align === 'centre' ? 2 : 1
  return {
    widthMm: (ink.right - ink.left + aroundEm) * sizeMm * sides,
    heightMm: (ink.bottom - ink.top + aroundEm) * sizeMm,
    besides,
  }
}

export function drawCornerTags(request: CornerTagRequest): CornerTags | undefined {
  const row = rowOf(request)
  const ink = around(row.map(({ ink: own }) => own))
  if (ink === undefined) return undefined
  const sizeMm = tagSizeMm(request)
  const boxOf = ({ left, right, top, bottom }: Extent): Box => ({
    xMm: (left - ink.left) * sizeMm,
    yMm: (top - ink.top) * sizeMm,
    widthMm: (right - left) * sizeMm,
    heightMm: (bottom - top) * sizeMm,
  })
  const { widthMm, heightMm } = boxOf(ink)
  const baselineMm = -ink.top * sizeMm
  const penMm = ({ startEm }: TagInk): number => (startEm - ink.left) * sizeMm
  const art: Art = {
    widthMm,
    heightMm,
    shapes: row.map(tag => ({
      kind: 'path',
      fill: tag.span.mark.color ?? '#000000',
      d: tag.run.glyphs
        .map(({ outline, xEm, yEm }) =>
          pathTextAt(outline.commands, sizeMm, {
            xMm: penMm(tag) + xEm * sizeMm,
            yMm: baselineMm + yEm * sizeMm,
          }),
        )
        .join(''),
    })),
    text: row.map(tag => ({
      text: tag.run.text,
      xMm: penMm(tag),
      baselineMm,
      widthMm: tag.run.widthEm * sizeMm,
      sizeMm,
    })),
  }
  // A line or an outline is the mark itself, its tag goes with it.
  const alone = row.filter(({ span: { mark } }) => mark.line === undefined && mark.outline === undefined)
  return { art, marks: alone.map(({ span, ink: own }) => placedMark(request.word, { span }, boxOf(own))) }
}

function tagSizeMm({ roomHeightMm, leastTextMm = leastMm }: CornerTagRequest): number {
  const wished = Math.min(mostMm, shareOfRoom * roomHeightMm)
  return Math.min(mostOfRoom * roomHeightMm, Math.max(leastTextMm, wished))
}

/** The tags side by side, in ems. */
function rowOf({ typeface, tags }: CornerTagRequest): readonly TagInk[] {
  let startEm = 0
  return tags.flatMap(span => {
    const run = typeface.shape(tagIn(span.mark.tag ?? '', typeface))
    const own = around(
      run.glyphs.flatMap(({ outline: { ink }, xEm, yEm }) =>
        ink === undefined
          ? []
          : [
              {
                left: startEm + xEm + ink.left,
                right: startEm + xEm + ink.right,
                top: yEm + ink.top,
                bottom: yEm + ink.bottom,
              },
            ],
      ),
    )
    if (own === undefined) return []
    const tag = { span, run, ink: own, startEm }
    startEm += run.widthEm + betweenEm
    return [tag]
  })
}
