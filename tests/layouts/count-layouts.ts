import type { PrintedItem } from '../../src/files/printed-plan.js'
import { keepWork } from '../../src/pipeline/kept-work.js'
import { formatProblem } from '../../src/problems.js'
import { marshWithClues, printAll } from './print-item.js'

/** What the items print, and how often satori laid something out for it. */
export async function countLayouts(items: readonly string[], plan = marshWithClues) {
  const kept = keepWork()
  const printed = await printAll(items, plan, kept)
  if (!printed.ok) throw new Error(printed.problems.map(formatProblem).join('\n'))
  return { printed: printed.value, count: kept.done().layouts }
}

/** Fronts and backs, cards with a word and cards with a text: pieces of one shape differ in what fills their slots. */
function shapesOf({ sheets }: PrintedItem): number {
  const shapes = sheets.flatMap(({ side, pieces }) =>
    pieces.map(({ piece }) => `${side} ${piece.kind} ${piece.fontPt === undefined ? 'text' : 'word'}`),
  )
  return new Set(shapes).size
}

/**
 * A board alone on its sheet is laid out once more, to see whether its words are larger on paper that is turned, unless
 * they are large enough.
 */
function turnsTried({ sheets, notes }: PrintedItem, item: string): number {
  if (item.includes('orientation')) return 0
  if (notes.some(note => note.endsWith('so that its words are larger.'))) return 1
  const fronts = sheets.filter(({ side, pieces }) => side === 'front' && pieces.length > 0)
  const isSmall = fronts.every(
    ({ pieces: [first, ...more] }) => more.length === 0 && (first?.piece.xHeightMm ?? 99) <= 6,
  )
  return fronts.length > 0 && isSmall ? 1 : 0
}

/** Pages that a layout makes; the cover is put together without satori. */
function pagesOf({ sheets }: PrintedItem): number {
  return sheets.filter(({ kind }) => kind !== 'pieces' && kind !== 'cover').length
}

/** How often satori lays out what the item prints, which is once for each shape. */
export function layoutsNeeded(printed: PrintedItem, item: string): number {
  return shapesOf(printed) + turnsTried(printed, item) + pagesOf(printed)
}
