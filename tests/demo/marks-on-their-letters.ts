import { describe, expect, it } from 'vitest'
import { mmToPixels } from '../../src/geometry.js'
import type { Art, PlacedMark } from '../../src/pieces/piece.js'
import { type Coverage, columnsOf, overlap, renderLayers } from '../pieces/pixels.js'
import { demoWeeks, drawDemoWeek } from './demo-sheets.js'

const dpi = 300

interface MarkedWord {
  readonly art: Art
  readonly marks: readonly PlacedMark[]
}

/** Every distinct marked word of a week's pieces with the marks that stand on it, in the art's own coordinates. */
async function markedWords(week: (typeof demoWeeks)[number]): Promise<readonly MarkedWord[]> {
  const found = new Map<Art, MarkedWord>()
  for (const { printed } of await drawDemoWeek(week))
    for (const { piece } of printed.sheets.flatMap(sheet => sheet.pieces))
      for (const { art, xMm, yMm } of piece.art) {
        const marks = piece.marks
          .filter(mark => inside(mark, { xMm, yMm, ...art }))
          .map(mark => ({ ...mark, xMm: mark.xMm - xMm, yMm: mark.yMm - yMm }))
        if (marks.length > 0 && art.text.length === 1 && art.text[0]!.text === marks[0]!.word)
          found.set(art, { art, marks })
      }
  return [...found.values()]
}

function inside(
  mark: PlacedMark,
  box: { xMm: number; yMm: number; widthMm: number; heightMm: number },
): boolean {
  const x = mark.xMm + mark.widthMm / 2
  const y = mark.yMm + mark.heightMm / 2
  return x > box.xMm && x < box.xMm + box.widthMm && y > box.yMm && y < box.yMm + box.heightMm
}

/** Columns of ink that belong together, left to right: the letters, where none touch. */
function inkGroups({ width, height, values }: Coverage): { first: number; last: number }[] {
  const groups: { first: number; last: number }[] = []
  for (let x = 0; x < width; x++) {
    let inked = false
    for (let y = 0; y < height && !inked; y++) inked = values[y * width + x]! >= 128
    const last = groups.at(-1)
    if (inked && last?.last === x - 1) last.last = x
    else if (inked) groups.push({ first: x, last: x })
  }
  return groups
}

export function markTheirLetters(): void {
  describe.each(demoWeeks)('every marked word of the %s week, in pixels', week => {
    it('keeps the ink of its marks off the ink of its letters', async () => {
      for (const { art } of await markedWords(week)) {
        const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi }
        const [marks, letters] = renderLayers([art.shapes.slice(0, -1), art.shapes.slice(-1)], canvas)
        expect(columnsOf(marks!), `${art.text[0]!.text} is marked`).toBeDefined()
        expect(overlap(marks!, letters!), `${art.text[0]!.text}: pixels that mark and letters share`).toBe(0)
      }
    })

    it('marks the letters that it says, as counted in the letters’ own ink', async () => {
      let counted = 0
      for (const { art, marks } of await markedWords(week)) {
        const word = art.text[0]!.text
        const canvas = { widthMm: art.widthMm + 2, heightMm: art.heightMm + 2, xMm: 1, yMm: 1, dpi }
        const [letters] = renderLayers([art.shapes.slice(-1)], canvas)
        const groups = inkGroups(letters!)
        // Letters that touch (kerned r and e) form one group, and then nothing can be counted.
        if (groups.length !== word.length) continue
        for (const mark of marks) {
          const from = mmToPixels(mark.xMm + 1, dpi)
          const to = mmToPixels(mark.xMm + 1 + mark.widthMm, dpi)
          const covered = groups.flatMap(({ first, last }, index) =>
            (first + last) / 2 > from && (first + last) / 2 < to ? [index] : [],
          )
          counted++
          expect(
            [covered[0], covered.at(-1)! + 1],
            `${word}: letters over the mark on ${mark.letters}`,
          ).toEqual([mark.start, mark.end])
        }
      }
      expect(counted).toBeGreaterThan(20)
    })
  })
}
