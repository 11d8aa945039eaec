/** Small sheets built by hand, so that the files stage is tested on plain data alone. */

import type { PrintedItem, PrintedPlan } from '../../src/files/printed-plan.js'
import type { Art, ImageShape, Piece, Shape } from '../../src/pieces/piece.js'
import type { Sheet } from '../../src/sheets/sheet.js'

export function art(shapes: readonly Shape[], text = '', widthMm = 30, heightMm = 12): Art {
  const run = { text, xMm: 2, baselineMm: 9, widthMm: 26, sizeMm: 9 }
  return { widthMm, heightMm, shapes, text: text === '' ? [] : [run] }
}

export const triangle: Shape = { kind: 'path', d: 'M2 10L10 2L18 10Z', fill: '#000000' }
export const ring: Shape = {
  kind: 'path',
  d:
    'M24 6C24 8.209 22.209 10 20 10C17.791 10 16 8.209 16 6C16 3.791 17.791 2 20 2C22.209 2 24 3.791 24 6Z' +
    'M23 6C23 4.343 21.657 3 20 3C18.343 3 17 4.343 17 6C17 7.657 18.343 9 20 9C21.657 9 23 7.657 23 6Z',
  fill: '#000000',
}
export const wave: Shape = {
  kind: 'path',
  d: 'M2 11Q4 9.5 6 11Q8 12.5 10 11',
  fill: 'none',
  stroke: { color: '#000000', widthMm: 0.5, cap: 'round' },
}
export const blueBar: Shape = { kind: 'path', d: 'M2 11L18 11L18 11.6L2 11.6Z', fill: '#00618a' }

/** Its dashes end in a gap: renderers differ on how a dash meets the first one at the closing corner. */
export const frame: Art = art(
  [
    {
      kind: 'path',
      d: 'M0 0L60 0L60 40L0 40Z',
      fill: 'none',
      stroke: { color: '#000000', widthMm: 0.5, dashMm: [3, 1] },
    },
  ],
  '',
  60,
  40,
)
export const reed: Art = art([triangle, ring, wave], 'reed')
export const marsh: Art = art([ring, triangle], 'marsh')

/** A picture that no program can read. */
export const unreadable: ImageShape = {
  kind: 'image',
  bytes: Uint8Array.of(1, 2, 3),
  mediaType: 'image/png',
  box: { xMm: 5, yMm: 5, widthMm: 20, heightMm: 20 },
  description: 'a heron',
}

export function card(number: number, word: Art, change: Partial<Piece> = {}): Piece {
  return {
    id: `card-${String(number).padStart(2, '0')}`,
    kind: 'card',
    number,
    copy: 1,
    widthMm: 60,
    heightMm: 40,
    art: [
      { art: frame, xMm: 0, yMm: 0 },
      { art: word, xMm: 15, yMm: 14 },
    ],
    text: word.text.map(run => run.text),
    marks: [],
    ...change,
  }
}

export function sheet(change: Partial<Sheet> = {}): Sheet {
  return {
    number: 1,
    side: 'front',
    kind: 'pieces',
    title: 'Word cards, sheet 1 of 1',
    widthMm: 210,
    heightMm: 297,
    pieces: [
      { piece: card(1, reed), xMm: 10.037, yMm: 12.711, turn: 0 },
      { piece: card(2, marsh), xMm: 70.037, yMm: 12.711, turn: 180 },
    ],
    cuts: [
      { x1Mm: 0, y1Mm: 12.711, x2Mm: 210, y2Mm: 12.711, widthMm: 0.1 },
      { x1Mm: 70.037, y1Mm: 0, x2Mm: 70.037, y2Mm: 297, widthMm: 0.1 },
    ],
    furniture: [{ art: art([ring], 'Along the marsh'), xMm: 10, yMm: 280 }],
    ...change,
  }
}

export const a4 = { name: 'a4', widthMm: 210, heightMm: 297 }

export function item(change: Partial<PrintedItem> = {}): PrintedItem {
  return {
    name: 'word-cards',
    title: 'Word cards',
    layout: 'word-cards',
    group: null,
    paper: a4,
    sheets: [sheet()],
    notes: ['Print once on card stock.'],
    fittingNotes: [],
    ...change,
  }
}

export function plan(change: Partial<PrintedPlan> = {}): PrintedPlan {
  const items = change.items ?? [item()]
  return {
    stem: 'marsh',
    title: 'Along the marsh',
    className: 'Room 7, Heron Lane School',
    seed: 12,
    itemNames: items.map(({ name }) => name),
    items,
    ...change,
  }
}
