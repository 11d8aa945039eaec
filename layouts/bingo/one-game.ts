/** One caller for the class and its groups: whose boards are in the game, and which of them belong to whom. */
import type { Pool } from '../../src/sets/bingo/deal-pools.js'
import type { Card, CardSet, Round } from '../../src/sets/card-set.js'
import type { Word } from '../../src/words/word.js'
import type { GameSide, LayoutRequest } from '../layout.js'

/** What a game with one caller is made of; of a game of one side there is nothing to tell. */
export interface OneGame {
  /** Those who play, the class first. */
  readonly sides: readonly GameSide[]
  /** The words of each side among those of the game. */
  readonly pools: readonly Pool[]
  /** Which of the sides the boards are printed for, from 0. */
  readonly side: number
}

/** Undefined where the boards of the item's children are a game of their own. */
export function oneGameOf(
  { sides, group }: Pick<LayoutRequest, 'sides' | 'group'>,
  played: readonly Word[],
): OneGame | undefined {
  if (sides.length < 2) return undefined
  const pools = sides.map(({ name, words }): Pool => {
    const own = new Set(words.map(({ text }) => text))
    return {
      name: name ?? 'the class',
      words: [...played.keys()].filter(index => own.has(played[index]!.text)),
    }
  })
  return { sides, pools, side: sides.findIndex(({ name }) => name === (group?.name ?? null)) }
}

/** The words of all sides, each once, the class's first. */
export function wordsOfSides({ sides, words }: Pick<LayoutRequest, 'sides' | 'words'>): readonly Word[] {
  if (sides.length < 2) return words
  const all = new Map<string, Word>()
  for (const word of sides.flatMap(side => side.words)) if (!all.has(word.text)) all.set(word.text, word)
  return [...all.values()]
}

/** The boards of one side with what comes of them; their numbers run on from side to side. */
export function boardsOfSide(whole: CardSet, { side }: OneGame, boards: number): CardSet {
  const isOwn = ({ number }: Pick<Card, 'number'>) => Math.ceil(number / boards) === side + 1
  const own = new Set(whole.cards.filter(isOwn).map(({ id }) => id))
  const { deal } = whole
  const { laterRounds } = deal!
  return {
    ...whole,
    cards: whole.cards.filter(isOwn),
    deal: {
      ...deal!,
      ...ofBoards(deal!, own),
      ...(laterRounds === undefined ? {} : { laterRounds: laterRounds.map(round => ofBoards(round, own)) }),
    },
    wholeGame: whole,
  }
}

function ofBoards(round: Round, own: ReadonlySet<string>): Round {
  const { callOrder, wins, full, winsByRule } = round
  const mine = <B extends { readonly board: string }>(boards: readonly B[]) =>
    boards.filter(({ board }) => own.has(board))
  return {
    callOrder,
    wins: mine(wins),
    ...(full === undefined ? {} : { full: mine(full) }),
    ...(winsByRule === undefined ? {} : { winsByRule: mine(winsByRule) }),
  }
}

/** Whose boards are which, and how many words they share, in plain sentences. */
export function tellOneGame({ pools, side }: OneGame, boards: number): readonly string[] {
  const runs = pools.map(({ name }, index) => {
    const [from, to] = [index * boards + 1, (index + 1) * boards]
    return boards === 1 ? `board ${from} is for ${name}` : `boards ${from} to ${to} are for ${name}`
  })
  const all = new Set(pools.flatMap(({ words }) => words)).size
  const shared = pools[0]!.words.filter(word => pools.every(({ words }) => words.includes(word))).length
  const many =
    shared === all
      ? 'All play with the same words.'
      : shared === 0
        ? `They share none of the ${all} words: each call is for one of them only.`
        : `They share ${shared} of the ${all} words; a call of another word is for some of them only.`
  return [
    `One caller calls for all: ${runs.join(', ')}.`,
    many,
    ...(side === 0 ? [] : [`The caller’s sheet is printed with the boards for ${pools[0]!.name}.`]),
  ]
}
