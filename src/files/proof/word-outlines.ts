/** A line of text as it was drawn, taken apart into words. */
import { pathWriter } from '../../pieces/art/path-writer.js'
import { numbersTaken, type PathSteps } from '../page/path-data.js'

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

/** Letters that stand together, or one contour of a letter: some steps of the line, one after another. */
interface Strokes {
  readonly firstStep: number
  readonly firstNumber: number
  endStep: number
  endNumber: number
  left: number
  top: number
  right: number
  bottom: number
}

/** The line's words, left to right; contours of one letter stay together, since one may be the hole in another. */
export function wordsOf(line: PathSteps): readonly WordOutline[] {
  const contours = contoursOf(line)
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
  return words.map(word => wordOutline(line, word))
}

function wordOutline({ commands, numbers }: PathSteps, word: Strokes): WordOutline {
  const { firstStep, endStep, firstNumber, endNumber, left, top, right, bottom } = word
  const points: number[] = []
  for (let index = firstNumber; index < endNumber; index += 2)
    points.push(numbers[index]! - left, numbers[index + 1]! - top)
  return {
    shape: commands.slice(firstStep, endStep),
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

function contoursOf({ commands, numbers }: PathSteps): readonly Strokes[] {
  const contours: Strokes[] = []
  let contour = nothingDrawn(0, 0)
  let end = 0
  for (let step = 0; step < commands.length; step++) {
    const command = commands[step]!
    if (command === 'M') {
      contour = nothingDrawn(step, end)
      contours.push(contour)
    }
    for (const next = end + numbersTaken[command]!; end < next; end += 2)
      reach(contour, numbers[end]!, numbers[end + 1]!)
    contour.endStep = step + 1
    contour.endNumber = end
  }
  return contours
}

function nothingDrawn(firstStep: number, firstNumber: number): Strokes {
  const [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  const box = { left: most, top: most, right: least, bottom: least }
  return { firstStep, firstNumber, endStep: firstStep, endNumber: firstNumber, ...box }
}

function reach(contour: Strokes, x: number, y: number): void {
  if (x < contour.left) contour.left = x
  if (x > contour.right) contour.right = x
  if (y < contour.top) contour.top = y
  if (y > contour.bottom) contour.bottom = y
}

/** Thousands of contours make a page: each is joined to the word before it in place. */
function join(word: Strokes, contour: Strokes): void {
  word.endStep = contour.endStep
  word.endNumber = contour.endNumber
  word.left = Math.min(word.left, contour.left)
  word.top = Math.min(word.top, contour.top)
  word.right = Math.max(word.right, contour.right)
  word.bottom = Math.max(word.bottom, contour.bottom)
}

/** Path data from whole numbers, each step from the end of the one before: the shortest way to write it. */
export function outlineData(shape: string, points: readonly number[]): string {
  let at = 0
  let x = 0
  let y = 0
  let startX = 0
  let startY = 0
  for (const command of shape) {
    writer.character(command.charCodeAt(0) | SMALL)
    if (command === 'Z') {
      x = startX
      y = startY
      continue
    }
    const end = at + numbersTaken[command]!
    for (let index = at; index < end; index += 2) {
      writeNext(points[index]! - x, index === at)
      writeNext(points[index + 1]! - y, false)
    }
    x = points[end - 2]!
    y = points[end - 1]!
    if (command === 'M') {
      startX = x
      startY = y
    }
    at = end
  }
  return writer.take()
}

/** Text put together from bits keeps every bit in memory, ten times what it says; what is written into bytes does not. */
const writer = pathWriter()
const SPACE = 0x20
/** What makes a letter a small one. */
const SMALL = 0x20

/** A minus parts a number from the one before as well as a space does. */
function writeNext(value: number, first: boolean): void {
  if (!first && value >= 0) writer.character(SPACE)
  writer.number(value)
}
