/** Labels to cut out for the bags, boxes and envelopes that hold the sets. */
import { type Box, insetBox, type Size } from '../../src/geometry.js'
import type { PlacedArt } from '../../src/pieces/piece.js'
import { drawCuts } from '../../src/sheets/cuts.js'
import { type Block, flowBlocks, textBlock } from '../../src/sheets/furniture/column.js'
import type { Lettering } from '../../src/sheets/furniture/lettering.js'
import { type Grid, placeBox, placesOf } from '../../src/sheets/grid.js'
import type { Sheet } from '../../src/sheets/sheet.js'

/** For a small bag, and for the front of an envelope: usual sizes, common practice, no source. */
export const BAG_LABEL: Size = { widthMm: 90, heightMm: 50 }
export const ENVELOPE_LABEL: Size = { widthMm: 95, heightMm: 120 }

export interface StorageLabel {
  /** What is in the bag: read from across the room. */
  readonly what: string
  /** The group or the class, and which bag of several. */
  readonly forWhom: string
  /** The plan and the class. */
  readonly from: string
  /** Number of pieces, the words, …: a paragraph each. */
  readonly lines: readonly string[]
}

export interface StorageLabelsRequest {
  readonly title: string
  readonly labels: readonly StorageLabel[]
  /** Divided by the label's size. */
  readonly grid: Grid
  readonly lettering: Lettering
}

/** What is in the bag is as large as the width allows all labels alike, between these. */
const WHAT_MM = { least: 6, most: 13 } as const
/** Of the largest title: one that would have to be smaller than that has a size of its own, and the others keep theirs. */
const LEAST_ALIKE = 0.7
const FOR_WHOM_MM = 6.2
const FROM_MM = 4.2
const LINE_MM = 3.6
const PADDING_MM = 5
/** As large as a large label takes, so that it is filled; the smallest is 6 pt for the lines. */
const RATIOS = [2, 1.8, 1.6, 1.45, 1.3, 1.15, 1, 0.92, 0.84, 0.76, 0.7, 0.64, 0.6]

export function storageLabelSheets(request: StorageLabelsRequest): readonly Sheet[] {
  const { title, labels, grid, lettering } = request
  const titlesMm = labels.map(({ what }) =>
    sizeThatFills(what, insetBox(placeBox(grid, 0), PADDING_MM), lettering),
  )
  const places = placesOf(grid)
  const pages = Math.ceil(labels.length / places)
  return Array.from({ length: pages }, (_, page) => {
    const onSheet = labels.slice(page * places, (page + 1) * places)
    const boxes = onSheet.map((_, place) => placeBox(grid, place))
    const rooms = boxes.map(box => insetBox(box, PADDING_MM))
    const ratios = onSheet.map((label, place) => ratioFor(label, rooms[place]!, { lettering, titlesMm }))
    // Labels of a sheet are alike, but for a row of them that has too much to say.
    const alike = Math.min(...ratios.filter(ratio => ratio >= 1))
    const rows = rowsOf(grid, onSheet.length)
    return {
      widthMm: grid.sheetSize.widthMm,
      heightMm: grid.sheetSize.heightMm,
      number: page + 1,
      side: 'front',
      kind: 'labels',
      title: pages === 1 ? title : `${title}, page ${page + 1} of ${pages}`,
      pieces: [],
      cuts: drawCuts(boxes, grid.sheetSize, 'lines'),
      furniture: rows.flatMap(row => {
        const ratio = Math.min(alike, ...row.map(place => ratios[place]!))
        return setRow(
          row.map(place => ({ label: onSheet[place]!, room: rooms[place]! })),
          { lettering, titlesMm, ratio },
        )
      }),
    }
  })
}

/**
 * How large its text is for all of it to fit, or else the smallest. It grows no further than leaves for whom it is, what
 * it holds and its set mark in a line each.
 */
function ratioFor(label: StorageLabel, room: Box, setting: Omit<LabelSetting, 'ratio'>): number {
  const { lettering } = setting
  const inOneLine = (ratio: number) =>
    lettering.widthMm({ text: label.forWhom, sizeMm: FOR_WHOM_MM * ratio }) <= room.widthMm &&
    label.lines
      .slice(0, -1)
      .every(text => lettering.widthMm({ text, sizeMm: LINE_MM * ratio }) <= room.widthMm)
  const mayBe = RATIOS.filter(ratio => ratio <= 1 || inOneLine(ratio))
  return mayBe.find(ratio => fits(labelBlocks(label, room, { ...setting, ratio }), room)) ?? RATIOS.at(-1)!
}

interface LabelSetting {
  readonly lettering: Lettering
  /** For each label, the em at which its title is as wide as the label. */
  readonly titlesMm: readonly number[]
  readonly ratio: number
}

/** The places of each row of the grid, as far as they are taken. */
function rowsOf({ columns }: Grid, taken: number): readonly (readonly number[])[] {
  return Array.from({ length: Math.ceil(taken / columns) }, (_, row) =>
    Array.from({ length: Math.min(columns, taken - row * columns) }, (_, column) => row * columns + column),
  )
}

interface LabelInRoom {
  readonly label: StorageLabel
  readonly room: Box
}

/**
 * Labels side by side stand level: their titles on one line, however large each is, and all else below. What does not
 * fit even at the smallest size is left out from the end.
 */
function setRow(row: readonly LabelInRoom[], setting: LabelSetting): readonly PlacedArt[] {
  const all = levelTitles(row.map(({ label, room }) => labelBlocks(label, room, setting)))
  const highestMm = Math.max(...all.map(heightOf))
  return row.flatMap(({ room }, index) => {
    const aboveMm = Math.max(0, room.heightMm - highestMm) / 2
    const within = { ...room, yMm: room.yMm + aboveMm, heightMm: room.heightMm - aboveMm }
    const [first = []] = flowBlocks(all[index]!, within)
    return first.filter(({ art, xMm }) => xMm + art.widthMm <= room.xMm + room.widthMm + 1e-6)
  })
}

/** Each label's blocks with its title moved down to the line on which the lowest of them stands. */
function levelTitles(labels: readonly (readonly Block[])[]): readonly (readonly Block[])[] {
  const lines = labels.map(([title]) => lastLineOf(title))
  const lowestMm = Math.max(...lines)
  const moved = labels.map(([title, ...others], index) => {
    const downMm = lowestMm - lines[index]!
    const art = title!.art.map(line => ({ ...line, yMm: line.yMm + downMm }))
    return { title: { ...title!, art, heightMm: title!.heightMm + downMm }, others }
  })
  const heightMm = Math.max(...moved.map(({ title }) => title.heightMm))
  return moved.map(({ title, others }) => [{ ...title, heightMm }, ...others])
}

/** From a block's top to the line on which its last words stand. */
function lastLineOf(block: Block | undefined): number {
  const last = block?.art.at(-1)
  return last === undefined ? 0 : last.yMm + (last.art.text[0]?.baselineMm ?? 0)
}

function labelBlocks(
  label: StorageLabel,
  room: Box,
  { lettering, titlesMm, ratio }: LabelSetting,
): readonly Block[] {
  const { what, forWhom, from, lines } = label
  const set = { lettering, widthMm: room.widthMm }
  const mostMm = WHAT_MM.most * Math.max(1, ratio)
  const ownMm = Math.min(mostMm, sizeThatFills(what, room, lettering))
  const whatMm = Math.max(WHAT_MM.least, Math.min(ownMm, alikeFor(titlesMm, mostMm)))
  return [
    textBlock({ ...set, text: what, sizeMm: whatMm * Math.min(1, ratio), weight: 'bold', spaceAfterMm: 0 }),
    textBlock({ ...set, text: forWhom, sizeMm: FOR_WHOM_MM * ratio, spaceAfterMm: 1.5 * ratio }),
    textBlock({ ...set, text: from, sizeMm: FROM_MM * ratio, spaceAfterMm: ratio }),
    ...lines.map(text => textBlock({ ...set, text, sizeMm: LINE_MM * ratio, spaceAfterMm: 0.5 * ratio })),
  ]
}

/** The size of all titles that have room for nearly the same. */
function alikeFor(titlesMm: readonly number[], mostMm: number): number {
  const sizes = titlesMm.map(sizeMm => Math.min(mostMm, sizeMm))
  const largest = Math.max(...sizes)
  return Math.min(...sizes.filter(sizeMm => sizeMm >= largest * LEAST_ALIKE))
}

/** The em at which the text in bold is as wide as the room. */
function sizeThatFills(text: string, { widthMm }: Box, lettering: Lettering): number {
  const atMost = lettering.widthMm({ text, sizeMm: WHAT_MM.most, weight: 'bold' })
  // A hair less, because widths are rounded.
  return (WHAT_MM.most * (widthMm - 0.1)) / Math.max(atMost, 0.1)
}

function fits(blocks: readonly Block[], room: Box): boolean {
  const widest = Math.max(...blocks.flatMap(block => block.art.map(({ art }) => art.widthMm)))
  return heightOf(blocks) <= room.heightMm && widest <= room.widthMm + 1e-6
}

function heightOf(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => sum + block.heightMm + block.spaceAfterMm, 0)
}
