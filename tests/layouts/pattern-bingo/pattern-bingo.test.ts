import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, piecesOf, printItem, problemsOf } from '../print-item.js'

const plan = `words: [hat, bat, pan, bed, red, hen, pin, lid, dig, dog, log, pot, sun, mud, cup]\nprint:\n`

describe('pattern bingo', () => {
  it('calls the kinds of the sort that the teacher names, with the words of each for the caller', async () => {
    const printed = await printItem('{layout: pattern-bingo, boards: 3, sort: which short vowel}', plan)
    expect(kindsOf(printed)).toEqual(['pieces', 'caller', 'rules', 'cover'])
    const sheet = linesOn(printed, 'caller').join('\n')
    expect(sheet).toMatch(/^kind \| its words$/m)
    expect(sheet).toContain('short o | dog, log, pot')
    expect(printed.deal!.callOrder).toContain('short o')
    expect(piecesOf(printed)).toHaveLength(3)
  })

  it('takes a sort with two kinds to call where the teacher names none', async () => {
    const printed = await printItem('{layout: pattern-bingo, boards: 1}', plan)
    expect(new Set(printed.deal!.callOrder).size).toBeGreaterThanOrEqual(2)
  })

  it('says which sorts there are where the one that is named is none', async () => {
    expect(await problemsOf('{layout: pattern-bingo, sort: which shoe}', plan)).toContain(
      'the words support no sort named "which shoe"',
    )
  })
})
