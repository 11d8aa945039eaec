/** The cover of an item or of a whole plan: what is in it, how to cut it, a ruler, and what to be careful of. */
import type { Box, Size } from '../../geometry.js'
import type { PlacedArt } from '../../pieces/piece.js'
import { fewestPages } from '../../pieces/text/fewest-pages.js'
import type { CuttingPlan } from '../cutting-plan.js'
import type { Grid } from '../grid.js'
import type { Sheet } from '../sheet.js'
import { cautions } from './cautions.js'
import { type Block, flowBlocks, flowEvenly, textBlock } from './column.js'
import { drawCuttingDiagram } from './cutting-diagram.js'
import { type CoverKeySetting, coverKeySettings } from './key-block.js'
import type { Lettering } from './lettering.js'
import { rulerBlock } from './ruler.js'

/** A line of the list of contents. */
export interface CoverEntry {
  /** Name of the set: `bingo, Otters`. */
  readonly name: string
  /** What it holds: `24 boards, 5 × 5`. */
  readonly holds: string
  readonly sheetsOfCard: number
}

/** A division of the sheet that some of the sets share. */
export interface CoverCutting {
  /** What is cut that way: `word cards, open sort`. */
  readonly name: string
  readonly grid: Grid
  readonly plan: CuttingPlan
}

export interface CoverRequest {
  readonly planTitle: string
  /** What the cover goes with, as a title. */
  readonly title: string
  /** The plan, the class: each a line; may be empty. */
  readonly subtitles: readonly string[]
  readonly entries: readonly CoverEntry[]
  /** Pages that go with the sets, on paper: `how to play`, `answers`. */
  readonly onPaper?: readonly string[]
  readonly cuttings: readonly CoverCutting[]
  /** The words of the set, in order; may be empty. */
  readonly words: readonly string[]
  /** Rows of the key of marks, which may be set closer; may be empty. */
  readonly key?: (setting: CoverKeySetting) => readonly Block[]
  /** Cautions beside the usual ones, e.g. on large print. */
  readonly moreCautions?: readonly string[]
  readonly lettering: Lettering
  readonly sheetSize: Size
  /** Within the margins. */
  readonly room: Box
}

const TITLE_MM = 8
const SUBTITLE_MM = 5
const HEADING_MM = 4.6
const TEXT_MM = 3.8

export function coverSheets(request: CoverRequest): readonly Sheet[] {
  const title = `${request.planTitle}: ${request.title}, cover`
  const column = coverColumn(request.room)
  const settings = coverKeySettings.flatMap(setting => [
    { setting, gapMm: GAP_MM },
    { setting, gapMm: CLOSE_GAP_MM },
  ])
  const pages = fewestPages(settings, setting => {
    const blocks = coverBlocks({ ...request, room: column }, setting)
    return inColumns(flowEvenly(blocks, column), request.room, column)
  })
  return pages.map((furniture, index) => ({
    widthMm: request.sheetSize.widthMm,
    heightMm: request.sheetSize.heightMm,
    number: index + 1,
    side: 'front',
    kind: 'cover',
    title: pages.length === 1 ? title : `${title}, page ${index + 1} of ${pages.length}`,
    pieces: [],
    cuts: [],
    furniture,
  }))
}

/** Wider rooms have their text in two columns, which are easier to read and save a page. */
const TWO_COLUMNS_FROM_MM = 250
const GUTTER_MM = 12

/** The column that a cover's text is set in: all blocks of a cover, its key's too, are no wider. */
export function coverColumn(room: Box): Box {
  return room.widthMm < TWO_COLUMNS_FROM_MM ? room : { ...room, widthMm: (room.widthMm - GUTTER_MM) / 2 }
}

function inColumns(
  flowed: readonly (readonly PlacedArt[])[],
  room: Box,
  column: Box,
): readonly (readonly PlacedArt[])[] {
  const stepMm = column.widthMm + GUTTER_MM
  const columns = column.widthMm < room.widthMm ? 2 : 1
  const pages: PlacedArt[][] = []
  for (const [index, art] of flowed.entries()) {
    const across = index % columns
    if (across === 0) pages.push([])
    pages.at(-1)!.push(...art.map(placed => ({ ...placed, xMm: placed.xMm + across * stepMm })))
  }
  return pages
}

/** Between the parts of a cover; closer where that saves a page. */
const GAP_MM = 3
const CLOSE_GAP_MM = 1

function coverBlocks(
  request: CoverRequest,
  { setting, gapMm }: { readonly setting: CoverKeySetting; readonly gapMm: number },
): readonly Block[] {
  const { title, subtitles, entries, onPaper = [], cuttings, words, lettering, room } = request
  const key = request.key?.(setting) ?? []
  const set = { lettering, widthMm: room.widthMm }
  const text = (line: string, spaceAfterMm = 1) =>
    textBlock({ ...set, text: line, sizeMm: TEXT_MM, spaceAfterMm })
  const heading = (line: string) =>
    textBlock({
      ...set,
      text: line,
      sizeMm: HEADING_MM,
      weight: 'bold',
      spaceAfterMm: 1.5,
      keepsWithNext: true,
    })
  const total = entries.reduce((sum, entry) => sum + entry.sheetsOfCard, 0)
  return [
    textBlock({ ...set, text: title, sizeMm: TITLE_MM, weight: 'bold', spaceAfterMm: 1.5 }),
    ...subtitles.map(line => textBlock({ ...set, text: line, sizeMm: SUBTITLE_MM, spaceAfterMm: 1 })),
    gap(gapMm),
    heading('What is in it'),
    ...entries.map(entry => text(`${entry.name}: ${entry.holds}, ${sheetsInWords(entry.sheetsOfCard)}`)),
    ...(entries.length > 1 ? [text(`In all: ${sheetsInWords(total)}`)] : []),
    ...(onPaper.length > 0 ? [text(`On paper: ${onPaper.join(', ')}`)] : []),
    gap(gapMm),
    ...(words.length > 0 ? [heading('The words'), text(words.join(' · ')), gap(gapMm)] : []),
    ...(key.length > 0 ? [heading('The key'), ...key, gap(gapMm)] : []),
    heading('Take care'),
    ...together([...cautions, ...(request.moreCautions ?? [])].map(line => text(line))),
    gap(gapMm),
    heading('Is it true to size?'),
    rulerBlock({ lettering, widthMm: room.widthMm }),
    ...(cuttings.length > 0 ? [heading('How to cut'), { ...text(PILE_ADVICE, 2), keepsWithNext: true }] : []),
    ...cuttings.flatMap(cutting => cuttingBlocks(cutting, request)),
  ]
}

/** How many sheets a trimmer takes at once: common practice, no source. */
const PILE_ADVICE =
  'Cut only as many sheets at once as your trimmer takes cleanly, often about five of card. Lay the little piles of the next five under those of the first.'

/** Narrower than this, the steps stand under the diagram and not beside it. */
const BESIDE_FROM_MM = 120

/** Larger paper takes more cuts, and has room for a larger diagram. */
const LARGE_PAGE_MM = 300

/** The diagram on the left, the steps on its right. */
function cuttingBlocks(cutting: CoverCutting, { lettering, room }: CoverRequest): readonly Block[] {
  const { name, grid, plan } = cutting
  const beside = room.widthMm >= BESIDE_FROM_MM
  const longestMm = Math.min(
    room.heightMm > LARGE_PAGE_MM ? 60 : 40,
    beside ? room.widthMm / 3 : room.heightMm / 2,
  )
  const diagram = drawCuttingDiagram({ grid, plan, lettering, longestMm })
  const leftMm = beside ? diagram.widthMm + 6 : 0
  const column = { lettering, widthMm: room.widthMm - leftMm, sizeMm: TEXT_MM, spaceAfterMm: 1 }
  const steps = [
    textBlock({ ...column, text: `${name}: ${plan.cuts} straight cuts a pile`, weight: 'bold' }),
    ...plan.steps.map((step, index) => textBlock({ ...column, text: `${index + 1}. ${step.text}` })),
  ]
  if (!beside) {
    return [{ art: diagram.art, heightMm: diagram.heightMm, spaceAfterMm: 2 }, ...steps, gap(5)]
  }
  const box = { xMm: leftMm, yMm: 0, widthMm: column.widthMm, heightMm: Number.POSITIVE_INFINITY }
  const stepsMm = steps.reduce((sum, step) => sum + step.heightMm + step.spaceAfterMm, 0)
  return [
    {
      art: [...diagram.art, ...flowBlocks(steps, box).flat()],
      heightMm: Math.max(diagram.heightMm, stepsMm),
      spaceAfterMm: 5,
    },
  ]
}

/** Blocks that are not parted by the end of a column or a page. */
function together(blocks: readonly Block[]): readonly Block[] {
  return blocks.map((block, index) => ({ ...block, keepsWithNext: index < blocks.length - 1 }))
}

function gap(mm: number): Block {
  return { art: [], heightMm: 0, spaceAfterMm: mm }
}

function sheetsInWords(count: number): string {
  return count === 1 ? '1 sheet of card' : `${count} sheets of card`
}
