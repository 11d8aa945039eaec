import type { LayoutRequest } from '../../../layouts/layout.js'
import { failWith, succeed } from '../../outcomes.js'
import type { CardFace } from '../../pieces/faces/face.js'
import { type FittedFaces, fitAgain, fitFaces, nothingFitted } from '../../pieces/faces/fit-faces.js'
import type { FaceLayOut } from '../../pieces/faces/lay-out-face.js'
import type { PrintItem } from '../../plan/plan.js'
import type { Outcome, Problem, Success } from '../../problems.js'
import type { Card, CardSet } from '../../sets/card-set.js'
import { dealSet } from '../deal/deal-plan.js'
import { withoutColours } from '../deal/made-from.js'
import { type PreparedItem, prepareItem } from '../deal/prepare-item.js'
import type { KeptStore } from '../kept-store.js'
import { backFaces } from './back-faces.js'
import { type RoomierItem, roomierItems } from './roomier-items.js'

/** The pieces of an item whose words are known to fit their places. */
export interface FittedPieces {
  /** What was changed of the item so that they do; nothing as a rule. */
  readonly changes: Partial<PrintItem>
  readonly set: CardSet
  readonly fronts: FittedFaces<CardFace>
  /** In the order of the fronts; none where the teacher asked for none. */
  readonly backs: FittedFaces<CardFace>
  /** What was chosen for the teacher, in a plain sentence. */
  readonly notes: readonly string[]
}

export interface PieceFitting {
  readonly layOut: FaceLayOut
  /** For boards that are dealt again with fewer cells. */
  readonly sets: KeptStore<Outcome<CardSet>>
}

/**
 * In large print, what the plan leaves open is divided so that words could be a third larger still: the white around
 * them is part of what makes them readable (our own judgement, no source).
 */
const QUIET = 4 / 3

/**
 * Finds the sizes of an item's words. Where they do not fit, or have too little white in large print, the set is laid
 * out with more room as far as the plan leaves that open; else the problem says what would do.
 */
export async function settlePieces(
  prepared: PreparedItem,
  set: CardSet,
  fitting: PieceFitting,
): Promise<Outcome<FittedPieces>> {
  const asked = await fitPieces(prepared, set, fitting)
  if (asked.ok && isQuiet(prepared, asked.value)) return asked
  const ways = roomierItems(prepared)
  const open = ways.filter(way => way.open)
  const tried = await firstThatFits({ prepared, set, fitting, ways: open })
  if (asked.ok) return tried?.quiet ? tried.outcome : asked
  if (tried !== undefined) return tried.outcome
  const asking = await firstThatFits({ prepared, set, fitting, ways: ways.filter(way => !way.open) })
  return failWith(asking === undefined ? asked.problems : advised(asked.problems, asking.way))
}

interface Trial {
  readonly prepared: PreparedItem
  readonly set: CardSet
  readonly fitting: PieceFitting
  readonly ways: readonly RoomierItem[]
}

interface Tried {
  readonly way: RoomierItem
  readonly outcome: Success<FittedPieces>
  readonly quiet: boolean
}

/** The first way that leaves white enough; where none does, the first in which the words fit at all. */
async function firstThatFits({ prepared, set, fitting, ways }: Trial): Promise<Tried | undefined> {
  const { studied, job } = prepared
  let first: Tried | undefined
  for (const way of ways) {
    const roomier = prepareItem(studied, { ...job, item: { ...job.item, ...way.changes } })
    if (!roomier.ok) continue
    const { request } = roomier.value
    const dealt = way.dealsAnew ? dealSet(roomier.value, fitting.sets) : succeed(set)
    if (!dealt.ok) continue
    const longest = await fitPieces(roomier.value, withLongestWords(dealt.value, request), fitting)
    if (!longest.ok || (first !== undefined && !isQuiet(roomier.value, longest.value))) continue
    const fit = await fitPieces(roomier.value, dealt.value, fitting)
    if (!fit.ok) continue
    const reason = request.type.large ? 'so that words in large print have room' : 'so that the words fit'
    const notes = [`Laid out with ${way.says}, ${reason}.`]
    const quiet = isQuiet(roomier.value, fit.value)
    const value = { ...fit.value, changes: way.changes, notes }
    const tried = { way, quiet, outcome: succeed(value, [...dealt.problems, ...fit.problems]) }
    if (quiet) return tried
    first ??= tried
  }
  return first
}

/** A few pieces that are the first not to fit: whether they do is soon known. */
function withLongestWords(set: CardSet, { measure }: LayoutRequest): CardSet {
  const widest = ({ words }: Card) => Math.max(0, ...words.map(word => measure(word.text, 1)))
  const cards = [...set.cards].sort((a, b) => widest(b) - widest(a)).slice(0, 3)
  return { ...set, cards }
}

async function fitPieces(
  prepared: PreparedItem,
  set: CardSet,
  { layOut }: PieceFitting,
): Promise<Outcome<FittedPieces>> {
  const { layout, grid, job } = prepared
  if (layout.kind !== 'pieces') throw new Error(`${layout.name} has no pieces to fit`)
  const request = withoutColours(prepared.request)
  const faces = layout.faces(request, set, grid.pieceSize)
  if (!faces.ok) return faces
  const place = job.item.place
  const fronts = await fitFaces(faces.value, { ...request, place, layOut })
  const problems = [...faces.problems, ...fronts.problems]
  if (!fronts.ok) return failWith(problems)
  const back = backFaces(prepared, set)
  if (!back.ok) return failWith([...problems, ...back.problems])
  const backs =
    back.value.length === 0
      ? succeed(nothingFitted)
      : await fitFaces(back.value, { ...request, place, layOut })
  if (!backs.ok) return failWith([...problems, ...backs.problems])
  const fitted = { changes: {}, set, fronts: fronts.value, backs: backs.value, notes: [] }
  return succeed(fitted, [...problems, ...back.problems])
}

/** Whether the words of a set in large print could be larger still; always true of other sets. */
function isQuiet({ request, job }: PreparedItem, { fronts }: FittedPieces): boolean {
  const { type } = request
  if (!type.large) return true
  const wordMinimumMm = type.wordMinimumMm * QUIET
  const larger = { ...type, wordMinimumMm, wordMaximumMm: Math.max(wordMinimumMm, type.wordMaximumMm) }
  return fitAgain(fronts.faces, { ...request, type: larger, place: job.item.place }).ok
}

/** The same problems, with the division that would do instead of a general word of advice. */
function advised(problems: readonly Problem[], { says }: RoomierItem): readonly Problem[] {
  const advice = `The words would fit with ${says}; or leave out the longest.`
  return problems.map(problem => (problem.severity === 'error' ? { ...problem, advice } : problem))
}
