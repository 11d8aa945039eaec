/**
 * Looks for words to call before the first win: so many that no board has won by them and the next call makes one board
 * alone win.
 *
 * A local search with a memory (Glover 1989, "Tabu search"): of the words called, one of a board that has won too early
 * goes, and the word that fills the fewest goals comes; neither goes back for some steps. Where no board has won yet,
 * each next call is tried, and the walk goes on along sets that are as good.
 */
import type { Generator } from '../random.js'
import type { Game } from './first-wins.js'

export interface WinnerWanted {
  readonly game: Game
  /** The call, counted from 1, at which one board alone is to win. */
  readonly call: number
  /** How many calls later at the earliest the second board wins; 1 asks nothing more than a single winner. */
  readonly gap: number
  /** Boards that are not to win, for they have won a round before. */
  readonly notAgain: ReadonlySet<number>
  readonly steps: number
}

/** The words called up to the first win and through the gap after it, in order; undefined where none were found. */
export function findWinner(wanted: WinnerWanted, generator: Generator): readonly number[] | undefined {
  const { game, call, gap, steps } = wanted
  if (call < 1 || call + gap - 1 > game.words) return undefined
  const state = new CalledWords(game)
  const order = chooseSome(game.words, call - 1, generator)
  for (const word of order) state.add(word)
  const barredUntil = new Int32Array(game.words)
  for (let step = 1; step <= steps; step++) {
    if (state.early === 0) {
      const ending = endingAfter(state, wanted, generator)
      if (ending !== undefined) return [...state.called(), ...ending]
    }
    if (call === 1 || call > game.words) return undefined
    const leaving = state.early > 0 ? state.wordOfEarlyBoard(generator) : pick(state.called(), generator)
    state.remove(leaving)
    const entering = state.leastFilling(leaving, word => barredUntil[word]! > step, generator)
    state.add(entering)
    barredUntil[leaving] = step + 3 + generator.below(4)
  }
  return undefined
}

/** The winning word and the calls of the gap, none of which lets another board win. */
function endingAfter(
  state: CalledWords,
  { gap, notAgain }: WinnerWanted,
  generator: Generator,
): readonly number[] | undefined {
  const open = state.notCalled()
  const start = generator.below(open.length)
  for (let index = 0; index < open.length; index++) {
    const word = open[(start + index) % open.length]!
    const [winner, ...others] = state.winnersBy(word)
    if (winner === undefined || others.length > 0 || notAgain.has(winner)) continue
    state.add(word)
    const rest = quietCalls(state, gap - 1)
    state.remove(word)
    if (rest !== undefined) return [word, ...rest]
  }
  return undefined
}

/** So many calls that let no further board win, by trying in depth. */
function quietCalls(state: CalledWords, count: number): readonly number[] | undefined {
  if (count === 0) return []
  for (const word of state.notCalled()) {
    if (state.winnersBy(word).length > 0) continue
    state.add(word)
    const rest = quietCalls(state, count - 1)
    state.remove(word)
    if (rest !== undefined) return [word, ...rest]
  }
  return undefined
}

/** Words called so far, with what each goal still waits for; adding and removing a word costs its goals alone. */
class CalledWords {
  /** Goals that are full beyond what the boards may have without winning. */
  early = 0
  private readonly isCalled: Uint8Array
  private readonly goalsWith: readonly Int32Array[]
  private readonly waiting: Int32Array
  /** The sum of the words that a goal waits for: of one that waits for one word, that word. */
  private readonly waitingFor: Int32Array
  private readonly boardOf: Int32Array
  private readonly full: Int32Array
  private readonly wordsOf: readonly (readonly number[])[]
  private readonly allowed: number

  constructor(game: Game) {
    this.allowed = game.needed - 1
    this.isCalled = new Uint8Array(game.words)
    this.wordsOf = game.goals.flat()
    this.waiting = Int32Array.from(this.wordsOf, words => words.length)
    this.waitingFor = Int32Array.from(this.wordsOf, words => words.reduce((sum, word) => sum + word, 0))
    this.boardOf = Int32Array.from(game.goals.flatMap((goals, board) => goals.map(() => board)))
    this.full = new Int32Array(game.goals.length)
    const goalsWith: number[][] = Array.from({ length: game.words }, () => [])
    this.wordsOf.forEach((words, goal) => {
      for (const word of words) goalsWith[word]!.push(goal)
    })
    this.goalsWith = goalsWith.map(goals => Int32Array.from(goals))
  }

  add(word: number): void {
    this.isCalled[word] = 1
    for (const goal of this.goalsWith[word]!) {
      this.waitingFor[goal]! -= word
      if (--this.waiting[goal]! > 0) continue
      if (++this.full[this.boardOf[goal]!]! > this.allowed) this.early++
    }
  }

  remove(word: number): void {
    this.isCalled[word] = 0
    for (const goal of this.goalsWith[word]!) {
      this.waitingFor[goal]! += word
      if (++this.waiting[goal]! > 1) continue
      if (--this.full[this.boardOf[goal]!]! >= this.allowed) this.early--
    }
  }

  called(): readonly number[] {
    return this.withMark(1)
  }

  notCalled(): readonly number[] {
    return this.withMark(0)
  }

  /** Boards that have not won and do by this word. */
  winnersBy(word: number): readonly number[] {
    const before = this.full
    const gained = new Map<number, number>()
    for (const goal of this.goalsWith[word]!)
      if (this.waiting[goal] === 1)
        gained.set(this.boardOf[goal]!, (gained.get(this.boardOf[goal]!) ?? 0) + 1)
    return [...gained]
      .filter(([board, count]) => before[board]! <= this.allowed && before[board]! + count > this.allowed)
      .map(([board]) => board)
  }

  /** A word of a full goal of a board that has won. */
  wordOfEarlyBoard(generator: Generator): number {
    const goals: number[] = []
    const { waiting, full, boardOf, allowed } = this
    for (let goal = 0; goal < waiting.length; goal++)
      if (waiting[goal] === 0 && full[boardOf[goal]!]! > allowed) goals.push(goal)
    return pick(this.wordsOf[pick(goals, generator)]!, generator)
  }

  /** The word to add by which the fewest boards win too early; not the one that has just gone, nor a barred one. */
  leastFilling(gone: number, isBarred: (word: number) => boolean, generator: Generator): number {
    let best: number[] = []
    let least = Infinity
    const filledBy = this.goalsFilledBy()
    for (const word of this.notCalled()) {
      if (word === gone || isBarred(word)) continue
      const filled = filledBy[word]!
      if (filled < least) [best, least] = [[word], filled]
      else if (filled === least) best.push(word)
    }
    return best.length === 0 ? gone : pick(best, generator)
  }

  /** For each word not called how many goals it would fill too early: each such goal waits for one word, so goals are gone through once. */
  private goalsFilledBy(): Int32Array {
    const filled = new Int32Array(this.isCalled.length)
    const { waiting, waitingFor, full, boardOf, allowed } = this
    for (let goal = 0; goal < waiting.length; goal++)
      if (waiting[goal] === 1 && full[boardOf[goal]!]! >= allowed) filled[waitingFor[goal]!]!++
    return filled
  }

  private withMark(mark: number): readonly number[] {
    const words: number[] = []
    for (let word = 0; word < this.isCalled.length; word++) if (this.isCalled[word] === mark) words.push(word)
    return words
  }
}

function pick<T>(items: readonly T[], generator: Generator): T {
  return items[generator.below(items.length)]!
}

function chooseSome(of: number, count: number, generator: Generator): readonly number[] {
  const all = Array.from({ length: of }, (_, word) => word)
  return Array.from({ length: count }, () => all.splice(generator.below(all.length), 1)[0]!)
}
