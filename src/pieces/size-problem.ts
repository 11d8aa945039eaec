import { mmToPoints } from '../geometry.js'
import { errorAt, type Place, type Problem } from '../problems.js'
import type { NoFit } from './fit-words.js'
import type { TypeScale } from './type-scale.js'

/** The longest word does not fit its place at the smallest size that may be printed. */
export function noFitProblem({ tooLong, wouldFitMm, room }: NoFit, type: TypeScale, place: Place): Problem {
  const points = (mm: number) => `${Math.floor(mmToPoints(mm) * 2) / 2} pt`
  const least = points(type.wordMinimumMm + 1e-6)
  const wanted =
    type.wordMinimumMm === type.wordMaximumMm
      ? `the ${least} asked for`
      : `${least}, the smallest allowed here`
  const size = `${room.widthMm.toFixed(0)} × ${room.heightMm.toFixed(0)} mm`
  return errorAt(
    place,
    `"${tooLong}" needs more room than the ${size} it has: it would fit at ${points(wouldFitMm)}, not at ${wanted}`,
    'Print fewer on a sheet (a smaller across or down, a larger card), turn the paper, or leave that word out.',
  )
}
