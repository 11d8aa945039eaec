/** How a list of words is divided: the width of its columns, the height of its rows. */
import type { Size } from '../../src/geometry.js'
import type { WordSlot } from '../../src/pieces/faces/face.js'
import { cornerTagsOf } from '../../src/pieces/faces/fit-faces.js'
import { slotWordFinder } from '../../src/pieces/faces/slot-words.js'
import type { StyledMark } from '../../src/pieces/marks/styled-mark.js'
import { type TypeScale, wordRules } from '../../src/pieces/text/type-scale.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'
import { cornerRoom } from '../../src/pieces/word/corner-tags.js'
import { wordMeasurer } from '../../src/pieces/word/word-measurer.js'
import type { Word } from '../../src/words/word.js'

export interface ListedWords {
  readonly words: readonly Word[]
  readonly marks: readonly StyledMark[]
  readonly typeface: Typeface
  readonly type: TypeScale
}

export interface ColumnMeasure {
  readonly numberMm: number
  /** With the white between a word and what stands beside it. */
  readonly wordMm: number
  readonly besideMm: number
}

/**
 * Rows are no closer than this, so that a pencil can work between them; where the whole list and its key then stand on
 * one page, as close as the second: our own judgement, no source.
 */
const LEAST_ROW_MM = 10.5
const CLOSEST_ROW_MM = 9
/** Of the least height: in rows higher still, a word is far from the next. */
const MOST_ROW = 1.65
/** Between a word and what stands beside it. */
export const WORD_GAP_MM = 3
/** White on each side of a word. */
const WORD_PADDING_MM = 1

/** Of the list's width, at most, for the words: beside them there is more to say, or room to write. */
const MOST_FOR_WORDS = 0.6

/** The same words stand in lists of several items, and most of them again when one is another. */
const measured = wordMeasurer(500)

/** What the words need with their marks at the smallest size that may be printed, on one baseline. */
export function leastRoom({ words, marks, typeface, type }: ListedWords): Size {
  const show = slotWordFinder(marks)
  const measures = words.map(word => {
    const slot = listSlot(word, true)
    const shown = show(slot)
    const { word: text, spans, syllableBreaks } = shown
    const measure = measured({ typeface, word: text, spans, syllableBreaks, ...wordRules(type) }).at(
      type.wordMinimumMm,
    )
    const tags = cornerRoom(cornerTagsOf(shown, slot, LEAST_ROW_MM, { typeface, type }))
    return { ...measure, widthMm: measure.widthMm + (tags?.widthMm ?? 0) }
  })
  const most = (of: (measure: (typeof measures)[number]) => number) => Math.max(0, ...measures.map(of))
  // A hair more than that, because boxes are laid out in whole twentieths of a millimetre.
  const around = 2 * WORD_PADDING_MM + 0.1
  return {
    widthMm: most(measure => measure.widthMm) + around + WORD_GAP_MM,
    heightMm: most(measure => measure.aboveMm) + most(measure => measure.belowMm) + around,
  }
}

export function measureColumns(type: TypeScale, widthMm: number, leastWordMm: number): ColumnMeasure {
  const numberMm = type.listTextMm * 2.4
  const usual = widthMm * (type.large ? 0.42 : 0.28)
  const wordMm = Math.max(usual, Math.min(leastWordMm, widthMm * MOST_FOR_WORDS))
  return { numberMm, wordMm, besideMm: widthMm - numberMm - wordMm }
}

/** Of rows whose words need this much. */
export function rowHeights(leastWordMm: number) {
  const least = Math.max(LEAST_ROW_MM, leastWordMm)
  return { least, closest: Math.max(CLOSEST_ROW_MM, leastWordMm), most: least * MOST_ROW }
}

/** The height that fills the room when all rows have it, but those that need more than it. */
export function evenShare(roomMm: number, needs: readonly number[]): number {
  let leftMm = roomMm
  for (const [index, need] of [...needs].sort((a, b) => b - a).entries()) {
    const share = leftMm / (needs.length - index)
    if (need <= share) return share
    leftMm -= need
  }
  return 0
}

export function listSlot(word: Word, marked: boolean): WordSlot {
  return {
    kind: 'word',
    word,
    marked,
    sizedAsMarked: true,
    sizeGroup: 'list',
    align: 'left',
    paddingMm: WORD_PADDING_MM,
  }
}
