import { Resvg } from '@resvg/resvg-js'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { sheetToSvg } from '../../../src/files/page/svg.js'
import type { ImageShape } from '../../../src/pieces/piece.js'
import { art, card, marsh, reed, ring, sheet, triangle } from '../marsh-sheets.js'

describe('a sheet as SVG', () => {
  const svg = sheetToSvg(sheet({ widthMm: 215.9, heightMm: 279.4 }))

  it('has its true size in mm and a user unit of a millimetre', () => {
    expect(svg).toMatch(
      /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="215\.9mm" height="279\.4mm" viewBox="0 0 215\.9 279\.4" role="img">/,
    )
  })

  it('has its title first', () => {
    expect(svg.split('\n')[1]).toBe('<title>Word cards, sheet 1 of 1</title>')
  })

  it('names the words of each piece and of what stands beside them', () => {
    expect([...svg.matchAll(/<title>([^<]*)<\/title>/g)].map(match => match[1])).toEqual([
      'Word cards, sheet 1 of 1',
      'reed',
      'marsh',
      'Along the marsh',
    ])
  })

  it('tells a browser that prints it the size of the page', () => {
    expect(svg.split('\n')[2]).toBe('<style>@page { size: 215.9mm 279.4mm; margin: 0 }</style>')
  })

  it('holds no text element, no script, no other style and no reference out of the file', () => {
    expect(svg).not.toMatch(/<(text|script|foreignObject|link)\b/)
    expect(svg.match(/<style|style=/g)).toHaveLength(1)
    const references = [...svg.matchAll(/(?:href|src)="([^"]*)"|url\(([^)]*)\)/g)].map(
      match => match[1] ?? match[2],
    )
    expect(references.filter(reference => !reference?.startsWith('#'))).toEqual([])
  })

  it('defines an art that stands twice once, and refers to it', () => {
    expect(svg.match(/<defs>/g)).toHaveLength(1)
    expect(svg.match(/<use href="#art-1"/g)).toHaveLength(2)
    expect(svg.match(/stroke-dasharray/g)).toHaveLength(1)
  })

  it('turns a piece on its head about its own centre', () => {
    const turned = sheet({
      pieces: [
        { piece: card(1, reed, { art: [{ art: reed, xMm: 5, yMm: 7 }] }), xMm: 100, yMm: 50, turn: 180 },
      ],
      furniture: [],
      cuts: [],
    })
    // 100 + 60 − 5 and 50 + 40 − 7.
    expect(sheetToSvg(turned)).toContain('<g transform="translate(155 83) rotate(180)">')
  })

  it('is the same text each time', () => {
    expect(sheetToSvg(sheet())).toBe(sheetToSvg(sheet()))
  })

  it('stays well formed and says the same with any signs in its words', () => {
    const title = 'Sand & sea: <reeds> "tall" ’n’ \u0007 green'
    const odd = sheetToSvg(sheet({ title, furniture: [{ art: art([ring], 'a < b & c'), xMm: 0, yMm: 0 }] }))
    expect(odd).toContain('<title>Sand &amp; sea: &lt;reeds&gt; &quot;tall&quot; ’n’ \ufffd green</title>')
    expect(odd).toContain('<title>a &lt; b &amp; c</title>')
    expect(() => new Resvg(odd)).not.toThrow()
  })

  it('carries a teacher’s picture inside the file', async () => {
    const bytes = await sharp({ create: { width: 4, height: 4, channels: 3, background: '#ff0000' } })
      .png()
      .toBuffer()
    const picture: ImageShape = {
      kind: 'image',
      bytes,
      mediaType: 'image/png',
      box: { xMm: 1, yMm: 2, widthMm: 30, heightMm: 20 },
      description: 'a red barge',
    }
    const drawn = sheetToSvg(sheet({ furniture: [{ art: art([picture]), xMm: 0, yMm: 0 }] }))
    expect(drawn).toContain(`href="data:image/png;base64,${bytes.toString('base64')}"`)
    expect(drawn).toContain('<title>a red barge</title>')
  })

  it('grows by a reference, not by a drawing, with each further use of an art', () => {
    const pieces = (count: number) =>
      Array.from({ length: count }, (_, index) => ({
        piece: card(index, marsh),
        xMm: 0,
        yMm: index,
        turn: 0 as const,
      }))
    const size = (count: number) => sheetToSvg(sheet({ pieces: pieces(count) })).length
    const drawing = ring.kind === 'path' && triangle.kind === 'path' ? ring.d.length + triangle.d.length : 0
    expect(size(10) - size(9)).toBeLessThan(drawing)
  })
})
