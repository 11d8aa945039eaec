import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bestColumns, drawTrack, layTrack, onSheet } from '../../../layouts/path-board/track.js'
import { boxContains, boxesOverlap } from '../../../src/geometry.js'

const room = { widthMm: 190, heightMm: 240 }
const tracks = fc.record({
  spaces: fc.integer({ min: 2, max: 82 }),
  columns: fc.integer({ min: 2, max: 10 }),
})

describe('a track that runs to and fro', () => {
  it('has every space within its room and none over another', () => {
    fc.assert(
      fc.property(tracks, ({ spaces, columns }) => {
        const track = layTrack({ spaces, columns, room })
        expect(track.spaces).toHaveLength(spaces)
        for (const [index, box] of track.spaces.entries()) {
          expect(boxContains({ xMm: 0, yMm: 0, ...room }, box)).toBe(true)
          for (const other of track.spaces.slice(0, index)) expect(boxesOverlap(box, other)).toBe(false)
        }
      }),
    )
  })

  it('leads from each space to the next: side by side, or straight down through a passage', () => {
    fc.assert(
      fc.property(tracks, ({ spaces, columns }) => {
        const track = layTrack({ spaces, columns, room })
        for (const [index, box] of track.spaces.slice(1).entries()) {
          const from = track.spaces[index]!
          if (Math.abs(from.yMm - box.yMm) < 1e-6) {
            const touching = [from.xMm + from.widthMm - box.xMm, box.xMm + box.widthMm - from.xMm]
            expect(Math.min(...touching.map(Math.abs))).toBeLessThan(1e-6)
            continue
          }
          const passage = track.passages.find(each => Math.abs(each.yMm - from.yMm - from.heightMm) < 1e-6)!
          for (const end of [from, box]) {
            expect(passage.xMm).toBeGreaterThanOrEqual(end.xMm)
            expect(passage.xMm + passage.widthMm).toBeLessThanOrEqual(end.xMm + end.widthMm + 1e-6)
          }
          expect(passage.yMm + passage.heightMm).toBeCloseTo(box.yMm, 6)
        }
      }),
    )
  })

  it('has fewer columns for longer words', () => {
    const columnsFor = (widthMm: number) => bestColumns(30, room, { widthMm, heightMm: 2.2 })
    expect(columnsFor(6)).toBeLessThan(columnsFor(2))
  })
})

describe('the arrows from space to space', () => {
  const widest = (columns: number) => {
    const track = layTrack({ spaces: columns * 2, columns, room })
    const { shapes } = drawTrack(track, room, 0.6)
    // Arrows along a row are triangles of three points that come after the frames of spaces and ends.
    const arrow = shapes[track.spaces.length + 2]!
    const across =
      arrow.kind === 'path' ? [...arrow.d.matchAll(/[ML]([\d.]+) /g)].map(([, x]) => Number(x)) : []
    return Math.max(...across) - Math.min(...across)
  }

  it('are as large as can be seen from across the table, on small spaces and large ones', () => {
    expect(widest(9)).toBeCloseTo(2.4, 1)
    expect(widest(2)).toBeGreaterThan(5)
  })
})

describe('a track over sheets that are joined', () => {
  const joined = fc.record({
    spaces: fc.integer({ min: 8, max: 120 }),
    half: fc.integer({ min: 1, max: 5 }),
    sheets: fc.constantFrom({ across: 2, down: 1 }, { across: 2, down: 2 }),
  })

  it('has every space whole on one sheet', () => {
    fc.assert(
      fc.property(joined, ({ spaces, half, sheets }) => {
        const track = layTrack({ spaces, columns: 2 * half, room, sheets })
        const parts = Array.from({ length: sheets.across * sheets.down }, (_, sheet) =>
          onSheet(track, sheet, room, sheets),
        )
        const found = parts.flatMap(part => part.spaces.map(({ at }) => at)).toSorted((a, b) => a - b)
        expect(found).toEqual(Array.from({ length: spaces }, (_, at) => at))
        const page = { xMm: -1e-6, yMm: -1e-6, widthMm: room.widthMm + 2e-6, heightMm: room.heightMm + 2e-6 }
        for (const part of parts)
          for (const box of [...part.spaces, ...part.passages]) expect(boxContains(page, box)).toBe(true)
      }),
    )
  })

  it('goes on level at the joint, from the edge of one sheet to the edge of the next', () => {
    const sheets = { across: 2, down: 1 }
    const track = layTrack({ spaces: 40, columns: 8, room, sheets })
    const [left, right] = [0, 1].map(sheet => onSheet(track, sheet, room, sheets).spaces)
    for (let row = 0; row < 5; row++) {
      const [from, to] = row % 2 === 0 ? [8 * row + 3, 8 * row + 4] : [8 * row + 4, 8 * row + 3]
      const beside = left!.find(({ at }) => at === from)!
      const next = right!.find(({ at }) => at === to)!
      expect(beside.xMm + beside.widthMm).toBeCloseTo(room.widthMm, 9)
      expect([next.xMm, next.yMm, next.heightMm]).toEqual([
        expect.closeTo(0, 9),
        expect.closeTo(beside.yMm, 9),
        beside.heightMm,
      ])
    }
  })

  it('ends each sheet that has another below it with the gap between two rows', () => {
    const sheets = { across: 2, down: 2 }
    const { spaces } = onSheet(layTrack({ spaces: 64, columns: 8, room, sheets }), 0, room, sheets)
    const { yMm, heightMm } = spaces.at(-1)!
    const [first, second] = [...new Set(spaces.map(space => space.yMm))]
    const gap = second! - first! - heightMm
    expect(room.heightMm - yMm - heightMm).toBeCloseTo(gap, 9)
  })
})
