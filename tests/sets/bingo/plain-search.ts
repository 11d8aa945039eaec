/**
 * The search for a late winner and the first win of an order, as their definitions say them: every goal is looked at again for
 * every question. The quick ones are held against these.
 */
import { type FirstWin, type Game, winsOf } from '../../../src/sets/bingo/first-wins.js'
import type { Generator } from '../../../src/sets/random.js'

export function plainFirstWin(game: Game, callOrder: readonly number[]): FirstWin {
  const wins = winsOf(game, callOrder)
  const call = Math.min(...wins)
  return { call, winners: wins.filter(win => win === call).length }
}

export interface PlainWanted {
  readonly game: Game
  readonly call: number
  readonly gap: number
  readonly notAgain: ReadonlySet<number>
  readonly steps: number
}

export function plainWinner(wanted: PlainWanted, generator: Generator): readonly number[] | undefined {
  const { game, call, gap, steps } = wanted
  if (call < 1 || call + gap - 1 > game.words) return undefined
  const pool = [...Array(game.words).keys()]
  const called = new Set(
    Array.from({ length: call - 1 }, () => pool.splice(generator.below(pool.length), 1)[0]!),
  )
  const barredUntil = new Map<number, number>()
  for (let step = 1; step <= steps; step++) {
    const won = goalsOfWinners(game, called)
    if (won.length === 0) {
      const ending = endingAfter(called, wanted, generator)
      if (ending !== undefined) return [...inOrder(called), ...ending]
    }
    if (call === 1 || call > game.words) return undefined
    const leaving = won.length > 0 ? pick(pick(won, generator), generator) : pick(inOrder(called), generator)
    called.delete(leaving)
    const free = uncalled(game, called).filter(
      word => word !== leaving && (barredUntil.get(word) ?? 0) <= step,
    )
    const filled = free.map(word => goalsFilledTooEarly(game, called, word))
    const best = free.filter((_, index) => filled[index] === Math.min(...filled))
    called.add(best.length === 0 ? leaving : pick(best, generator))
    barredUntil.set(leaving, step + 3 + generator.below(4))
  }
  return undefined
}

function endingAfter(
  called: Set<number>,
  { game, gap, notAgain }: PlainWanted,
  generator: Generator,
): readonly number[] | undefined {
  const open = uncalled(game, called)
  const start = generator.below(open.length)
  for (const word of [...open.slice(start), ...open.slice(0, start)]) {
    const winners = winnersBy(game, called, word)
    if (winners.length !== 1 || notAgain.has(winners[0]!)) continue
    const rest = quietCalls(game, new Set([...called, word]), gap - 1)
    if (rest !== undefined) return [word, ...rest]
  }
  return undefined
}

function quietCalls(game: Game, called: ReadonlySet<number>, count: number): readonly number[] | undefined {
  if (count === 0) return []
  for (const word of uncalled(game, called)) {
    if (winnersBy(game, called, word).length > 0) continue
    const rest = quietCalls(game, new Set([...called, word]), count - 1)
    if (rest !== undefined) return [word, ...rest]
  }
  return undefined
}

type Goal = readonly number[]

const waiting = (goal: Goal, called: ReadonlySet<number>) => goal.filter(word => !called.has(word))
const fullOf = (goals: readonly Goal[], called: ReadonlySet<number>) =>
  goals.filter(goal => waiting(goal, called).length === 0)

/** All full goals of the boards that have won. */
function goalsOfWinners({ goals, needed }: Game, called: ReadonlySet<number>): readonly Goal[] {
  return goals.flatMap(board => {
    const full = fullOf(board, called)
    return full.length >= needed ? full : []
  })
}

function goalsFilledTooEarly({ goals, needed }: Game, called: ReadonlySet<number>, word: number): number {
  return goals
    .filter(board => fullOf(board, called).length >= needed - 1)
    .flat()
    .filter(goal => waiting(goal, called).join() === `${word}`).length
}

function winnersBy({ goals, needed }: Game, called: ReadonlySet<number>, word: number): readonly number[] {
  const then = new Set([...called, word])
  return [...goals.keys()].filter(
    board => fullOf(goals[board]!, called).length < needed && fullOf(goals[board]!, then).length >= needed,
  )
}

const inOrder = (words: Iterable<number>) => [...words].sort((a, b) => a - b)
const uncalled = ({ words }: Game, called: ReadonlySet<number>) =>
  [...Array(words).keys()].filter(word => !called.has(word))

function pick<T>(items: readonly T[], generator: Generator): T {
  return items[generator.below(items.length)]!
}
