/** A line of text as it was drawn, taken apart into words. */
import type { PathStep } from '../page/path-data.js'

/** A word's outline from the top left corner of its own box. */
export interface WordOutline {
  /** Its drawing steps without their numbers: `MQQLZMQQZ`. */
  readonly shape: string
  /** x and y by turns, in mm. */
  readonly points: readonly number[]
  readonly xMm: number
  readonly yMm: number
  /** Of its box, the longer edge and the height. */
  readonly lengthMm: number
  readonly heightMm: number
}

interface Contour {
  readonly steps: readonly PathStep[]
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** The line's words, left to right; contours of one letter stay together, since one may be the hole in another. */
export function wordsOf(steps: readonly PathStep[]): readonly WordOutline[] {
  const contours = contoursOf(steps)
  const highest = Math.max(...contours.map(({ top, bottom }) => bottom - top))
  const words: Contour[] = []
  for (const contour of contours) {
    const last = words.at(-1)
    const gap = last === undefined ? Number.POSITIVE_INFINITY : contour.left - last.right
    // A space is wider than this, and what stands on another line is far off.
    if (
      last !== undefined &&
      gap < highest * 0.2 &&
      contour.right > last.left &&
      overlapsInHeight(last, contour, highest)
    )
      words[words.length - 1] = joined(last, contour)
    else words.push(contour)
  }
  return words.map(({ steps: own, left, top, right, bottom }) => ({
    shape: own.map(({ command }) => command).join(''),
    points: own
      .flatMap(({ numbers }) => numbers)
      .map((value, index) => value - (index % 2 === 0 ? left : top)),
    xMm: left,
    yMm: top,
    lengthMm: Math.max(right - left, bottom - top),
    heightMm: bottom - top,
  }))
}

function overlapsInHeight(a: Contour, b: Contour, marginMm: number): boolean {
  return a.top - marginMm < b.bottom && b.top < a.bottom + marginMm
}

function contoursOf(steps: readonly PathStep[]): readonly Contour[] {
  const starts = steps.flatMap(({ command }, index) => (command === 'M' ? [index] : []))
  return starts.map((start, index) => {
    const own = steps.slice(start, starts[index + 1])
    const numbers = own.flatMap(step => step.numbers)
    const across = numbers.filter((_, at) => at % 2 === 0)
    const down = numbers.filter((_, at) => at % 2 === 1)
    return {
      steps: own,
      left: Math.min(...across),
      top: Math.min(...down),
      right: Math.max(...across),
      bottom: Math.max(...down),
    }
  })
}

function joined(a: Contour, b: Contour): Contour {
  return {
    steps: [...a.steps, ...b.steps],
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  }
}

/** Path data from whole numbers, each step from the end of the one before: the shortest way to write it. */
export function outlineData(shape: string, points: readonly number[]): string {
  let at = 0
  let [x, y] = [0, 0]
  let [startX, startY] = [0, 0]
  return [...shape]
    .map(command => {
      if (command === 'Z') {
        ;[x, y] = [startX, startY]
        return 'z'
      }
      const taken = pointsTaken[command]! * 2
      const numbers = points.slice(at, at + taken)
      at += taken
      const relative = numbers.map((value, index) => value - (index % 2 === 0 ? x : y))
      ;[x, y] = [numbers.at(-2)!, numbers.at(-1)!]
      if (command === 'M') [startX, startY] = [x, y]
      return command.toLowerCase() + relative.map((value, index) => spaced(value, index)).join('')
    })
    .join('')
}

const pointsTaken: Readonly<Record<string, number>> = { M: 1, L: 1, Q: 2, C: 3 }

/** A minus parts a number from the one before as well as a space does. */
function spaced(value: number, index: number): string {
  return index === 0 || value < 0 ? String(value) : ` ${value}`
}
