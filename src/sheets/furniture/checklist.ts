/** A list for the bag: every piece of a set with a box to tick, so that a missing card is found before the lesson. */
import type { Box, Size } from '../../geometry.js'
import type { PlacedArt } from '../../pieces/piece.js'
import type { Sheet } from '../sheet.js'
import { type Block, flowBlocks, textBlock } from './column.js'
import type { Lettering } from './lettering.js'
import { drawFrame } from './strokes.js'

export interface ChecklistRequest {
  /** `word cards, Otters`. */
  readonly title: string
  readonly subtitles: readonly string[]
  /** One a piece of a set, in set order. */
  readonly entries: readonly { readonly number: number; readonly text: string }[]
  /** How many such sets there are. */
  readonly copies: number
  readonly lettering: Lettering
  readonly sheetSize: Size
  readonly room: Box
}

const TITLE_MM = 6
const TEXT_MM = 4.2
const TICK_BOX = { widthMm: 3.6, heightMm: 3.6 }
const GUTTER_MM = 6

export function checklistSheets(request: ChecklistRequest): readonly Sheet[] {
  const { title, entries, room, sheetSize } = request
  const heading = headingBlocks(request)
  const headingMm = heading.reduce((sum, block) => sum + block.heightMm + block.spaceAfterMm, 0)
  const lines = entries.map(entry => entryBlock(request, entry))
  const widest = Math.max(0, ...lines.map(line => line.widthMm))
  const columns = Math.max(1, Math.floor((room.widthMm + GUTTER_MM) / (widest + GUTTER_MM)))
  const under = { ...room, yMm: room.yMm + headingMm, heightMm: room.heightMm - headingMm }
  const filled = flowBlocks(lines, under)
  const pageCount = Math.max(1, Math.ceil(filled.length / columns))
  return Array.from({ length: pageCount }, (_, page) => {
    const itsColumns = filled.slice(page * columns, (page + 1) * columns)
    const listed = itsColumns.flatMap((column, index) =>
      column.map(placed => ({ ...placed, xMm: placed.xMm + index * (widest + GUTTER_MM) })),
    )
    return {
      widthMm: sheetSize.widthMm,
      heightMm: sheetSize.heightMm,
      number: page + 1,
      side: 'front',
      kind: 'checklist',
      title:
        pageCount === 1 ? `${title}: checklist` : `${title}: checklist, page ${page + 1} of ${pageCount}`,
      pieces: [],
      cuts: [],
      furniture: [...flowBlocks(heading, room).flat(), ...listed],
    }
  })
}

function headingBlocks({
  title,
  subtitles,
  entries,
  copies,
  lettering,
  room,
}: ChecklistRequest): readonly Block[] {
  const set = { lettering, widthMm: room.widthMm }
  const count = `${entries.length} pieces${copies > 1 ? `, ${copies} sets` : ''}`
  return [
    textBlock({ ...set, text: title, sizeMm: TITLE_MM, weight: 'bold', spaceAfterMm: 1 }),
    ...subtitles.map(text => textBlock({ ...set, text, sizeMm: TEXT_MM, spaceAfterMm: 1 })),
    textBlock({ ...set, text: count, sizeMm: TEXT_MM, spaceAfterMm: 4 }),
  ]
}

interface EntryBlock extends Block {
  readonly widthMm: number
}

function entryBlock(
  { lettering, room }: ChecklistRequest,
  entry: { readonly number: number; readonly text: string },
): EntryBlock {
  const indentMm = TICK_BOX.widthMm + 2
  const line = textBlock({
    lettering,
    widthMm: room.widthMm,
    indentMm,
    text: `${entry.number}  ${entry.text}`,
    sizeMm: TEXT_MM,
    spaceAfterMm: 1.2,
  })
  const first = line.art[0]?.art
  const box: PlacedArt = {
    art: drawFrame(TICK_BOX, 0.35),
    xMm: 0,
    yMm: ((first?.heightMm ?? TEXT_MM) - TICK_BOX.heightMm) / 2,
  }
  const widthMm = indentMm + Math.max(0, ...line.art.map(placed => placed.art.widthMm))
  return { ...line, art: [box, ...line.art], widthMm }
}
