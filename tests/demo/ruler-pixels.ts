/** Finds the printed rulers of a cover in its pixels and measures them there. */
import type { Coverage } from '../pieces/pixels.js'

export interface MeasuredRulers {
  /** From the middle of the tick at 0 mm to that at 100 mm, in pixels. */
  readonly metricPx: number
  /** From the middle of the tick at 0 in to that at 4 in. */
  readonly inchPx: number
}

/**
 * The longest ticks alone reach down to the rows that are looked for: eleven about 10 mm apart, and five about an
 * inch apart, give or take a tenth, so that a wrong scale is found and measured, and not overlooked.
 */
export function measureRulers(page: Coverage, dpi: number): MeasuredRulers {
  return { metricPx: combLength(page, 11, (10 / 25.4) * dpi), inchPx: combLength(page, 5, dpi) }
}

/** From the first tick's middle to the last one's, in a row that holds a comb of so many ticks so far apart. */
function combLength({ width, height, values }: Coverage, ticks: number, stepPx: number): number {
  for (let y = 0; y < height; y++) {
    const middles = middlesOfRuns(values.subarray(y * width, (y + 1) * width))
    for (let first = 0; first + ticks <= middles.length; first++) {
      let last = first
      while (last < first + ticks - 1 && Math.abs((middles[last + 1]! - middles[last]!) / stepPx - 1) < 0.1)
        last++
      if (last === first + ticks - 1) return middles[last]! - middles[first]!
    }
  }
  throw new Error(`no ruler of ${ticks} ticks was found`)
}

/** The middles of a row's runs of ink, weighed by how dark each pixel is, in pixels from its left edge. */
function middlesOfRuns(row: Uint8Array): number[] {
  const middles: number[] = []
  let ink = 0
  let moment = 0
  for (let x = 0; x <= row.length; x++) {
    const dark = x < row.length ? row[x]! : 0
    if (dark > 16) {
      ink += dark
      moment += dark * (x + 0.5)
    } else if (ink > 0) {
      middles.push(moment / ink)
      ink = 0
      moment = 0
    }
  }
  return middles
}
