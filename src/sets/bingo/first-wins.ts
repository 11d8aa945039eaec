/** Who wins first, for a search that replays thousands of orders; `replay` says the same of one order. */
import { type Board, type BoardGrid, linesOf } from './board.js'

export interface BoardsInPlay {
  readonly boards: readonly Board[]
  readonly grid: BoardGrid
  readonly words: number
}

/** Each board's lines as the words that they wait for. */
export interface Game {
  readonly lines: readonly (readonly (readonly number[])[])[]
  readonly words: number
}

export interface FirstWin {
  readonly call: number
  readonly winners: number
}

export function gameOf({ boards, grid, words }: BoardsInPlay): Game {
  const lines = linesOf(grid)
  return {
    words,
    lines: boards.map(board => {
      const cells = board.flat()
      return lines.map(line => line.map(cell => cells[cell] ?? null).filter(word => word !== null))
    }),
  }
}

/** For each board the call at which its first line is full; every word is called. */
export function winsOf({ lines, words }: Game, callOrder: readonly number[]): number[] {
  const calledAt = new Uint32Array(words)
  callOrder.forEach((word, index) => {
    calledAt[word] = index + 1
  })
  return lines.map(boardLines => {
    let first = Infinity
    for (const line of boardLines) {
      let full = 0
      for (const word of line) if (calledAt[word]! > full) full = calledAt[word]!
      if (full < first) first = full
    }
    return first
  })
}

export function firstWin(game: Game, callOrder: readonly number[]): FirstWin {
  const wins = winsOf(game, callOrder)
  const call = Math.min(...wins)
  return { call, winners: wins.filter(win => win === call).length }
}
