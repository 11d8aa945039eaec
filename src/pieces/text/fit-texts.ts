import { MM_PER_POINT, mmToPoints, type Size, saySize } from '../../geometry.js'
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import { LINE_HEIGHT, partsOfLines, type TextMeasure } from './break-lines.js'

/** A text on a piece, which may run over several lines but is broken between its words only. */
export interface TextInRoom {
  readonly text: string
  /** The piece, for messages: `header 2`. */
  readonly on: string
  readonly room: Size
}

export interface FitTextsRequest {
  readonly texts: readonly TextInRoom[]
  /** Ems in mm. */
  readonly minimumMm: number
  readonly maximumMm: number
  readonly weight: 400 | 700
  readonly measure: TextMeasure
  readonly place: Place
}

/** Sizes are whole quarters of a point, as those of words are. */
const STEP_MM = MM_PER_POINT / 4

/** The largest em in mm at which every text fits its room; a text that does not fit at the smallest is an error. */
export function fitTexts(request: FitTextsRequest): Outcome<number> {
  const { texts, minimumMm } = request
  const maximumMm = Math.max(request.maximumMm, minimumMm)
  const widthAtOne = widthsAtOne(request)
  const allFit = (sizeMm: number) => texts.every(text => fits(text, sizeMm, widthAtOne))
  const tooLong = texts.filter(text => !fits(text, minimumMm, widthAtOne))
  if (tooLong.length > 0) return failWith(tooLong.map(text => textTooLong(text, minimumMm, request.place)))
  let low = 0
  let high = Math.floor((maximumMm - minimumMm) / STEP_MM) + 1
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (allFit(minimumMm + middle * STEP_MM)) low = middle
    else high = middle
  }
  return succeed(minimumMm + low * STEP_MM)
}

/** Widths grow in proportion to the em, so each run of words is shaped once. */
function widthsAtOne({ measure, weight }: FitTextsRequest): (text: string) => number {
  const known = new Map<string, number>()
  return text => {
    const width = known.get(text) ?? measure(text, 1, weight)
    known.set(text, width)
    return width
  }
}

function fits({ text, room }: TextInRoom, sizeMm: number, widthAtOne: (text: string) => number): boolean {
  const words = partsOfLines(text)
  const wide = (line: string) => widthAtOne(line) * sizeMm > room.widthMm
  if (words.some(wide)) return false
  let lines = 0
  let line = ''
  for (const word of words) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line === '' || wide(longer)) {
      lines++
      line = word
    } else line = longer
  }
  return lines * sizeMm * LINE_HEIGHT <= room.heightMm
}

function textTooLong({ text, on, room }: TextInRoom, sizeMm: number, place: Place): Problem {
  const points = Math.round(mmToPoints(sizeMm) * 2) / 2
  const message =
    Math.min(room.widthMm, room.heightMm) < sizeMm
      ? `"${text}" on ${on} has next to no room on a piece as small as this at ${points} pt, the smallest allowed here`
      : `"${text}" on ${on} needs more room than the ${saySize(room)} it has at ${points} pt, the smallest allowed here`
  return errorAt(
    place,
    message,
    'Write it shorter, print fewer on a sheet (a smaller across or down, a larger card), or turn the paper.',
  )
}
