/** Cards in ordinary print that fill their sheets better than the layout's own division does. */
import type { Outcome, Success } from '../../problems.js'
import { divideSheet } from '../../sheets/grid.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import { sheetsFor } from './grids-to-try.js'
import type { RoomierItem } from './roomier-items.js'
import { type FittedPieces, isPresent, mainWordsAtMost, type Trial, tryWay } from './try-ways.js'

/** Words so many times larger than is good for a child need not be larger still: our own judgement, no source. */
const LARGE_ENOUGH = 2
/** So much larger is worth another division of the sheet. */
const WORTH_IT = 1.15
/** A longer card is a strip, which does not lie well in a sort or a hand. */
const MOST_LONG = 2.7
/** Of its height, for a card that is lower so that a sheet is saved. */
const LEAST_HEIGHT = 0.75
/** Of their size, for words that are a little smaller so that a sheet is saved. */
const LEAST_WORDS = 0.85
/** Of a sheet: a last one that is fuller than this is no remnant. */
const REMNANT = 1 / 3

type CardsTrial = Omit<Trial, 'ways' | 'fewest'>

/**
 * Where all words are long, and so come out small: wider cards, if they take no sheet more and make the words a good
 * deal larger.
 */
export async function onWiderCards(
  trial: CardsTrial,
  asked: Success<FittedPieces>,
): Promise<Outcome<FittedPieces> | undefined> {
  const { prepared, set } = trial
  const main = asked.value.fronts.fits.get('main')
  if (main === undefined || !isOfCards(prepared, asked)) return undefined
  if (main.sizeMm > prepared.request.type.roomyMm * LARGE_ENOUGH) return undefined
  const sheets = sheetsFor(prepared, prepared.grid, set)
  const atMost = mainWordsAtMost(prepared, asked.value, trial.fitting)
  let best: { readonly sizeMm: number; readonly outcome: Success<FittedPieces> } | undefined
  for (const way of openWays(trial, way => way.sheets === sheets)) {
    const size = pieceSizeOf(prepared, way)
    const isWider = size !== undefined && size.widthMm > prepared.grid.pieceSize.widthMm * WORTH_IT
    if (!isWider || size.widthMm > size.heightMm * MOST_LONG) continue
    const thanMm: number = best?.sizeMm ?? main.sizeMm * WORTH_IT
    const wanted = { asLargeAs: asked.value, mainWordsLarger: { thanMm, atMost } }
    const tried = await tryWay(way, trial, 'so that the words are larger', wanted)
    const sizeMm = tried?.outcome.value.fronts.fits.get('main')?.sizeMm ?? 0
    if (tried?.roomy && sizeMm > thanMm) best = { sizeMm, outcome: tried.outcome }
  }
  return best?.outcome
}

/** Where a few cards would have a sheet of their own: somewhat lower cards that save it, if the words are nearly as large. */
export async function withoutRemnant(
  trial: CardsTrial,
  asked: Success<FittedPieces>,
): Promise<Outcome<FittedPieces> | undefined> {
  const { prepared, set } = trial
  const { grid, job } = prepared
  const sheets = sheetsFor(prepared, grid, set)
  const places = grid.columns * grid.rows
  const onLast = set.cards.length - (sheets - 1) * places
  if (!isOfCards(prepared, asked) || sheets < 2 || onLast > places * REMNANT || job.item.order === 'child')
    return undefined
  const ways = openWays(trial, ({ sheets: taken, changes: { division, orientation } }) => {
    const isLower = division?.kind === 'count' && division.across === grid.columns
    return taken === sheets - 1 && isLower && orientation === grid.orientation
  })
  for (const way of ways) {
    const size = pieceSizeOf(prepared, way)
    if (size === undefined || size.heightMm < grid.pieceSize.heightMm * LEAST_HEIGHT) continue
    const tried = await tryWay(way, trial, 'which saves a sheet of card', { roomy: true })
    if (tried !== undefined && isNearlyAsLarge(tried.outcome.value, asked.value)) return tried.outcome
  }
  return undefined
}

function isNearlyAsLarge({ fronts }: FittedPieces, those: FittedPieces): boolean {
  return [...those.fronts.fits].every(
    ([group, { sizeMm }]) => (fronts.fits.get(group)?.sizeMm ?? 0) >= sizeMm * LEAST_WORDS,
  )
}

/** Cards with a picture keep their shape, which is the picture's too. */
function isOfCards({ layout, request }: PreparedItem, { value: { fronts } }: Success<FittedPieces>): boolean {
  if (fronts.faces.some(({ face }) => 'picture' in face.slots)) return false
  return layout.kind === 'pieces' && layout.perSheet.columns > 1 && !request.type.large && !request.type.named
}

function openWays({ prepared, others }: CardsTrial, isWanted: (way: RoomierItem) => boolean) {
  return others.openGrids().filter(way => !isPresent(prepared, way) && isWanted(way))
}

function pieceSizeOf({ gridRequest }: PreparedItem, { changes: { division, orientation } }: RoomierItem) {
  if (division === undefined) return undefined
  const divided = divideSheet({ ...gridRequest, orientation, division })
  return divided.ok ? divided.value.pieceSize : undefined
}
