import type { CardSet } from '../../src/sets/card-set.js'
import type { CallerWanted } from './caller-wanted.js'
import { whatToSay } from './played-words.js'

/** How the game goes, for whoever calls it: two sentences of what to do, and who wins when. */
export function rulesOfGame({ set, round, game }: CallerWanted): readonly string[] {
  const goal = goalOfGame(set)
  const wins = round.winsByRule ?? round.wins
  const first = Math.min(...wins.map(({ call }) => call))
  const isAlone = wins.filter(({ call }) => call === first).length === 1
  return [
    `${whatToSay(game)}${hasFreeMiddle(set) ? '; the middle is free' : ''}.`,
    `The first to cover ${goal} wins; the boards that do so stand in bold beside the call` +
      `${isAlone ? `, and one board alone is first, at call ${first}` : ''}.`,
  ]
}

/** What a board has to cover: `a line across or down`. */
export function goalOfGame(set: CardSet): string {
  const rows = set.cards[0]!.cells!
  const isSquare = rows.every(row => row.length === rows.length)
  const line = isSquare ? 'a line across, down or from corner to corner' : 'a line across or down'
  const goal: Readonly<Record<string, string>> = {
    line,
    'two lines': `two lines, each ${line.slice(2)}`.replace('each line', 'each'),
    corners: 'the four corners',
    'full board': 'the whole board',
  }
  return goal[set.deal!.rule ?? 'line']!
}

export function hasFreeMiddle(set: CardSet): boolean {
  return set.cards[0]!.cells!.some(row => row.includes(null))
}
