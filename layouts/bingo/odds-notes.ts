import type { BingoGame } from '../../src/sets/bingo/bingo-game.js'

/** 95 of 100 counts lie within so many standard errors (the normal law). */
const within = 1.96

/** What comes of the boards when the calls are shuffled by hand instead, in plain sentences. */
export function oddsNotes({ deal, rounds }: Pick<BingoGame, 'deal' | 'rounds'>): readonly string[] {
  if (deal.boards.length < 2) return []
  const { orders, withOneWinner, meanFirstCall, earliestFirstCall, latestFirstCall } = rounds[0]!.odds
  const share = withOneWinner / orders
  const errorOfShare = within * Math.sqrt((share * (1 - share)) / orders)
  return [
    `Shuffled by hand instead, the calls give a single first winner in about ${percent(share)} of 100 games ` +
      `(give or take ${Math.max(1, Math.ceil(100 * errorOfShare))}); the first win comes at call ` +
      `${meanFirstCall.toFixed(1)} on average, from call ${earliestFirstCall} to ${latestFirstCall}: ` +
      `counted over ${orders} shuffled orders of these boards.`,
  ]
}

function percent(share: number): string {
  return (100 * share).toFixed(0)
}
