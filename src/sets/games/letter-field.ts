/** Letters on a field without edges, to ask quickly where a word can stand. */
import type { Placed } from './crossword-places.js'

export interface LetterField {
  /** Whether the word agrees with all that it crosses, and touches nothing else. */
  readonly canStand: (place: Placed) => boolean
  /** How many of its letters stand there already. */
  readonly crossedBy: (place: Placed) => number
  readonly put: (place: Placed) => void
  /** Takes away what `put` put there; letters of words that cross it stay. */
  readonly take: (place: Placed) => void
}

/** Wide enough for the longest list whichever way its words hang together; the origin stands in the middle. */
const SIDE = 512

export function letterField(): LetterField {
  const letters = new Map<number, string>()
  const counts = new Map<number, number>()
  const keyOf = (row: number, column: number) => (row + SIDE / 2) * SIDE + column + SIDE / 2
  const steps = (down: boolean) => (down ? ([SIDE, 1] as const) : ([1, SIDE] as const))
  return {
    canStand({ word, row, column, down }) {
      const [along, beside] = steps(down)
      const start = keyOf(row, column)
      if (letters.has(start - along) || letters.has(start + word.length * along)) return false
      for (let index = 0, at = start; index < word.length; index++, at += along) {
        const standing = letters.get(at)
        // Two letters side by side are of a word that lies there already, as all lies in ball.
        if (standing !== undefined && index > 0 && letters.has(at - along)) return false
        if (standing === undefined) {
          if (letters.has(at - beside) || letters.has(at + beside)) return false
        } else if (standing !== word[index]) return false
      }
      return true
    },
    crossedBy({ word, row, column, down }) {
      const [along] = steps(down)
      const start = keyOf(row, column)
      return [...word].filter((_, index) => letters.has(start + index * along)).length
    },
    put({ word, row, column, down }) {
      const [along] = steps(down)
      const start = keyOf(row, column)
      for (let index = 0; index < word.length; index++) {
        const at = start + index * along
        letters.set(at, word[index]!)
        counts.set(at, (counts.get(at) ?? 0) + 1)
      }
    },
    take({ word, row, column, down }) {
      const [along] = steps(down)
      const start = keyOf(row, column)
      for (let index = 0; index < word.length; index++) {
        const at = start + index * along
        const left = counts.get(at)! - 1
        counts.set(at, left)
        if (left === 0) letters.delete(at)
      }
    },
  }
}
