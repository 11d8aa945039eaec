import { linearRgb, type Rgb, relativeLuminance } from './contrast.js'

type Matrix = readonly [Rgb, Rgb, Rgb]

/**
 * How linear RGB looks to an eye without long-wave (protan) or middle-wave (deutan) cones: Machado, Oliveira and
 * Fernandes 2009, "A physiologically-based model for simulation of color vision deficiency", severity 1.0.
 */
export const machado: { readonly protan: Matrix; readonly deutan: Matrix } = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
}

export type Viewing = 'full colour' | 'protan' | 'deutan' | 'grey copy'

/** Linear RGB as seen; outside 0 to 1 it is clipped, as a screen or a printer would. */
export function seen(color: string, viewing: Viewing): Rgb {
  const rgb = linearRgb(color)
  switch (viewing) {
    case 'full colour':
      return rgb
    case 'grey copy': {
      const luminance = relativeLuminance(color)
      return [luminance, luminance, luminance]
    }
    case 'protan':
    case 'deutan': {
      const [red, green, blue] = machado[viewing].map(row =>
        Math.min(1, Math.max(0, row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2])),
      )
      return [red!, green!, blue!]
    }
  }
}

/** Difference of two colours as seen: CIE 1976 ΔE*ab under D65. */
export function colourDifference(color: string, other: string, viewing: Viewing): number {
  const [a, b] = [lab(seen(color, viewing)), lab(seen(other, viewing))]
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
}

/**
 * Colours nearer than this are taken for one on thin strokes. A side-by-side patch is told apart from about 2.3
 * (Mahy and others 1994, from memory); thin marks apart from each other need several times that
 * (common practice, no source).
 */
export const leastColourDifference = 15

/** sRGB to XYZ (IEC 61966-2-1) to CIE L*a*b*, white D65. */
function lab([red, green, blue]: Rgb): readonly [number, number, number] {
  const x = (0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505
  const y = 0.2126 * red + 0.7152 * green + 0.0722 * blue
  const z = (0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089
  const f = (t: number): number => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29)
  return [116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))]
}
