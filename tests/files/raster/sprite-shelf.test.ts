import { describe, expect, it } from 'vitest'
import type { Sprite } from '../../../src/files/raster/sprite.js'
import { spriteShelf } from '../../../src/files/raster/sprite-shelf.js'
import type { Shape } from '../../../src/pieces/piece.js'

const shapeOf = (d: string): Shape => ({ kind: 'path', d, fill: '#000000' })

/** A shelf on which every sprite takes a hundred bytes or a little more, and what was drawn for it. */
function shelfFor(sprites: number) {
  const shelf = spriteShelf(sprites * 150)
  const drawn: string[] = []
  const sprite: Sprite = {
    channels: 1,
    runs: new Int32Array(0),
    opacity: new Uint8Array(100),
    color: new Uint8Array(0),
  }
  const ask = (shape: Shape) =>
    shelf.once(shape, async () => {
      drawn.push(shape.kind === 'path' ? shape.d : '')
      return sprite
    })
  return { ask, drawn }
}

describe('a shelf of sprites', () => {
  it('has a shape drawn once, and another that looks the same not at all', async () => {
    const { ask, drawn } = shelfFor(10)
    const shape = shapeOf('M0 0')
    for (const each of [shape, shape, shapeOf('M0 0')]) await ask(each)
    expect(drawn).toEqual(['M0 0'])
  })

  it('holds a shape that is asked for at once from two pages for one', async () => {
    const { ask, drawn } = shelfFor(10)
    await Promise.all([ask(shapeOf('M0 0')), ask(shapeOf('M0 0'))])
    expect(drawn).toEqual(['M0 0'])
  })

  it('keeps what is used again and again, and lets go of what is not', async () => {
    const { ask, drawn } = shelfFor(10)
    for (let index = 0; index < 100; index++) {
      await ask(shapeOf('frame'))
      await ask(shapeOf(`word ${index}`))
    }
    await ask(shapeOf('word 99'))
    await ask(shapeOf('word 0'))
    expect(drawn.filter(d => d === 'frame')).toHaveLength(1)
    expect(drawn.filter(d => d === 'word 99')).toHaveLength(1)
    expect(drawn.filter(d => d === 'word 0')).toHaveLength(2)
  })
})
