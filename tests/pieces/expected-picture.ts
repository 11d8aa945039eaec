/** Small SVG pictures that stand beside the tests that draw them, so that a change of look is seen in review. */
import type { Box } from '../../src/geometry.js'
import type { Art, PathShape, Shape } from '../../src/pieces/piece.js'

export interface PictureParts {
  readonly title: string
  readonly art: Pick<Art, 'widthMm' | 'heightMm'>
  readonly shapes: readonly Shape[]
  /** Letters are shown by the boxes of their ink: small to read, and enough to see where a mark stands. */
  readonly letters?: readonly Box[]
}

const marginMm = 1

/** One element a line, ten pixels a millimetre. */
export function expectedPicture({ title, art, shapes, letters = [] }: PictureParts): string {
  const [width, height] = [art.widthMm + 2 * marginMm, art.heightMm + 2 * marginMm]
  const viewBox = [-marginMm, -marginMm, width, height].map(short).join(' ')
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${short(width * 10)}" height="${short(height * 10)}" viewBox="${viewBox}">`,
    `<title>${title}</title>`,
    ...letters.map(
      ({ xMm, yMm, widthMm, heightMm }) =>
        `<rect x="${short(xMm)}" y="${short(yMm)}" width="${short(widthMm)}" height="${short(heightMm)}" fill="#dddddd"/>`,
    ),
    ...shapes.flatMap(shape => (shape.kind === 'path' ? [pathElement(shape)] : [])),
    '</svg>',
    '',
  ].join('\n')
}

function pathElement({ d, fill, stroke }: PathShape): string {
  const line =
    stroke === undefined
      ? ''
      : ` stroke="${stroke.color}" stroke-width="${short(stroke.widthMm)}" stroke-linecap="${stroke.cap ?? 'butt'}"`
  return `<path d="${rounded(d)}" fill="${fill}"${line}/>`
}

/** Hundredths of a millimetre: what a change of look is told from. */
export function short(length: number): string {
  return String(Math.round(length * 100) / 100)
}

/** The path with every number in hundredths. */
export function rounded(d: string): string {
  return d.replaceAll(/-?\d+(?:\.\d+)?/g, number => short(Number(number)))
}
