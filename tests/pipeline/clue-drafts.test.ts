import { describe, expect, it } from 'vitest'
import { linesOn, printAll, printItem } from '../layouts/print-item.js'

const plan = (clues: string) => `title: Along the marsh
${clues}words: [{word: reed, clue: it bends in the wind}, frog, moth, pond, splorf]
print:
`

describe('clues: drafts', () => {
  it('gives words without a clue a draft, called so on the teacher’s list alone', async () => {
    const list = linesOn(await printItem('{layout: marked-list}', plan('clues: drafts\n')), 'list').join(' ')
    expect(list).toContain('it bends in the wind')
    expect(list).not.toContain('it bends in the wind (draft)')
    expect(list.match(/\(draft\)/g)).toHaveLength(3)
  })

  it('lets games of clues be made from bare words', async () => {
    const printed = await printAll(
      ['{layout: matching-pairs, pair: clue}', '{layout: call-cards}'],
      plan('clues: drafts\n').replace(', splorf', ''),
    )
    expect(printed.problems).toEqual([])
  })

  it('leaves clues to the teacher where it is not said', async () => {
    const printed = await printAll(['{layout: matching-pairs, pair: clue}'], plan(''))
    expect(printed.ok).toBe(false)
    const list = linesOn(await printItem('{layout: marked-list}', plan('')), 'list').join(' ')
    expect(list).not.toContain('(draft)')
  })
})
