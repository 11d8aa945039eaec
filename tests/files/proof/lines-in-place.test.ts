import { describe, expect, it } from 'vitest'
import { asOneOutline, countLines, withLinesInPlace } from '../../../src/files/proof/lines-in-place.js'

const definitions = new Map([
  ['greed00', '<path id="greed00" d="m10 20l30 0l0 40z"/>'],
  ['gmoth00', '<path id="gmoth00" d="m0-5l7 7l-9 2z"/>'],
  [
    'lline00',
    '<g id="lline00" transform="scale(0.5)"><use href="#greed00" x="100" y="-7"/><use href="#gmoth00" x="3" y="4"/></g>',
  ],
])
const definitionOf = (id: string) => definitions.get(id)
const reference = '<use href="#lline00" fill="#000000"/>'
const drawing = `<g transform="translate(1 2)">${reference}</g>`
const words = '<use href="#greed00" x="100" y="-7"/><use href="#gmoth00" x="3" y="4"/>'
const placed = (text: string, page: readonly string[]) =>
  withLinesInPlace(text, countLines(page), definitionOf)

describe('a line of text on the proof page', () => {
  it('that stands once stands in its place', () => {
    expect(placed(drawing, [drawing])).toBe(
      `<g fill="#000000" transform="translate(1 2) scale(0.5)">${words}</g>`,
    )
    const withAMark = `<g transform="translate(1 2)"><path d="M0 0L1 1"/>${reference}</g>`
    expect(placed(withAMark, [withAMark])).toBe(
      `<g transform="translate(1 2)"><path d="M0 0L1 1"/><g fill="#000000" transform="scale(0.5)">${words}</g></g>`,
    )
  })

  it('that stands more than once is referred to', () => {
    expect(placed(drawing, [drawing, drawing])).toBe(
      '<use href="#lline00" fill="#000000" transform="translate(1 2)"/>',
    )
  })

  it('that stands often is one outline, its words where they were', () => {
    expect(asOneOutline(definitions.get('lline00')!, definitionOf)).toBe(
      '<g id="lline00" transform="scale(0.5)"><path d="M110 13l30 0l0 40zM3 -1l7 7l-9 2z"/></g>',
    )
  })

  it('is left as it is where it, or one of its words, is not known', () => {
    const unknown = drawing.replace('lline00', 'lother0')
    expect(placed(unknown, [unknown])).toContain('<use href="#lother0"')
    const line = definitions.get('lline00')!
    expect(asOneOutline(line, id => (id === 'gmoth00' ? undefined : definitionOf(id)))).toBe(line)
  })
})
