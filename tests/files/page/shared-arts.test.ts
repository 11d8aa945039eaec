import { expect, it } from 'vitest'
import { sharedArts } from '../../../src/files/page/shared-arts.js'
import type { Art } from '../../../src/pieces/piece.js'
import { sheet } from '../marsh-sheets.js'

const art = (): Art => ({ widthMm: 1, heightMm: 1, shapes: [], text: [] })
const [reed, marsh, gnat] = [art(), art(), art()]
const showing = (...arts: readonly Art[]) =>
  sheet({ pieces: [], furniture: arts.map(each => ({ art: each, xMm: 0, yMm: 0 })) })

it('writes an art out where it stands first, defines it when it comes again and refers to it from then on', () => {
  const artsOf = sharedArts('art-')
  const told = [showing(reed, marsh), showing(reed, gnat), showing(reed, marsh)].map(artsOf)
  expect(told.map(({ ids }) => [...ids.values()])).toEqual([[], ['art-1'], ['art-1', 'art-2']])
  expect(told.map(({ first }) => [...first.keys()])).toEqual([[], [reed], [marsh]])
})

it('defines at once what stands twice on one sheet', () => {
  const { ids, first } = sharedArts('art-')(showing(reed, reed, marsh))
  expect([...ids]).toEqual([[reed, 'art-1']])
  expect([...first]).toEqual([...ids])
})
