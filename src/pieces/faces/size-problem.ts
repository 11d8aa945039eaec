import { mmToPoints, saySize } from '../../geometry.js'
import { errorAt, type Place, type Problem } from '../../problems.js'
import type { TextRun } from '../piece.js'
import type { TypeScale } from '../text/type-scale.js'
import type { NoFit } from '../word/fit-words.js'

/** A size below this helps nobody, so it is not told. */
const LEGIBLE_POINTS = 4

export interface NoFitPlace {
  readonly type: TypeScale
  readonly place: Place
  readonly on?: 'piece' | 'board' | 'page'
}

const advice = {
  piece:
    'Print fewer on a sheet (a smaller across or down, a larger card), turn the paper, or leave that word out.',
  board:
    'Take fewer words to a board, larger paper or a smaller size, write marks: none, or leave that word out.',
  page: 'Turn the paper, take larger paper, choose a smaller size, or leave that word out.',
} as const

/** The longest word does not fit its place at the smallest size that may be printed. */
export function noFitProblem({ tooLong }: NoFit, { type, place, on = 'piece' }: NoFitPlace): Problem {
  const { word, wouldFitMm, room } = tooLong()
  const least = `${Math.ceil(mmToPoints(type.wordMinimumMm) * 10 - 1e-6) / 10} pt`
  const wanted = type.named ? `the ${least} asked for` : `${least}, the smallest allowed here`
  const wouldFitPoints = Math.floor(mmToPoints(wouldFitMm) * 4 + 1e-6) / 4
  const message =
    wouldFitPoints < LEGIBLE_POINTS
      ? `"${word}" has next to no room on a ${on} as small as this`
      : `"${word}" needs more room than the ${saySize(room)} it has: it would fit at ${wouldFitPoints} pt, not at ${wanted}`
  return errorAt(place, message, advice[on])
}

/** A page or a card is too small for the running text that stands on it. */
export function noRoomProblem({ text }: TextRun, place: Place): Problem {
  return errorAt(
    place,
    `not all of the text has room: "${text}" would stand beyond the edge of its page or card`,
    'Take larger paper or larger cards, turn the paper, choose a smaller size, or write the text shorter.',
  )
}
