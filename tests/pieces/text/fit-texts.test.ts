import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balancedLines } from '../../../src/pieces/text/balanced-lines.js'
import { breakLines, linesHeight } from '../../../src/pieces/text/break-lines.js'
import { fitTexts } from '../../../src/pieces/text/fit-texts.js'

/** Every letter half an em wide: sizes can be checked by hand. */
const measure = (text: string, sizeMm: number) => text.length * sizeMm * 0.5
const base = { weight: 400, measure, place: { file: 'marsh.yaml' } } as const
const words = fc.array(fc.stringMatching(/^[a-z]{1,9}$/), { minLength: 1, maxLength: 12 })

describe('texts that share a size', () => {
  it('are as large as the one with least room allows', () => {
    const fit = fitTexts({
      ...base,
      texts: [
        { text: 'reed', on: 'card 1', room: { widthMm: 20, heightMm: 100 } },
        { text: 'it grows', on: 'card 2', room: { widthMm: 10, heightMm: 100 } },
      ],
      minimumMm: 2,
      maximumMm: 50,
    })
    // "grows" alone on its line: 5 letters of half an em in 10 mm.
    expect(fit.ok && fit.value).toBeGreaterThan(3.9)
    expect(fit.ok && fit.value).toBeLessThanOrEqual(4)
  })

  it('never leave their room, and never break a word', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 10, max: 60 }), fc.integer({ min: 8, max: 40 }), (list, w, h) => {
        const text = list.join(' ')
        const room = { widthMm: w, heightMm: h }
        const fit = fitTexts({ ...base, texts: [{ text, on: 'card 1', room }], minimumMm: 1, maximumMm: 20 })
        if (!fit.ok) return
        const lines = breakLines(text, w, { sizeMm: fit.value }, measure)
        expect(lines.join(' ')).toBe(text)
        expect(linesHeight(lines.length, fit.value)).toBeLessThanOrEqual(h + 1e-9)
        for (const line of lines) expect(measure(line, fit.value)).toBeLessThanOrEqual(w + 1e-9)
      }),
    )
  })

  it('that do not fit at the smallest size are each named with their card', () => {
    const room = { widthMm: 10, heightMm: 10 }
    const texts = ['bulrushes', 'a', 'kingfishers'].map((text, index) => ({
      text,
      on: `card ${index + 1}`,
      room,
    }))
    const fit = fitTexts({ ...base, texts, minimumMm: 5, maximumMm: 20 })
    expect(fit.ok).toBe(false)
    expect(fit.problems.map(problem => problem.message)).toEqual([
      expect.stringContaining('"bulrushes" on card 1'),
      expect.stringContaining('"kingfishers" on card 3'),
    ])
  })
})

describe('balanced lines', () => {
  it('leave no word alone that could have company', () => {
    expect(balancedLines('it has no legs at all', 17, { sizeMm: 2 }, measure)).toEqual([
      'it has no',
      'legs at all',
    ])
  })

  it('are as many as plain lines, as wide at most, and say the same', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 10, max: 60 }), (list, widthMm) => {
        const text = list.join(' ')
        const style = { sizeMm: 2 }
        const lines = balancedLines(text, widthMm, style, measure)
        expect(lines).toHaveLength(breakLines(text, widthMm, style, measure).length)
        expect(lines.join(' ')).toBe(text)
        for (const line of lines) expect(measure(line, 2)).toBeLessThanOrEqual(widthMm)
      }),
    )
  })
})
