import { describe, expect, it } from 'vitest'
import {
  drawNet,
  neighbourOf,
  netSquares,
  placeNet,
  type Side,
  type Square,
} from '../../../layouts/roll-and-build/cube-net.js'

type Vector = readonly [number, number, number]

/** A square as it lies on the folded cube: which way it faces, and where its right and its lower edge point. */
interface Folded {
  readonly out: Vector
  readonly right: Vector
  readonly down: Vector
}

const minus = ([x, y, z]: Vector): Vector => [0 - x, 0 - y, 0 - z]
const sides: readonly Side[] = ['top', 'right', 'bottom', 'left']

/** Bent back by a quarter turn over an edge: the neighbour faces where the edge pointed. */
function over({ out, right, down }: Folded, side: Side): Folded {
  switch (side) {
    case 'right':
      return { out: right, right: minus(out), down }
    case 'left':
      return { out: minus(right), right: out, down }
    case 'bottom':
      return { out: down, right, down: minus(out) }
    case 'top':
      return { out: minus(down), right, down: out }
  }
}

function edgeOf({ right, down }: Folded, side: Side): Vector {
  return side === 'right' ? right : side === 'left' ? minus(right) : side === 'bottom' ? down : minus(down)
}

/** Every square of the net as it lies when all folds are made, from the second on. */
function fold(): ReadonlyMap<Square, Folded> {
  const first = netSquares[1]!
  const folded = new Map<Square, Folded>([[first, { out: [0, 0, 1], right: [1, 0, 0], down: [0, 1, 0] }]])
  const next = [first]
  while (next.length > 0) {
    const square = next.pop()!
    for (const side of sides) {
      const neighbour = neighbourOf(square, side)
      if (neighbour === undefined || folded.has(neighbour)) continue
      folded.set(neighbour, over(folded.get(square)!, side))
      next.push(neighbour)
    }
  }
  return folded
}

describe('the net of a die', () => {
  it('folds to a cube: each of its six sides once', () => {
    const outs = [...fold().values()].map(({ out }) => out.join())
    expect(outs.sort()).toEqual(['-1,0,0', '0,-1,0', '0,0,-1', '0,0,1', '0,1,0', '1,0,0'].sort())
  })

  it('has the first face against the third, the second against the fourth, and the last two against each other', () => {
    const outs = netSquares.map(square => fold().get(square)!.out)
    for (const [one, other] of [
      [0, 2],
      [1, 3],
      [4, 5],
    ] as const)
      expect(outs[one]).toEqual(minus(outs[other]!))
  })

  it('joins each of the twelve edges once: by a fold, or by one tab', () => {
    const joined = new Map<string, number>()
    for (const [square, folded] of fold())
      for (const side of sides) {
        const name = [folded.out.join(), edgeOf(folded, side).join()].sort().join(' ')
        const neighbour = neighbourOf(square, side)
        const isFold = neighbour !== undefined && netSquares.indexOf(neighbour) > netSquares.indexOf(square)
        const adds = Number(isFold) + Number(square.tabs.includes(side))
        joined.set(name, (joined.get(name) ?? 0) + adds)
      }
    expect(joined.size).toBe(12)
    expect([...joined.values()]).toEqual(Array.from({ length: 12 }, () => 1))
  })

  it.each([
    [180, 120],
    [180, 240],
    [250, 170],
  ])('stands within its room of %i × %i mm with all its tabs', (widthMm, heightMm) => {
    const room = { widthMm, heightMm }
    const numbers = drawNet(room).shapes.flatMap(shape =>
      shape.kind === 'path' ? [...shape.d.matchAll(/-?[\d.]+/g)].map(([number]) => Number(number)) : [],
    )
    const [xs, ys] = [0, 1].map(rest => numbers.filter((_, index) => index % 2 === rest))
    expect(Math.min(...xs!)).toBeGreaterThanOrEqual(0)
    expect(Math.max(...xs!)).toBeLessThanOrEqual(widthMm)
    expect(Math.min(...ys!)).toBeGreaterThanOrEqual(0)
    expect(Math.max(...ys!)).toBeLessThanOrEqual(heightMm)
    expect(placeNet(room).sideMm).toBeGreaterThan(25)
  })
})
