import type { InkRules } from './ink-rules.js'
import { areNear, comesNear, type Extent, inkBetween, type LetterInk, lowestInk } from './letter-ink.js'
import type { LineStyle } from './line-style.js'

export interface LinePlacement {
  /** One rectangle, or several where the line breaks around descenders. */
  readonly pieces: readonly Extent[]
}

/** A mark that is placed already, as a line sees it. */
export interface MarkInTheWay extends Extent {
  /** White to keep from it. */
  readonly awayMm: number
  /** A line on the letters right beside: no part of the new line may hang level with it. */
  readonly besides?: boolean
}

export interface LineSurroundings {
  readonly letters: readonly LetterInk[]
  readonly marks: readonly MarkInTheWay[]
  readonly ink: InkRules
  readonly sizeMm: number
  /** The typeface's lowest descender, below the baseline. */
  readonly descenderMm: number
}

export interface LineWishes {
  readonly descenders: 'clear' | 'break'
  /** On one level with others in the word, below all letters that reach down. */
  readonly even?: boolean
  /** No higher than this, whatever room there is above it. */
  readonly leastTopMm?: number
}

/** How far below the baseline a line hangs under letters that do not reach down, in em. */
const hangEm = 0.085

/** Round letters reach a little below the baseline; and ink is known by rows a hundred and twenty-eighth of an em high. */
const overshootEm = 0.026

/** How much a line may fall short of its letters' ink at either end to keep off a neighbour. */
const trimMm = 0.15

/** A line under the letters with ink from `left` to `right`, as high up as there is room for it. */
export function placeLine(
  style: LineStyle,
  own: readonly LetterInk[],
  surroundings: LineSurroundings,
  { descenders, even = false, leastTopMm = -Infinity }: LineWishes,
): LinePlacement {
  const { ink, sizeMm, descenderMm } = surroundings
  const [left, right] = lineEnds(style, own, surroundings)
  const heightMm = style.heightMm(ink, right - left)
  const near = Math.max(hangEm * sizeMm, ink.gapMm + overshootEm * sizeMm)
  const reachesDown = surroundings.letters.some(letter => letter.bottom > descenderMm / 2)
  const level = even && reachesDown ? descenderMm + ink.gapMm : near
  const firstTop = Math.max(level, leastTopMm)
  let area: Extent = { left, right, top: firstTop, bottom: firstTop + heightMm }
  for (;;) {
    const trimmed = trims(area).find(candidate => nextTop(candidate, surroundings) === undefined)
    if (trimmed !== undefined) return { pieces: [trimmed] }
    if (descenders === 'break') {
      const pieces = breakAround(style, area, own, surroundings)
      if (pieces !== undefined) return { pieces }
    }
    const top = nextTop(area, surroundings)!
    area = { ...area, top, bottom: top + heightMm }
  }
}

/** The letters' own ink; where that is too narrow to show the style, up to half the white to the neighbours. */
function lineEnds(
  style: LineStyle,
  own: readonly LetterInk[],
  { letters, ink }: LineSurroundings,
): [number, number] {
  const left = Math.min(...own.map(letter => letter.left))
  const right = Math.max(...own.map(letter => letter.right))
  const lacking = style.shortestMm(ink) - (right - left)
  if (lacking <= 0) return [left, right]
  const others = letters.filter(letter => !own.includes(letter))
  const before = Math.max(-Infinity, ...others.filter(other => other.left < left).map(other => other.right))
  const after = Math.min(Infinity, ...others.filter(other => other.right > right).map(other => other.left))
  return [
    left - Math.max(0, Math.min(lacking / 2, (left - before) / 2)),
    right + Math.max(0, Math.min(lacking / 2, (after - right) / 2)),
  ]
}

function trims(area: Extent): readonly Extent[] {
  if (area.right - area.left < 10 * trimMm) return [area]
  const [left, right] = [area.left + trimMm, area.right - trimMm]
  return [area, { ...area, right }, { ...area, left }, { ...area, left, right }]
}

/** Where a line has to go to clear what `area` comes too near to; undefined where it is clear. */
function nextTop(area: Extent, surroundings: LineSurroundings): number | undefined {
  const { letters, marks, ink, descenderMm } = surroundings
  const letter = letters.filter(candidate => comesNear(candidate, area, ink.gapMm))
  const mark = marks.filter(candidate => isInTheWay(candidate, area))
  if (letter.length === 0 && mark.length === 0) return undefined
  const below = letter.map(one => lowestInk(one, area.left - ink.gapMm, area.right + ink.gapMm) + one.rowMm)
  // All lines that pass descenders in words of one typeface hang at one depth.
  const pastDescenders = letter.length > 0 ? [descenderMm, ...below] : []
  return Math.max(
    area.top + 0.01,
    ...pastDescenders.map(y => y + ink.gapMm),
    ...mark.map(({ bottom, awayMm }) => bottom + awayMm),
  )
}

function isInTheWay(mark: MarkInTheWay, area: Extent): boolean {
  const reach = mark.besides ? { ...mark, left: area.left, right: area.right } : mark
  return areNear(reach, area, mark.awayMm * 0.999)
}

/** The line with white where its own letters' descenders cross it; undefined where too little of it is left. */
function breakAround(
  style: LineStyle,
  area: Extent,
  own: readonly LetterInk[],
  surroundings: LineSurroundings,
): readonly Extent[] | undefined {
  const { ink } = surroundings
  let pieces: readonly Extent[] = [area]
  for (const letter of own) {
    const crossing = inkBetween(letter, area.top - ink.gapMm, area.bottom + ink.gapMm)
    if (crossing === undefined) continue
    pieces = pieces.flatMap(piece => [
      { ...piece, right: Math.min(piece.right, crossing.left - ink.gapMm) },
      { ...piece, left: Math.max(piece.left, crossing.right + ink.gapMm) },
    ])
  }
  const shortest = Math.max(style.shortestMm(ink), 2 * ink.strokeMm)
  pieces = pieces.filter(piece => piece.right - piece.left >= shortest)
  const drawn = pieces.reduce((sum, piece) => sum + piece.right - piece.left, 0)
  const clear = pieces.every(piece => nextTop(piece, surroundings) === undefined)
  return clear && drawn >= 0.4 * (area.right - area.left) ? pieces : undefined
}
