/**
 * Looks for words to call before the first win: so many that no board has won by them and the next call makes one board
 * alone win.
 *
 * A local search with a memory (Glover 1989, "Tabu search"): of the words called, one of a board that has won too early
 * goes, and the word that fills the fewest goals comes; neither goes back for some steps. Where no board has won yet,
 * each next call is tried, and the walk goes on along sets that are as good.
 */
import type { Generator } from '../random.js'
import { CalledWords, type GoalTable, MANY, NOBODY, pick } from './called-words.js'

export interface WinnerWanted {
  /** The goals of the game, as `goalTable` lays them out. */
  readonly table: GoalTable
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
  const { table, call, gap, steps } = wanted
  const { words } = table
  if (call < 1 || call + gap - 1 > words) return undefined
  const state = new CalledWords(table)
  const order = chooseSome(words, call - 1, generator)
  for (const word of order) state.add(word)
  const barredUntil = new Int32Array(words)
  for (let step = 1; step <= steps; step++) {
    if (state.early === 0) {
      const ending = endingAfter(state, wanted, generator)
      if (ending !== undefined) return [...state.called(), ...ending]
    }
    if (call === 1 || call > words) return undefined
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
    const winner = state.winnerBy(word)
    if (winner === NOBODY || winner === MANY || notAgain.has(winner)) continue
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
    if (state.winnerBy(word) !== NOBODY) continue
    state.add(word)
    const rest = quietCalls(state, count - 1)
    state.remove(word)
    if (rest !== undefined) return [word, ...rest]
  }
  return undefined
}

function chooseSome(of: number, count: number, generator: Generator): readonly number[] {
  const all = Array.from({ length: of }, (_, word) => word)
  return Array.from({ length: count }, () => all.splice(generator.below(all.length), 1)[0]!)
}
