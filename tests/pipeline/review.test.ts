import { describe, expect, it } from 'vitest'
import { linesOn, piecesOf, printAll, printItem } from '../layouts/print-item.js'

const own = 'reed, marsh, shrub, thrush, stream, gnat'
const withReview = `words: [${own}]\nreview: [[mud, pond], [heron]]\nprint:\n`
/** The same words, all of them this week's. */
const allOwn = `words: [${own}, heron]\nprint:\n`

describe('words that are back for review', () => {
  it('are told of on the teacher’s list alone', async () => {
    const list = linesOn(await printItem('marked-list', withReview), 'list').join(' ')
    expect(list).toContain('last week')
    const without = linesOn(await printItem('marked-list', allOwn), 'list').join(' ')
    expect(without).not.toMatch(/review|week/)
  })

  it.each(['word-cards', 'blank-list', 'bingo', 'dictation', 'open-sort', 'letter-tiles'])(
    'look as all others on %s',
    async layout => {
      const item = layout === 'bingo' ? '{layout: bingo, grid: 2x2, boards: 3}' : `{layout: ${layout}}`
      const review = await printItem(item, withReview)
      const plain = await printItem(item, allOwn)
      expect(piecesOf(review)).toEqual(piecesOf(plain))
      expect(linesOn(review, 'list')).toEqual(linesOn(plain, 'list'))
    },
  )

  it('take part in games, beside the week’s own', async () => {
    const words = piecesOf(await printItem('word-cards', withReview)).flatMap(({ text }) => text)
    expect(words).toEqual(['reed', 'marsh', 'shrub', 'thrush', 'stream', 'gnat', 'heron'])
  })

  it('are left out of a run whose words cannot be read, and the other problems are still told', async () => {
    const printed = await printAll(['{layout: word-kards}'], withReview.replace('[heron]', '[her0n]'))
    expect(printed.problems.map(({ message }) => message)).toEqual([
      '"her0n" has a digit in it',
      'unknown layout "word-kards"',
    ])
  })
})
