import type { Word } from '../../words/word.js'
import { disc } from './broken-lines.js'
import type { LineStyle } from './line-style.js'
import type { MarkSpan, StyledMark } from './styled-mark.js'

const dotWidth = 2.6

/** Not a style of its own that a plan can ask for: it goes with the dashes under teams of letters. */
export const soundDot: LineStyle = {
  name: 'sound dot',
  summary: 'one dot under the middle of a letter',
  stands: 'under',
  heightMm: ink => dotWidth * ink.strokeMm,
  shortestMm: ink => dotWidth * ink.strokeMm,
  draw: ({ left, top, right, bottom }) => [
    { commands: disc((left + right) / 2, (top + bottom) / 2, (bottom - top) / 2) },
  ],
}

/**
 * A dot under each letter that spells a sound alone, a dash under letters that spell one together, nothing under
 * silent ones; all on one level. (Common practice, no source.)
 */
export function soundSpans(word: Word, color?: string): readonly MarkSpan[] {
  return word.graphemes
    .filter(grapheme => grapheme.sounds.length > 0)
    .map(({ letters, start }, index): MarkSpan => {
      const mark: StyledMark = {
        mark: { place: { file: '' }, target: { kind: 'letters', letters } },
        index,
        line: letters.length === 1 ? soundDot.name : 'single',
        level: 'even',
        descenders: 'clear',
        assigned: true,
        ...(color === undefined ? {} : { color }),
      }
      return { mark, ranges: [{ start, end: start + letters.length }] }
    })
}
