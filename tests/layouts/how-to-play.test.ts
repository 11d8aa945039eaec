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

describe('the cover of a game', () => {
  it('lists the pages that go with it on paper', async () => {
    const inIt = async (item: string) => linesOn(await printItem(item), 'cover')
    expect(await inIt('{layout: bingo, boards: 2, grid: 3x3}')).toContain(
      'On paper: caller’s sheet, how to play',
    )
    expect(await inIt('{layout: letter-tiles}')).toContain('On paper: building mat, how to play, answers')
    expect((await inIt('{layout: word-cards}')).join(' ')).not.toContain('On paper')
  })
})

describe('how a game is played', () => {
  it('is read round a table: the children’s card is half of its page, in large type', async () => {
    for (const layout of ['chain-cards', 'word-ladder', 'roll-and-build']) {
      const item = await printItem(`{layout: ${layout}}`)
      const [page, ...more] = item.sheets.filter(({ kind }) => kind === 'rules')
      expect(more).toEqual([])
      const runs = page!.furniture.flatMap(({ art, yMm }) =>
        art.text.map(run => ({ text: run.text, yMm: yMm + run.baselineMm })),
      )
      const helper = runs.find(({ text }) => text.startsWith('Cut here'))!
      // The first line of the helper's part, a line and a half below the cut.
      expect(helper.yMm - page!.heightMm / 2).toBeGreaterThan(0)
      expect(helper.yMm - page!.heightMm / 2).toBeLessThan(12)
      expect(childMm(item)).toBeGreaterThan((20 / 72) * 25.4)
    }
  })

  it('stands on the children’s card in the size of large print', async () => {
    const [normal, large] = [await rulesOf('normal'), await rulesOf('large')]
    expect(childMm(normal)).toBeGreaterThanOrEqual((16 / 72) * 25.4)
    expect(childMm(large)).toBeGreaterThanOrEqual(childMm(normal))
    expect(linesOn(large, 'rules').join(' ')).not.toContain(tooSmall)
  })

  it('is smaller where a sentence would not have room on a page, and says so', async () => {
    const item = await rulesOf('x-height 22 mm')
    expect(linesOn(item, 'rules').join(' ')).toContain(tooSmall)
  })
})
