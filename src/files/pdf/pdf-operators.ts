import { pathWriter } from '../../pieces/art/path-writer.js'
import type { PathShape } from '../../pieces/piece.js'
import type { CutLine } from '../../sheets/sheet.js'
import { toDecimal } from '../page/decimal.js'
import type { Drawing } from '../page/drawing-order.js'
import { numbersTaken, readPath } from '../page/path-data.js'

/** PDF's page operators (ISO 32000-1, §8) for coordinates in mm with y downwards, as the page is set up. */
export function drawingOperators({ xMm, yMm, turn }: Drawing, art: string): string {
  const sign = turn === 0 ? 1 : -1
  return `q ${sign} 0 0 ${sign} ${toDecimal(xMm)} ${toDecimal(yMm)} cm\n${art}\nQ`
}

/** The path, or a line of text word by word; what `ofWord` gives for a word's outline stands where the word does. */
export function shapeOperators(
  shape: PathShape,
  ofWord: (outline: PathShape) => string = pathOperators,
): string {
  if (shape.words === undefined) return ofWord(shape)
  return shape.words
    .map(({ outline, xMm, yMm }) => `q 1 0 0 1 ${toDecimal(xMm)} ${toDecimal(yMm)} cm\n${ofWord(outline)}\nQ`)
    .join('\n')
}

function pathOperators({ d, fill, stroke }: PathShape): string {
  if (fill === 'none' && stroke === undefined) return ''
  const setUp = [fill === 'none' ? '' : colorOperator(fill, 'rg')]
  if (stroke !== undefined) {
    // SVG's mitre limit is 4 where PDF's is 10 (SVG 2, §13.5.4).
    setUp.push(colorOperator(stroke.color, 'RG'), `${toDecimal(stroke.widthMm)} w 4 M`)
    setUp.push(`${stroke.cap === 'round' ? 1 : 0} J [${(stroke.dashMm ?? []).map(toDecimal).join(' ')}] 0 d`)
  }
  const paint = stroke === undefined ? 'f' : fill === 'none' ? 'S' : 'B'
  return [...setUp, pathSteps(d), paint].filter(line => line !== '').join('\n')
}

export function cutOperators(cuts: readonly CutLine[]): string {
  const lines = cuts.map(
    ({ x1Mm, y1Mm, x2Mm, y2Mm, widthMm, white }) =>
      `${white ? '1 1 1' : '0 0 0'} RG ${toDecimal(widthMm)} w ${toDecimal(x1Mm)} ${toDecimal(y1Mm)} m ${toDecimal(x2Mm)} ${toDecimal(y2Mm)} l S`,
  )
  return lines.join('\n')
}

const writer = pathWriter()
const [SPACE, NEW_LINE] = [32, 10]

/** An operator a line. */
function pathSteps(d: string): string {
  const { commands, numbers } = readPath(d)
  let [x, y] = [0, 0]
  let [startX, startY] = [0, 0]
  let at = 0
  for (const command of commands) {
    const [fromX, fromY] = [x, y]
    const end = at + numbersTaken[command]!
    if (command === 'Z') {
      ;[x, y] = [startX, startY]
    } else {
      x = numbers[end - 2]!
      y = numbers[end - 1]!
    }
    if (command === 'M') [startX, startY] = [x, y]
    if (command === 'Q') writeAsCubic(numbers, at, fromX, fromY)
    else for (let index = at; index < end; index++) writeNumber(numbers[index]!)
    writeOperator(OPERATORS[command]!)
    at = end
  }
  return writer.take().trimEnd()
}

const OPERATORS: Readonly<Record<string, string>> = { M: 'm', L: 'l', Q: 'c', C: 'c', Z: 'h' }

function writeNumber(mm: number): void {
  writer.number(mm)
  writer.character(SPACE)
}

function writeOperator(operator: string): void {
  writer.character(operator.charCodeAt(0))
  writer.character(NEW_LINE)
}

/** PDF has cubic curves only: the control points lie two thirds of the way to the quadratic's one. */
function writeAsCubic(numbers: readonly number[], at: number, fromX: number, fromY: number): void {
  const [controlX, controlY] = [numbers[at]!, numbers[at + 1]!]
  const [x, y] = [numbers[at + 2]!, numbers[at + 3]!]
  writeNumber(twoThirds(fromX, controlX))
  writeNumber(twoThirds(fromY, controlY))
  writeNumber(twoThirds(x, controlX))
  writeNumber(twoThirds(y, controlY))
  writeNumber(x)
  writeNumber(y)
}

function twoThirds(end: number, control: number): number {
  return end + ((control - end) * 2) / 3
}

function colorOperator(color: string, operator: 'rg' | 'RG'): string {
  const channels = [1, 3, 5].map(at => Number.parseInt(color.slice(at, at + 2), 16) / 255)
  return `${decimals(channels)} ${operator}`
}

function decimals(numbers: readonly number[]): string {
  return numbers.map(toDecimal).join(' ')
}
