/** The key on a cover: each mark on sample letters, its name beside it, two columns of them. */
import type { KeyEntry } from '../../pieces/marks/key-entries.js'
import { drawKeySample } from '../../pieces/marks/key-sample.js'
import type { PlacedArt } from '../../pieces/piece.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import { type Block, textBlock } from './column.js'
import type { Lettering } from './lettering.js'

export interface KeyBlockRequest {
  readonly entries: readonly KeyEntry[]
  readonly typeface: Typeface
  readonly lettering: Lettering
  readonly widthMm: number
}

const SAMPLE_MM = 7
const SAMPLE_WIDTH_MM = 26
const ROW_MM = 15
const LABEL_MM = 3.8
const COLUMNS = 2

/** One block a row, so that a long key may run on to the next page. */
export function keyBlocks({ entries, typeface, lettering, widthMm }: KeyBlockRequest): readonly Block[] {
  const columnMm = widthMm / COLUMNS
  const rows = Math.ceil(entries.length / COLUMNS)
  return Array.from({ length: rows }, (_, row) => ({
    art: entries.slice(row * COLUMNS, (row + 1) * COLUMNS).flatMap((entry, column): readonly PlacedArt[] => {
      const xMm = column * columnMm
      const room = { widthMm: SAMPLE_WIDTH_MM, heightMm: ROW_MM - 1 }
      const sample = drawKeySample({
        typeface,
        mark: entry.mark,
        letters: entry.letters,
        sizeMm: SAMPLE_MM,
        room,
      })
      const label = textBlock({
        lettering,
        text: entry.label,
        sizeMm: LABEL_MM,
        widthMm: columnMm - SAMPLE_WIDTH_MM - 8,
      })
      const labelTop = (ROW_MM - label.heightMm) / 2
      return [
        { art: sample, xMm, yMm: 0 },
        ...label.art.map(line => ({
          ...line,
          xMm: line.xMm + xMm + SAMPLE_WIDTH_MM + 4,
          yMm: line.yMm + labelTop,
        })),
      ]
    }),
    heightMm: ROW_MM,
    spaceAfterMm: 0,
  }))
}
