/** A list for the bag: every piece of a set with a box to tick, so that a missing card is found before the lesson. */
import type { Box, Size } from '../../src/geometry.js'
import type { PlacedArt } from '../../src/pieces/piece.js'
import { drawCuts } from '../../src/sheets/cuts.js'
import { type Block, flowBlocks, textBlock } from '../../src/sheets/furniture/column.js'
import type { Lettering } from '../../src/sheets/furniture/lettering.js'
import { drawFrame } from '../../src/sheets/furniture/strokes.js'
import type { Sheet } from '../../src/sheets/sheet.js'

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

export interface ChecklistEntry {
  readonly number: number
  readonly text: string
}

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

interface Slip extends Size {
  readonly art: readonly PlacedArt[]
}

/** Title and two columns or more of entries, padded, its origin its top left corner. */
function setSlip(request: ChecklistRequest, widthMm: number): Slip {
  const heading = headingBlocks(request, widthMm)
  const headingMm = heightOf(heading)
  const lines = request.entries.map(entry => entryBlock(request, entry, widthMm))
  const { columns, stepMm } = columnsIn(lines, widthMm)
  const perColumn = Math.ceil(lines.length / columns)
  const listMm = Math.max(
    0,
    ...Array.from({ length: columns }, (_, c) => heightOf(lines.slice(c * perColumn, (c + 1) * perColumn))),
  )
  const under = { xMm: PADDING_MM, yMm: PADDING_MM + headingMm, widthMm, heightMm: Number.POSITIVE_INFINITY }
  const listed = Array.from({ length: columns }, (_, column) =>
    flowBlocks(lines.slice(column * perColumn, (column + 1) * perColumn), {
      ...under,
      xMm: under.xMm + column * stepMm,
    }).flat(),
  ).flat()
  return {
    art: [...flowBlocks(heading, { ...under, yMm: PADDING_MM }).flat(), ...listed],
    widthMm: widthMm + 2 * PADDING_MM,
    heightMm: headingMm + listMm + 2 * PADDING_MM,
  }
}

/** Slips in rows, each row as high as its highest slip, so that every cut runs from edge to edge. */
function sheetsOfSlips(request: ChecklistRequest, slips: readonly Slip[]): readonly Sheet[] {
  const { room, sheetSize } = request
  const widthMm = slips[0]?.widthMm ?? room.widthMm
  const across = Math.max(1, Math.floor(room.widthMm / widthMm + 1e-6))
  const pages: SlipInBox[][] = []
  let yMm = Number.POSITIVE_INFINITY
  for (let first = 0; first < slips.length; first += across) {
    const row = slips.slice(first, first + across)
    const heightMm = Math.max(...row.map(slip => slip.heightMm))
    if (yMm + heightMm > room.yMm + room.heightMm + 1e-6) {
      pages.push([])
      yMm = room.yMm
    }
    for (const [column, slip] of row.entries())
      pages.at(-1)!.push({ slip, box: { xMm: room.xMm + column * widthMm, yMm, widthMm, heightMm } })
    yMm += heightMm
  }
  return pages.map((placed, page) => {
    const furniture = placed.flatMap(({ slip, box: { xMm, yMm } }) =>
      slip.art.map(({ art, ...at }) => ({ art, xMm: at.xMm + xMm, yMm: at.yMm + yMm })),
    )
    const boxes = placed.map(({ box }) => box)
    return { ...sheet(request, page, pages.length), cuts: drawCuts(boxes, sheetSize, 'lines'), furniture }
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
    text: `${entry.number} ${entry.text}`,
    sizeMm: TEXT_MM,
    spaceAfterMm: 1.2,
  })
  const firstMm = line.art[0]?.art.heightMm ?? TEXT_MM
  const box = { art: drawFrame(TICK_BOX, 0.35), xMm: 0, yMm: (firstMm - TICK_BOX.heightMm) / 2 }
  const widthMm = indentMm + Math.max(0, ...line.art.map(placed => placed.art.widthMm))
  return { ...line, art: [box, ...line.art], widthMm }
}

/** As many columns as the widest entry allows, and how far one stands from the next. */
function columnsIn(lines: readonly EntryBlock[], roomMm: number) {
  const stepMm = Math.max(1, ...lines.map(line => line.widthMm)) + GUTTER_MM
  return { columns: Math.max(1, Math.floor((roomMm + GUTTER_MM) / stepMm)), stepMm }
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => sum + block.heightMm + block.spaceAfterMm, 0)
}
