import type { LayoutRequest } from '../../layouts/layout.js'
import { failWith, succeed } from '../outcomes.js'
import type { CardFace } from '../pieces/faces/face.js'
import { type FittedFaces, fitAgain, fitFaces } from '../pieces/faces/fit-faces.js'
import type { Outcome, Problem } from '../problems.js'
import type { Card, CardSet } from '../sets/card-set.js'
import { backFaces } from './draw-backs.js'
import { facesOf } from './faces-of.js'
import { type PreparedItem, prepareItem } from './prepare-item.js'
import { type RoomierItem, roomierItems } from './roomier-items.js'

/** An item whose words are known to fit their places. */
export interface SettledItem {
  readonly prepared: PreparedItem
  readonly set: CardSet
  readonly fitted: FittedFaces<CardFace>
  /** What was chosen for the teacher, in a plain sentence. */
  readonly notes: readonly string[]
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
export async function settleItem(prepared: PreparedItem, set: CardSet): Promise<Outcome<SettledItem>> {
  const asked = await fitItem(prepared, set)
  if (asked.ok && isQuiet(asked.value)) return asked
  const ways = roomierItems(prepared)
  const tried = await firstThatFits(
    prepared,
    set,
    ways.filter(way => way.open),
  )
  if (asked.ok) return tried?.quiet ? tried.outcome : asked
  if (tried !== undefined) return tried.outcome
  const asking = await firstThatFits(
    prepared,
    set,
    ways.filter(way => !way.open),
  )
  return failWith(asking === undefined ? asked.problems : advised(asked.problems, asking.way))
}

interface Tried {
  readonly way: RoomierItem
  readonly outcome: Outcome<SettledItem> & { readonly ok: true }
  readonly quiet: boolean
}

/** The first way that leaves white enough; where none does, the first in which the words fit at all. */
async function firstThatFits(
  { studied, job }: PreparedItem,
  set: CardSet,
  ways: readonly RoomierItem[],
): Promise<Tried | undefined> {
  let first: Tried | undefined
  for (const way of ways) {
    const prepared = prepareItem(studied, { ...job, item: way.item })
    if (!prepared.ok || prepared.value.layout.kind !== 'pieces') continue
    const { layout, request } = prepared.value
    const dealt = way.dealsAnew ? layout.set(request) : succeed(set)
    if (!dealt.ok) continue
    const longest = await fitItem(prepared.value, withLongestWords(dealt.value, request))
    if (!longest.ok || (first !== undefined && !isQuiet(longest.value))) continue
    const fit = await fitItem(prepared.value, dealt.value)
    if (!fit.ok) continue
    const reason = request.type.large ? 'so that words in large print have room' : 'so that the words fit'
    const value = { ...fit.value, notes: [`Laid out with ${way.says}, ${reason}.`] }
    const tried: Tried = {
      way,
      outcome: succeed(value, [...dealt.problems, ...fit.problems]),
      quiet: isQuiet(fit.value),
    }
    if (tried.quiet) return tried
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

async function fitItem(prepared: PreparedItem, set: CardSet): Promise<Outcome<SettledItem>> {
  const { layout, request, grid } = prepared
  if (layout.kind !== 'pieces') throw new Error(`${layout.name} has no pieces to fit`)
  const faces = facesOf(layout, request, set, grid.pieceSize)
  if (!faces.ok) return faces
  const fitting = { ...request, place: prepared.job.item.place }
  const fitted = await fitFaces(faces.value, fitting)
  const problems = [...faces.problems, ...fitted.problems]
  if (!fitted.ok) return failWith(problems)
  const backs = backFaces(prepared, set)
  if (!backs.ok) return backs
  const fittedBacks = await fitFaces(backs.value, fitting)
  if (!fittedBacks.ok) return fittedBacks
  return succeed({ prepared, set, fitted: fitted.value, notes: [] }, problems)
}

/** Whether the words of a set in large print could be larger still; always true of other sets. */
function isQuiet({ prepared, fitted }: SettledItem): boolean {
  const { request, job } = prepared
  const { type } = request
  if (!type.large) return true
  const wordMinimumMm = type.wordMinimumMm * QUIET
  const larger = { ...type, wordMinimumMm, wordMaximumMm: Math.max(wordMinimumMm, type.wordMaximumMm) }
  return fitAgain(fitted.faces, { ...request, type: larger, place: job.item.place }).ok
}

/** The same problems, with the division that would do instead of a general word of advice. */
function advised(problems: readonly Problem[], { says }: RoomierItem): readonly Problem[] {
  const advice = `The words would fit with ${says}; or leave out the longest.`
  return problems.map(problem => (problem.severity === 'error' ? { ...problem, advice } : problem))
}
