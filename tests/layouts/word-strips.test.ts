import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, marshWords, piecesOf, printItem } from './print-item.js'

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

  it.each(['large', 'x-height 6 mm'])('keep the word and its marks off the set mark: %s', async size => {
    const strips = piecesOf(await printItem(`{layout: word-strips, size: ${size}, words: [marsh, frog]}`))
    for (const { art, marks, text, setMark } of strips) {
      const runs = art.flatMap(placed =>
        placed.art.text.map(run => ({ ...run, baselineMm: placed.yMm + run.baselineMm })),
      )
      const number = runs.find(run => run.text === setMark)!
      const word = runs.find(run => run.text === text[0])!
      // Digits reach three quarters of the em up, descenders a quarter down.
      const topOfNumber = number.baselineMm - 0.75 * number.sizeMm
      expect(word.baselineMm + 0.25 * word.sizeMm).toBeLessThanOrEqual(topOfNumber)
      for (const mark of marks) expect(mark.yMm + mark.heightMm).toBeLessThanOrEqual(topOfNumber)
    }
  })

  it('have their answers on a page of their own', async () => {
    const answers = async (task: string) =>
      linesOn(await printItem(`{layout: word-strips, write: ${task}, words: [thrush, gnat]}`), 'answers')
    expect(await answers('sounds')).toContain('1 | thrush | 4: th·r·u·sh')
    expect(await answers('syllables')).toContain('2 | gnat | 1: gnat')
    expect(kindsOf(await printItem('{layout: word-strips, write: word}'))).toEqual(['pieces', 'cover'])
  })

  it('have the whole strip for the word where nothing is to be written', async () => {
    const [withLine] = piecesOf(await printItem('{layout: word-strips, words: [spring]}'))
    const [without] = piecesOf(
      await printItem('{layout: word-strips, write: nothing, down: 4, words: [spring]}'),
    )
    expect(without!.fontPt).toBeGreaterThan(withLine!.fontPt!)
  })

  it.each(['large', 'x-height 12 mm'])('keep what to write off the line to write on: %s', async size => {
    const [strip] = piecesOf(await printItem(`{layout: word-strips, size: ${size}, words: [moth, frog]}`))
    const runs = strip!.art.flatMap(({ art, xMm, yMm }) =>
      art.text.map(run => ({ ...run, xMm: xMm + run.xMm, baselineMm: yMm + run.baselineMm })),
    )
    const label = runs.find(run => run.text === 'sounds')!
    const line = strip!.art.find(({ art }) =>
      art.shapes.some(shape => shape.kind === 'path' && shape.fill === '#737373'),
    )!
    const isBefore = label.xMm + label.widthMm <= line.xMm
    const isAbove = label.baselineMm + 0.25 * label.sizeMm <= line.yMm
    expect(isBefore || isAbove).toBe(true)
  })
})
