/** What large print asks of the text on pieces. */
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { pointsToMm } from '../../src/geometry.js'
import type { Piece, TextRun } from '../../src/pieces/piece.js'
import { leastEmMm } from '../../src/pieces/text/type-size.js'
import type { TypeSize } from '../../src/plan/plan.js'
import { bundledTypeface } from '../pieces/bundled-typefaces.js'

const andika = bundledTypeface('andika')

/** All but the set mark, which is for whoever sorts the pieces and not for the child. */
export function textOnPieces({ sheets }: PrintedItem): readonly TextRun[] {
  return sheets.flatMap(sheet =>
    sheet.pieces.flatMap(({ piece }) =>
      piece.art.flatMap(({ art }) => art.text).filter(run => run.text !== piece.setMark),
    ),
  )
}

/** Those that are smaller than the size asked for, with their size. */
export function tooSmall(runs: readonly TextRun[], size: TypeSize): readonly string[] {
  const least = leastEmMm(andika, size)
  return runs.filter(run => run.sizeMm < least - 0.03).map(run => `${run.text}: ${run.sizeMm.toFixed(2)} mm`)
}

interface SetMark extends TextRun {
  readonly fill: string
  readonly fromFootMm: number
  /** Of the words on its piece, where it has any. */
  readonly xHeightMm: number | undefined
}

/** Where the set mark stands on its piece, and its colour. */
export function setMarkOf({ setMark, art, heightMm, xHeightMm }: Piece): SetMark {
  const placed = art.find(each => each.art.text.some(({ text }) => text === setMark))!
  const run = placed.art.text.find(({ text }) => text === setMark)!
  const [shape] = placed.art.shapes
  const fill = shape?.kind === 'path' ? shape.fill : ''
  return { ...run, fill, fromFootMm: heightMm - placed.yMm - run.baselineMm, xHeightMm }
}

export function isSmallGreyAndAtTheFoot({ sizeMm, fill, fromFootMm, xHeightMm }: SetMark): boolean {
  return (
    sizeMm < pointsToMm(8) &&
    fill === '#595959' &&
    fromFootMm < 8 &&
    sizeMm < (xHeightMm ?? Number.POSITIVE_INFINITY)
  )
}
