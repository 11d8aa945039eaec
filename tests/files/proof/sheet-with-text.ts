import { defaultTypeface } from '../../../fonts/index.js'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { drawTextLine } from '../../../src/pieces/text/text-line.js'
import type { Typeface } from '../../../src/pieces/typeface/typeface.js'
import type { Sheet } from '../../../src/sheets/sheet.js'
import { sheet } from '../marsh-sheets.js'

const lines = [
  'Along the marsh: word cards, sheet 1 of 2',
  'A grown-up works the trimmer and latches the blade after every use.',
  'The words along the marsh: reed, heron, bulrush, quagmire; 68 % of a sheet.',
]

export function theTypeface(): Typeface {
  const typeface = loadTypeface({ name: defaultTypeface, place: { file: 'week.yaml' } })
  if (!typeface.ok) throw new Error('the default typeface cannot be read')
  return typeface.value
}

/** A sheet with lines of text in several sizes and two weights, drawn as every sheet's text is. */
export function aSheetWithText(scale = 1): Sheet {
  const typeface = theTypeface()
  const furniture = [2.3, 3.8, 5, 9.7, 24.1]
    .map(mm => mm * scale)
    .flatMap((sizeMm, row) =>
      lines.map((text, index) => ({
        art: drawTextLine({
          typeface,
          text: sizeMm > 9 ? text.slice(0, Math.round(250 / sizeMm)) : text,
          sizeMm: sizeMm + index * 0.013,
          weight: index === 1 ? 'bold' : 'regular',
        }).art,
        xMm: 10.123 + index * 0.017,
        yMm: 10 + row * row * 12 + index * sizeMm * 1.5,
      })),
    )
  return sheet({ title: 'Text', pieces: [], cuts: [], furniture })
}
