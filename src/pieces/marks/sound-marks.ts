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

/** Under the one letter that spells two sounds, x. */
export const twoSoundDots: LineStyle = {
  name: 'two sound dots',
  summary: 'two dots under the middle of a letter',
  stands: 'under',
  heightMm: soundDot.heightMm,
  shortestMm: ink => 2 * soundDot.shortestMm(ink) + ink.gapMm,
  draw: ({ left, top, right, bottom }, { gapMm }) => {
    const radius = (bottom - top) / 2
    const [x, y, apart] = [(left + right) / 2, (top + bottom) / 2, radius + gapMm / 2]
    return [{ commands: [...disc(x - apart, y, radius), ...disc(x + apart, y, radius)] }]
  },
}

/**
 * A dot under each letter that spells a sound alone (two under an x), a dash under letters that spell theirs together,
 * nothing under silent ones; all on one level. (Common practice, no source.)
 */
export function soundSpans(word: Word, color?: string): readonly MarkSpan[] {
  return word.graphemes
    .filter(grapheme => grapheme.sounds.length > 0)
    .map(({ letters, start, sounds }, index): MarkSpan => {
      const mark: StyledMark = {
        mark: { place: { file: '' }, target: { kind: 'letters', letters } },
        index,
        line: lineFor(letters, sounds.length),
        level: 'even',
        descenders: 'clear',
        assigned: true,
        ...(color === undefined ? {} : { color }),
      }
      return { mark, ranges: [{ start, end: start + letters.length }] }
    })
}

function lineFor(letters: string, sounds: number): string {
  if (letters.length > 1) return 'single'
  return sounds > 1 ? twoSoundDots.name : soundDot.name
}
