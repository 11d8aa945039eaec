import { failWith } from '../../outcomes.js'
import type { Outcome, Problem, Success } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import { onWiderCards, withoutRemnant } from './cards-of-other-sizes.js'
import { sheetsFor } from './grids-to-try.js'
import { type RoomierItem, roomierItems } from './roomier-items.js'
import {
  type FittedPieces,
  firstThatFits,
  fitPieces,
  isPresent,
  isRoomy,
  mainWordsAtMost,
  type PieceFitting,
  type Trial,
  tryWay,
} from './try-ways.js'

/**
 * Finds the sizes of an item's words. Words of a size that the teacher named in large print stand on the fewest sheets
 * that hold them at that size. Other words that do not fit, or have too little room, or all of which one long word makes
 * smaller, are laid out otherwise as far as the plan leaves that open; else the problem says what would do.
 */
export async function settlePieces(
  prepared: PreparedItem,
  set: CardSet,
  fitting: PieceFitting,
): Promise<Outcome<FittedPieces>> {
  const asked = await fitPieces(prepared, set, { ...fitting, untold: true })
  const { type } = prepared.request
  const fewest = type.large && type.named
  const askedWell = asked.ok && isRoomy(prepared, asked.value.fronts, fitting)
  const others = roomierItems(prepared, set)
  const trial = { prepared, set, others, fitting, fewest }
  if (asked.ok && askedWell && !fewest)
    return (
      (await onPaperTurned(trial, asked)) ??
      (await withLongWordEased(trial, asked)) ??
      (await onFewerSheets(trial, asked)) ??
      (await onWiderCards(trial, asked)) ??
      (await withoutRemnant(trial, asked)) ??
      asked
    )
  const sheets = sheetsFor(prepared, prepared.grid, set)
  const tried = await firstThatFits({
    ...trial,
    ways: fewest ? others.open() : others.open().filter(way => way.sheets >= sheets),
  })
  if (tried !== undefined && isPresent(prepared, tried.way) && asked.ok) return asked
  if (asked.ok)
    return tried !== undefined && (tried.roomy || tried.way.sheets < sheets) ? tried.outcome : asked
  if (tried !== undefined) return tried.outcome
  const advised = await firstThatFits({ ...trial, ways: others.asking() })
  const { problems } = await fitPieces(prepared, set, fitting)
  return failWith(advised === undefined ? problems : withAdvice(problems, advised.way))
}

/** Sizes that one word makes so much smaller are worth another division of the sheet (our own judgement, no source). */
const MUCH_LARGER = 1.2
const WORTH_IT = 1.15

/**
 * Where one long word makes all others a good deal smaller: the division of the sheet that takes no more sheets and
 * gives it a wider card, if that makes all words a good deal larger.
 */
async function withLongWordEased(
  { prepared, set, others, fitting }: Omit<Trial, 'ways' | 'fewest'>,
  asked: Success<FittedPieces>,
): Promise<Outcome<FittedPieces> | undefined> {
  const main = asked.value.fronts.fits.get('main')
  const decider = prepared.request.type.named ? undefined : main?.decider()
  if (main === undefined || decider?.sizeWithoutMm === undefined) return undefined
  if (decider.sizeWithoutMm < main.sizeMm * MUCH_LARGER) return undefined
  const sheets = sheetsFor(prepared, prepared.grid, set)
  const ways = others.openGrids().filter(way => way.sheets === sheets)
  const atMost = mainWordsAtMost(prepared, asked.value, fitting)
  let best: { readonly sizeMm: number; readonly outcome: Success<FittedPieces> } | undefined
  for (const way of ways) {
    if (isPresent(prepared, way)) continue
    const thanMm: number = best?.sizeMm ?? main.sizeMm * WORTH_IT
    const reason = `so that "${decider.word}" does not make all words smaller`
    const wanted = { mainWordsLarger: { thanMm, atMost } }
    const tried = await tryWay(way, { prepared, set, fitting }, reason, wanted)
    const sizeMm = tried?.outcome.value.fronts.fits.get('main')?.sizeMm ?? 0
    if (tried?.roomy && sizeMm > thanMm) best = { sizeMm, outcome: tried.outcome }
  }
  return best?.outcome
}

/** Sizes are told apart by quarters of a point. */
const ROUNDING_MM = 1e-3

/** Words so many times larger than is good for a child need not be larger still: our own judgement, no source. */
const LARGE_ENOUGH = 2

/** A board alone on its sheet whose words are a good deal larger when the paper is turned, if the plan leaves that open. */
async function onPaperTurned(
  { prepared, set, others, fitting }: Omit<Trial, 'ways' | 'fewest'>,
  asked: Success<FittedPieces>,
): Promise<Outcome<FittedPieces> | undefined> {
  const { grid, request } = prepared
  const main = asked.value.fronts.fits.get('main')
  if (main === undefined || grid.columns * grid.rows > 1 || request.type.named) return undefined
  if (main.sizeMm > request.type.roomyMm * LARGE_ENOUGH) return undefined
  const way = others
    .openGrids()
    .find(
      ({ changes: { division, orientation } }) =>
        orientation !== grid.orientation &&
        division?.kind === 'count' &&
        division.across === 1 &&
        division.down === 1,
    )
  if (way === undefined) return undefined
  const tried = await tryWay(way, { prepared, set, fitting }, 'so that its words are larger')
  const sizeMm = tried?.outcome.value.fronts.fits.get('main')?.sizeMm ?? 0
  return tried?.roomy && sizeMm > main.sizeMm * WORTH_IT ? tried.outcome : undefined
}

/**
 * Cards in large print that need not be as high or as wide as the layout has them for their words to be as large: the
 * division of the sheet that takes the fewest sheets. Strips and boards keep theirs, because a child writes on them.
 */
async function onFewerSheets(
  { prepared, set, others, fitting }: Omit<Trial, 'ways' | 'fewest'>,
  asked: Success<FittedPieces>,
): Promise<Outcome<FittedPieces> | undefined> {
  const { layout, request, grid } = prepared
  const isCards = layout.kind === 'pieces' && layout.perSheet.columns > 1
  if (!request.type.large || !isCards) return undefined
  const sheets = sheetsFor(prepared, grid, set)
  const ways = others.openGrids().filter(way => way.sheets < sheets)
  const atMost = mainWordsAtMost(prepared, asked.value, fitting)
  const thanMm = (asked.value.fronts.fits.get('main')?.sizeMm ?? 0) - ROUNDING_MM
  for (const way of ways) {
    const wanted = { roomy: true, asLargeAs: asked.value, mainWordsLarger: { thanMm, atMost } }
    const reason = 'because the words are as large on fewer sheets'
    const tried = await tryWay(way, { prepared, set, fitting }, reason, wanted)
    if (tried?.roomy) return tried.outcome
  }
  return undefined
}

/** The same problems, with the division that would do instead of a general word of advice. */
function withAdvice(problems: readonly Problem[], { says }: RoomierItem): readonly Problem[] {
  const advice = `The words would fit with ${says}; or leave out the longest.`
  return problems.map(problem => (problem.severity === 'error' ? { ...problem, advice } : problem))
}
