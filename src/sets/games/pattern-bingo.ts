/**
 * Boards of words for a game in which kinds are called: every board has equally many words of each kind, so that it can
 * answer each call as often as any other board.
 */
import { fail, succeed } from '../../outcomes.js'
import type { Outcome } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { BoardAtCall, Card, CardSet } from '../card-set.js'
import { type Generator, generatorFor, shuffle } from '../random.js'
import { needOf, orderOfCalls, winningLines, winsOf } from './pattern-calls.js'
import { bestShare, type PatternBingoWanted, type Share, tooFewKinds } from './pattern-shares.js'

/** An error where fewer than two kinds have words enough. */
export function patternBingo(wanted: PatternBingoWanted): Outcome<CardSet> {
  const { boards, copies, seed, label } = wanted
  const share = bestShare(wanted)
  if (share === undefined) return fail(tooFewKinds(wanted))
  const { grid } = share
  const generator = generatorFor(seed, `${label}: kinds`)
  const hands = dealHands(share, boards, generator)
  const lines = winningLines(grid)
  const laid = hands.map(hand => layOut(hand, share, lines, generator))
  const needs = laid.map(cells =>
    lines.map(line => needOf(line, cells, share.kinds)).filter(need => need.some(count => count > 0)),
  )
  const calls = orderOfCalls(share, needs, generator)
  const id = (board: number, copy: number) => cardId({ prefix: 'board', number: board + 1, copy, of: boards })
  const cardOf = (cells: readonly (Word | null)[], board: number, copy: number): Card => ({
    id: id(board, copy),
    kind: 'board',
    number: board + 1,
    copy,
    words: cells.filter(cell => cell !== null),
    cells: Array.from({ length: grid.rows }, (_, row) =>
      cells.slice(row * grid.columns, (row + 1) * grid.columns),
    ),
  })
  const winning = winsOf(needs, calls)
  const wins = winning.map((call, board): BoardAtCall => ({ board: id(board, 1), call }))
  return succeed({
    cards: Array.from({ length: copies }, (_, copy) =>
      laid.map((cells, board) => cardOf(cells, board, copy + 1)),
    ).flat(),
    deal: { callOrder: calls.map(kind => share.kinds[kind]!.title), wins, rule: 'line' },
    kinds: share.kinds.map(({ title, words }) => ({ title, words: words.map(({ text }) => text) })),
    answerData: share.kinds.map(({ title, words, each }) => ({
      call: title,
      onEachBoard: each,
      words: words.map(({ text }) => text),
    })),
    notes: notesOn(wanted, share, winning),
  })
}

/** For each board the words of each kind: those that were used least so far, no two boards with the same words if that can be. */
function dealHands({ kinds }: Share, boards: number, generator: Generator): readonly (readonly Word[])[] {
  const used = new Map<Word, number>()
  const seen = new Set<string>()
  const draw = (): readonly Word[] =>
    kinds.flatMap(({ words, each }) =>
      shuffle(words, generator)
        .sort((a, b) => (used.get(a) ?? 0) - (used.get(b) ?? 0))
        .slice(0, each),
    )
  const nameOf = (hand: readonly Word[]) =>
    hand
      .map(({ text }) => text)
      .toSorted()
      .join('\n')
  return Array.from({ length: boards }, () => {
    let hand = draw()
    for (let tries = 0; tries < 50 && seen.has(nameOf(hand)); tries++) hand = draw()
    seen.add(nameOf(hand))
    for (const word of hand) used.set(word, (used.get(word) ?? 0) + 1)
    return hand
  })
}

const LAYOUTS_TRIED = 40

/** Of some layouts the one with fewest lines of one kind: the first calls of that kind would decide the game. */
function layOut(
  hand: readonly Word[],
  share: Share,
  lines: readonly (readonly number[])[],
  generator: Generator,
): readonly (Word | null)[] {
  const kindsOn = (cells: readonly (Word | null)[], line: readonly number[]) =>
    needOf(line, cells, share.kinds).filter(count => count > 0).length
  const oneKind = (cells: readonly (Word | null)[]) => lines.filter(line => kindsOn(cells, line) === 1).length
  let best = layOutOnce(hand, share, generator)
  for (let tries = 1; tries < LAYOUTS_TRIED && oneKind(best) > 0; tries++) {
    const cells = layOutOnce(hand, share, generator)
    if (oneKind(cells) < oneKind(best)) best = cells
  }
  return best
}

/** Free cells first in the middle, then anywhere. */
function layOutOnce(
  hand: readonly Word[],
  { free, grid: { columns, rows } }: Share,
  generator: Generator,
): readonly (Word | null)[] {
  const hasMiddle = free > 0 && columns % 2 === 1 && rows % 2 === 1
  const others = shuffle(
    [...hand, ...Array.from({ length: hasMiddle ? free - 1 : free }, () => null)],
    generator,
  )
  return hasMiddle ? others.toSpliced((columns * rows - 1) / 2, 0, null) : others
}

function notesOn(
  { kinds }: PatternBingoWanted,
  { kinds: used, grid, free }: Share,
  wins: readonly number[],
): readonly string[] {
  const titles = new Set(used.map(({ title }) => title))
  const unused = kinds.filter(({ title }) => !titles.has(title)).map(({ title }) => `“${title}”`)
  const first = Math.min(...wins)
  const winners = wins.filter(call => call === first).length
  const shares = used.map(({ title, each }) => `${each} of “${title}”`).join(', ')
  const freeCells = free === 0 ? '' : free === 1 ? ' and a free space' : ` and ${free} free spaces`
  const isWhole = used.every(({ words, each }) => words.length === each)
  return [
    `Every board of ${grid.columns} × ${grid.rows} has ${shares}${freeCells}, and each kind is called as often: every child can answer every call.`,
    ...(isWhole
      ? ['There are only as many words as a board has, so boards differ by their places alone.']
      : []),
    ...(unused.length === 0 ? [] : [`Not called, for want of words or room: ${unused.join(', ')}.`]),
    `${winners === 1 ? 'One board' : `${winners} boards`} can have a line at call ${first} at the earliest; a child who covers other words wins later.`,
  ]
}
