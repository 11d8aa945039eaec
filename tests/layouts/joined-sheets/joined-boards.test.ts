import { describe, expect, it } from 'vitest'
import type { Piece } from '../../../src/pieces/piece.js'
import { linesOn, piecesOf, printItem, problemsOf } from '../print-item.js'

type Cells = NonNullable<Piece['cells']>

/** The cells of the whole board, put together from its sheets as they lie. */
function boardFrom(parts: readonly Pick<Piece, 'cells'>[], across: number): Cells {
  const rows = Array.from({ length: parts.length / across }, (_, row) =>
    parts.slice(row * across, (row + 1) * across).map(({ cells }) => cells!),
  )
  return rows.flatMap(([first, ...others]) =>
    first!.map((cells, row) => [...cells, ...others.flatMap(part => part[row]!)]),
  )
}

/** Left and right ends of the board's own lines on a sheet, in mm of the piece: its longest upright bars, its longest level ones. */
function linesOf({ art }: Piece): { readonly upright: readonly number[]; readonly level: readonly number[] } {
  const bars = art.flatMap(({ art: { shapes }, xMm, yMm }) =>
    shapes.flatMap(shape => {
      if (shape.kind !== 'path' || shape.fill !== '#000000') return []
      const numbers = shape.d.match(/-?\d+(?:\.\d+)?/g)!.map(Number)
      const xs = numbers.filter((_, index) => index % 2 === 0)
      const ys = numbers.filter((_, index) => index % 2 === 1)
      const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
      return [{ left: xMm + left, top: yMm + top, widthMm: right - left, heightMm: bottom - top }]
    }),
  )
  const places = (found: readonly number[]) =>
    [...new Set(found.map(mm => Number(mm.toFixed(2))))].toSorted((a, b) => a - b)
  return {
    upright: places(
      bars.filter(bar => Math.abs(bar.widthMm - 0.6) < 0.01 && bar.heightMm > 40).map(bar => bar.left),
    ),
    level: places(
      bars.filter(bar => Math.abs(bar.heightMm - 0.6) < 0.01 && bar.widthMm > 40).map(bar => bar.top),
    ),
  }
}

const gaps = (places: readonly number[]) => places.slice(1).map((place, index) => place - places[index]!)

const grids = [
  '{layout: bingo, boards: 1, grid: 4x3, ',
  '{layout: pattern-bingo, boards: 1, grid: 3x2, ',
  '{layout: four-in-a-line, ',
  '{layout: dice-grid, ',
  '{layout: dice-grid, numbers: side, ',
]

describe.each(grids)('%s… sheets: 2 or 4}', item => {
  it.each([2, 4])('shows on %d sheets together what one sheet shows', async sheets => {
    const [whole] = piecesOf(await printItem(`${item}cover: no}`))
    const parts = piecesOf(await printItem(`${item}sheets: ${sheets}, cover: no}`))
    expect(parts).toHaveLength(sheets)
    expect(boardFrom(parts, 2)).toEqual(whole!.cells)
  })

  it.each([2, 4])('has cells of one size on all %d sheets', async sheets => {
    const parts = piecesOf(await printItem(`${item}sheets: ${sheets}, cover: no}`)).map(linesOf)
    const widths = parts.flatMap(({ upright }) => gaps(upright))
    const heights = parts.flatMap(({ level }) => gaps(level))
    // A line of 0.6 mm stands inside the last cell of each sheet.
    expect(Math.max(...widths) - Math.min(...widths)).toBeLessThan(0.62)
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(0.62)
  })

  it('has larger words over four sheets', async () => {
    const [whole] = piecesOf(await printItem(`${item}cover: no}`))
    const [part] = piecesOf(await printItem(`${item}sheets: 4, cover: no}`))
    expect(part!.fontPt!).toBeGreaterThan(whole!.fontPt! * 1.2)
  })
})

describe('a board that is joined from sheets', () => {
  it('ends on each sheet where the next is laid: the strip to glue is 10 mm wide', async () => {
    const [first, second] = piecesOf(await printItem('{layout: four-in-a-line, sheets: 2, cover: no}'))
    const [left, right] = [linesOf(first!), linesOf(second!)]
    const endOfBoard = left.upright.at(-1)! + 0.6
    expect(first!.widthMm - right.upright[0]! - endOfBoard).toBeCloseTo(10, 1)
    expect(right.level).toEqual(left.level)
  })

  it('gives its last sheets fewer cells where they cannot be shared out evenly', async () => {
    const parts = piecesOf(
      await printItem('{layout: bingo, boards: 1, grid: 3x3, free: no, sheets: 2, cover: no}'),
    )
    expect(parts.map(({ cells }) => cells![0]!.length)).toEqual([2, 1])
  })

  it('keeps its numbers at its outer edge', async () => {
    const printed = await printItem(
      '{layout: dice-grid, dice: two, numbers: side, words a number: 4, sheets: 4, cover: no}',
    )
    const numbers = piecesOf(printed).map(({ art }) =>
      art
        .flatMap(each => each.art.text.map(run => run.text))
        .filter(text => /^\d+$/.test(text) && text !== '4'),
    )
    expect(numbers.map(found => found.filter(text => text !== '2' && text !== '4'))).toEqual([
      ['3', '5', '6', '7'],
      [],
      ['8', '9', '10', '11', '12'],
      [],
    ])
  })

  it('tells each sheet by its set mark', async () => {
    const parts = piecesOf(await printItem('{layout: bingo, boards: 2, sheets: 2, cover: no}'))
    expect(parts.map(({ setMark }) => setMark!.replace(/^.* · (\d of)/, '$1'))).toEqual([
      '1 of 2 · sheet 1 of 2',
      '1 of 2 · sheet 2 of 2',
      '2 of 2 · sheet 1 of 2',
      '2 of 2 · sheet 2 of 2',
    ])
  })

  it('stands once on the caller’s sheet, whole', async () => {
    const printed = await printItem('{layout: bingo, boards: 2, grid: 3x3, free: no, sheets: 4, cover: no}')
    expect(linesOn(printed, 'caller')).toContain('board 1 | board 2')
    expect(linesOn(printed, 'rules').join(' ')).toContain('lay the sheets out as 1 2 above 3 4')
  })

  it('keeps all its corners in large print: a corner cut off would lie inside the board', async () => {
    const slants = async (item: string) => {
      const printed = await printItem(item)
      return printed.sheets.flatMap(({ cuts }) =>
        cuts.filter(cut => cut.x1Mm !== cut.x2Mm && cut.y1Mm !== cut.y2Mm),
      ).length
    }
    expect(await slants('{layout: four-in-a-line, size: large, cover: no}')).toBe(1)
    expect(await slants('{layout: four-in-a-line, size: large, sheets: 4, cover: no}')).toBe(0)
  })

  it('is not joined from three sheets, nor from more than its cells reach', async () => {
    expect(await problemsOf('{layout: bingo, sheets: 3}')).toContain('"3" is not 1, 2 or 4')
    expect(await problemsOf('{layout: dice-grid, numbers: side, words a number: 1, sheets: 2}')).toContain(
      'one word to a number is not joined from 2 sheets',
    )
  })
})
