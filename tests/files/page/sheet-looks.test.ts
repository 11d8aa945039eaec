import { describe, expect, it } from 'vitest'
import { sheetLooks } from '../../../src/files/page/sheet-looks.js'
import { sheetToSvg } from '../../../src/files/page/svg.js'
import { lineOfWords } from '../../../src/pieces/art/line-of-words.js'
import type { PathShape, PlacedWord } from '../../../src/pieces/piece.js'
import type { Sheet } from '../../../src/sheets/sheet.js'
import { art, card, marsh, reed, ring, sheet, triangle } from '../marsh-sheets.js'

const at = { xMm: 10, yMm: 20, turn: 0 } as const
const beside = { ...at, xMm: 80 }
const two = (one = reed, other = one): Sheet =>
  sheet({
    pieces: [card(1, one), card(1, other)].map((piece, index) => ({ piece, ...(index === 0 ? at : beside) })),
  })

const plain = two()
const others: readonly (readonly [string, Sheet])[] = [
  ['another title', { ...plain, title: 'Boards, sheet 1 of 1' }],
  ['a larger paper', { ...plain, widthMm: 215.9 }],
  ['a word drawn otherwise', two(art([triangle], 'reed'))],
  ['another word', two(marsh)],
  ['the same drawing twice, each by itself', two(reed, { ...reed })],
  [
    'other words told of the same drawing',
    {
      ...plain,
      pieces: plain.pieces.map(placed => ({ ...placed, piece: { ...placed.piece, text: ['weed'] } })),
    },
  ],
  ['one piece less', { ...plain, pieces: plain.pieces.slice(1) }],
  ['a piece elsewhere', { ...plain, pieces: plain.pieces.map(placed => ({ ...placed, yMm: 21 })) }],
  [
    'a piece on its head',
    { ...plain, pieces: plain.pieces.map(placed => ({ ...placed, turn: 180 as const })) },
  ],
  ['no cuts', { ...plain, cuts: [] }],
  ['something beside the pieces', { ...plain, furniture: [{ art: art([ring]), xMm: 1, yMm: 1 }] }],
]

describe('what a sheet looks like, in short', () => {
  it('is told alike for sheets whose files are alike, in another run too', () => {
    const looks = sheetLooks()
    const again = two({ ...reed, shapes: [...reed.shapes] })
    expect(sheetToSvg(again)).toBe(sheetToSvg(plain))
    expect(looks.svg(again)).toBe(looks.svg(plain))
    expect(looks.picture(again)).toBe(looks.picture(plain))
  })

  it.each(others)('is told apart with %s', (_, other) => {
    const looks = sheetLooks()
    expect(sheetToSvg(other)).not.toBe(sheetToSvg(plain))
    expect(looks.svg(other)).not.toBe(looks.svg(plain))
  })

  it('is one picture whatever the sheet is called, and whoever else is shown in it', () => {
    const looks = sheetLooks()
    const pictures = others.map(([, other]) => looks.picture(other) === looks.picture(plain))
    expect(pictures).toEqual([true, false, false, false, true, true, false, false, false, false, false])
  })

  it('takes a line of text by its words: what they are, and where each stands', () => {
    const looks = sheetLooks()
    const [word, other] = [outline(), outline({ d: 'M0 0L5 0L5 -4Z' })]
    const line = (...words: readonly PlacedWord[]) => two(art([lineOfWords(words, () => 'M0 0Z')], 'reed'))
    const [first, second] = [
      { outline: word, xMm: 2, yMm: 9 },
      { outline: word, xMm: 12, yMm: 9 },
    ]
    const told = looks.picture(line(first, second))
    expect(looks.picture(line(first, { ...second, outline: outline() }))).toBe(told)
    const elsewhere = [
      line(first),
      line(first, { ...second, xMm: 12.5 }),
      line(first, { ...second, outline: other }),
      line(first, { ...second, outline: outline({ fill: '#00618a' }) }),
    ]
    expect(elsewhere.filter(sheet => looks.picture(sheet) === told)).toEqual([])
  })
})

function outline(change: Partial<PathShape> = {}): PathShape {
  return { kind: 'path', d: 'M0 0L5 0L5 -3Z', fill: '#000000', ...change }
}
