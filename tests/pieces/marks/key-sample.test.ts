import { describe, expect, it } from 'vitest'
import { drawKeySample, type KeySampleRequest } from '../../../src/pieces/marks/key-sample.js'
import { bundledTypeface } from '../bundled-typefaces.js'

const request: KeySampleRequest = {
  typeface: bundledTypeface('andika'),
  mark: {
    mark: { place: { file: 'plan.yaml' }, target: { kind: 'letters', letters: 'sh' } },
    index: 0,
    descenders: 'clear',
    assigned: false,
    line: 'wavy',
  },
  letters: 'sh',
  sizeMm: 6,
  room: { widthMm: 20, heightMm: 10 },
}
const inRoomOf = (widthMm: number, at: 'left' | 'right' = 'left') =>
  drawKeySample({ ...request, room: { widthMm, heightMm: 10 }, at })

describe('the sample of a key', () => {
  it('has the same shapes on every page that has a room of its size, so that they are drawn once', () => {
    const [one, other] = [drawKeySample(request), drawKeySample({ ...request })]
    expect(one.shapes.length).toBeGreaterThan(1)
    for (const [index, shape] of one.shapes.entries()) expect(other.shapes[index]).toBe(shape)
  })

  it('is an art of its own each time: what is written of a sheet does not depend on what is held', () => {
    const [one, other] = [drawKeySample(request), drawKeySample(request)]
    expect(other).toEqual(one)
    expect(other).not.toBe(one)
  })

  it.each([
    ['in a wider room', inRoomOf(20, 'right'), inRoomOf(30, 'right'), 10],
    ['at the other edge', inRoomOf(20), inRoomOf(20, 'right'), undefined],
  ])('stands elsewhere %s', (_, one, other, byMm) => {
    const [from, to] = [one, other].map(({ text }) => text[0]!.xMm)
    expect(to! - from!).toBeGreaterThan(0)
    if (byMm !== undefined) expect(to! - from!).toBeCloseTo(byMm, 6)
    expect(other.shapes[0]).not.toBe(one.shapes[0])
  })

  it('is held in the rooms asked for of late alone', () => {
    const before = inRoomOf(25)
    for (let room = 0; room < 50; room++) inRoomOf(40 + room)
    const after = inRoomOf(25)
    expect(after).toEqual(before)
    expect(after.shapes[0]).not.toBe(before.shapes[0])
  })
})
