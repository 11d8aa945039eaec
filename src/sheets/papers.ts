/**
 * Paper sizes, portrait: the shorter edge is the width. ISO 216 for the A series; ANSI/ASME Y14.1 and US trade
 * sizes in inches for the others, at 25.4 mm to the inch exactly.
 */
import { inchesToMm, screenPixelsToMm } from '../geometry.js'
import type { NamedPaper } from '../plan/vocabulary.js'

export const papers: readonly NamedPaper[] = [
  iso('a3', 297, 420),
  iso('a4', 210, 297),
  iso('a5', 148, 210),
  iso('a6', 105, 148),
  inches('letter', 8.5, 11, ['us letter', 'ansi a', '8.5x11', '8.5 x 11 in']),
  inches('legal', 8.5, 14, ['us legal', '8.5x14', '8.5 x 14 in']),
  inches('tabloid', 11, 17, ['ledger', 'ansi b', '11x17', '11 x 17 in']),
  inches('index-3x5', 3, 5, ['3x5', '3x5 card', '3 x 5 in', 'index card']),
  inches('index-4x6', 4, 6, ['4x6', '4x6 card', '4 x 6 in']),
  inches('index-5x8', 5, 8, ['5x8', '5x8 card', '5 x 8 in']),
  screen('16:9', 1920, 1080),
  screen('4:3', 1440, 1080),
]

/** A screen's picture, so many pixels wide and high as it stands; a paper's shorter edge is its width. */
function screen(shape: string, wide: number, high: number): NamedPaper {
  const [widthMm, heightMm] = [screenPixelsToMm(high), screenPixelsToMm(wide)]
  return { name: `screen ${shape}`, widthMm, heightMm, screen: true, aliases: [shape, `${wide}x${high}`] }
}

function iso(name: string, widthMm: number, heightMm: number): NamedPaper {
  return { name, widthMm, heightMm, aliases: [`iso ${name}`, `din ${name}`] }
}

function inches(name: string, width: number, height: number, aliases: readonly string[]): NamedPaper {
  return { name, widthMm: inchesToMm(width), heightMm: inchesToMm(height), aliases }
}
