/** What a page of rows says, block by block in the order on paper, for a reader who goes through it by ear. */
import type { Band, BandCells, TextRun } from '../../pieces/piece.js'
import type { Sheet } from '../../sheets/sheet.js'

export type PageBlock = TextBlock | TableBlock

export interface TextBlock {
  readonly kind: 'heading' | 'paragraph'
  /** On the page, in reading order. */
  readonly runs: readonly TextRun[]
}

export interface TableBlock {
  readonly kind: 'table'
  readonly rows: readonly (readonly TableCell[])[]
}

export interface TableCell {
  /** The heading of its column or of its row. */
  readonly heads?: 'Column' | 'Row'
  readonly runs: readonly TextRun[]
}

/** @returns nothing for a sheet that is no page of rows */
export function pageBlocks({ furniture, bands }: Sheet): readonly PageBlock[] {
  if (bands === undefined) return []
  const runs = furniture.flatMap(({ art, xMm, yMm }) =>
    art.text
      .filter(run => run.text !== '')
      .map(run => ({ ...run, xMm: run.xMm + xMm, baselineMm: run.baselineMm + yMm })),
  )
  const firstMm = bands[0]?.yMm ?? Number.POSITIVE_INFINITY
  const below = bands.map(band => ({
    band,
    runs: runs.filter(run => middleOf(run) >= firstMm && bandOf(bands, run) === band),
  }))
  const blocks: PageBlock[] = [...headingBlocks(runs.filter(run => middleOf(run) < firstMm))]
  for (const { band, runs } of below) {
    const last = blocks.at(-1)
    if (band.cells === undefined) {
      if (runs.length > 0) blocks.push({ kind: 'paragraph', runs: inReadingOrder(runs) })
    } else if (last?.kind === 'table' && isSameTable(last, band.cells))
      blocks[blocks.length - 1] = { ...last, rows: [...last.rows, cellsOf(band.cells, runs)] }
    else blocks.push({ kind: 'table', rows: [cellsOf(band.cells, runs)] })
  }
  return blocks
}

/** A row of other columns, or one with headings again, begins another table. */
function isSameTable({ rows }: TableBlock, { leftsMm, headings }: BandCells): boolean {
  return rows.at(-1)!.length === leftsMm.length && headings !== 'all'
}

/** The largest letters are the page's title. */
function headingBlocks(runs: readonly TextRun[]): readonly TextBlock[] {
  const largest = Math.max(...runs.map(run => run.sizeMm))
  const [title, others] = [
    runs.filter(run => run.sizeMm === largest),
    runs.filter(run => run.sizeMm !== largest),
  ]
  return [
    { kind: 'heading' as const, runs: inReadingOrder(title) },
    { kind: 'paragraph' as const, runs: inReadingOrder(others) },
  ].filter(block => block.runs.length > 0)
}

function cellsOf({ leftsMm, headings }: BandCells, runs: readonly TextRun[]): readonly TableCell[] {
  return leftsMm.map((_, index) => {
    const held = inReadingOrder(runs.filter(run => columnOf(leftsMm, run) === index))
    if (headings === 'all') return { heads: 'Column', runs: held }
    return headings === index ? { heads: 'Row', runs: held } : { runs: held }
  })
}

function columnOf(leftsMm: readonly number[], { xMm, widthMm }: TextRun): number {
  const middleMm = xMm + Math.min(widthMm, 1) / 2
  return Math.max(
    0,
    leftsMm.findLastIndex(left => left <= middleMm),
  )
}

function bandOf(bands: readonly Band[], run: TextRun): Band | undefined {
  return bands.findLast(band => band.yMm <= middleOf(run))
}

/** Half the height of a small letter above the baseline, roughly. */
function middleOf({ baselineMm, sizeMm }: TextRun): number {
  return baselineMm - sizeMm * 0.25
}

function inReadingOrder(runs: readonly TextRun[]): readonly TextRun[] {
  return [...runs].sort((a, b) =>
    Math.abs(a.baselineMm - b.baselineMm) < Math.min(a.sizeMm, b.sizeMm) / 2
      ? a.xMm - b.xMm
      : a.baselineMm - b.baselineMm,
  )
}
