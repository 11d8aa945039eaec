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
const SAYS_MM = 3.5
const COLUMNS = 2

/** Her own label first, then what the mark is in words for a child. */
function keyText(
  { label, says }: KeyEntry,
  lettering: Lettering,
  widthMm: number,
): Pick<Block, 'art' | 'heightMm'> {
  const name = textBlock({ lettering, text: label, sizeMm: LABEL_MM, widthMm, weight: 'bold' })
  if (says === undefined) return name
  const sentence = textBlock({ lettering, text: says, sizeMm: SAYS_MM, widthMm })
  return {
    art: [...name.art, ...sentence.art.map(line => ({ ...line, yMm: line.yMm + name.heightMm }))],
    heightMm: name.heightMm + sentence.heightMm,
  }
}

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
        at: 'right',
      })
      const label = keyText(entry, lettering, columnMm - SAMPLE_WIDTH_MM - 8)
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
