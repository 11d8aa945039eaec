import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, piecesOf, printItem, problemsOf } from '../print-item.js'

describe('a sound mat', () => {
  it('has a row of boxes for each number of sounds that the words have', async () => {
    const drawn = async (words: string) => {
      const [mat] = piecesOf(await printItem(`{layout: sound-mat, words: [${words}]}`))
      return mat!.art.flatMap(({ art }) => art.shapes).length
    }
    // A row of n boxes has n + 1 upright lines, two level ones and an arrow.
    expect((await drawn('reed, gnat, thrush')) - (await drawn('reed'))).toBe(4 + 1 + 2 + 1)
  })

  it('tells on its answer page how many boxes each word takes, those with few first', async () => {
    const printed = await printItem('{layout: sound-mat, words: [thrush, reed, stream]}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'answers', 'cover'])
    expect(linesOn(printed, 'answers').filter(line => /^\d/.test(line))).toEqual([
      '3 | reed | 3: r·ee·d',
      '4 | thrush | 4: th·r·u·sh',
      '5 | stream | 5: s·t·r·ea·m',
    ])
  })

  it('is refused where no counter would go into its boxes', async () => {
    expect(
      await problemsOf(
        '{layout: sound-mat, paper: index-3x5, orientation: portrait, margin: 10 mm, words: [spring]}',
      ),
    ).toContain('because "spring" has 5 sounds: no counter goes in')
  })
})
