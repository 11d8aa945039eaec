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

/** Letters that stand together, or one contour of a letter. */
interface Strokes {
  readonly steps: PathStep[]
  left: number
  top: number
  right: number
  bottom: number
}

/** The line's words, left to right; contours of one letter stay together, since one may be the hole in another. */
export function wordsOf(steps: readonly PathStep[]): readonly WordOutline[] {
  const contours = contoursOf(steps)
  const highest = contours.reduce((most, { top, bottom }) => Math.max(most, bottom - top), 0)
  const words: Strokes[] = []
  for (const contour of contours) {
    const last = words.at(-1)
    // A space is wider than this, and what stands on another line is far off.
    if (
      last !== undefined &&
      contour.left - last.right < highest * 0.2 &&
      contour.right > last.left &&
      overlapsInHeight(last, contour, highest)
    )
      join(last, contour)
    else words.push(contour)
  }
  return words.map(wordOutline)
}

function wordOutline({ steps, left, top, right, bottom }: Strokes): WordOutline {
  const points: number[] = []
  let shape = ''
  for (const { command, numbers } of steps) {
    shape += command
    for (let index = 0; index < numbers.length; index += 2)
      points.push(numbers[index]! - left, numbers[index + 1]! - top)
  }
  return {
    shape,
    points,
    xMm: left,
    yMm: top,
    lengthMm: Math.max(right - left, bottom - top),
    heightMm: bottom - top,
  }
}

function overlapsInHeight(a: Strokes, b: Strokes, marginMm: number): boolean {
  return a.top - marginMm < b.bottom && b.top < a.bottom + marginMm
}

function contoursOf(steps: readonly PathStep[]): readonly Strokes[] {
  const contours: Strokes[] = []
  for (const step of steps) {
    if (step.command === 'M') contours.push(nothingDrawn())
    const contour = contours.at(-1)
    if (contour !== undefined) draw(contour, step)
  }
  return contours
}

function nothingDrawn(): Strokes {
  const [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  return { steps: [], left: most, top: most, right: least, bottom: least }
}

function draw(contour: Strokes, step: PathStep): void {
  contour.steps.push(step)
  const { numbers } = step
  for (let index = 0; index < numbers.length; index += 2) {
    const [x, y] = [numbers[index]!, numbers[index + 1]!]
    if (x < contour.left) contour.left = x
    if (x > contour.right) contour.right = x
    if (y < contour.top) contour.top = y
    if (y > contour.bottom) contour.bottom = y
  }
}

/** Thousands of contours make a page: each is joined to its word in place. */
function join(word: Strokes, contour: Strokes): void {
  for (const step of contour.steps) word.steps.push(step)
  word.left = Math.min(word.left, contour.left)
  word.top = Math.min(word.top, contour.top)
  word.right = Math.max(word.right, contour.right)
  word.bottom = Math.max(word.bottom, contour.bottom)
}

/** Path data from whole numbers, each step from the end of the one before: the shortest way to write it. */
export function outlineData(shape: string, points: readonly number[]): string {
  let at = 0
  let [x, y] = [0, 0]
  let [startX, startY] = [0, 0]
  let data = ''
  for (const command of shape) {
    if (command === 'Z') {
      ;[x, y] = [startX, startY]
      data += 'z'
      continue
    }
    data += command.toLowerCase()
    const end = at + pointsTaken[command]! * 2
    for (let index = at; index < end; index += 2)
      data += spaced(points[index]! - x, index === at) + spaced(points[index + 1]! - y, false)
    ;[x, y] = [points[end - 2]!, points[end - 1]!]
    if (command === 'M') [startX, startY] = [x, y]
    at = end
  }
  return data
}

const pointsTaken: Readonly<Record<string, number>> = { M: 1, L: 1, Q: 2, C: 3 }

/** A minus parts a number from the one before as well as a space does. */
function spaced(value: number, first: boolean): string {
  return first || value < 0 ? String(value) : ` ${value}`
}
