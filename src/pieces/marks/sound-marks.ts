import type { SoundPiece, Word } from '../../words/word.js'
import { disc } from './broken-lines.js'
import type { LineStyle } from './line-style.js'
import type { MarkSpan, StyledMark } from './styled-mark.js'

const dotWidth = 2.6

/** So many sounds has the name of a letter, w, where every phoneme is counted. No piece has more. */
const mostDots = 7

/** `count` dots in a row under the middle of the letters. */
function soundDots(count: number): LineStyle {
  return {
    name: soundDotsName(count),
    summary: `${count} dots under the middle of the letters`,
    stands: 'under',
    heightMm: ink => dotWidth * ink.strokeMm,
    shortestMm: ink => count * dotWidth * ink.strokeMm + (count - 1) * ink.gapMm,
    draw: ({ left, top, right, bottom }, { gapMm }) => {
      const [middle, y, radius] = [(left + right) / 2, (top + bottom) / 2, (bottom - top) / 2]
      const apart = 2 * radius + gapMm
      const first = middle - ((count - 1) * apart) / 2
      const commands = Array.from({ length: count }, (_, index) => disc(first + index * apart, y, radius))
      return [{ commands: commands.flat() }]
    },
  }
}

export function soundDotsName(count: number): string {
  return count === 1 ? 'sound dot' : `${count} sound dots`
}

/** Not styles of their own that a plan can ask for: they go with the dashes under teams of letters. */
export const soundDotStyles: readonly LineStyle[] = Array.from({ length: mostDots }, (_, index) =>
  soundDots(index + 1),
)

/**
 * A dot under each letter that counts as a sound alone, a dash under letters that count as one together, as many dots
 * as it counts under a piece that counts for more (x, qu), nothing under silent ones; all on one level. So there are as
 * many dots and dashes as sounds are counted. (Common practice, no source.)
 */
export function soundSpans({ pieces }: Pick<Word, 'pieces'>, color?: string): readonly MarkSpan[] {
  let end = 0
  const placed = pieces.map(piece => {
    const start = end
    end += piece.letters.length
    return { piece, start, end }
  })
  return placed
    .filter(({ piece }) => !piece.silent)
    .map(({ piece, start, end: stop }, index): MarkSpan => {
      const mark: StyledMark = {
        mark: { place: { file: '' }, target: { kind: 'letters', letters: piece.letters } },
        index,
        line: lineFor(piece),
        level: 'even',
        descenders: 'clear',
        assigned: true,
        ...(color === undefined ? {} : { color }),
      }
      return { mark, ranges: [{ start, end: stop }] }
    })
}

function lineFor({ letters, counts }: SoundPiece): string {
  return counts === 1 && letters.length > 1 ? 'single' : soundDotsName(Math.min(counts, mostDots))
}
