import type { Typeface } from '../typeface/typeface.js'
import type { InkRules } from './ink-rules.js'
import { areNear, comesNear, type Extent, type LetterInk, lowestInk } from './letter-ink.js'
import type { MarkPath } from './line-style.js'

export interface TagRequest {
  readonly typeface: Typeface
  readonly text: string
  /** The tag's own em. */
  readonly sizeMm: number
  /** What it belongs to. */
  readonly beside: Extent
  readonly letters: readonly LetterInk[]
  readonly marks: readonly Extent[]
  readonly ink: InkRules
}

export interface Tag extends Extent {
  readonly paths: readonly MarkPath[]
}

/** A small letter under the middle of its mark, below whatever else hangs there; undefined where it has no ink. */
export function placeTag({
  typeface,
  text,
  sizeMm,
  beside,
  letters,
  marks,
  ink,
}: TagRequest): Tag | undefined {
  const run = typeface.shape(text)
  const inks = run.glyphs.flatMap(({ outline, xEm, yEm }) =>
    outline.ink === undefined
      ? []
      : [
          {
            left: xEm + outline.ink.left,
            right: xEm + outline.ink.right,
            top: yEm + outline.ink.top,
            bottom: yEm + outline.ink.bottom,
          },
        ],
  )
  if (inks.length === 0) return undefined
  const left = Math.min(...inks.map(each => each.left)) * sizeMm
  const right = Math.max(...inks.map(each => each.right)) * sizeMm
  const top = Math.min(...inks.map(each => each.top)) * sizeMm
  const bottom = Math.max(...inks.map(each => each.bottom)) * sizeMm
  const x = (beside.left + beside.right) / 2 - (left + right) / 2
  let area = { left: x + left, right: x + right, top: 0, bottom: 0 }
  const moveTo = (y: number): void => {
    area = { ...area, top: y, bottom: y + bottom - top }
  }
  moveTo(beside.bottom + ink.gapMm)
  for (;;) {
    const below = [
      ...letters
        .filter(letter => comesNear(letter, area, ink.gapMm))
        .map(letter => lowestInk(letter, area.left - ink.gapMm, area.right + ink.gapMm) + letter.rowMm),
      ...marks.filter(mark => areNear(mark, area, ink.gapMm * 0.99)).map(mark => mark.bottom),
    ]
    if (below.length === 0) break
    moveTo(Math.max(area.top + 0.01, ...below.map(y => y + ink.gapMm)))
  }
  const paths = run.glyphs.map(({ outline, xEm, yEm }) => ({
    commands: outline.commands.map(({ type, values }) => ({
      type,
      values: values.map((value, index) =>
        index % 2 === 0 ? x + (xEm + value) * sizeMm : area.top - top + (yEm + value) * sizeMm,
      ),
    })),
  }))
  return { ...area, paths }
}
