import { describe, expect, it } from 'vitest'
import { marshWords, piecesOf, printItem } from './print-item.js'

describe('word strips', () => {
  it('have one word each, marked, in one size', async () => {
    const strips = piecesOf(await printItem('{layout: word-strips}'))
    expect(strips.map(strip => strip.text)).toEqual(marshWords.map(word => [word]))
    expect(strips[1]!.marks.map(mark => mark.letters)).toEqual(['sh'])
    expect(new Set(strips.map(strip => strip.fontPt)).size).toBe(1)
  })

  it.each(['sounds', 'syllables', 'word'])('say that %s go on the line', async task => {
    const [strip] = piecesOf(await printItem(`{layout: word-strips, write: ${task}}`))
    expect(strip!.art.flatMap(({ art }) => art.text.map(run => run.text))).toContain(task)
  })

  it('have the whole strip for the word where nothing is to be written', async () => {
    const [withLine] = piecesOf(await printItem('{layout: word-strips, words: [splash]}'))
    const [without] = piecesOf(
      await printItem('{layout: word-strips, write: nothing, down: 4, words: [splash]}'),
    )
    expect(without!.fontPt).toBeGreaterThan(withLine!.fontPt!)
  })
})
