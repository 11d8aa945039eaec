/** A list for the bag: every piece of a set with a box to tick, so that a missing card is found before the lesson. */
import type { Box, Size } from '../../src/geometry.js'
import { drawCuts } from '../../src/sheets/cuts.js'
import { type Block, flowBlocks, textBlock } from '../../src/sheets/furniture/column.js'
import type { Lettering } from '../../src/sheets/furniture/lettering.js'
import { drawFrame } from '../../src/sheets/furniture/strokes.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { type Slip, slipsOnPages } from './slips-on-pages.js'

export interface ChecklistRequest {
  /** `word cards, Otters`. */
  readonly title: string
  readonly subtitles: readonly string[]
  /** One a piece of a set, in set order. */
  readonly entries: readonly ChecklistEntry[]
  /** How many such sets there are: each bag gets a slip. */
  readonly copies: number
  readonly lettering: Lettering
  readonly sheetSize: Size
  readonly room: Box
}

/** `3 marsh`, `board 3`. */
export type ChecklistEntry = string

const TITLE_MM = 5
const TEXT_MM = 4
const TICK_BOX = { widthMm: 3.6, heightMm: 3.6 }
const GUTTER_MM = 6
const PADDING_MM = 5
/** As wide as a small bag. */
const SLIP_MM = 90

/**
 * The slips of several sets, which share a sheet size and a room: one a set, as many on a sheet as fit, to be cut
 * apart. A list longer than a page runs on over pages of its own, once a set, after the slips.
 */
export function checklistsTogether(requests: readonly ChecklistRequest[]): readonly Sheet[] {
  const slips: Slip[] = []
  const longLists: Sheet[] = []
  for (const request of requests) {
    const slip = setSlip(request, Math.min(SLIP_MM, request.room.widthMm) - 2 * PADDING_MM)
    if (slip.heightMm > request.room.heightMm) longLists.push(...longList(request))
    else slips.push(...Array.from({ length: request.copies }, () => slip))
  }
  const [first] = requests
  const sheets = first === undefined ? [] : [...sheetsOfSlips(first, slips), ...longLists]
  return sheets.map((sheet, index) => ({ ...sheet, number: index + 1 }))
}

/** Title and two columns or more of entries, padded, its origin its top left corner. */
function setSlip(request: ChecklistRequest, widthMm: number): Slip {
  const heading = headingBlocks(request, widthMm)
  const headingMm = heightOf(heading)
  const { lines, columns, stepMm } = lowestColumns(request, widthMm)
  const listMm = columnsHeight(lines, columns)
  const under = { xMm: PADDING_MM, yMm: PADDING_MM + headingMm, widthMm, heightMm: Number.POSITIVE_INFINITY }
  const listed = flowBlocks(lines, { ...under, heightMm: listMm }).flatMap((column, index) =>
    column.map(placed => ({ ...placed, xMm: placed.xMm + index * stepMm })),
  )
  return {
    art: [...flowBlocks(heading, { ...under, yMm: PADDING_MM }).flat(), ...listed],
    widthMm: widthMm + 2 * PADDING_MM,
    heightMm: headingMm + listMm + 2 * PADDING_MM,
  }
}

/** Slips in the middle of the sheet, in rows whose cuts run from edge to edge. */
function sheetsOfSlips(request: ChecklistRequest, slips: readonly Slip[]): readonly Sheet[] {
  const { room, sheetSize } = request
  const widthMm = slips[0]?.widthMm ?? room.widthMm
  const across = Math.max(1, Math.floor(room.widthMm / widthMm + 1e-6))
  const pages = slipsOnPages(slips, across, room.heightMm)
  return pages.map((page, index) => {
    const leftMm = room.xMm + (room.widthMm - across * widthMm) / 2
    let yMm = room.yMm + (room.heightMm - page.reduce((sum, row) => sum + row.heightMm, 0)) / 2
    const placed = page.flatMap(({ slips: abreast, heightMm }): readonly SlipInBox[] => {
      const top = yMm
      yMm += heightMm
      return abreast.map((slip, column) => ({
        slip,
        box: { xMm: leftMm + column * widthMm, yMm: top, widthMm, heightMm },
      }))
    })
    const furniture = placed.flatMap(({ slip, box }) =>
      slip.art.map(({ art, xMm, yMm: top }) => ({ art, xMm: xMm + box.xMm, yMm: top + box.yMm })),
    )
    const boxes = placed.map(({ box }) => box)
    return { ...sheet(request, index, pages.length), cuts: drawCuts(boxes, sheetSize, 'lines'), furniture }
  })
}

interface SlipInBox {
  readonly slip: Slip
  readonly box: Box
}

function longList(request: ChecklistRequest): readonly Sheet[] {
  const { room } = request
  const heading = headingBlocks(request, room.widthMm)
  const headingMm = heightOf(heading)
  const lines = request.entries.map(entry => entryBlock(request, entry, room.widthMm))
  const { columns, stepMm } = columnsIn(lines, room.widthMm)
  const under = { ...room, yMm: room.yMm + headingMm, heightMm: room.heightMm - headingMm }
  const filled = flowBlocks(lines, under)
  const perList = Math.ceil(filled.length / columns)
  const pages = perList * request.copies
  return Array.from({ length: pages }, (_, page) => {
    const first = (page % perList) * columns
    const listed = filled
      .slice(first, first + columns)
      .flatMap((column, index) => column.map(placed => ({ ...placed, xMm: placed.xMm + index * stepMm })))
    return { ...sheet(request, page, pages), furniture: [...flowBlocks(heading, room).flat(), ...listed] }
  })
}

function sheet({ title, sheetSize }: ChecklistRequest, page: number, pages: number): Sheet {
  return {
    widthMm: sheetSize.widthMm,
    heightMm: sheetSize.heightMm,
    number: page + 1,
    side: 'front',
    kind: 'checklist',
    title: pages === 1 ? `${title}: checklist` : `${title}: checklist, page ${page + 1} of ${pages}`,
    pieces: [],
    cuts: [],
    furniture: [],
  }
}

function headingBlocks(request: ChecklistRequest, widthMm: number): readonly Block[] {
  const { title, subtitles, entries, lettering } = request
  const set = { lettering, widthMm }
  const count = entries.length === 1 ? '1 piece' : `${entries.length} pieces`
  return [
    textBlock({ ...set, text: title, sizeMm: TITLE_MM, weight: 'bold', spaceAfterMm: 0.5 }),
    ...subtitles.map(text => textBlock({ ...set, text, sizeMm: TEXT_MM, spaceAfterMm: 0.5 })),
    textBlock({ ...set, text: count, sizeMm: TEXT_MM, spaceAfterMm: 3 }),
  ]
}

interface EntryBlock extends Block {
  readonly widthMm: number
}

function entryBlock(request: ChecklistRequest, entry: ChecklistEntry, roomMm: number): EntryBlock {
  const indentMm = TICK_BOX.widthMm + 2
  const line = textBlock({
    lettering: request.lettering,
    widthMm: roomMm,
    indentMm,
    text: entry,
    sizeMm: TEXT_MM,
    spaceAfterMm: 1.2,
  })
  const firstMm = line.art[0]?.art.heightMm ?? TEXT_MM
  const box = { art: drawFrame(TICK_BOX, 0.35), xMm: 0, yMm: (firstMm - TICK_BOX.heightMm) / 2 }
  const widthMm = indentMm + Math.max(0, ...line.art.map(placed => placed.art.widthMm))
  return { ...line, art: [box, ...line.art], widthMm }
}

interface Columns {
  readonly lines: readonly EntryBlock[]
  readonly columns: number
  readonly stepMm: number
}

/** Long entries are broken in columns no narrower than this: in narrower ones a number would stand alone. */
const LEAST_COLUMN_MM = 30

/** The columns in which the list is lowest: long entries may take two lines, where that lets others stand beside them. */
function lowestColumns(request: ChecklistRequest, roomMm: number): Columns {
  const inOneLine = request.entries.map(entry => entryBlock(request, entry, roomMm))
  const ways = [{ lines: inOneLine, ...columnsIn(inOneLine, roomMm) }]
  for (let columns = ways[0]!.columns + 1; ; columns++) {
    const stepMm = (roomMm + GUTTER_MM) / columns
    const widthMm = stepMm - GUTTER_MM
    if (widthMm < LEAST_COLUMN_MM) break
    const lines = request.entries.map(entry => entryBlock(request, entry, widthMm))
    if (lines.every(line => line.widthMm <= widthMm)) ways.push({ lines, columns, stepMm })
  }
  const heights = ways.map(({ lines, columns }) => columnsHeight(lines, columns))
  return ways[heights.indexOf(Math.min(...heights))]!
}

/** Within a tenth of a millimetre the least height in which the entries fill so many columns, one after the other. */
function columnsHeight(lines: readonly EntryBlock[], columns: number): number {
  const within = (heightMm: number) => ({ xMm: 0, yMm: 0, widthMm: 0, heightMm })
  let [tooLow, enough] = [0, heightOf(lines)]
  while (enough - tooLow > 0.1) {
    const middle = (tooLow + enough) / 2
    const tallest = Math.max(0, ...lines.map(line => line.heightMm))
    if (middle < tallest || flowBlocks(lines, within(middle)).length > columns) tooLow = middle
    else enough = middle
  }
  return enough
}

/** As many columns as the widest entry allows, spread evenly over the room. */
function columnsIn(lines: readonly EntryBlock[], roomMm: number) {
  const leastMm = Math.max(1, ...lines.map(line => line.widthMm)) + GUTTER_MM
  const columns = Math.max(1, Math.floor((roomMm + GUTTER_MM) / leastMm))
  return { columns, stepMm: (roomMm + GUTTER_MM) / columns }
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => sum + block.heightMm + block.spaceAfterMm, 0)
}
