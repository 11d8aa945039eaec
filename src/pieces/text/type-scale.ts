import { pointsToMm, screenPixelsToMm } from '../../geometry.js'
import type { TypeSize } from '../../plan/plan.js'
import type { Typeface } from '../typeface/typeface.js'
import { boardXHeightMm } from './board-size.js'
import { emForXHeight, isLargePrint, leastEmMm, leastXHeightMm, REFERENCE_X_HEIGHT } from './type-size.js'

/** The sizes of type of one set, as ems in mm of the set's own typeface. */
export interface TypeScale {
  /** Large print: laid out anew, fewer and larger, nothing small on a piece. */
  readonly large: boolean
  /** Running text on a piece, and on pages that children use: clues, keys. */
  readonly textMm: number
  /** Text of pages for grown-ups: caller's sheets, answers, what a marked list says of its words. */
  readonly adultTextMm: number
  /** Text of lists that children write on, and of the marked list that matches them line for line. */
  readonly listTextMm: number
  /** The set mark at a piece's foot: small in large print too, since it is not for the child. */
  readonly setMarkMm: number
  /** No word of the set may be smaller. */
  readonly wordMinimumMm: number
  /** No main word may be smaller: the minimum, or for a group the size that the class's own words have. */
  readonly mainMinimumMm: number
  /** No word need be larger. */
  readonly wordMaximumMm: number
  /** Whether the teacher named a size: words are as large as that, or as the class's, and do not grow on larger pieces. */
  readonly named: boolean
  /** Where main words would be smaller than this, the set gets more room as far as the plan leaves that open. */
  readonly roomyMm: number
}

/** Smaller than this is small for a child who learns to read: about 17 points (our own judgement, no source). */
const ROOMY_X_HEIGHT_MM = 3

/**
 * In large print words could be a third larger than they must be: the white around them is part of what makes them
 * readable (our own judgement, no source).
 */
export const QUIET = 4 / 3

/** No word need be larger, in points of a typeface whose x is half its em: our own judgement, no source. */
const MOST_POINTS = { normal: 96, large: 140 } as const
const TEXT_PT = 11
const ADULT_TEXT_PT = 10.5
/** Small, and only ever for whoever sorts the pieces: common practice, no source. */
const SET_MARK_PT = 6.5

/**
 * Every size goes by the height of x, so that a set keeps its legibility when the typeface changes; so does the class's
 * own, `floorXHeightMm`, for a group whose words are not to be smaller.
 */
export function typeScale(size: TypeSize, typeface: Typeface, floorXHeightMm = 0): TypeScale {
  const equal = (points: number) => emForXHeight(typeface, pointsToMm(points) * REFERENCE_X_HEIGHT)
  const large = isLargePrint(typeface, size)
  const leastMm = leastEmMm(typeface, size)
  const named = size.kind !== 'normal' && size.kind !== 'large'
  const mainMinimumMm = Math.max(leastMm, emForXHeight(typeface, floorXHeightMm))
  return {
    large,
    textMm: large ? leastMm : equal(TEXT_PT),
    adultTextMm: equal(ADULT_TEXT_PT),
    listTextMm: large ? leastMm : equal(ADULT_TEXT_PT),
    setMarkMm: equal(SET_MARK_PT),
    wordMinimumMm: leastMm,
    mainMinimumMm,
    wordMaximumMm: Math.max(mainMinimumMm, named ? leastMm : equal(MOST_POINTS[size.kind])),
    named,
    roomyMm: large ? leastMm * QUIET : named ? leastMm : emForXHeight(typeface, ROOMY_X_HEIGHT_MM),
  }
}

/** On a screen nothing is smaller than can be read across the room, unless a size is named that is larger. */
export function boardTypeScale(size: TypeSize, typeface: Typeface): TypeScale {
  const leastXHeight = Math.max(boardXHeightMm(), leastXHeightMm(size))
  const leastMm = emForXHeight(typeface, leastXHeight)
  return {
    large: true,
    textMm: leastMm,
    adultTextMm: leastMm,
    listTextMm: leastMm,
    setMarkMm: leastMm,
    wordMinimumMm: leastMm,
    mainMinimumMm: leastMm,
    wordMaximumMm: Math.max(leastMm, emForXHeight(typeface, MOST_BOARD_X_HEIGHT_MM)),
    named: false,
    roomyMm: leastMm,
  }
}

/** A fifth of a screen’s height: our own judgement, no source. */
const MOST_BOARD_X_HEIGHT_MM = screenPixelsToMm(216)

/** What holds for every word of a set, when it is measured and when it is drawn. */
export function wordRules({ large, textMm }: TypeScale) {
  return large ? { large, leastTextMm: textMm } : { large }
}
