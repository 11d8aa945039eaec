import { describe, expect, it } from 'vitest'
import { flowPages, headingHeight, type Row } from '../../../src/pieces/faces/flow-page.js'

/** Every letter half an em wide. */
const measure = (text: string, sizeMm: number) => text.length * sizeMm * 0.5
const heading = { title: 'Along the marsh', subtitle: 'Room 7', textMm: 4, measure }
const room = { widthMm: 100, heightMm: headingHeight(heading, 100) + 50 }
const rows = (heights: readonly number[]): readonly Row[] =>
  heights.map((heightMm, index) => ({
    heightMm,
    tree: <div />,
    slots: { [`row ${index}`]: { kind: 'art', draw: size => ({ ...size, shapes: [], text: [] }) } },
  }))

const rowsOnPages = (heights: readonly number[]) =>
  flowPages({ heading, rows: rows(heights), room }).map(page => Object.keys(page.slots).length)

/** With what comes after the rows. */
const withAfter = (heights: readonly number[], afterMm: number) => {
  const all = rows([...heights, afterMm])
  const pages = flowPages({ heading, rows: all.slice(0, -1), after: all.slice(-1), room })
  return pages.map(page => Object.keys(page.slots).length)
}

describe('what comes after a list', () => {
  it('stands below its last row where there is room', () => {
    expect(withAfter([10, 10], 20)).toEqual([3])
    expect(withAfter([10, 10, 10, 10, 10, 10, 10], 20)).toEqual([4, 4])
  })

  it('has a page of its own where it would take one anyway: no row is put there to keep it company', () => {
    expect(withAfter([10, 10, 10, 10, 10], 20)).toEqual([5, 1])
    expect(withAfter(Array(10).fill(10), 20)).toEqual([5, 5, 1])
  })

  it('takes rows with it where it would be a remnant alone', () => {
    expect(withAfter([10, 10, 10, 10, 10], 15)).toEqual([3, 3])
  })

  it('takes rows with it where that saves a page', () => {
    expect(withAfter([10, 10, 10, 10, 10, 10], 40)).toEqual([5, 2])
  })
})

describe('a list that flows over pages', () => {
  it('fills one page exactly', () => {
    expect(rowsOnPages([20, 20, 10])).toEqual([3])
  })

  it('begins a new page under the same heading where a row does not fit', () => {
    expect(rowsOnPages([20, 20, 11, 39])).toEqual([2, 2])
  })

  it('gives a row that is higher than a page a page of its own', () => {
    expect(rowsOnPages([10, 80, 10])).toEqual([1, 1, 1])
  })

  it('keeps a title on the page that is longer than it is wide, with less room for rows', () => {
    const long = { ...heading, title: 'Along the marsh and round the harbour and back by the bakery' }
    expect(headingHeight(long, room.widthMm)).toBeGreaterThan(headingHeight(heading, room.widthMm))
    const pages = flowPages({ heading: long, rows: rows([20, 20, 10]), room })
    expect(pages.map(page => Object.keys(page.slots).length)).toEqual([1, 2])
  })

  it('makes one page of an empty list', () => {
    expect(rowsOnPages([])).toEqual([0])
  })
})

describe('rows that belong together', () => {
  const cells = { leftsMm: [0], headings: 0 } as const
  const table = (heights: readonly number[]) =>
    rows(heights).map((row, index) =>
      index === 0 ? { ...row, heads: true as const, cells } : { ...row, cells },
    )
  const pagesOf = (flowing: readonly Row[]) =>
    flowPages({ heading, rows: flowing, room }).map(page => Object.keys(page.slots))

  it('have the heads of their columns on every page', () => {
    expect(pagesOf(table([10, 15, 15, 15, 15]))).toEqual([
      ['row 0', 'row 1', 'row 2'],
      ['row 0', 'row 3', 'row 4'],
    ])
  })

  it('have no heads alone at the foot of a page', () => {
    const [above, ...below] = rows([39, 10, 15])
    const withHeads = below.map((row, at) => ({
      ...row,
      cells,
      ...(at === 0 ? { heads: true as const } : {}),
    }))
    expect(pagesOf([above!, ...withHeads])).toEqual([['row 0'], ['row 1', 'row 2']])
  })

  it('stay together, unless no page is high enough for them', () => {
    const kept = (heights: readonly number[]) =>
      rows(heights).map((row, at) => (at === 1 || at === 2 ? { ...row, keepsWithNext: true as const } : row))
    expect(pagesOf(kept([25, 10, 10, 10, 20]))).toEqual([['row 0'], ['row 1', 'row 2', 'row 3', 'row 4']])
    expect(pagesOf(kept([20, 25, 20, 10]))).toEqual([['row 0'], ['row 1', 'row 2'], ['row 3']])
  })
})
