/** The words called so far in a search for the calls of a game, and what they make of its goals. */
import type { Generator } from '../random.js'
import type { Game } from './first-wins.js'

/** A goal's number holds how many words it waits for, times this, and the sum of those words: of one word alone, that word. */
const ONE = 2 ** 20
const TWO = 2 * ONE

/** In place of the one board that wins. */
export const NOBODY = -1
export const MANY = -2

/** What does not change while a game's calls are looked for, laid out for the search. */
export interface GoalTable {
  readonly words: number
  readonly boards: number
  /** How many full goals a board may have without winning. */
  readonly allowed: number
  readonly wordsOf: readonly (readonly number[])[]
  /** Board by board; where the goals of each begin, and at the end how many there are. */
  readonly firstGoals: Int32Array
  readonly boardOf: Int32Array
  /** What each goal waits for where no word has been called. */
  readonly waiting: Int32Array
  readonly goalsWith: readonly Int32Array[]
}

export function goalTable(game: Game): GoalTable {
  const wordsOf = game.goals.flat()
  const goalsWith: number[][] = Array.from({ length: game.words }, () => [])
  wordsOf.forEach((words, goal) => {
    for (const word of words) goalsWith[word]!.push(goal)
  })
  const firstGoals = new Int32Array(game.goals.length + 1)
  game.goals.forEach((goals, board) => {
    firstGoals[board + 1] = firstGoals[board]! + goals.length
  })
  return {
    words: game.words,
    boards: game.goals.length,
    allowed: game.needed - 1,
    wordsOf,
    firstGoals,
    boardOf: Int32Array.from(game.goals.flatMap((goals, board) => goals.map(() => board))),
    waiting: Int32Array.from(wordsOf, words => words.reduce((sum, word) => sum + word, words.length * ONE)),
    goalsWith: goalsWith.map(goals => Int32Array.from(goals)),
  }
}

/**
 * Words called so far, with what each goal still waits for, and for each word how many boards would win too early by it. All of
 * it is kept up with each word that is added or removed, which costs the goals of that word alone.
 */
export class CalledWords {
  /** Goals that are full beyond what the boards may have without winning. */
  early = 0
  private readonly isCalled: Uint8Array
  private readonly waiting: Int32Array
  private readonly full: Int32Array
  /** Full goals of the boards that have won. */
  private fullOfWinners = 0
  /** For each word how many goals it would fill too early: those of boards that may have no other, which wait for it alone. */
  private readonly fills: Int32Array

  constructor(private readonly table: GoalTable) {
    this.isCalled = new Uint8Array(table.words)
    this.waiting = table.waiting.slice()
    this.full = new Int32Array(table.boards)
    this.fills = new Int32Array(table.words)
    if (table.allowed > 0) return
    for (const waits of this.waiting) if (waits < TWO && waits >= ONE) this.fills[waits - ONE]!++
  }

  add(word: number): void {
    this.isCalled[word] = 1
    const { waiting, full, fills } = this
    const { boardOf, allowed, goalsWith } = this.table
    const goals = goalsWith[word]!
    const less = ONE + word
    for (let index = 0; index < goals.length; index++) {
      const goal = goals[index]!
      const waits = (waiting[goal]! - less) | 0
      waiting[goal] = waits
      if (waits >= TWO) continue
      if (waits >= ONE) {
        if (allowed === 0 || full[boardOf[goal]!]! >= allowed) fills[waits - ONE]!++
        continue
      }
      const board = boardOf[goal]!
      if (full[board]! >= allowed) fills[word]!--
      this.fill(board)
    }
  }

  remove(word: number): void {
    this.isCalled[word] = 0
    const { waiting, full, fills } = this
    const { boardOf, allowed, goalsWith } = this.table
    const goals = goalsWith[word]!
    const more = ONE + word
    for (let index = 0; index < goals.length; index++) {
      const goal = goals[index]!
      const waited = waiting[goal]!
      waiting[goal] = (waited + more) | 0
      if (waited >= TWO) continue
      if (waited >= ONE) {
        if (allowed === 0 || full[boardOf[goal]!]! >= allowed) fills[waited - ONE]!--
        continue
      }
      const board = boardOf[goal]!
      // While it is taken out of the full ones, it is not yet among those that wait for one word.
      waiting[goal] = 0
      this.empty(board)
      waiting[goal] = more
      if (full[board]! >= allowed) fills[word]!++
    }
  }

  private fill(board: number): void {
    const { allowed } = this.table
    const full = ++this.full[board]!
    if (full > allowed) {
      this.early++
      this.fullOfWinners += full === allowed + 1 ? full : 1
    } else if (full === allowed) this.countAlmostFull(board, 1)
  }

  private empty(board: number): void {
    const { allowed } = this.table
    const full = this.full[board]!--
    if (full > allowed) {
      this.early--
      this.fullOfWinners -= full === allowed + 1 ? full : 1
    } else if (full === allowed) this.countAlmostFull(board, -1)
  }

  /** A board's goals that wait for one word count as soon as the board may have no other full goal. */
  private countAlmostFull(board: number, change: 1 | -1): void {
    const { firstGoals } = this.table
    for (let goal = firstGoals[board]!; goal < firstGoals[board + 1]!; goal++) {
      const waits = this.waiting[goal]!
      if (waits >= ONE && waits < TWO) this.fills[waits - ONE]! += change
    }
  }

  called(): readonly number[] {
    return this.withMark(1)
  }

  notCalled(): readonly number[] {
    return this.withMark(0)
  }

  /** The board that has not won and does by this word, where it is one alone. */
  winnerBy(word: number): number {
    const { full, waiting } = this
    const { boardOf, allowed, goalsWith } = this.table
    if (allowed === 0 && this.fills[word] === 0) return NOBODY
    const goals = goalsWith[word]!
    let winner = NOBODY
    let board = NOBODY
    let gained = 0
    // The goals of a board follow one another.
    for (let index = 0; index < goals.length; index++) {
      const goal = goals[index]!
      if (waiting[goal] !== ONE + word) continue
      gained = boardOf[goal] === board ? gained + 1 : 1
      board = boardOf[goal]!
      if (board === winner || full[board]! > allowed || full[board]! + gained <= allowed) continue
      if (winner !== NOBODY) return MANY
      winner = board
    }
    return winner
  }

  /** A word of a full goal of a board that has won. */
  wordOfEarlyBoard(generator: Generator): number {
    const { full, waiting } = this
    const { firstGoals, wordsOf, allowed } = this.table
    let before = generator.below(this.fullOfWinners)
    let board = 0
    for (; ; board++) {
      if (full[board]! <= allowed) continue
      if (before < full[board]!) break
      before -= full[board]!
    }
    let goal = firstGoals[board]!
    for (; ; goal++) if (waiting[goal] === 0 && before-- === 0) break
    return pick(wordsOf[goal]!, generator)
  }

  /** The word to add by which the fewest boards win too early; not the one that has just gone, nor a barred one. */
  leastFilling(gone: number, isBarred: (word: number) => boolean, generator: Generator): number {
    const { isCalled, fills } = this
    const best: number[] = []
    let least = Infinity
    for (let word = 0; word < isCalled.length; word++) {
      if (isCalled[word] === 1 || word === gone || isBarred(word)) continue
      const filled = fills[word]!
      if (filled > least) continue
      if (filled < least) best.length = 0
      least = filled
      best.push(word)
    }
    return best.length === 0 ? gone : pick(best, generator)
  }

  private withMark(mark: number): readonly number[] {
    const words: number[] = []
    for (let word = 0; word < this.isCalled.length; word++) if (this.isCalled[word] === mark) words.push(word)
    return words
  }
}

/** One of them, each equally likely. */
export function pick<T>(items: readonly T[], generator: Generator): T {
  return items[generator.below(items.length)]!
}
