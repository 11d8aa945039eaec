import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  breakAtCommas,
  breakLines,
  breakLinesWithin,
  wholeWordsWithin,
} from '../../../src/pieces/text/break-lines.js'

/** Every character half an em wide: widths can be counted by hand. */
const measure = (text: string, sizeMm: number) => text.length * sizeMm * 0.5
const style = { sizeMm: 4 }

describe('the words of a list', () => {
  it('stand whole, as many as there is room for, with no sign that some are left out', () => {
    const words = ['reed', 'marsh', 'shrub', 'thrush']
    expect(wholeWordsWithin(words, { widthMm: 24, maximum: 2 }, style, measure)).toEqual([
      'reed, marsh,',
      'shrub',
    ])
    expect(wholeWordsWithin(words, { widthMm: 60, maximum: 2 }, style, measure)).toEqual([
      'reed, marsh, shrub, thrush',
    ])
  })
})

describe('running text', () => {
  it('is broken between words where a line is full', () => {
    expect(breakLines('wet, grassy land', 22, style, measure)).toEqual(['wet, grassy', 'land'])
  })

  it('ends a line behind the dot between two entries, never before it', () => {
    expect(breakLines('reed · marsh · wren', 22, style, measure)).toEqual(['reed ·', 'marsh ·', 'wren'])
  })

  it('begins no line with a number in brackets, or with the number that ends the text', () => {
    expect(breakLines('it quacks (4)', 20, style, measure)).toEqual(['it', 'quacks (4)'])
    expect(breakLines('wins at call 6.', 22, style, measure)).toEqual(['wins at', 'call 6.'])
  })

  it('breaks a word that is wider than the line, rather than letting it leave its box', () => {
    expect(breakLines('thunderstorm', 10, style, measure)).toEqual(['thund', 'ersto', 'rm'])
  })

  it('breaks a long word after its hyphen or the dot between its sounds, if it has one', () => {
    expect(breakLines('n·eigh·b·or·h·oo·d', 24, style, measure)).toEqual(['n·eigh·b·or·', 'h·oo·d'])
    expect(breakLines('jack-in-the-box', 20, style, measure)).toEqual(['jack-in-', 'the-box'])
  })

  it('may be broken at its commas first, where it does not fit in one line', () => {
    expect(breakAtCommas('4: b·o·x, x counts two', 50, style, measure)).toEqual(['4: b·o·x, x counts two'])
    expect(breakAtCommas('4: b·o·x, x counts two', 34, style, measure)).toEqual(['4: b·o·x,', 'x counts two'])
    expect(breakAtCommas('4: b·o·x, x counts two', 18, style, measure)).toEqual([
      '4: b·o·x,',
      'x counts',
      'two',
    ])
  })

  it('is shortened with an ellipsis that still fits', () => {
    const lines = breakLinesWithin(
      'a tall grass that stands in water',
      { widthMm: 20, maximum: 2 },
      style,
      measure,
    )
    expect(lines).toEqual(['a tall', `${'grass that…'.slice(0, 9)}…`])
  })

  it('never makes a line wider than its room, nor loses a letter', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: fc.constantFrom('a', 'b', 'g'), minLength: 1, maxLength: 30 })),
        fc.integer({ min: 4, max: 60 }),
        (words, widthMm) => {
          const lines = breakLines(words.join(' '), widthMm, style, measure)
          expect(lines.every(line => measure(line, 4) <= widthMm)).toBe(true)
          expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''))
        },
      ),
    )
  })
})
