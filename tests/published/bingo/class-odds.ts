/** What a whole class may expect, by playing many games with boards dealt at random. */

import { type BoardGrid, freeCell, linesOf, wordsPerBoard } from '../../../src/sets/bingo/board.js'
import { generatorFor, shuffle } from '../../../src/sets/random.js'

export interface ClassGames {
  readonly grid: BoardGrid
  readonly words: number
  readonly boards: number
  readonly games: number
  readonly seed: number
}

export interface ClassOdds {
  readonly meanFirstCall: number
  /** Standard error of that mean. */
  readonly meanError: number
  /** Share of games in which two or more boards have the first line together. */
  readonly tied: number
}

/** Every board of every game holds words drawn afresh, each set and arrangement equally likely. */
export function playClassGames({ grid, words, boards, games, seed }: ClassGames): ClassOdds {
  const generator = generatorFor(seed, 'class games')
  const size = wordsPerBoard(grid)
  const lines = linesOf(grid)
  const free = freeCell(grid)
  const places = Array.from({ length: words }, (_, word) => word)
  // The calls may stay in one order while boards are drawn at random: word w is called at call w + 1.
  let sum = 0
  let squares = 0
  let ties = 0
  for (let game = 0; game < games; game++) {
    let first = Infinity
    let winners = 0
    for (let board = 0; board < boards; board++) {
      const cells = shuffle(places, generator).slice(0, size)
      if (free !== null) cells.splice(free, 0, -1)
      let call = Infinity
      for (const line of lines) {
        let full = 0
        for (const cell of line) if (cells[cell]! + 1 > full) full = cells[cell]! + 1
        if (full < call) call = full
      }
      if (call < first) {
        first = call
        winners = 1
      } else if (call === first) winners++
    }
    sum += first
    squares += first * first
    if (winners > 1) ties++
  }
  const mean = sum / games
  return {
    meanFirstCall: mean,
    meanError: Math.sqrt((squares / games - mean * mean) / games),
    tied: ties / games,
  }
}
