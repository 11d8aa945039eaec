import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bestColumns, drawTrack, layTrack } from '../../../layouts/path-board/track.js'
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
