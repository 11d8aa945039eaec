import type { PageFace } from '../../../layouts/layout.js'
import { failWith, succeed, type WithProblems, withProblems } from '../../outcomes.js'
import { type FittedFaces, fitFaces, nothingFitted } from '../../pieces/faces/fit-faces.js'
import type { FaceLayOut } from '../../pieces/faces/lay-out-face.js'
import type { WordMeasurer } from '../../pieces/word/word-measurer.js'
import type { Outcome, Problem } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'
import { pageRoom } from '../../sheets/grid.js'
import type { DealtItem, DealtPlan } from '../deal/deal-plan.js'
import { classOf, sizeAsked } from '../deal/item-jobs.js'
import { piecesMadeFrom, placesOf } from '../deal/made-from.js'
import { type PreparedItem, prepareItem } from '../deal/prepare-item.js'
import { weekWithout } from '../deal/week-without.js'
import { byIdentity, type KeptStore } from '../kept-store.js'
import type { StudiedPlan } from '../study/study-plan.js'
import { settlePieces } from './settle-item.js'
import { isExact, mainXHeightMm, smallerThanAsked } from './smaller-than-asked.js'
import type { FittedPieces } from './try-ways.js'

/** An item of which everything is decided: its cards, its paper, the size of every word on fronts, backs and pages. */
export interface SettledItem {
  /** With what was changed so that its words fit. */
  readonly prepared: PreparedItem
  readonly set: CardSet
  readonly pieces: Pick<FittedPieces, 'fronts' | 'backs'>
  readonly pages: FittedFaces<PageFace>
  /** What was chosen for the teacher, in plain sentences. */
  readonly notes: readonly string[]
  /** What a teacher should know of its words, in plain sentences. */
  readonly ofWords: readonly string[]
  /** Whether it is to be made, or only told of on labels and checklists. */
  readonly wanted: boolean
}

/** What the settle step gives. */
export interface SettledPlan {
  readonly studied: StudiedPlan
  readonly items: readonly SettledItem[]
}

export interface Settling {
  readonly layOut: FaceLayOut
  readonly measureWord: WordMeasurer
  readonly sets: KeptStore<Outcome<CardSet>>
  readonly pieces: KeptStore<Outcome<FittedPieces>>
  readonly pages: KeptStore<Outcome<FittedFaces<PageFace>>>
}

/** In which order items are settled, and who is told of each; what comes of them is the same in every order. */
export interface SettlingInTurn {
  /** Names of items that somebody waits for. */
  readonly first?: readonly string[] | undefined
  /** @param done how many were settled before it */
  readonly settledOne?: (item: DealtItem, done: number, outcome: Outcome<SettledItem>) => Promise<void>
}

/** sets → sizes: lays out every face of the plan, fronts, backs and pages, and finds the size of its words. */
export async function settlePlan(
  { studied, items }: DealtPlan,
  settling: Settling,
  { first = [], settledOne = async () => {} }: SettlingInTurn = {},
): Promise<WithProblems<SettledPlan>> {
  const known = new Map<DealtItem, Outcome<SettledItem>>()
  const settle = async (item: DealtItem): Promise<Outcome<SettledItem>> => {
    const outcome = known.get(item) ?? (await settleBesideClass(item, await classOwn(item), settling))
    known.set(item, outcome)
    return outcome
  }
  const classOwn = async ({ prepared: { job } }: DealtItem): Promise<SettledItem | undefined> => {
    const own = classOf(
      job,
      items.map(({ prepared }) => prepared.job),
    )
    const dealt = items.find(({ prepared }) => prepared.job === own)
    const outcome = dealt === undefined ? undefined : await settle(dealt)
    return outcome?.ok ? outcome.value : undefined
  }
  // One after another: all at once would be no faster and would hold every item's workings in memory.
  for (const [done, item] of inOrder(items, first).entries()) await settledOne(item, done, await settle(item))
  const outcomes = items.map(item => ({ item, outcome: known.get(item)! }))
  const settled = outcomes.flatMap(({ outcome }) => (outcome.ok ? [outcome.value] : []))
  const problems = outcomes
    .filter(({ item }) => item.wanted)
    .flatMap(({ item, outcome }) => (outcome.ok ? outcome.problems : leftOut(item, outcome.problems)))
  return withProblems({ studied, items: settled }, problems)
}

function inOrder(items: readonly DealtItem[], first: readonly string[]): readonly DealtItem[] {
  if (first.length === 0) return items
  const rank = ({ prepared }: DealtItem) => (first.indexOf(prepared.job.name) + 1 || Infinity) - 1
  return items.toSorted((one, other) => (rank(one) === rank(other) ? 0 : rank(one) - rank(other)))
}

/**
 * What the class's print has room for, a child's large print may not have: then nothing of it is made for that group, with
 * a warning, and the rest of the plan is. A group that the item names stays an error.
 */
function leftOut({ prepared }: DealtItem, problems: readonly Problem[]): readonly Problem[] {
  const { item, group } = prepared.job
  if (item.ofWeek) return weekWithout(prepared.job, problems)
  if (group?.size === undefined || item.groups !== undefined) return problems
  return problems.map(problem => ({
    ...problem,
    severity: 'warning',
    message: `nothing is made for ${group.name}: ${problem.message}`,
  }))
}

/** A group's words, no smaller than the class's own where the plan leaves room for that; where they are, it is said. */
async function settleBesideClass(
  dealt: DealtItem,
  own: SettledItem | undefined,
  settling: Settling,
): Promise<Outcome<SettledItem>> {
  const floor = own === undefined ? undefined : withFloor(dealt, own)
  const raised = floor === undefined ? undefined : await settleItem(floor, settling)
  const settled = raised?.ok ? raised : await settleItem(dealt, settling)
  if (!settled.ok) return settled
  return succeed(settled.value, [...settled.problems, ...smallerThanAsked(settled.value, own)])
}

/** The item with its words held to the class's size; undefined where the plan says `exactly`, or nothing would change. */
function withFloor(dealt: DealtItem, own: SettledItem): DealtItem | undefined {
  const { studied, job, request } = dealt.prepared
  const floorXHeightMm = mainXHeightMm(own)
  if (floorXHeightMm === undefined || isExact(sizeAsked(job))) return undefined
  if (floorXHeightMm <= request.type.mainMinimumMm * request.typeface.metrics.xHeight) return undefined
  const prepared = prepareItem(studied, { ...job, floorXHeightMm })
  return prepared.ok ? { ...dealt, prepared: prepared.value } : undefined
}

async function settleItem(dealt: DealtItem, settling: Settling): Promise<Outcome<SettledItem>> {
  const { wanted, ofWords = [] } = dealt
  const pieces = await fittedPieces(dealt, settling)
  if (!pieces.ok) return pieces
  const { changes, set, notes, ...fitted } = pieces.value
  const prepared = withChanges(dealt.prepared, changes)
  if (!prepared.ok) return prepared
  const pages = await fittedPages(prepared.value, set, settling)
  const problems = [...pieces.problems, ...pages.problems]
  if (!pages.ok) return failWith(problems)
  return succeed(
    { prepared: prepared.value, set, pieces: fitted, pages: pages.value, notes, ofWords, wanted },
    problems,
  )
}

async function fittedPieces(
  { prepared, set }: DealtItem,
  { layOut, measureWord, sets, pieces }: Settling,
): Promise<Outcome<FittedPieces>> {
  if (prepared.layout.kind !== 'pieces')
    return succeed({ changes: {}, set, fronts: nothingFitted, backs: nothingFitted, notes: [] })
  const from = { parts: [byIdentity(set), ...piecesMadeFrom(prepared)], places: placesOf(prepared) }
  return pieces.onceAsync(from, () => settlePieces(prepared, set, { layOut, measureWord, sets }))
}

function withChanges(prepared: PreparedItem, changes: FittedPieces['changes']): Outcome<PreparedItem> {
  if (Object.keys(changes).length === 0) return succeed(prepared)
  const { studied, job } = prepared
  // Its problems were told when it was dealt.
  const changed = prepareItem(studied, { ...job, item: { ...job.item, ...changes } })
  return changed.ok ? succeed(changed.value) : changed
}

/** Pages tell of the set, and show the key in its colours. */
async function fittedPages(
  prepared: PreparedItem,
  set: CardSet,
  { layOut, measureWord, pages }: Settling,
): Promise<Outcome<FittedFaces<PageFace>>> {
  const { layout, request, grid, job } = prepared
  if (layout.kind === 'sheets') return succeed(nothingFitted)
  const parts = [byIdentity(set), request.marks, ...piecesMadeFrom(prepared)]
  return pages.onceAsync({ parts, places: placesOf(prepared) }, async () => {
    const room = pageRoom(grid)
    const faces = layout.kind === 'pages' ? layout.pages(request, room) : layout.pages(request, set, room)
    return faces.length === 0
      ? succeed(nothingFitted)
      : fitFaces(faces, { ...request, place: job.item.place, on: 'page', layOut, measureWord })
  })
}
