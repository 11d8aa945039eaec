import { describe, expect, it } from 'vitest'
import { bundledTypefaces } from '../../../fonts/index.js'
import { openTypeface } from '../../../src/pieces/typeface/typeface.js'
import { bundledFiles, damagedFonts, flipped, goodFont, goodWoff } from './damaged-fonts.js'

const whyNot = (regular: Uint8Array, bold?: Uint8Array): string => {
  const typeface = opened(regular, bold)
  return 'unreadable' in typeface ? typeface.unreadable : 'it is used'
}

const opened = (regular: Uint8Array, bold?: Uint8Array) =>
  openTypeface({ name: 'reedbed', family: 'Reedbed', regular, ...(bold && { bold }) })

describe('a font file that no letters can be printed from', () => {
  it.each(Object.entries(damagedFonts))('%s: is told, and why', (_, bytes) => {
    expect(whyNot(bytes)).toMatch(/^(?:its|the|what) .{10,}[^.]$/)
  })

  it.each(Object.entries(damagedFonts).slice(0, 3))('%s: as the bold weight is told too', (_, bytes) => {
    expect(whyNot(goodFont, bytes)).toContain('bold')
  })

  it('is told from one that is whole', () => {
    for (const bytes of [goodFont, goodWoff]) expect(opened(bytes)).toMatchObject({ family: 'Reedbed' })
  })

  it('with any bits flipped is told, or sets every letter as before', () => {
    const whole = opened(goodFont)
    if ('unreadable' in whole) throw new Error(whole.unreadable)
    const letters = (typeface: typeof whole) => JSON.stringify(typeface.shape('abcdefghijklmnopqrstuvwxyz'))
    const outcomes = Array.from({ length: 60 }, (_, seed) => opened(flipped(seed, 1 + (seed % 3))))
    const told = outcomes.filter(outcome => 'unreadable' in outcome)
    const used = outcomes.flatMap(outcome => ('unreadable' in outcome ? [] : [letters(outcome)]))
    expect(told.length).toBeGreaterThan(20)
    expect([...new Set(used)]).toEqual([letters(whole)])
  })
})

describe('the typefaces that come with oaktag', () => {
  it.each(bundledTypefaces.map(({ name }) => name))('%s: have every letter whole', name => {
    const files = bundledFiles(name)
    expect([files.length, files.map(bytes => whyNot(bytes))]).toEqual([2, ['it is used', 'it is used']])
  })
})

describe('a character whose outline is empty', () => {
  it('is missing from the typeface; a space is not', () => {
    const typeface = opened(goodFont)
    if ('unreadable' in typeface) throw new Error(typeface.unreadable)
    expect(typeface.missing('a b\u00a0c, 7')).toEqual([])
    expect(typeface.missing('\u0416\u{1F438}')).toEqual(['\u0416', '\u{1F438}'])
  })
})
