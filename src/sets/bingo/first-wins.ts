/** Who wins first, for a search that replays thousands of orders. */
import type { Board, BoardGrid } from './board.js'
import { goalsOf, type WinRule } from './win-rule.js'

export interface BoardsInPlay {
  readonly boards: readonly Board[]
  readonly grid: BoardGrid
  readonly words: number
  readonly rule: WinRule
}

/** Each board's goals as the words that they wait for, and how many of them a board needs. */
export interface Game {
  readonly goals: readonly (readonly (readonly number[])[])[]
  readonly needed: number
  readonly words: number
}

export interface FirstWin {
  readonly call: number
  readonly winners: number
}

export function gameOf({ boards, grid, words, rule }: BoardsInPlay): Game {
  const { goals, needed } = goalsOf(rule, grid)
  return {
    words,
    needed,
    goals: boards.map(board => {
      const cells = board.flat()
      return goals.map(goal => goal.map(cell => cells[cell] ?? null).filter(word => word !== null))
    }),
  }
}

/** For each board the call at which it wins; every word is called. */
export function winsOf({ goals, needed, words }: Game, callOrder: readonly number[]): number[] {
  const calledAt = callsOfWords(words, callOrder)
  return goals.map(boardGoals => winOf(boardGoals, needed, calledAt, Infinity))
}

/** Finds the first win of one order after another; what they have in common is laid out once. */
export function firstWinFinder(game: Game): (callOrder: readonly number[]) => FirstWin {
  return game.needed === 1 && game.words <= FEW_WORDS
    ? firstFullGoalFinder(game)
    : callOrder => firstWinOf(game, callOrder)
}

/** Going through all goals once for each word pays where there are no more: a goal of a longer list waits long and is left early. */
const FEW_WORDS = 96

function firstWinOf({ goals, needed, words }: Game, callOrder: readonly number[]): FirstWin {
  const calledAt = callsOfWords(words, callOrder)
  let call = Infinity
  let winners = 0
  for (const boardGoals of goals) {
    const win = winOf(boardGoals, needed, calledAt, call)
    if (win < call) [call, winners] = [win, 1]
    else if (win === call) winners++
  }
  return { call, winners }
}

/**
 * With all words called every goal is full. Taken back from the last one, a word empties its goals, 32 of them at a time; those
 * that are left when the next word would empty all are the first to be full.
 */
function firstFullGoalFinder({ goals, words }: Game): (callOrder: readonly number[]) => FirstWin {
  const boardOf = goals.flatMap((ofBoard, board) => ofBoard.map(() => board))
  const length = Math.ceil(boardOf.length / 32)
  const without = Array.from({ length: words }, () => new Int32Array(length).fill(-1))
  goals.flat().forEach((goal, index) => {
    for (const word of goal) without[word]![index >> 5]! &= ~(1 << (index & 31))
  })
  const all = Int32Array.from({ length }, (_, at) => {
    const within = boardOf.length - at * 32
    return within >= 32 ? -1 : (1 << within) - 1
  })
  let full = new Int32Array(length)
  let next = new Int32Array(length)
  return callOrder => {
    full.set(all)
    let call = words
    for (; call > 0; call--) {
      const stay = without[callOrder[call - 1]!]!
      let some = 0
      for (let at = 0; at < length; at++) some |= next[at] = full[at]! & stay[at]!
      if (some === 0) break
      const left = next
      next = full
      full = left
    }
    return { call, winners: boardsWith(full, boardOf) }
  }
}

/** How many boards have one of these goals; the goals lie board by board. */
function boardsWith(goals: Int32Array, boardOf: readonly number[]): number {
  let boards = 0
  let last = -1
  for (let goal = 0; goal < boardOf.length; goal++) {
    if ((goals[goal >> 5]! & (1 << (goal & 31))) === 0 || boardOf[goal] === last) continue
    last = boardOf[goal]!
    boards++
  }
  return boards
}

function callsOfWords(words: number, callOrder: readonly number[]): Uint32Array {
  const calledAt = new Uint32Array(words)
  callOrder.forEach((word, index) => {
    calledAt[word] = index + 1
  })
  return calledAt
}

/** The call at which a board wins; some later call than the latest that is asked for, where it is later than that. */
function winOf(
  goals: readonly (readonly number[])[],
  needed: number,
  calledAt: Uint32Array,
  latest: number,
): number {
  // The two earliest goals are enough: no rule needs more.
  let first = Infinity
  let second = Infinity
  for (const goal of goals) {
    let full = 0
    for (const word of goal) {
      if (calledAt[word]! <= full) continue
      full = calledAt[word]!
      if (full > latest) break
    }
    if (full < first) [first, second] = [full, first]
    else if (full < second) second = full
  }
  return needed === 1 ? first : second
}

/** No board can win by fewer calls. */
export function fewestCalls({ goals, needed }: Game): number {
  return Math.min(...goals.map(boardGoals => fewestWords(boardGoals, needed)))
}

function fewestWords(goals: readonly (readonly number[])[], needed: number): number {
  if (needed === 1) return Math.min(...goals.map(words => words.length))
  const pairs = goals.flatMap((one, index) =>
    goals.slice(index + 1).map(other => new Set([...one, ...other])),
  )
  return Math.min(...pairs.map(words => words.size))
}
