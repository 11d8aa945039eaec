/** What a whole class may expect, by playing many games with boards dealt at random. */

import { type BoardGrid, freeCell, linesOf, wordsPerBoard } from '../../../src/sets/bingo/board.js'
import { generatorFor } from '../../../src/sets/random.js'

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
  const pool = Uint8Array.from({ length: words }, (_, word) => word)
  const cellOfPlace = Array.from({ length: size }, (_, place) =>
    free === null || place < free ? place : place + 1,
  )
  const cells = new Int16Array(grid.columns * grid.rows)
  // The calls may stay in one order while boards are drawn at random: word w is called at call w + 1.
  let sum = 0
  let squares = 0
  let ties = 0
  for (let game = 0; game < games; game++) {
    let first = Infinity
    let winners = 0
    for (let board = 0; board < boards; board++) {
      // The first steps of a shuffle (Durstenfeld 1964) draw the words of a board; the pool stays in any order.
      for (let place = 0; place < size; place++) {
        const drawn = place + generator.below(words - place)
        const word = pool[drawn]!
        pool[drawn] = pool[place]!
        pool[place] = word
        cells[cellOfPlace[place]!] = word + 1
      }
      let call = Infinity
      for (const line of lines) {
        let full = 0
        for (const cell of line) if (cells[cell]! > full) full = cells[cell]!
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
