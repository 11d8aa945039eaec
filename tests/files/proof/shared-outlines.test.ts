import { Resvg } from '@resvg/resvg-js'
import { describe, expect, it } from 'vitest'
import { svgSize } from '../../../src/files/page/svg.js'
import { sheetBody, artMarkup as writtenOut } from '../../../src/files/page/svg-body.js'
import { type SharedOutlines, sharedOutlines } from '../../../src/files/proof/shared-outlines.js'
import type { Art, PathShape } from '../../../src/pieces/piece.js'
import { drawWords } from '../../../src/pieces/text/words-of-line.js'
import { aSheetWithText, theTypeface } from './sheet-with-text.js'

const sheet = aSheetWithText()
const { heightMm, widthMm } = sheet
const outlines = sharedOutlines()
const shared = sheetBody(sheet, new Map(), outlines.artMarkup)
const textOf = ({ definitions }: SharedOutlines) =>
  [...definitions()].map(([id, text]) => [id, text.read()] as const)
const definitions = textOf(outlines)
  .map(([, text]) => text)
  .join('')

const artOf = (shape: PathShape): Art => ({ widthMm: 60, heightMm: 20, shapes: [shape], text: [] })

function pixelsOf(body: string): Uint8Array {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" ${svgSize(sheet)}><rect width="${widthMm}" height="${heightMm}" fill="#fff"/>${body}</svg>`
  return new Resvg(svg, { fitTo: { mode: 'width', value: Math.round((widthMm / 25.4) * 300) } }).render()
    .pixels
}

describe('text whose words are defined once', () => {
  it('takes a fraction of the bytes', () => {
    const plain = sheetBody(sheet, new Map())
    expect(shared.length + definitions.length).toBeLessThan(plain.length * 0.6)
    expect(shared.length).toBeLessThan(plain.length / 20)
  })

  it('is the same ink at 300 DPI, but for the grey of edges', () => {
    const [plain, drawn] = [sheetBody(sheet, new Map()), `<defs>${definitions}</defs>${shared}`].map(pixelsOf)
    let ink = 0
    let differing = 0
    for (let at = 0; at < plain!.length; at += 4) {
      if (plain![at]! < 128) ink += 1
      if (Math.abs(plain![at]! - drawn![at]!) > 96) differing += 1
    }
    expect(ink).toBeGreaterThan(50_000)
    expect(differing / ink).toBeLessThan(0.002)
  })

  it('has the same definitions whatever stands on the page before', () => {
    const again = sharedOutlines()
    sheetBody(aSheetWithText(0.93), new Map(), again.artMarkup)
    const body = sheetBody(sheet, new Map(), again.artMarkup)
    expect(body).toBe(shared)
    expect(Object.fromEntries(textOf(again))).toMatchObject(Object.fromEntries(textOf(outlines)))
  })

  it('has a word once, in whatever size it stands, and whatever is drawn of it', () => {
    const { artMarkup, definitions } = sharedOutlines()
    const typeface = theTypeface()
    const word = (sizeMm: number): PathShape =>
      drawWords({ typeface, text: 'quagmire', xMm: 3, baselineMm: 9, sizeMm })[0]!.outline
    const markups = [4, 7.5, 40].map(sizeMm => artMarkup(artOf(word(sizeMm))))
    expect(new Set(markups).size).toBe(3)
    expect([...definitions().keys()].filter(id => id.startsWith('g'))).toHaveLength(1)
  })

  it('leaves what is no text, and a word of few strokes, as it is', () => {
    const { artMarkup, definitions } = sharedOutlines()
    const typeface = theTypeface()
    const long = `M0 0${'Q10.123 20.456 30.789 40.123'.repeat(20)}Z`
    const short = drawWords({ typeface, text: 'l', xMm: 0, baselineMm: 9, sizeMm: 40 })[0]!.outline
    for (const shape of [{ kind: 'path', d: long, fill: '#000000' } as const, short])
      expect(artMarkup(artOf(shape))).toBe(writtenOut(artOf(shape)))
    expect(definitions().size).toBe(0)
  })

  it('is defined again on the next page on which the same art stands', () => {
    const art = artOf(
      drawWords({ typeface: theTypeface(), text: 'quagmire', xMm: 3, baselineMm: 9, sizeMm: 4 })[0]!.outline,
    )
    const pages = [sharedOutlines(), sharedOutlines()]
    const [first, second] = pages.map(({ artMarkup }) => artMarkup(art))
    expect(second).toBe(first)
    expect(textOf(pages[1]!)).toEqual(textOf(pages[0]!))
    expect(textOf(pages[0]!)).not.toEqual([])
  })
})
