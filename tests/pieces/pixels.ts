import { Resvg } from '@resvg/resvg-js'
import type { PathShape, Shape } from '../../src/pieces/piece.js'

/** How much of each pixel is covered, from 0 to 255, row by row. */
export interface Coverage {
  readonly width: number
  readonly height: number
  readonly values: Uint8Array
}

/** A picture `widthMm` × `heightMm`, with its drawing moved by (`xMm`, `yMm`). */
export interface Canvas {
  readonly widthMm: number
  readonly heightMm: number
  readonly xMm: number
  readonly yMm: number
  readonly dpi: number
}

/** A pixel of red, green, blue and opacity as one word. */
const BLACK = new Uint32Array(Uint8Array.of(0, 0, 0, 255).buffer)[0]!

/** Up to three drawings rendered at once, one in each colour channel: each in its own coverage. */
export function renderLayers(layers: readonly (readonly Shape[])[], canvas: Canvas): readonly Coverage[] {
  const { widthMm, heightMm, xMm, yMm, dpi } = canvas
  const channels = ['#ff0000', '#00ff00', '#0000ff']
  const groups = layers.map((shapes, index) => {
    const paths = shapes.flatMap(shape =>
      shape.kind === 'path' ? [pathElement(shape, channels[index]!)] : [],
    )
    return `<g style="mix-blend-mode:screen">${paths.join('')}</g>`
  })
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthMm} ${heightMm}">` +
    `<rect width="${widthMm}" height="${heightMm}" fill="#000000"/>` +
    `<g transform="translate(${xMm} ${yMm})">${groups.join('')}</g></svg>`
  const image = new Resvg(svg, {
    fitTo: { mode: 'width', value: Math.round((widthMm / 25.4) * dpi) },
    // Searching the machine for fonts would take ten times as long as drawing.
    font: { loadSystemFonts: false },
  }).render()
  const { width, height, pixels } = image
  const covered = layers.map(() => new Uint8Array(width * height))
  // Whole pixels can be read as words only from an address divisible by four.
  const aligned = pixels.byteOffset % 4 === 0 ? pixels : Uint8Array.from(pixels)
  const words = new Uint32Array(aligned.buffer, aligned.byteOffset, width * height)
  for (let index = 0; index < words.length; index++) {
    if (words[index] === BLACK) continue
    for (let channel = 0; channel < covered.length; channel++)
      covered[channel]![index] = aligned[index * 4 + channel]!
  }
  return covered.map(values => ({ width, height, values }))
}

export function render(shapes: readonly Shape[], canvas: Canvas): Coverage {
  return renderLayers([shapes], canvas)[0]!
}

/** The shape in one colour, whatever colour it has. */
function pathElement({ d, fill, stroke }: PathShape, color: string): string {
  const paint = fill === 'none' ? 'none' : color
  if (stroke === undefined) return `<path d="${d}" fill="${paint}"/>`
  return (
    `<path d="${d}" fill="${paint}" stroke="${color}" stroke-width="${stroke.widthMm}" ` +
    `stroke-linecap="${stroke.cap ?? 'butt'}"/>`
  )
}

/** Whether any pixel that is covered by half or more passes; white is passed over four pixels at a time. */
export function someInked({ values }: Coverage, passes: (index: number) => boolean): boolean {
  const whole = values.byteOffset % 4 === 0 ? values.length >> 2 : 0
  const fours = new Uint32Array(values.buffer, whole === 0 ? 0 : values.byteOffset, whole)
  for (let four = 0; four < whole; four++) {
    // The highest bit of each of the four: 128 or more.
    if ((fours[four]! & 0x80808080) === 0) continue
    for (let index = four * 4; index < four * 4 + 4; index++)
      if (values[index]! >= 128 && passes(index)) return true
  }
  for (let index = whole * 4; index < values.length; index++)
    if (values[index]! >= 128 && passes(index)) return true
  return false
}

/** First and last column, or row, that holds a pixel covered by half or more; undefined where none does. */
export function columnsOf(coverage: Coverage): { readonly first: number; readonly last: number } | undefined {
  const { width } = coverage
  let first = Number.POSITIVE_INFINITY
  let last = Number.NEGATIVE_INFINITY
  someInked(coverage, index => {
    const column = index % width
    if (column < first) first = column
    if (column > last) last = column
    return false
  })
  return first <= last ? { first, last } : undefined
}

export function rowsOf(coverage: Coverage): { readonly first: number; readonly last: number } | undefined {
  const { width, values } = coverage
  const inked = (value: number): boolean => value >= 128
  const first = values.findIndex(inked)
  if (first < 0) return undefined
  return { first: Math.floor(first / width), last: Math.floor(values.findLastIndex(inked) / width) }
}

/** Pixels that both cover, however little. */
export function overlap(a: Coverage, b: Coverage): number {
  let count = 0
  for (let index = 0; index < a.values.length; index++)
    if (a.values[index]! > 0 && b.values[index]! > 0) count++
  return count
}

/** Whether ink of `a` and ink of `b` (half covered or more) come within `reach` pixels, sideways, upright or aslant. */
export function comeWithin(a: Coverage, b: Coverage, reach: number): boolean {
  const { width, height } = a
  const [own, others] = [a.values, b.values]
  return someInked(a, at => {
    if (others[at]! >= 128) return true
    const x = at % width
    const y = (at - x) / width
    // From ink with ink all round it the way to any other leads over its neighbours, which are tried themselves.
    const isInside =
      x > 0 &&
      y > 0 &&
      x < width - 1 &&
      y < height - 1 &&
      own[at - 1]! >= 128 &&
      own[at + 1]! >= 128 &&
      own[at - width]! >= 128 &&
      own[at + width]! >= 128 &&
      own[at - width - 1]! >= 128 &&
      own[at - width + 1]! >= 128 &&
      own[at + width - 1]! >= 128 &&
      own[at + width + 1]! >= 128
    if (isInside) return false
    const left = Math.max(0, x - reach)
    const right = Math.min(width - 1, x + reach)
    const bottom = Math.min(height - 1, y + reach)
    for (let row = Math.max(0, y - reach); row <= bottom; row++)
      for (let index = row * width + left; index <= row * width + right; index++)
        if (others[index]! >= 128) return true
    return false
  })
}

/** Pixels that can be reached from the picture's edge without crossing ink of `walls` (half covered or more). */
export function outsideOf(walls: Coverage): Uint8Array {
  const { width, height, values } = walls
  const outside = new Uint8Array(values.length)
  const open: number[] = []
  const visit = (index: number): void => {
    if (outside[index] === 1 || values[index]! >= 128) return
    outside[index] = 1
    open.push(index)
  }
  for (let x = 0; x < width; x++) {
    visit(x)
    visit((height - 1) * width + x)
  }
  for (let y = 0; y < height; y++) {
    visit(y * width)
    visit(y * width + width - 1)
  }
  for (let index = open.pop(); index !== undefined; index = open.pop()) {
    const x = index % width
    if (x > 0) visit(index - 1)
    if (x < width - 1) visit(index + 1)
    if (index >= width) visit(index - width)
    if (index < values.length - width) visit(index + width)
  }
  return outside
}

/** How far in mm the art's ink lies outside its own size on the worst side; negative where all lies inside. */
export function spillMm(art: {
  readonly widthMm: number
  readonly heightMm: number
  readonly shapes: readonly Shape[]
}) {
  const [marginMm, dpi] = [8, 300]
  const [widthMm, heightMm] = [art.widthMm + 2 * marginMm, art.heightMm + 2 * marginMm]
  const picture = render(art.shapes, { widthMm, heightMm, xMm: marginMm, yMm: marginMm, dpi })
  const [columns, rows] = [columnsOf(picture), rowsOf(picture)]
  if (columns === undefined || rows === undefined) throw new Error('nothing was drawn')
  const mm = (pixels: number): number => (pixels / dpi) * 25.4
  return Math.max(
    marginMm - mm(columns.first),
    marginMm - mm(rows.first),
    mm(columns.last + 1) - (marginMm + art.widthMm),
    mm(rows.last + 1) - (marginMm + art.heightMm),
  )
}

/**
 * The least white in mm between ink of `a` and ink of `b` (half covered or more), as the crow flies; what lies farther
 * apart than `mostMm` is given as that. The nearest two pixels lie on edges, unless the inks cover one another.
 */
export function whiteBetweenMm(a: Coverage, b: Coverage, mostMm: number, dpi = 300): number {
  const pixelMm = 25.4 / dpi
  if (someInked(a, at => b.values[at]! >= 128)) return Math.min(mostMm, -pixelMm)
  const rows = edgesInRows(b)
  let least = (mostMm / pixelMm + 1) ** 2
  for (const [y, columns] of edgesInRows(a).entries())
    for (const x of columns)
      for (let away = 0; away * away < least && away < rows.length; away++)
        for (const row of away === 0 ? [y] : [y - away, y + away])
          for (const column of rows[row] ?? []) {
            const square = away * away + (column - x) ** 2
            if (square < least) least = square
          }
  return (Math.sqrt(least) - 1) * pixelMm
}

/** The columns of each row's ink that has no ink on one of its four sides. */
function edgesInRows({ width, height, values }: Coverage): readonly (readonly number[])[] {
  const rows = Array.from({ length: height }, (): number[] => [])
  const inked = (index: number): boolean => values[index]! >= 128
  someInked({ width, height, values }, index => {
    const x = index % width
    const within =
      x > 0 &&
      x < width - 1 &&
      inked(index - 1) &&
      inked(index + 1) &&
      inked(index - width) &&
      inked(index + width)
    if (!within) rows[(index - x) / width]!.push(x)
    return false
  })
  return rows
}

/** The widest run of white in mm between ink in any row or column. */
export function widestWhiteMm(coverage: Coverage, dpi = 300): number {
  const { width, height, values } = coverage
  const inked = (x: number, y: number): boolean => values[y * width + x]! >= 128
  const widest = (length: number, at: (index: number) => boolean): number => {
    let [last, most] = [-1, 0]
    for (let index = 0; index < length; index++) {
      if (!at(index)) continue
      if (last >= 0) most = Math.max(most, index - last - 1)
      last = index
    }
    return most
  }
  const inRows = Array.from({ length: height }, (_, y) => widest(width, x => inked(x, y)))
  const inColumns = Array.from({ length: width }, (_, x) => widest(height, y => inked(x, y)))
  return (Math.max(...inRows, ...inColumns) * 25.4) / dpi
}
