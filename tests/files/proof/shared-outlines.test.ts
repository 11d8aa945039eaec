import { Resvg } from '@resvg/resvg-js'
import { describe, expect, it } from 'vitest'
import { svgSize } from '../../../src/files/page/svg.js'
import { sheetBody } from '../../../src/files/page/svg-body.js'
import { keptLines } from '../../../src/files/proof/kept-lines.js'
import { type SharedOutlines, sharedOutlines } from '../../../src/files/proof/shared-outlines.js'
import { aSheetWithText } from './sheet-with-text.js'

const sheet = await aSheetWithText()
const { heightMm, widthMm } = sheet
const outlines = sharedOutlines()
const shared = sheetBody(sheet, new Map(), outlines.idFor)
const textOf = ({ definitions }: SharedOutlines) =>
  [...definitions()].map(([id, text]) => [id, text.read()] as const)
const definitions = textOf(outlines)
  .map(([, text]) => text)
  .join('')

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

  it('has the same definitions whatever stood on pages before, as long as the sizes are the same', () => {
    const again = sharedOutlines()
    sheetBody(sheet, new Map(), again.idFor)
    expect(textOf(again)).toEqual(textOf(outlines))
  })

  it('leaves short paths, straight ones and open ones as they are', () => {
    const { idFor: idForShape } = sharedOutlines()
    const idFor = (d: string) => idForShape({ kind: 'path', d, fill: '#000000' })
    const curve = 'Q10.123 20.456 30.789 40.123'
    expect(idFor('M2 10L10 2L18 10Z')).toBeUndefined()
    expect(idFor(`M0 0${'L10.123 20.456'.repeat(40)}Z`)).toBeUndefined()
    expect(idFor(`M0 0${curve.repeat(20)}M1 1${curve.repeat(20)}`)).toBeUndefined()
    expect(idFor(`M0 0${curve.repeat(20)}Z`)).toBeDefined()
  })

  it('is written once where its lines are kept from run to run', () => {
    const lines = keptLines()
    const before = sharedOutlines(undefined, lines.read)
    const [body, again] = [sheetBody(sheet, new Map(), before.idFor), sharedOutlines(undefined, lines.read)]
    const words = sheet.furniture
      .flatMap(({ art }) => art.shapes)
      .flatMap(shape =>
        shape.kind === 'path' ? (shape.words?.map(({ outline }) => outline) ?? [shape]) : [],
      )
      .flatMap(({ d }) => lines.read(d) ?? [])
    const written = words.map(word => word.written)
    expect(sheetBody(sheet, new Map(), again.idFor)).toBe(body)
    expect(words.length).toBeGreaterThan(50)
    expect(words.every((word, index) => word.written !== undefined && word.written === written[index])).toBe(
      true,
    )
  })
})
