import { defaultTypeface } from '../../fonts/index.js'
import { loadTypeface } from '../../fonts/load-typeface.js'
import type { MarkSpan, StyledMark } from '../pieces/marks/styled-mark.js'
import { lineNames, outlineNames } from '../pieces/marks/styles.js'
import type { PlacedArt } from '../pieces/piece.js'
import { drawTextLine } from '../pieces/text/text-line.js'
import { leastEmMm } from '../pieces/text/type-size.js'
import type { Typeface } from '../pieces/typeface/typeface.js'
import { drawWord } from '../pieces/word/word-art.js'
import type { Sheet } from '../sheets/sheet.js'

const COLUMNS = 3
const CELL = { widthMm: 56, heightMm: 17 }
const MARGIN_MM = 4
/** From the top of a cell to the baseline of its words. */
const BASELINE_MM = 8.5

/** Every line and outline under the same letters, at the smallest size and larger, with its name: to look at. */
export function stylesPage(): Sheet {
  const loaded = loadTypeface({ name: defaultTypeface, place: { file: defaultTypeface } })
  if (!loaded.ok) throw new Error('the default face does not load')
  const typeface = loaded.value
  const styles = [...lineNames.map(line => ({ line })), ...outlineNames.map(outline => ({ outline }))]
  const furniture = styles.flatMap((style, index) =>
    cell(typeface, style).map(placed => ({
      ...placed,
      xMm: placed.xMm + MARGIN_MM + (index % COLUMNS) * CELL.widthMm,
      yMm: placed.yMm + MARGIN_MM + Math.floor(index / COLUMNS) * CELL.heightMm,
    })),
  )
  return {
    widthMm: 2 * MARGIN_MM + COLUMNS * CELL.widthMm,
    heightMm: 2 * MARGIN_MM + Math.ceil(styles.length / COLUMNS) * CELL.heightMm,
    number: 1,
    side: 'front',
    kind: 'key',
    title: 'All styles of marks',
    pieces: [],
    cuts: [],
    furniture,
  }
}

function cell(typeface: Typeface, style: { readonly line?: string; readonly outline?: string }): PlacedArt[] {
  const least = leastEmMm(typeface, { kind: 'normal' })
  const mark: StyledMark = {
    mark: { place: { file: '' }, target: { kind: 'letters', letters: 'ree' } },
    index: 0,
    descenders: 'clear',
    assigned: false,
    ...style,
  }
  // Only a letter that says nothing is ever crossed.
  const crossed = style.line === 'slash'
  const span: MarkSpan = {
    mark,
    ranges: [{ start: 0, end: 3 }],
    ...(crossed ? { struck: [{ start: 0, end: 1 }] } : {}),
  }
  const words = [least, least * 1.6].map(sizeMm =>
    drawWord({ typeface, word: crossed ? 'knee' : 'reed', spans: [span], sizeMm }),
  )
  const name = drawTextLine({ typeface, text: style.line ?? style.outline ?? '', sizeMm: 2.8 })
  return [
    ...words.map((word, index) => ({
      art: word.art,
      xMm: 1 + index * 18 - word.letterBox.xMm,
      yMm: BASELINE_MM - word.baselineMm,
    })),
    { art: name.art, xMm: 42, yMm: BASELINE_MM - name.art.heightMm },
  ]
}
