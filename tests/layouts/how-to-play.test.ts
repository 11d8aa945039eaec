import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { linesOn, printItem } from './print-item.js'

const plan = 'words: [up, in, at, on, go]\nprint:\n'
const rulesOf = (size: string) => printItem(`{layout: path-board, size: ${size}}`, plan)

/** The em of the first of the children's sentences, in mm. */
function childMm(item: PrintedItem): number {
  const runs = item.sheets
    .filter(({ kind }) => kind === 'rules')
    .flatMap(({ furniture }) => furniture.flatMap(({ art }) => art.text))
  return runs.find(({ text }) => text.startsWith('1'))!.sizeMm
}

const tooSmall = 'is smaller than their words'

describe('how a game is played', () => {
  it('stands on the children’s card in the size of large print', async () => {
    const [normal, large] = [await rulesOf('normal'), await rulesOf('large')]
    expect(childMm(normal)).toBeCloseTo((16 / 72) * 25.4, 1)
    expect(childMm(large)).toBeGreaterThan(childMm(normal))
    expect(linesOn(large, 'rules').join(' ')).not.toContain(tooSmall)
  })

  it('is smaller where a sentence would not have room on a page, and says so', async () => {
    const item = await rulesOf('x-height 22 mm')
    expect(linesOn(item, 'rules').join(' ')).toContain(tooSmall)
  })
})
