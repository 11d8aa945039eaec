import type { LayoutRequest } from '../../../layouts/layout.js'
import type { Size } from '../../geometry.js'
import { failWith, succeed } from '../../outcomes.js'
import type { CardFace } from '../../pieces/faces/face.js'
import {
  canFitAgain,
  type FittedFaces,
  fitFaces,
  largestOnFaces,
  nothingFitted,
} from '../../pieces/faces/fit-faces.js'
import type { FaceLayOut } from '../../pieces/faces/lay-out-face.js'
import type { WordMeasurer } from '../../pieces/word/word-measurer.js'
import type { PrintItem } from '../../plan/plan.js'
import type { Outcome, Success } from '../../problems.js'
import type { Card, CardSet } from '../../sets/card-set.js'
import { dealSet } from '../deal/deal-plan.js'
import { withoutColours } from '../deal/made-from.js'
import { type PreparedItem, prepareItem } from '../deal/prepare-item.js'
import type { KeptStore } from '../kept-store.js'
import { backFaces } from './back-faces.js'
import type { RoomierItem, RoomierItems } from './roomier-items.js'

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
  readonly measureWord: WordMeasurer
  /** For boards that are dealt again with fewer cells. */
  readonly sets: KeptStore<Outcome<CardSet>>
  readonly untold?: true
}

export interface Trial {
  readonly prepared: PreparedItem
  /** Other ways to lay it out. */
  readonly others: RoomierItems
  readonly set: CardSet
  readonly fitting: PieceFitting
  /** Whether no way may take a sheet more than the first on which the words fit. */
  readonly fewest: boolean
  readonly ways: readonly RoomierItem[]
}

export interface Tried {
  readonly way: RoomierItem
  readonly outcome: Success<FittedPieces>
  readonly roomy: boolean
}

/** The first way that leaves room enough; where none does, the first in which the words fit at all. */
export async function firstThatFits({ ways, fewest, ...trial }: Trial): Promise<Tried | undefined> {
  let first: Tried | undefined
  const { large } = trial.prepared.request.type
  const reason = large ? 'so that words in large print have room' : 'so that the words have room'
  for (const way of ways) {
    if (fewest && first !== undefined && way.sheets > first.way.sheets) return first
    const tried = await tryWay(way, trial, reason, { roomy: first !== undefined })
    if (tried?.roomy) return tried
    first ??= tried
  }
  return first
}

/** What a way has to come up to, beside that the words fit. */
export interface Wanted {
  readonly roomy?: boolean
  /** Words no smaller than these. */
  readonly asLargeAs?: FittedPieces
  /** A way on which they cannot be is not tried. */
  readonly mainWordsLarger?: MainWordsLarger
}

export interface MainWordsLarger {
  readonly thanMm: number
  /** How large they could be on pieces of a size, at most. */
  readonly atMost: (piece: Size) => number
}

/** How large the main words of these pieces could be on others, known by their letters before any is laid out. */
export function mainWordsAtMost(
  { request, job }: PreparedItem,
  { fronts }: FittedPieces,
  { measureWord }: Pick<PieceFitting, 'measureWord'>,
): MainWordsLarger['atMost'] {
  return largestOnFaces(fronts.faces, 'main', { ...request, place: job.item.place, measureWord })
}

/** The item laid out this way, if its words fit then and it comes up to what is wanted. */
export async function tryWay(
  way: RoomierItem,
  { prepared, set, fitting: asked }: Pick<Trial, 'prepared' | 'set' | 'fitting'>,
  reason: string,
  { roomy: onlyRoomy = false, asLargeAs, mainWordsLarger }: Wanted = {},
): Promise<Tried | undefined> {
  const { studied, job } = prepared
  const fitting: PieceFitting = { ...asked, untold: true }
  const roomier = prepareItem(studied, { ...job, item: { ...job.item, ...way.changes } })
  if (!roomier.ok) return undefined
  if (mainWordsLarger !== undefined && cannotBeLarger(roomier.value, mainWordsLarger)) return undefined
  const dealt = way.dealsAnew ? dealSet(roomier.value, fitting.sets) : succeed(set)
  if (!dealt.ok || cannotFit(roomier.value, dealt.value)) return undefined
  const longest = await fitPieces(
    roomier.value,
    withLongestWords(dealt.value, roomier.value.request),
    fitting,
  )
  if (!longest.ok || (onlyRoomy && !isRoomy(roomier.value, longest.value.fronts, fitting))) return undefined
  const isTooSmall = (fitted: FittedPieces) => asLargeAs !== undefined && !isAsLarge(fitted, asLargeAs)
  if (isTooSmall(longest.value)) return undefined
  const fit = await fitPieces(roomier.value, dealt.value, fitting)
  if (!fit.ok || isTooSmall(fit.value)) return undefined
  const roomy = isRoomy(roomier.value, fit.value.fronts, fitting)
  const notes = [`Laid out with ${way.says}, ${reason}.`]
  const value = { ...fit.value, changes: way.changes, notes }
  return { way, roomy, outcome: succeed(value, [...dealt.problems, ...fit.problems]) }
}

function cannotBeLarger({ grid }: PreparedItem, { atMost, thanMm }: MainWordsLarger): boolean {
  return atMost(grid.pieceSize) <= thanMm
}

/** Whether no words came out smaller than those. */
function isAsLarge({ fronts }: FittedPieces, those: FittedPieces): boolean {
  return [...those.fronts.fits].every(
    ([group, { sizeMm }]) => (fronts.fits.get(group)?.sizeMm ?? 0) >= sizeMm - 1e-6,
  )
}

export function isPresent({ grid }: PreparedItem, { changes }: RoomierItem): boolean {
  const { division, orientation, options } = changes
  if (options !== undefined || orientation !== grid.orientation || division?.kind !== 'count') return false
  return division.across === grid.columns && division.down === grid.rows
}

/** Whether a piece is too narrow or too low for the letters of the longest word alone: soon known, and often. */
function cannotFit({ request, grid }: PreparedItem, { cards }: CardSet): boolean {
  const { measure, type } = request
  const alone = new Set(cards.flatMap(({ words }) => (words.length === 1 ? words : [])))
  return [...alone].some(word => measure(word.text, type.wordMinimumMm) > grid.pieceSize.widthMm)
}

/** A few pieces that are the first not to fit: whether they do is soon known. */
export function withLongestWords(set: CardSet, { measure }: LayoutRequest): CardSet {
  const widest = ({ words }: Card) => Math.max(0, ...words.map(word => measure(word.text, 1)))
  const cards = set.cards
    .map(card => ({ card, widthMm: widest(card) }))
    .sort((a, b) => b.widthMm - a.widthMm)
    .slice(0, 3)
    .map(({ card }) => card)
  return { ...set, cards }
}

export async function fitPieces(
  prepared: PreparedItem,
  set: CardSet,
  { sets: _, ...fitting }: PieceFitting,
): Promise<Outcome<FittedPieces>> {
  const { layout, grid, job } = prepared
  if (layout.kind !== 'pieces') throw new Error(`${layout.name} has no pieces to fit`)
  const request = withoutColours(prepared.request)
  const faces = layout.faces(request, set, grid.pieceSize)
  if (!faces.ok) return faces
  const place = job.item.place
  const on = set.cards[0]?.kind === 'board' ? 'board' : 'piece'
  const fronts = await fitFaces(faces.value, { ...request, place, on, ...fitting })
  const problems = [...faces.problems, ...fronts.problems]
  if (!fronts.ok) return failWith(problems)
  const back = backFaces(prepared, set)
  if (!back.ok) return failWith([...problems, ...back.problems])
  const backs =
    back.value.length === 0
      ? succeed(nothingFitted)
      : await fitFaces(back.value, { ...request, place, ...fitting })
  if (!backs.ok) return failWith([...problems, ...backs.problems])
  const fitted = { changes: {}, set, fronts: fronts.value, backs: backs.value, notes: [] }
  return succeed(fitted, [...problems, ...back.problems])
}

/**
 * Whether the words have room enough: in ordinary print they are no smaller than is good for a child who learns to read,
 * in large print they could be larger still.
 */
export function isRoomy(
  { request, job }: PreparedItem,
  fronts: FittedFaces<CardFace>,
  { measureWord }: Pick<PieceFitting, 'measureWord'>,
): boolean {
  const { type } = request
  const { large, roomyMm } = type
  if (!large) return (fronts.fits.get('main')?.sizeMm ?? roomyMm) >= roomyMm - 1e-6
  const mainMinimumMm = Math.max(type.mainMinimumMm, roomyMm)
  const wordMaximumMm = Math.max(mainMinimumMm, type.wordMaximumMm)
  const larger = { ...type, wordMinimumMm: roomyMm, mainMinimumMm, wordMaximumMm }
  return canFitAgain(fronts.faces, { ...request, type: larger, place: job.item.place, measureWord })
}
