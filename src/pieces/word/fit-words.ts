import { MM_PER_POINT, type Size } from '../../geometry.js'
import type { MarkSpan } from '../marks/styled-mark.js'
import type { Typeface } from '../typeface/typeface.js'
import type { CornerRoom } from './corner-tags.js'
import type { WordMeasure } from './word-art.js'
import { type LettersEm, type MeasuredWord, type WordMeasurer, wordMeasurer } from './word-measurer.js'

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
  const { minimumMm, maximumMm } = request
  const words = wordsToFit(request)
  const sizeMm = largestFit(words, minimumMm, maximumMm)
  if (sizeMm === undefined) return { tooLong: () => tooLong(words, minimumMm) }
  let found: { readonly decider: Decider | undefined } | undefined
  return {
    sizeMm,
    ...bodyOf(words, sizeMm),
    decider: () => {
      found ??= { decider: sizeMm >= maximumMm - 1e-9 ? undefined : deciderOf(words, sizeMm, request) }
      return found.decider
    },
  }
}

interface WordToFit extends Pick<WordInRoom, 'word' | 'room' | 'corner'> {
  readonly measured: MeasuredWord
}

function wordsToFit(request: FitRequest): readonly WordToFit[] {
  const { measure = wordMeasurer(), typeface, large, leastTextMm } = request
  const rules = { typeface, large, ...(leastTextMm === undefined ? {} : { leastTextMm }) }
  return request.words.map(({ word, spans, syllableBreaks = [], room, corner }) => ({
    word,
    room,
    ...(corner === undefined ? {} : { corner }),
    measured: measure({ ...rules, word, spans, syllableBreaks }),
  }))
}

function deciderOf(
  words: readonly WordToFit[],
  sizeMm: number,
  { minimumMm, maximumMm }: FitRequest,
): Decider | undefined {
  const first = words.find(word => !fits([word], sizeMm + STEP_MM))
  const decider = (first ?? widest(words, sizeMm))?.word
  if (decider === undefined) return undefined
  const others = words.filter(({ word }) => word !== decider)
  const without = others.length === 0 ? undefined : largestFit(others, minimumMm, maximumMm)
  return { word: decider, ...(without === undefined ? {} : { sizeWithoutMm: without }) }
}

function tooLong(words: readonly WordToFit[], minimumMm: number): TooLong {
  const failing = words.filter(word => !fits([word], minimumMm))
  const sizes = (failing.length > 0 ? failing : words).map(word => ({
    word,
    sizeMm: largestFit([word], STEP_MM * 4, minimumMm) ?? 0,
  }))
  const worst = sizes.reduce((least, other) => (other.sizeMm < least.sizeMm ? other : least))
  // Words that fit one by one may still need more height together, sharing a baseline.
  const together = largestFit(words, STEP_MM * 4, minimumMm) ?? 0
  return {
    word: worst.word.word,
    wouldFitMm: Math.min(worst.sizeMm, together),
    room: worst.word.room,
  }
}

/** Whether `fitWords` would find a size: sooner known than the size itself. */
export function canFitWords(request: FitRequest): boolean {
  const words = longestFirst(wordsToFit(request))
  return fits(words, request.maximumMm) || fits(words, request.minimumMm)
}

/**
 * No size larger than this fits rooms that are no larger than `room`, whatever marks the words have: known without placing one.
 */
export function largestForLetters(request: FitRequest, { widthMm, heightMm }: Size): number {
  const letters = wordsToFit(request).map(({ measured }) => measured.letters())
  const most = (of: (letters: LettersEm) => number) => Math.max(0, ...letters.map(of))
  const [width, height] = [most(each => each.width), most(each => each.above) + most(each => each.below)]
  return Math.min(widthMm / width, heightMm / height) + ROUNDING_MM
}

/** A size is refused by its longest words: met first, they save measuring the others. */
function longestFirst(words: readonly WordToFit[]): readonly WordToFit[] {
  return [...words].sort((a, b) => b.word.length - a.word.length)
}

/**
 * The largest whole step at which all fit. One word after another lowers it, found by bisection for that word alone;
 * where all are narrow enough, the height that they need together may lower it once more. So a word is measured at many
 * sizes only where it decides.
 */
function largestFit(
  unsorted: readonly WordToFit[],
  minimumMm: number,
  maximumMm: number,
): number | undefined {
  const words = longestFirst(unsorted)
  if (fits(words, maximumMm)) return maximumMm
  const sizeAt = (step: number) => minimumMm + step * STEP_MM
  let step: number | undefined = Math.max(0, Math.ceil((maximumMm - minimumMm) / STEP_MM) - 1)
  for (const word of words) step = lastFitting(step, at => fits([word], sizeAt(at)))
  // Those whose marks reach up and down the furthest refuse most sizes: first found, they save placing the others' marks.
  let furthestReaching: readonly WordToFit[] = []
  step = lastFitting(step, at =>
    fits([...furthestReaching, ...words], sizeAt(at), by => {
      furthestReaching = by
    }),
  )
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

/** Letters alone are larger than their word with its marks by what is lost in rounding at most. */
const ROUNDING_MM = 1e-9

/** Most sizes are refused by the letters alone, before any mark is placed, and most others by the first few words. */
function fits(
  words: readonly WordToFit[],
  sizeMm: number,
  tooHigh: (furthestReaching: readonly WordToFit[]) => void = () => {},
): boolean {
  if (!canLettersFit(words, sizeMm)) return false
  let aboveMm = 0
  let belowMm = 0
  let heightMm = Number.POSITIVE_INFINITY
  let [highest, lowest] = [words[0], words[0]]
  for (const word of words) {
    const { room } = word
    const measure = measureInRoom(word, sizeMm)
    if (measure.widthMm > room.widthMm) return false
    if (measure.aboveMm > aboveMm) highest = word
    if (measure.belowMm > belowMm) lowest = word
    aboveMm = Math.max(aboveMm, measure.aboveMm)
    belowMm = Math.max(belowMm, measure.belowMm)
    heightMm = Math.min(heightMm, room.heightMm)
    if (aboveMm + belowMm > heightMm) {
      tooHigh([highest!, lowest!])
      return false
    }
  }
  return true
}

function canLettersFit(words: readonly WordToFit[], sizeMm: number): boolean {
  let above = 0
  let below = 0
  let heightMm = Number.POSITIVE_INFINITY
  for (const { room, measured } of words) {
    const letters = measured.letters()
    if (letters.width * sizeMm > room.widthMm + ROUNDING_MM) return false
    above = Math.max(above, letters.above)
    below = Math.max(below, letters.below)
    heightMm = Math.min(heightMm, room.heightMm)
  }
  return (above + below) * sizeMm <= heightMm + ROUNDING_MM
}

/** A word so wide that it would reach under the tags in the corner stands below them. */
function measureInRoom({ room, corner, measured }: WordToFit, sizeMm: number): WordMeasure {
  const measure = measured.at(sizeMm)
  if (corner === undefined) return measure
  if (corner.besides) return { ...measure, widthMm: measure.widthMm + corner.widthMm }
  if (measure.widthMm + 2 * corner.widthMm <= room.widthMm) return measure
  return { ...measure, aboveMm: measure.aboveMm + corner.heightMm }
}

/** Space above and below the shared baseline. */
function bodyOf(words: readonly WordToFit[], sizeMm: number) {
  const measures = words.map(word => measureInRoom(word, sizeMm))
  return { ...furthest(measures), letters: furthest(measures.map(measure => measure.letters)) }
}

function furthest(reaches: readonly { readonly aboveMm: number; readonly belowMm: number }[]) {
  return {
    aboveMm: Math.max(0, ...reaches.map(reach => reach.aboveMm)),
    belowMm: Math.max(0, ...reaches.map(reach => reach.belowMm)),
  }
}

function widest(words: readonly WordToFit[], sizeMm: number): WordToFit | undefined {
  const widthOf = ({ measured }: WordToFit) => measured.at(sizeMm).widthMm
  return words.reduce<WordToFit | undefined>(
    (most, word) => (most === undefined || widthOf(word) > widthOf(most) ? word : most),
    undefined,
  )
}
