/** Words and styles drawn by themselves as they stand on sheets, for who looks at them before there is a sheet. */
import { sheetToSvg } from '../../files/page/svg.js'
import { targetsOf } from '../../pieces/marks/find-targets.js'
import type { MarkSpan, StyledMark } from '../../pieces/marks/styled-mark.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import { drawWord } from '../../pieces/word/word-art.js'
import type { Word } from '../../words/word.js'

const SIZE_MM = 9
const MARGIN_MM = 0.6

/** The word with its marks, as an SVG file in true size. */
export function wordPicture(word: Word, marks: readonly StyledMark[], typeface: Typeface): string {
  return pictureOf({ typeface, word: word.text, spans: targetsOf(word, marks) })
}

/** A mark on the first of the words that shows it; where none does, its looks alone. */
export function markPicture(mark: StyledMark, words: readonly Word[], typeface: Typeface): string {
  const shows = words.find(word => targetsOf(word, [mark]).length > 0)
  return shows === undefined ? stylePicture(mark, typeface) : wordPicture(shows, [mark], typeface)
}

/** The looks of a mark under letters that hang low nowhere. */
export function stylePicture(
  looks: Pick<StyledMark, 'line' | 'outline' | 'color' | 'tag'>,
  typeface: Typeface,
): string {
  const mark: StyledMark = {
    mark: { place: { file: '' }, target: { kind: 'letters', letters: 'ree' } },
    index: 0,
    descenders: 'clear',
    assigned: false,
    ...looks,
  }
  // Only a letter that says nothing is ever crossed.
  const crossed = looks.line === 'slash'
  const struck = crossed ? { struck: [{ start: 0, end: 1 }] } : {}
  const span: MarkSpan = { mark, ranges: [{ start: 0, end: crossed ? 2 : 3 }], ...struck }
  return pictureOf({ typeface, word: crossed ? 'knee' : 'reed', spans: [span] })
}

/** All words of one size stand on one line: each picture has room for what hangs lowest and stands highest. */
function pictureOf({
  typeface,
  word,
  spans,
}: {
  readonly typeface: Typeface
  readonly word: string
  readonly spans: readonly MarkSpan[]
}): string {
  const { art, baselineMm } = drawWord({ typeface, word, spans, sizeMm: SIZE_MM })
  const aboveMm = Math.max(baselineMm, SIZE_MM * 0.95)
  const belowMm = Math.max(art.heightMm - baselineMm, SIZE_MM * 0.62)
  return sheetToSvg({
    widthMm: art.widthMm + 2 * MARGIN_MM,
    heightMm: aboveMm + belowMm + 2 * MARGIN_MM,
    number: 1,
    side: 'front',
    kind: 'pieces',
    title: word,
    pieces: [],
    cuts: [],
    furniture: [{ art, xMm: MARGIN_MM, yMm: MARGIN_MM + aboveMm - baselineMm }],
  })
}
