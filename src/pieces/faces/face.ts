/**
 * A face before it is drawn: a tree of boxes that satori lays out, and named slots in it that oaktag fills itself,
 * because a word with marks has to be shaped as one run and frames want true lines. Whatever differs from card to card
 * stands in a slot, so that the trees of a set are alike and are laid out once.
 */
import type { JSXNode } from 'satori/jsx'
import type { Box, Size } from '../../geometry.js'
import type { Card, CardKind } from '../../sets/card-set.js'
import type { Word } from '../../words/word.js'
import type { SoundShape } from '../marks/sound-marks.js'
import type { Art, Band, PlacedMark, TextRun } from '../piece.js'
import type { TextStyle } from '../text/break-lines.js'

/** satori rounds boxes to whole units; at 20 units a millimetre that is 0.05 mm. */
export const UNITS_PER_MM = 20

/** Millimetres in the units of a face's tree: `style={{ padding: mm(3) }}`. */
export function mm(lengthMm: number): number {
  return Math.round(lengthMm * UNITS_PER_MM)
}

/** What fills a slot. */
export type SlotContent = WordSlot | TextSlot | ArtSlot

/** A word, with its marks; all words of one `sizeGroup` in a set get the same size, which the longest decides. */
export interface WordSlot {
  readonly kind: 'word'
  readonly word: Word
  readonly marked: boolean
  /** Of the marks, those alone with these places in the plan; all of them where left out. */
  readonly onlyMarks?: readonly number[]
  /** Sized as if it were marked, so that an unmarked copy matches its marked one. */
  readonly sizedAsMarked?: boolean
  /** What shows its sounds under the letters. */
  readonly soundMarks?: SoundShape
  /** Under so many of its sounds they are drawn, from the first; the others keep their place. All where left out. */
  readonly soundsShown?: number
  /** A raised dot where a new syllable begins. */
  readonly syllableBreaks?: boolean
  readonly sizeGroup: string
  /** The em in mm that the group need not pass, where the set's own limit is too large. */
  readonly maximumMm?: number
  readonly align: 'centre' | 'left'
  /** The tags of whole words stand beside a word in the middle too, not in the corner: there is much room around it. */
  readonly tagsBeside?: true
  /** Kept free on each side of the word, in mm. */
  readonly paddingMm: number
  /** Kept free above and below it, where that is not as much as beside it. */
  readonly paddingAboveMm?: number
  /**
   * How far below the middle of its slot the word's letters have their middle, as far as there is room: what else
   * stands above or below the slot is not to push them off the middle of the card.
   */
  readonly loweredMm?: number
}

/** What stands level with a word of the same face, named by its slot, wherever the word's size puts its baseline. */
interface LevelWithWord {
  readonly levelWith?: string
}

/** Lines of text in the middle of the slot's height, broken to its width; one line, on the baseline of a word. */
export interface TextSlot extends LevelWithWord {
  readonly kind: 'text'
  readonly lines: readonly string[]
  readonly style: TextStyle
}

/**
 * Something drawn to measure: a frame, a picture, a key sample. Its origin is the slot's top left corner; beside a word
 * its foot is on the word's baseline.
 */
export interface ArtSlot extends LevelWithWord {
  readonly kind: 'art'
  readonly draw: (room: Size) => Art
}

/** A drawing with the marks on it and how large its main word is, all in the face's own coordinates. */
export interface Face extends Size {
  readonly tree: JSXNode
  readonly slots: Readonly<Record<string, SlotContent>>
  /** Of a page of rows, top to bottom; what stands above them is its heading. */
  readonly bands?: readonly Band[]
}

/** A face of a card or board of a set. */
export interface CardFace extends Face {
  readonly id: string
  readonly kind: CardKind
  readonly number: number
  readonly copy: number
  readonly text: readonly string[]
  /** Printed small at its foot; a back has none. */
  readonly setMark?: string
  readonly cells?: readonly (readonly (string | null)[])[]
}

/** What every face of a card takes over from it. */
export function faceOf(
  card: Card,
  size: Size,
): Pick<CardFace, 'widthMm' | 'heightMm' | 'id' | 'kind' | 'number' | 'copy'> {
  const { id, kind, number, copy } = card
  return { ...size, id, kind, number, copy }
}

/** A face laid out: where its slots are and its running text stands; its boxes and that text are drawn when asked for. */
export interface LaidOutFace {
  readonly text: readonly TextRun[]
  readonly slots: ReadonlyMap<string, Box>
  /** The same each time. */
  readonly drawArt: () => Art
}

export type { Art, PlacedMark }
