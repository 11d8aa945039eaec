/** Ways to save sheets of card, or to have larger cards for as many, told before printing. */
import { type Size, saySize } from '../geometry.js'
import { countSheets, type EstimateRequest } from './estimate.js'
import { divideSheet, type Grid, type GridRequest } from './grid.js'

export interface AdviceRequest extends Omit<EstimateRequest, 'backs'> {
  /** How the sheet was divided. */
  readonly gridRequest: GridRequest
  /** The smallest piece on which the longest word still fits; left out: no edge shrinks by more than a quarter. */
  readonly smallestPiece?: Size | undefined
}

export interface Advice {
  /** One plain sentence. */
  readonly text: string
  /** Sheets of card saved; 0 where the gain is larger cards. */
  readonly savedSheets: number
}

/** The most saving first; nothing where the plan cannot do better. */
export function adviseOnSheets(request: AdviceRequest): readonly Advice[] {
  const { grid, smallestPiece } = request
  const now = countSheets(request)
  const least = smallestPiece ?? {
    widthMm: grid.pieceSize.widthMm * 0.75,
    heightMm: grid.pieceSize.heightMm * 0.75,
  }
  const savings = [...closerDivisions(request), ...otherOrders(request)]
    .filter(({ grid: other }) => fitsOn(other.pieceSize, least))
    .map(({ how, grid: other, order }) => ({
      how,
      other,
      saved: now - countSheets({ ...request, grid: other, order }),
    }))
    .filter(({ saved }) => saved > 0)
    .sort((a, b) => b.saved - a.saved)
    .slice(0, 3)
    .map(({ how, other, saved }) => ({
      text: `${how} would save ${sheetsInWords(saved)}${sizeNote(grid, other)}.`,
      savedSheets: saved,
    }))
  return savings.length > 0 ? savings : largerCards(request, now)
}

interface Alternative {
  readonly how: string
  readonly grid: Grid
  readonly order: EstimateRequest['order']
}

/** One or two more across or down, the paper turned, or the gap closed. */
function closerDivisions({ grid, gridRequest, order }: AdviceRequest): readonly Alternative[] {
  const { columns, rows, orientation, gapMm } = grid
  const turned = orientation === 'portrait' ? 'landscape' : 'portrait'
  const tries: readonly { readonly how: string; readonly change: Partial<GridRequest> }[] =
    gridRequest.division.kind === 'card'
      ? [{ how: `${turned} paper`, change: { orientation: turned } }]
      : [1, 2].flatMap(more => [
          { how: `${columns + more} across`, change: byCount(columns + more, rows, orientation) },
          { how: `${rows + more} down`, change: byCount(columns, rows + more, orientation) },
        ])
  const closed = gapMm > 0 ? [{ how: 'no gap', change: { gapMm: 0 } }] : []
  return [...tries, ...closed].flatMap(({ how, change }) => {
    const outcome = divideSheet({ ...gridRequest, ...change })
    return outcome.ok ? [{ how, grid: outcome.value, order }] : []
  })
}

function otherOrders({ grid, order }: AdviceRequest): readonly Alternative[] {
  return order === 'child' ? [{ how: '`order: stack`', grid, order: 'stack' }] : []
}

/** Where places stay empty anyway: the largest cards that need no more sheets. */
function largerCards(request: AdviceRequest, now: number): readonly Advice[] {
  const { grid, gridRequest } = request
  if (gridRequest.division.kind === 'card' || now === 0) return []
  const fewer = [
    [grid.columns - 1, grid.rows],
    [grid.columns, grid.rows - 1],
    [grid.columns - 1, grid.rows - 1],
  ] as const
  const larger = fewer
    .filter(([across, down]) => across > 0 && down > 0)
    .flatMap(([across, down]) => {
      const outcome = divideSheet({ ...gridRequest, ...byCount(across, down, grid.orientation) })
      return outcome.ok ? [outcome.value] : []
    })
    .filter(other => countSheets({ ...request, grid: other }) === now)
    .sort((a, b) => area(b.pieceSize) - area(a.pieceSize))
  const [best] = larger
  if (best === undefined) return []
  const text = `${best.columns} across and ${best.rows} down would give larger cards (${saySize(best.pieceSize)}) on as many sheets.`
  return [{ text, savedSheets: 0 }]
}

function byCount(across: number, down: number, orientation: Grid['orientation']): Partial<GridRequest> {
  return { orientation, division: { kind: 'count', across, down } }
}

function fitsOn(piece: Size, least: Size): boolean {
  return piece.widthMm >= least.widthMm - 1e-6 && piece.heightMm >= least.heightMm - 1e-6
}

function sizeNote(before: Grid, after: Grid): string {
  const same = fitsOn(before.pieceSize, after.pieceSize) && fitsOn(after.pieceSize, before.pieceSize)
  return same ? '' : ` (cards of ${saySize(after.pieceSize)})`
}

function sheetsInWords(count: number): string {
  return count === 1 ? '1 sheet' : `${count} sheets`
}

function area(size: Size): number {
  return size.widthMm * size.heightMm
}
