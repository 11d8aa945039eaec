import type { BingoGame } from '../../src/sets/bingo/bingo-game.js'
import { chancesByCall, meanCall } from '../../src/sets/bingo/exact-odds.js'
import { gameOf } from '../../src/sets/bingo/first-wins.js'

/** 95 of 100 counts lie within so many standard errors (the normal law). */
const within = 1.96

/** What comes of the boards when the calls are shuffled by hand instead, in plain sentences. */
export function oddsNotes(game: Pick<BingoGame, 'deal' | 'rounds'>): readonly string[] {
  return [...oneBoardsOdds(game), ...allBoardsOdds(game)]
}

/** The calls are named by which so many of a hundred games are won, or a few more. */
const named = [10, 50, 90] as const

/** The same for each board, since each holds as many words and all are called. */
function oneBoardsOdds({ deal, rounds }: Pick<BingoGame, 'deal' | 'rounds'>): readonly string[] {
  const { goals, needed } = gameOf({ ...deal, rule: rounds[0]!.rule })
  const chances = chancesByCall({ goals: goals[0]!, needed, words: deal.words })
  if (chances === undefined) return []
  const calls = [...new Set(named.map(games => chances.findIndex(({ value }) => value >= games / 100)))]
  const shares = calls.map(call => `by call ${call} in ${percent(chances[call]!.value)}`).join(', ')
  return [
    `Shuffled by hand instead, the calls make any one board win ${shares} of 100 games, at call ${meanCall(chances).toFixed(1)} on average (exact figures).`,
  ]
}

function allBoardsOdds({ deal, rounds }: Pick<BingoGame, 'deal' | 'rounds'>): readonly string[] {
  if (deal.boards.length < 2) return []
  const { orders, withOneWinner, meanFirstCall, earliestFirstCall, latestFirstCall } = rounds[0]!.odds
  const share = withOneWinner / orders
  const errorOfShare = within * Math.sqrt((share * (1 - share)) / orders)
  return [
    `With all ${deal.boards.length} boards in play they give a single first winner in about ${percent(share)} of 100 games ` +
      `(give or take ${Math.max(1, Math.ceil(100 * errorOfShare))}); the first win comes at call ` +
      `${meanFirstCall.toFixed(1)} on average, from call ${earliestFirstCall} to ${latestFirstCall}: ` +
      `counted over ${orders} shuffled orders of these boards.`,
  ]
}

function percent(share: number): string {
  return (100 * share).toFixed(0)
}
