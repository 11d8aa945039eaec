/** Chooses where each word stands on its board, so that no word keeps to the same place. */
import type { Generator } from '../random.js'
import { shuffle } from '../random.js'

/**
 * `subsets`: for each board, its words' indices. Gives for each board the same words in order of their places, such
 * that over all boards each word stands at each place as equally often as a seeded search makes it, and no two boards
 * are the same place for place while there are enough arrangements.
 */
export function arrangeEvenly(
  subsets: readonly (readonly number[])[],
  words: number,
  generator: Generator,
): number[][] {
  const size = subsets[0]?.length ?? 0
  const boards = subsets.map(subset => shuffle(subset, generator))
  const stands = new Int32Array(words * size)
  for (const board of boards) for (const [place, word] of board.entries()) stands[word * size + place]!++

  const swap = (board: number[], a: number, b: number) => {
    const wordA = board[a]!
    const wordB = board[b]!
    stands[wordA * size + a]!--
    stands[wordB * size + b]!--
    stands[wordA * size + b]!++
    stands[wordB * size + a]!++
    board[a] = wordB
    board[b] = wordA
  }
  /** Half of how much the sum of squares of `stands` would grow. */
  const swapCost = (board: readonly number[], a: number, b: number): number => {
    const rowA = board[a]! * size
    const rowB = board[b]! * size
    return stands[rowA + b]! - stands[rowA + a]! + stands[rowB + a]! - stands[rowB + b]! + 2
  }

  if (size < 2) return boards
  const steps = 30 * boards.length * size
  for (let step = 0; step < steps; step++) {
    const board = boards[generator.below(boards.length)]!
    const a = generator.below(size)
    const b = anotherPlace(a, size, generator)
    if (swapCost(board, a, b) <= 0) swap(board, a, b)
  }
  const seen = new Set<string>()
  for (const board of boards) {
    for (let attempt = 0; attempt < 1_000 && seen.has(board.join()); attempt++) {
      const a = generator.below(size)
      swap(board, a, anotherPlace(a, size, generator))
    }
    seen.add(board.join())
  }
  return boards
}

function anotherPlace(place: number, size: number, generator: Generator): number {
  return (place + 1 + generator.below(size - 1)) % size
}
