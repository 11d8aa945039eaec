import type { SoundPiece, Word } from '../../words/word.js'
import { rectangle } from '../art/path-text.js'
import { disc } from './broken-lines.js'
import { finestStrokeMm } from './ink-rules.js'
import type { LineStyle, MarkPath } from './line-style.js'
import type { MarkSpan, StyledMark } from './styled-mark.js'

/** What shows a sound under its letters, the same for a letter and for a team; the first where she says no more than yes. */
export const soundShapes = ['bar', 'dot', 'box'] as const
export type SoundShape = (typeof soundShapes)[number]

/** Sizes in strokes: all of them less ink than a line under the same letters. */
const sizes: Readonly<Record<SoundShape, { readonly width: number; readonly height: number }>> = {
  bar: { width: 4.2, height: 0.75 },
  dot: { width: 1.9, height: 1.9 },
  box: { width: 4, height: 3 },
}

/** Of a box, and the height of a bar, in strokes. */
const thin = 0.75

/** So many sounds has the name of a letter, w, where every phoneme is counted. No piece has more. */
const mostSounds = 7

/** Lighter than any mark, which is black or in a colour of hers. */
export const soundMarkColor = '#595959'

/** `count` shapes in a row under the middle of the letters. */
function soundRow(shape: SoundShape, count: number): LineStyle {
  const { width, height } = sizes[shape]
  return {
    name: soundMarkName(shape, count),
    summary: `${count} under the middle of the letters`,
    stands: 'under',
    heightMm: ({ strokeMm }) => Math.max(finestStrokeMm, height * strokeMm),
    // A gap to the next letter's own besides.
    shortestMm: ({ strokeMm, gapMm }) => count * (width * strokeMm + gapMm),
    draw: ({ left, top, right, bottom }, { strokeMm, gapMm }) => {
      const roomMm = (right - left) / count - gapMm
      const wide = Math.max(finestStrokeMm, Math.min(width * strokeMm, roomMm))
      const first = (left + right) / 2 - (count * wide + (count - 1) * gapMm) / 2
      const lineMm = Math.max(finestStrokeMm, thin * strokeMm)
      return Array.from({ length: count }, (_, index) => {
        const x = first + index * (wide + gapMm)
        return drawn[shape]({ left: x, top, right: x + wide, bottom }, lineMm)
      })
    },
  }
}

type Rectangle = Readonly<Record<'left' | 'top' | 'right' | 'bottom', number>>

const drawn: Readonly<Record<SoundShape, (area: Rectangle, lineMm: number) => MarkPath>> = {
  bar: ({ left, top, right, bottom }) => ({ commands: rectangle(left, top, right, bottom) }),
  dot: ({ left, top, right, bottom }) => ({
    commands: disc((left + right) / 2, (top + bottom) / 2, Math.min(right - left, bottom - top) / 2),
  }),
  box: ({ left, top, right, bottom }, lineMm) => {
    const half = lineMm / 2
    return {
      commands: rectangle(left + half, top + half, right - half, bottom - half),
      strokeMm: lineMm,
      square: true,
    }
  },
}

export function soundMarkName(shape: SoundShape, count: number): string {
  const plural = shape === 'box' ? 'boxes' : `${shape}s`
  return count === 1 ? `sound ${shape}` : `${count} sound ${plural}`
}

/** Not styles of their own that a plan can give to a mark. */
export const soundMarkStyles: readonly LineStyle[] = soundShapes.flatMap(shape =>
  Array.from({ length: mostSounds }, (_, index) => soundRow(shape, index + 1)),
)

/**
 * A shape under each piece of the word that is heard, one for a letter and one for a team alike, as many as it counts
 * under a piece that counts for more (x, qu), nothing under silent ones; all on one level. So there are as many as sounds
 * are counted. (Common practice, no source.)
 * @param shown how many of the heard pieces have theirs drawn, from the first
 */
export function soundSpans(
  { pieces }: Pick<Word, 'pieces'>,
  shape: SoundShape = soundShapes[0],
  shown = Number.POSITIVE_INFINITY,
): readonly MarkSpan[] {
  let end = 0
  const placed = pieces.map(piece => {
    const start = end
    end += piece.letters.length
    return { piece, start, end }
  })
  return placed
    .filter(({ piece }) => !piece.silent)
    .map(
      ({ piece, start, end: stop }, index): MarkSpan => ({
        mark: soundMark(shape, piece, index),
        ranges: [{ start, end: stop }],
        ...(index < shown ? {} : { unseen: true }),
      }),
    )
}

function soundMark(shape: SoundShape, { letters, counts }: SoundPiece, index: number): StyledMark {
  return {
    mark: { place: { file: '' }, target: { kind: 'letters', letters } },
    index,
    line: soundMarkName(shape, Math.min(counts, mostSounds)),
    level: 'even',
    descenders: 'clear',
    assigned: true,
  }
}
