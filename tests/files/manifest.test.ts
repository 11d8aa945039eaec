import { describe, expect, it } from 'vitest'
import { manifestOf } from '../../src/files/manifest.js'
import type { PlacedMark } from '../../src/pieces/piece.js'
import { card, item, marsh, reed, sheet } from './marsh-sheets.js'

const mark: PlacedMark = {
  word: 'marsh',
  letters: 'sh',
  start: 3,
  end: 5,
  line: 'single',
  xMm: 20,
  yMm: 25,
  widthMm: 8,
  heightMm: 0.5,
}
const marked = card(2, marsh, { marks: [mark], xHeightMm: 5.12345, fontPt: 28.34652 })

function entry(turn: 0 | 180) {
  const pieces = [{ piece: marked, xMm: 70.00049, yMm: 12.7, turn }]
  const made = manifestOf(item({ sheets: [sheet({ pieces })] }), { formats: ['svg', 'png'], dpi: 300 })
  return { made, piece: made.pages[0]!.pieces[0]! }
}

describe('an item in the manifest', () => {
  it('places pieces in mm from the page’s corner, at three decimals', () => {
    const { piece } = entry(0)
    expect(piece).toMatchObject({
      id: 'card-02',
      kind: 'card',
      number: 2,
      copy: 1,
      xMm: 70,
      yMm: 12.7,
      widthMm: 60,
      heightMm: 40,
      text: ['marsh'],
      xHeightMm: 5.123,
      fontPt: 28.347,
    })
    expect(piece).not.toHaveProperty('turn')
  })

  it('places marks on the page, not on the piece', () => {
    expect(entry(0).piece.marks).toEqual([{ ...mark, xMm: 90, yMm: 37.7 }])
  })

  it('turns the marks of a piece that stands on its head', () => {
    // 70 + 60 − 20 − 8 and 12.7 + 40 − 25 − 0.5.
    expect(entry(180).piece.marks).toEqual([{ ...mark, xMm: 102, yMm: 27.2 }])
    expect(entry(180).piece.turn).toBe(180)
  })

  it('names the files of the formats that were written, and no others', () => {
    const all = manifestOf(item(), { formats: ['svg', 'png', 'pdf'], dpi: 300 })
    expect(all.pdf).toBe('word-cards/word-cards.pdf')
    expect(all.pages[0]).toMatchObject({
      page: 1,
      side: 'front',
      svg: 'word-cards/word-cards-01.svg',
      png: 'word-cards/word-cards-01.png',
    })
    const vector = manifestOf(item(), { formats: ['svg'], dpi: 300 })
    expect(vector).not.toHaveProperty('pdf')
    expect(vector.pages[0]).not.toHaveProperty('png')
  })

  it('says of a page without pieces what it is', () => {
    const cover = manifestOf(item({ sheets: [sheet({ kind: 'cover', pieces: [] })] }), {
      formats: [],
      dpi: 300,
    })
    expect(cover.pages[0]).toMatchObject({ kind: 'cover', pieces: [] })
  })

  it('keeps a board’s cells with its free space, and the deal', () => {
    const cells = [
      ['reed', null],
      ['marsh', 'mud'],
    ]
    const board = card(1, reed, { kind: 'board', id: 'board-01', cells })
    const deal = { callOrder: ['marsh', 'reed'], wins: [{ board: 'board-01', call: 2 }] }
    const pieces = [{ piece: board, xMm: 0, yMm: 0, turn: 0 as const }]
    const made = manifestOf(item({ deal, sheets: [sheet({ pieces })] }), { formats: [], dpi: 300 })
    expect(made.pages[0]!.pieces[0]!.cells).toEqual(cells)
    expect(made.deal).toEqual(deal)
  })

  it('keeps what a machine can check the children’s work by', () => {
    const answerData = [['marsh', 'marshes']]
    expect(manifestOf(item({ answerData }), { formats: [], dpi: 300 }).answer).toEqual(answerData)
  })

  it('holds only what JSON can hold', () => {
    const { made } = entry(180)
    expect(JSON.parse(JSON.stringify(made))).toEqual(made)
  })
})
