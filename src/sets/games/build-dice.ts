/** Six faces on each of three dice, so that their throws build as many words as a search finds. */
import { type Generator, shuffle } from '../random.js'
import type { ThreeParts } from './split-words.js'

export const FACES = 6

/** A die's faces, none twice. */
export type Die = readonly string[]
export type ThreeDice = readonly [Die, Die, Die]

/** A die of a set: its faces, and which of the three it is. */
export interface DieOnCard {
  readonly place: 0 | 1 | 2
  readonly faces: readonly string[]
}

export interface DiceWanted {
  /** What may stand on the faces of the first, the second and the third die, each once. */
  readonly faces: readonly [readonly string[], readonly string[], readonly string[]]
  /** How much it is worth that a throw spells this; below 0 it must not come about. */
  readonly worth: (text: string) => number
}

/** With so many, six seeds of six found dice of the same worth but for 1 % (17 words, 100 to 400 ms); with 12 they did not. */
const BEGINNINGS = 100

/**
 * The best dice that exchanges of the faces of one die find from several beginnings (hill climbing); ties keep the first.
 * Undefined where all that are found spell what must not come about.
 */
export function buildDice(wanted: DiceWanted, generator: Generator): ThreeDice | undefined {
  const worths = worthsOf(wanted)
  let best: { readonly dice: Indices; readonly worth: number } | undefined
  for (let beginning = 0; beginning < BEGINNINGS; beginning++) {
    const found = climbed(wanted, worths, generator)
    if (best === undefined || found.worth > best.worth) best = found
  }
  if (best === undefined || best.worth < 0) return undefined
  const { dice } = best
  const written = (die: 0 | 1 | 2): Die => dice[die].map(index => wanted.faces[die][index]!).sort()
  return [written(0), written(1), written(2)]
}

/** Which faces are chosen of those there are. */
type Indices = readonly [readonly number[], readonly number[], readonly number[]]

/** What every throw is worth; the third die's faces lie side by side, then the second's. */
interface Worths {
  readonly values: Float64Array
  readonly seconds: number
  readonly thirds: number
}

function worthsOf({ faces: [first, second, third], worth }: DiceWanted): Worths {
  const values = new Float64Array(first.length * second.length * third.length)
  let at = 0
  for (const before of first)
    for (const vowel of second) for (const after of third) values[at++] = worth(before + vowel + after)
  return { values, seconds: second.length, thirds: third.length }
}

function climbed(
  { faces }: DiceWanted,
  worths: Worths,
  generator: Generator,
): { readonly dice: Indices; readonly worth: number } {
  const begin = (die: 0 | 1 | 2) => shuffle([...faces[die].keys()], generator).slice(0, FACES)
  const dice: [number[], number[], number[]] = [begin(0), begin(1), begin(2)]
  let isBetter = true
  while (isBetter) {
    isBetter = false
    for (const die of [0, 1, 2] as const) {
      const shares = faces[die].map((_, face) => shareOf(dice, die, face, worths))
      const better = shares
        .map((share, face) => ({ share, face }))
        .sort((a, b) => b.share - a.share || a.face - b.face)
        .slice(0, FACES)
        .map(({ face }) => face)
      const sum = (chosen: readonly number[]) => chosen.reduce((total, face) => total + shares[face]!, 0)
      if (sum(better) <= sum(dice[die]) + 1e-9) continue
      dice[die] = better
      isBetter = true
    }
  }
  return { dice, worth: dice[0].reduce((sum, face) => sum + shareOf(dice, 0, face, worths), 0) }
}

/** What a face adds on its die, as the two others are: throws are added up, so the best six are the six best. */
function shareOf(dice: Indices, die: 0 | 1 | 2, face: number, worths: Worths): number {
  const own = [face]
  const [first, second, third] = [
    die === 0 ? own : dice[0],
    die === 1 ? own : dice[1],
    die === 2 ? own : dice[2],
  ]
  const { values, seconds, thirds } = worths
  let sum = 0
  for (const a of first)
    for (const b of second) {
      const row = (a * seconds + b) * thirds
      for (const c of third) sum += values[row + c]!
    }
  return sum
}

/** Every throw, 216 as a rule, with what it spells. */
export function throwsOf([first, second, third]: ThreeDice): readonly ThreeParts[] {
  return first.flatMap(before =>
    second.flatMap(vowel => third.map((after): ThreeParts => [before, vowel, after])),
  )
}
