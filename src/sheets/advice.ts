/** Ways to save sheets of card, or to have larger cards for as many, told before printing. */
import { type Size, saySize } from '../geometry.js'
import { countSheets, type EstimateRequest } from './estimate.js'
import { divideSheet, type Grid, type GridRequest } from './grid.js'

export interface AdviceRequest extends Omit<EstimateRequest, 'backs'> {
  /** How the sheet was divided. */
  readonly gridRequest: GridRequest
  /**
   * The size in points that the set's words have on a piece of another size, `null` where its contents no longer fit
   * at the least legible size. Left out: any piece will do whose edges are at least three quarters as long.
   */
  readonly wordsOn?: ((piece: Size) => WordsOn | null) | undefined
}

/** What stands on a piece of another size. */
export interface WordsOn {
  /** Undefined where the pieces hold no words. */
  readonly points?: number | undefined
}

export interface Advice {
  /** One plain sentence. */
  readonly text: string
  /** Sheets of card saved; 0 where the gain is larger cards. */
  readonly savedSheets: number
}

/** The most saving first; nothing where the plan cannot do better. */
export function adviseOnSheets(request: AdviceRequest): readonly Advice[] {
  const { grid, wordsOn = atLeast(grid.pieceSize, 0.75) } = request
  const savings = waysToSave(request)
    .flatMap(way => {
      const words = samePieces(grid, way.grid) ? {} : wordsOn(way.grid.pieceSize)
      return words === null ? [] : [{ ...way, words }]
    })
    .slice(0, 3)
    .map(({ how, grid: other, saved, words }) => ({
      text: `${how} would save ${sheetsInWords(saved)}${sizeNote(grid, other, words)}.`,
      savedSheets: saved,
    }))
  return savings.length > 0 ? savings : largerCards(request, countSheets(request))
}

/** The sizes of piece that advice would speak of, other than the piece as it is. */
export function sizesToTry(request: AdviceRequest): readonly Size[] {
  const sizes = waysToSave(request).filter(({ grid }) => !samePieces(request.grid, grid))
  return sizes.map(({ grid }) => grid.pieceSize)
}

function waysToSave(request: AdviceRequest): readonly (Alternative & { readonly saved: number })[] {
  const now = countSheets(request)
  return [...closerDivisions(request), ...otherOrders(request)]
    .map(way => ({ ...way, saved: now - countSheets({ ...request, grid: way.grid, order: way.order }) }))
    .filter(({ saved }) => saved > 0)
    .sort((a, b) => b.saved - a.saved)
}

function atLeast({ widthMm, heightMm }: Size, share: number): (piece: Size) => WordsOn | null {
  const least = { widthMm: widthMm * share, heightMm: heightMm * share }
  return piece => (fitsOn(piece, least) ? {} : null)
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

function samePieces({ pieceSize: before }: Grid, { pieceSize: after }: Grid): boolean {
  return fitsOn(before, after) && fitsOn(after, before)
}

function sizeNote(before: Grid, after: Grid, { points }: WordsOn): string {
  if (samePieces(before, after)) return ''
  const words = points === undefined ? '' : `, words of ${points} pt`
  return ` (cards of ${saySize(after.pieceSize)}${words})`
}

function sheetsInWords(count: number): string {
  return count === 1 ? '1 sheet' : `${count} sheets`
}

function area(size: Size): number {
  return size.widthMm * size.heightMm
}
