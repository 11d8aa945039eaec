/**
 * Boards of words for a game in which kinds are called: every board has equally many words of each kind, so that it can
 * answer each call as often as any other board.
 */
import type { ColumnsAndRows } from '../../geometry.js'
import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { linesOf } from '../bingo/board.js'
import { cardId } from '../card-id.js'
import type { BoardAtCall, Card, CardSet } from '../card-set.js'
import { type Generator, generatorFor, shuffle } from '../random.js'

export interface Kind {
  /** What is called. */
  readonly title: string
  readonly words: readonly Word[]
}

export interface PatternBingoWanted {
  /** No word in two of them. */
  readonly kinds: readonly Kind[]
  /** The largest that the words fill where left out. */
  readonly grid?: ColumnsAndRows | undefined
  /** How many words of each kind a board has; as many as fill it where left out, of all kinds nearly as many. */
  readonly answers?: number | undefined
  readonly boards: number
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/** What stands on every board. */
interface Share {
  readonly grid: ColumnsAndRows
  /** The kinds that are called, each with how many of its words a board has. */
  readonly kinds: readonly (Kind & { readonly each: number })[]
  readonly free: number
}

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
    answerData: share.kinds.map(({ title, words, each }) => ({
      call: title,
      onEachBoard: each,
      words: words.map(({ text }) => text),
    })),
    notes: notesOn(wanted, share, winning),
  })
}

const GRIDS: readonly ColumnsAndRows[] = [
  { columns: 5, rows: 5 },
  { columns: 4, rows: 4 },
  { columns: 3, rows: 3 },
  { columns: 3, rows: 2 },
  { columns: 2, rows: 2 },
]
/** Of the words, on each board: so that boards differ, as bingo's do. */
const SHARE_ON_BOARD = 0.8

/** The largest grid that is full but for its middle, a fifth of the words staying off it where a smaller one can be had. */
function bestShare(wanted: PatternBingoWanted): Share | undefined {
  if (wanted.grid !== undefined) return shareOn(wanted.grid, wanted)
  const all = GRIDS.map(grid => shareOn(grid, wanted)).filter(share => share !== undefined)
  const full = all.filter(({ grid, free }) => free <= (grid.columns * grid.rows) % 2)
  const differing = full.filter(({ kinds }) => {
    const dealt = kinds.reduce((sum, { each }) => sum + each, 0)
    const words = kinds.reduce((sum, kind) => sum + kind.words.length, 0)
    return dealt <= words * SHARE_ON_BOARD
  })
  return differing[0] ?? full[0] ?? all.at(-1)
}

/** Undefined where there are not two kinds to call. */
function shareOn(grid: ColumnsAndRows, { kinds, answers }: PatternBingoWanted): Share | undefined {
  const cells = grid.columns * grid.rows
  const enough = kinds.filter(({ words }) => words.length >= (answers ?? 1))
  const most = Math.floor(cells / (answers ?? 1))
  const largest = enough.toSorted((a, b) => b.words.length - a.words.length).slice(0, most)
  if (largest.length < 2) return undefined
  const each = new Map(largest.map(kind => [kind, answers ?? 1]))
  const dealt = () => [...each.values()].reduce((sum, count) => sum + count, 0)
  // The middle of an odd grid is free, as on other boards.
  while (answers === undefined && dealt() < cells - (grid.columns % 2) * (grid.rows % 2)) {
    const growing = largest.filter(kind => each.get(kind)! < kind.words.length)
    if (growing.length === 0) break
    const next = growing.reduce((least, kind) => (each.get(kind)! < each.get(least)! ? kind : least))
    each.set(next, each.get(next)! + 1)
  }
  const used = kinds.flatMap(kind => {
    const count = each.get(kind)
    return count === undefined ? [] : [{ ...kind, each: count }]
  })
  return { grid, kinds: used, free: cells - dealt() }
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

/** A line of two is full before the game has begun: on small boards the longer ones alone win. */
export function winningLines(grid: ColumnsAndRows): readonly (readonly number[])[] {
  const lines = linesOf({ ...grid, freeCentre: false })
  const longest = Math.max(...lines.map(({ length }) => length))
  return lines.filter(({ length }) => length >= Math.min(3, longest))
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

/** How many words of each kind a line waits for. */
function needOf(
  line: readonly number[],
  cells: readonly (Word | null)[],
  kinds: readonly Kind[],
): readonly number[] {
  return kinds.map(
    ({ words }) => line.filter(cell => cells[cell] !== null && words.includes(cells[cell]!)).length,
  )
}

/** For each board the call by which it can have a line at the earliest: a child covers one word a call, and may choose. */
function winsOf(
  needs: readonly (readonly (readonly number[])[])[],
  calls: readonly number[],
): readonly number[] {
  const callsOf: number[][] = needs[0]![0]!.map(() => [])
  for (const [index, kind] of calls.entries()) callsOf[kind]!.push(index + 1)
  return needs.map(lines => {
    let first = Number.POSITIVE_INFINITY
    for (const line of lines) {
      let full = 0
      for (const [kind, count] of line.entries())
        if (count > 0) full = Math.max(full, callsOf[kind]![count - 1]!)
      first = Math.min(first, full)
    }
    return first
  })
}

const TRIES = 400

/** Each kind as often as a board can answer it; one board alone first, and as late as can be found. */
function orderOfCalls(
  { kinds }: Share,
  needs: readonly (readonly (readonly number[])[])[],
  generator: Generator,
): readonly number[] {
  const all = kinds.flatMap(({ each }, kind) => Array.from({ length: each }, () => kind))
  let best = shuffle(all, generator)
  let bestWorth = Number.NEGATIVE_INFINITY
  for (let tries = 0; tries < TRIES; tries++) {
    const calls = tries === 0 ? best : shuffle(all, generator)
    const wins = winsOf(needs, calls)
    const first = Math.min(...wins)
    const winners = wins.filter(call => call === first).length
    const worth = first - (winners - 1) * all.length
    if (worth > bestWorth) [best, bestWorth] = [calls, worth]
  }
  return best
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

function tooFewKinds({ kinds, answers, grid, place }: PatternBingoWanted): Problem {
  if (answers === undefined || kinds.length < 2)
    return errorAt(
      place,
      `the words make ${kinds.length === 0 ? 'no kind' : 'one kind'} to call, and a game needs two`,
      'Name another sort, or give more words.',
    )
  const second = kinds.map(({ words }) => words.length).toSorted((a, b) => b - a)[1]!
  const cells = grid === undefined ? second * 2 : grid.columns * grid.rows
  return errorAt(
    place,
    `no board has ${answers} words of each of two kinds`,
    `Write answers: ${Math.max(1, Math.min(second, Math.floor(cells / 2)))} or less, or give more words${grid === undefined ? '' : ' or a larger grid'}.`,
  )
}
