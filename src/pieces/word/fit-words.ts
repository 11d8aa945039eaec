import { MM_PER_POINT, type Size } from '../../geometry.js'
import type { MarkSpan } from '../marks/styled-mark.js'
import type { Typeface } from '../typeface/typeface.js'
import type { CornerRoom } from './corner-tags.js'
import { measureWord, type WordMeasure } from './word-art.js'
import type { WordMeasurer } from './word-measurer.js'

/** A word that has to fit its room. */
export interface WordInRoom {
  readonly word: string
  readonly spans: readonly MarkSpan[]
  readonly syllableBreaks?: readonly number[]
  readonly room: Size
  /** What stands in the corner of its room, the white around it included. */
  readonly corner?: CornerRoom
}

export interface FitRequest {
  /** Remembers what it measured; measured anew each time where left out. */
  readonly measure?: WordMeasurer
  readonly typeface: Typeface
  readonly words: readonly WordInRoom[]
  readonly large: boolean
  /** No tag may be smaller. */
  readonly leastTextMm?: number
  /** Ems; equal where the teacher named a size. */
  readonly minimumMm: number
  readonly maximumMm: number
}

/** One size for a set, and the room above and below the baseline that its words share. */
export interface Fit {
  readonly sizeMm: number
  readonly aboveMm: number
  readonly belowMm: number
  /** The same for the letters alone, without their marks. */
  readonly letters: { readonly aboveMm: number; readonly belowMm: number }
  /**
   * What keeps the set from being larger; undefined where the wanted size was reached. Found when it is asked for: it
   * takes as long as the size, and many sizes are found that nobody is told of.
   */
  readonly decider: () => Decider | undefined
}

/** The word that decides the size of its set. */
export interface Decider {
  readonly word: string
  /** What the size would be without it; undefined where it stands alone. */
  readonly sizeWithoutMm?: number
}

/** Not all words fit even at the smallest size; which does not is found when it is asked for. */
export interface NoFit {
  readonly tooLong: () => TooLong
}

/** Even the smallest size is too large for this word. */
export interface TooLong {
  readonly word: string
  /** The size at which it would fit. */
  readonly wouldFitMm: number
  readonly room: Size
}

/** Sizes are whole quarters of a point, so that the size told is the size printed. */
const STEP_MM = MM_PER_POINT / 4

/**
 * The largest size at which every word fits its room and all share a baseline: the longest word decides for the
 * set. Bisection over quarter points, because marks do not shrink in proportion.
 */
export function fitWords(request: FitRequest): Fit | NoFit {
  const { minimumMm, maximumMm, words } = request
  const sizeMm = largestFit(request, words, minimumMm, maximumMm)
  if (sizeMm === undefined) return { tooLong: () => tooLong(request) }
  let found: { readonly decider: Decider | undefined } | undefined
  return {
    sizeMm,
    ...bodyOf(request, words, sizeMm),
    decider: () => {
      found ??= { decider: sizeMm >= maximumMm - 1e-9 ? undefined : deciderOf(request, sizeMm) }
      return found.decider
    },
  }
}

function deciderOf(request: FitRequest, sizeMm: number): Decider | undefined {
  const { minimumMm, maximumMm, words } = request
  const first = words.find(word => !fits(request, [word], sizeMm + STEP_MM))
  const decider = (first ?? widest(request, sizeMm))?.word
  if (decider === undefined) return undefined
  const others = words.filter(({ word }) => word !== decider)
  const without = others.length === 0 ? undefined : largestFit(request, others, minimumMm, maximumMm)
  return { word: decider, ...(without === undefined ? {} : { sizeWithoutMm: without }) }
}

function tooLong(request: FitRequest): TooLong {
  const failing = request.words.filter(word => !fits(request, [word], request.minimumMm))
  const sizes = (failing.length > 0 ? failing : request.words).map(word => ({
    word,
    sizeMm: largestFit(request, [word], STEP_MM * 4, request.minimumMm) ?? 0,
  }))
  const worst = sizes.reduce((least, other) => (other.sizeMm < least.sizeMm ? other : least))
  // Words that fit one by one may still need more height together, sharing a baseline.
  const together = largestFit(request, request.words, STEP_MM * 4, request.minimumMm) ?? 0
  return {
    word: worst.word.word,
    wouldFitMm: Math.min(worst.sizeMm, together),
    room: worst.word.room,
  }
}

/** Whether `fitWords` would find a size: sooner known than the size itself. */
export function canFitWords(request: FitRequest): boolean {
  const words = longestFirst(request.words)
  return fits(request, words, request.maximumMm) || fits(request, words, request.minimumMm)
}

/** A size is refused by its longest words: met first, they save measuring the others. */
function longestFirst(words: readonly WordInRoom[]): readonly WordInRoom[] {
  return [...words].sort((a, b) => b.word.length - a.word.length)
}

/**
 * The largest whole step at which all fit. One word after another lowers it, found by bisection for that word alone;
 * where all are narrow enough, the height that they need together may lower it once more. So a word is measured at many
 * sizes only where it decides.
 */
function largestFit(
  request: FitRequest,
  unsorted: readonly WordInRoom[],
  minimumMm: number,
  maximumMm: number,
): number | undefined {
  const words = longestFirst(unsorted)
  if (fits(request, words, maximumMm)) return maximumMm
  const sizeAt = (step: number) => minimumMm + step * STEP_MM
  let step: number | undefined = Math.max(0, Math.ceil((maximumMm - minimumMm) / STEP_MM) - 1)
  for (const word of words) step = lastFitting(step, at => fits(request, [word], sizeAt(at)))
  step = lastFitting(step, at => fits(request, words, sizeAt(at)))
  return step === undefined ? undefined : sizeAt(step)
}

/** The last of the steps from 0 to `from` that fits, or undefined where none does; those below a fitting one fit too. */
function lastFitting(from: number | undefined, passes: (step: number) => boolean): number | undefined {
  if (from === undefined || passes(from)) return from
  if (!passes(0)) return undefined
  let low = 0
  let high = from
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (passes(middle)) low = middle
    else high = middle
  }
  return low
}

function fits(request: FitRequest, words: readonly WordInRoom[], sizeMm: number): boolean {
  let aboveMm = 0
  let belowMm = 0
  let heightMm = Number.POSITIVE_INFINITY
  for (const word of words) {
    const { room } = word
    const measure = measureInRoom(request, word, sizeMm)
    if (measure.widthMm > room.widthMm) return false
    aboveMm = Math.max(aboveMm, measure.aboveMm)
    belowMm = Math.max(belowMm, measure.belowMm)
    heightMm = Math.min(heightMm, room.heightMm)
  }
  return aboveMm + belowMm <= heightMm
}

/** A word so wide that it would reach under the tags in the corner stands below them. */
function measureInRoom(
  request: FitRequest,
  { room, corner, ...word }: WordInRoom,
  sizeMm: number,
): WordMeasure {
  const measure = measuring(request)({ ...request, ...word, sizeMm })
  if (corner === undefined) return measure
  if (corner.besides) return { ...measure, widthMm: measure.widthMm + corner.widthMm }
  if (measure.widthMm + 2 * corner.widthMm <= room.widthMm) return measure
  return { ...measure, aboveMm: measure.aboveMm + corner.heightMm }
}

function measuring({ measure = measureWord }: FitRequest): WordMeasurer {
  return measure
}

/** Space above and below the shared baseline. */
function bodyOf(request: FitRequest, words: readonly WordInRoom[], sizeMm: number) {
  const measures = words.map(word => measureInRoom(request, word, sizeMm))
  return { ...furthest(measures), letters: furthest(measures.map(measure => measure.letters)) }
}

function furthest(reaches: readonly { readonly aboveMm: number; readonly belowMm: number }[]) {
  return {
    aboveMm: Math.max(0, ...reaches.map(reach => reach.aboveMm)),
    belowMm: Math.max(0, ...reaches.map(reach => reach.belowMm)),
  }
}

function widest(request: FitRequest, sizeMm: number): WordInRoom | undefined {
  const widthOf = (word: WordInRoom) => measuring(request)({ ...request, ...word, sizeMm }).widthMm
  return request.words.reduce<WordInRoom | undefined>(
    (most, word) => (most === undefined || widthOf(word) > widthOf(most) ? word : most),
    undefined,
  )
}
