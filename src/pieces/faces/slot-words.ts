import type { Word } from '../../words/word.js'
import { targetsOf } from '../marks/find-targets.js'
import { soundSpans } from '../marks/sound-marks.js'
import type { MarkSpan, StyledMark } from '../marks/styled-mark.js'
import type { WordSlot } from './face.js'

/** What is drawn with the letters of a slot's word. */
export interface SlotWord {
  readonly word: string
  readonly spans: readonly MarkSpan[]
  readonly syllableBreaks: readonly number[]
  /** Whole words' marks that stand as tags in the corner of its room. */
  readonly tags: readonly MarkSpan[]
  /** Equal for slots that show the word alike. */
  readonly key: string
}

/** Gives what goes with the word of a slot. @param marked where it is not as the slot has it */
export type SlotWordFinder = (slot: WordSlot, marked?: boolean) => SlotWord

/** Finds it once for all slots that show the same word alike. */
export function slotWordFinder(marks: readonly StyledMark[]): SlotWordFinder {
  const known = new Map<Word, Map<string, SlotWord>>()
  return (slot, marked = slot.marked) => {
    const { word, onlyMarks, soundMarks, soundsShown, syllableBreaks = false } = slot
    const isPlain = onlyMarks === undefined && soundMarks === undefined && !syllableBreaks
    const shown = isPlain
      ? String(marked)
      : `${marked} ${onlyMarks?.join(' ')} ${soundMarks} ${soundsShown} ${syllableBreaks}`
    const ofWord = known.get(word) ?? new Map<string, SlotWord>()
    known.set(word, ofWord)
    const found = ofWord.get(shown) ?? {
      ...marksShown({ ...slot, marked }, marks),
      word: word.text,
      syllableBreaks: syllableBreaks ? syllableStarts(word) : [],
      key: `${word.text} ${shown} ${known.size}`,
    }
    ofWord.set(shown, found)
    return found
  }
}

function marksShown(
  { word, marked, onlyMarks, soundMarks, soundsShown }: WordSlot,
  marks: readonly StyledMark[],
): Pick<SlotWord, 'spans' | 'tags'> {
  const shown = onlyMarks === undefined ? marks : marks.filter(({ index }) => onlyMarks.includes(index))
  const spans = marked ? targetsOf(word, shown) : []
  return {
    spans: [...(soundMarks === undefined ? [] : soundSpans(word, soundMarks, soundsShown)), ...spans],
    tags: spans.filter(({ mark }) => mark.mark.target.kind === 'word' && mark.tag !== undefined),
  }
}

/** Text indices at which the second and later syllables begin; none where a hyphen divides them already. */
export function syllableStarts({ text, syllables }: Pick<Word, 'text' | 'syllables'>): readonly number[] {
  const letters = text.toLowerCase()
  let end = 0
  return syllables.slice(0, -1).flatMap(syllable => {
    for (const letter of syllable.toLowerCase()) end = letters.indexOf(letter, end) + 1
    return /[\p{L}'\u2019]/u.test(text[end] ?? '-') ? [end] : []
  })
}
