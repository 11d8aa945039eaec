/** What to tell a teacher whose sheet cannot be divided as she asked. */
import { type ColumnsAndRows, type Size, saySize } from '../geometry.js'
import type { Division, Paper } from '../plan/plan.js'
import { errorAt, type Place, type Problem, warningAt } from '../problems.js'
import { UNREACHABLE_EDGE_MM } from './margins.js'

/** Smaller than this is too small to cut and hold: common practice, no source. */
export const SMALLEST_PIECE_MM = 8

/** The part of a request for a grid that its problems speak of. */
interface AskedFor {
  readonly paper: Paper
  readonly marginMm?: number | undefined
  readonly division: Division
  readonly preferred: ColumnsAndRows
  readonly place: Place
}

export function reachWarnings({ marginMm, place }: AskedFor): readonly Problem[] {
  if (marginMm === undefined || marginMm >= UNREACHABLE_EDGE_MM) return []
  return [
    warningAt(
      place,
      `a margin of ${marginMm} mm is narrower than most office printers can reach`,
      `Many leave about ${UNREACHABLE_EDGE_MM} mm at the edge unprinted; print one sheet to see, or set a margin of 6.35 mm.`,
    ),
  ]
}

/** Why no piece fits into `room`; `fitsTurned`: it would with the paper the other way. */
export function nothingFits(request: AskedFor, room: Size, fitsTurned: boolean): Problem {
  const { division, paper, place } = request
  if (Math.min(room.widthMm, room.heightMm) <= 0) {
    return errorAt(
      place,
      `the margins leave nothing of the ${paper.name} paper`,
      'Choose a narrower margin or larger paper.',
    )
  }
  if (division.kind === 'card') return cardProblem(request, division.size, room, fitsTurned)
  const across = division.kind === 'count' ? (division.across ?? 'any number') : request.preferred.columns
  const down = division.kind === 'count' ? (division.down ?? 'any number') : request.preferred.rows
  if (across === 1 && down === 1) {
    return errorAt(
      place,
      `the margins leave too little of the ${paper.name} paper: ${saySize(room)}`,
      'Choose a narrower margin or larger paper.',
    )
  }
  return errorAt(
    place,
    `${across} across and ${down} down make pieces too small to cut on ${paper.name} paper (${within(room)})`,
    `Ask for fewer across or down, a smaller gap or larger paper; a piece needs at least ${SMALLEST_PIECE_MM} mm each way.`,
  )
}

function cardProblem({ paper, place }: AskedFor, card: Size, room: Size, fitsTurned: boolean): Problem {
  if (Math.min(card.widthMm, card.heightMm) < SMALLEST_PIECE_MM) {
    return errorAt(
      place,
      `a card of ${saySize(card)} is too small to cut and hold`,
      `Make each edge at least ${SMALLEST_PIECE_MM} mm.`,
    )
  }
  return errorAt(
    place,
    `a card of ${saySize(card)} does not fit on ${paper.name} paper (${within(room)})`,
    fitsTurned
      ? 'It fits with the paper turned the other way: leave `orientation` out.'
      : 'Choose a smaller card, larger paper or a narrower margin.',
  )
}

function within(room: Size): string {
  return `${saySize(room)} within the margins`
}
