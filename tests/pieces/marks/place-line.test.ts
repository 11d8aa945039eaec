import { describe, expect, it } from 'vitest'
import type { LetterInk } from '../../../src/pieces/marks/letter-ink.js'
import { placeLine } from '../../../src/pieces/marks/place-line.js'
import { lineStyle } from '../../../src/pieces/marks/styles.js'

const ink = { strokeMm: 0.45, gapMm: 0.45, insideMm: 0.9, apartMm: 1.17 }
const ROW_MM = 0.05

/** Letters as blocks of ink: what stands on the line, 20 mm wide, and a stem of this width hanging from its middle. */
function lettersWithStem(stemMm: number): readonly LetterInk[] {
  const block = (left: number, right: number, top: number, bottom: number, start: number): LetterInk => ({
    start,
    end: start + 1,
    left,
    right,
    top,
    bottom,
    rowCount: Math.round((bottom - top) / ROW_MM),
    rowAt: () => ({ left, right }),
    firstRow: Math.round(top / ROW_MM),
    rowMm: ROW_MM,
  })
  return [block(0, 20, -5, 0, 0), block(10 - stemMm / 2, 10 + stemMm / 2, -5, 3, 1)]
}

function placed(stemMm: number, descenders: 'clear' | 'break') {
  const letters = lettersWithStem(stemMm)
  const surroundings = { letters, marks: [], ink, sizeMm: 10, descenderMm: 3 }
  return placeLine(lineStyle('single')!, letters, surroundings, { descenders }).pieces
}

describe('a line that may break at a descender', () => {
  it('leaves a gap of white on both sides of the stem', () => {
    const [left, right] = placed(2, 'break')
    expect([left!.right, right!.left]).toEqual([expect.closeTo(9 - 0.45, 6), expect.closeTo(11 + 0.45, 6)])
  })

  // Of 20 mm, what the stem and its two gaps of 0.45 mm leave.
  it.each([
    ['is broken where 41 of 100 of it are left', 20 * 0.59 - 0.9, 2],
    ['passes below where 39 of 100 would be left', 20 * 0.61 - 0.9, 1],
  ])('%s', (_, stemMm, pieces) => {
    expect(placed(stemMm, 'break')).toHaveLength(pieces)
  })

  it('hangs clear of the descender where the teacher did not ask for a break', () => {
    const [line] = placed(2, 'clear')
    expect(line!.top).toBeGreaterThan(3)
  })
})
