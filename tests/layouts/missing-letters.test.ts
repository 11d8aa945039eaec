import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, piecesOf, printItem, problemsOf } from './print-item.js'

describe('missing letters', () => {
  it('shows a word without its marked letters, its clue, and letters to choose from', async () => {
    const [first] = piecesOf(await printItem('{layout: missing-letters, words: [marsh, thrush, moth]}'))
    expect(first!.text[0]).toBe('mar__')
    expect(first!.text[1]).toBe('wet, grassy land')
    expect(first!.text.slice(2)).toContain('sh')
    expect(first!.text).toHaveLength(5)
  })

  it('may keep the clue to itself', async () => {
    const [first] = piecesOf(
      await printItem('{layout: missing-letters, hint: nothing, words: [marsh, thrush]}'),
    )
    expect(first!.text).not.toContain('wet, grassy land')
  })

  it('has the letters and the word of each card on a page of its own', async () => {
    const printed = await printItem('{layout: missing-letters, words: [marsh, moth]}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'answers', 'cover'])
    expect(linesOn(printed, 'answers')).toEqual(
      expect.arrayContaining(['1 | mar__ | sh | marsh', '2 | mo__ | th | moth']),
    )
  })

  it('says which words show nothing that is marked', async () => {
    expect(await problemsOf('{layout: missing-letters, words: [marsh, frog]}')).toContain(
      '"frog" has no letters that the plan marks',
    )
  })
})
