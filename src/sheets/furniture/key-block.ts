/** The key on a cover: each mark on sample letters, its name beside it, two columns of them. */
import { wholeWhenAsked } from '../../pieces/art/drawn-when-asked.js'
import type { KeyEntry } from '../../pieces/marks/key-entries.js'
import { drawKeySample, type KeySampleRequest, keySampleWidthMm } from '../../pieces/marks/key-sample.js'
import type { PlacedArt } from '../../pieces/piece.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import { type Block, textBlock } from './column.js'
import type { Lettering } from './lettering.js'

export interface KeyBlockRequest {
  readonly entries: readonly KeyEntry[]
  readonly typeface: Typeface
  readonly lettering: Lettering
  readonly widthMm: number
  /** Where the page has little room. */
  readonly setting?: CoverKeySetting
}

/** How close the key on a cover is set, the usual first. */
export const coverKeySettings = ['usual', 'closer', 'three columns'] as const
export type CoverKeySetting = (typeof coverKeySettings)[number]

const SETTINGS = {
  usual: { columns: 2, sampleMm: 7, mostSampleMm: 26, rowMm: 15 },
  closer: { columns: 2, sampleMm: 6, mostSampleMm: 23, rowMm: 11.5 },
  'three columns': { columns: 3, sampleMm: 5.5, mostSampleMm: 18, rowMm: 11 },
} as const
const LABEL_MM = 3.8
const SAYS_MM = 3.5
/** Three columns on a page narrower than this leave no room for the names. */
const THREE_FROM_MM = 160

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

/** A block a row; they stay on one page where a page holds them. */
export function keyBlocks(request: KeyBlockRequest): readonly Block[] {
  const { entries, typeface, lettering, widthMm, setting = 'usual' } = request
  const { columns, sampleMm, mostSampleMm, rowMm } =
    SETTINGS[setting === 'three columns' && widthMm < THREE_FROM_MM ? 'closer' : setting]
  const columnMm = widthMm / columns
  const sampleOf = ({ mark, letters }: KeyEntry, roomMm: number): KeySampleRequest => ({
    typeface,
    mark,
    letters,
    sizeMm: sampleMm,
    room: { widthMm: roomMm, heightMm: rowMm - 1 },
    at: 'right',
  })
  // As wide as the widest, so that samples stand at the edge of the column and their names beside them.
  const sampleWidthMm = Math.max(0, ...entries.map(entry => keySampleWidthMm(sampleOf(entry, mostSampleMm))))
  const rows = Math.ceil(entries.length / columns)
  return Array.from({ length: rows }, (_, row) => {
    const ofRow = entries.slice(row * columns, (row + 1) * columns)
    const texts = ofRow.map(entry => keyText(entry, lettering, columnMm - sampleWidthMm - 8))
    const heightMm = Math.max(rowMm, ...texts.map(text => text.heightMm + 1.5))
    return {
      art: ofRow.flatMap((entry, column): readonly PlacedArt[] => {
        const xMm = column * columnMm
        const wanted = sampleOf(entry, sampleWidthMm)
        const sample = wholeWhenAsked(wanted.room, () => drawKeySample(wanted))
        const { art, heightMm: textMm } = texts[column]!
        return [
          { art: sample, xMm, yMm: (heightMm - rowMm) / 2 },
          ...art.map(line => ({
            ...line,
            xMm: line.xMm + xMm + sampleWidthMm + 4,
            yMm: line.yMm + (heightMm - textMm) / 2,
          })),
        ]
      }),
      heightMm,
      spaceAfterMm: 0,
      keepsWithNext: row < rows - 1,
    }
  })
}
