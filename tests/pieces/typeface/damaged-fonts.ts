import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { unpackFont } from '../../../src/pieces/typeface/woff.js'
import { generatorFor } from '../../../src/sets/random.js'

const bundled = (file: string) => readFileSync(createRequire(import.meta.url).resolve(`@fontsource/${file}`))

/** A bundled typeface's regular and bold files. */
export function bundledFiles(name: string): readonly Uint8Array[] {
  return [400, 700].map(weight => bundled(`${name}/files/${name}-latin-${weight}-normal.woff`))
}

export const goodWoff = bundled('lexend/files/lexend-latin-400-normal.woff')
/** The same as a plain TrueType file. */
export const goodFont = Buffer.from(unpackFont(goodWoff)!)
const woff2 = bundled('lexend/files/lexend-latin-400-normal.woff2')

interface Entry {
  readonly at: number
  readonly start: number
  readonly length: number
}

/** Where a table is listed, and where it stands (OpenType 1.9, "Organization of an OpenType font"). */
function entryOf(font: Buffer, tag: string): Entry {
  const at =
    12 +
    16 *
      Array.from({ length: font.readUInt16BE(4) }).findIndex(
        (_, index) => font.toString('latin1', 12 + 16 * index, 16 + 16 * index) === tag,
      )
  return { at, start: font.readUInt32BE(at + 8), length: font.readUInt32BE(at + 12) }
}

/** The font with bytes of a table changed, and its sum made right again: as a tool would write it. */
function rewritten(tag: string, change: (table: Buffer) => void): Buffer {
  const font = Buffer.from(goodFont)
  const { at, start, length } = entryOf(font, tag)
  change(font.subarray(start, start + length))
  const whole = Buffer.concat([font.subarray(start, start + length), Buffer.alloc(3)])
  let sum = 0
  for (let index = 0; index < length; index += 4) sum = (sum + whole.readUInt32BE(index)) >>> 0
  font.writeUInt32BE(sum, at + 4)
  return font
}

/** The font with its bytes changed and nothing made right: as a bad disk leaves it. */
function spoilt(change: (font: Buffer) => void): Buffer {
  const font = Buffer.from(goodFont)
  change(font)
  return font
}

function without(tag: string): Buffer {
  return spoilt(font => font.write('none', entryOf(font, tag).at, 'latin1'))
}

export function flipped(seed: number, count: number, of: Buffer = goodFont): Buffer {
  const random = generatorFor(seed, 'flips')
  const font = Buffer.from(of)
  for (let index = 0; index < count; index++) {
    const at = random.below(font.length)
    font[at] = font[at]! ^ (1 << random.below(8))
  }
  return font
}

function noise(table: Buffer): void {
  const random = generatorFor(7, 'noise')
  for (let at = 0; at < table.length; at++) table[at] = random.below(256)
}

const glyfOf = (font: Buffer) => entryOf(font, 'glyf')

/** Files that are named as a font and are none that letters can be printed from. */
export const damagedFonts: Readonly<Record<string, Uint8Array>> = {
  'an empty file': new Uint8Array(),
  'a text': Buffer.from('no font at all, but a text of some length\n'.repeat(30)),
  'a PNG picture': Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), Buffer.alloc(500)]),
  'three bytes': goodFont.subarray(0, 3),
  'its first 12 bytes': goodFont.subarray(0, 12),
  'its first 200 bytes': goodFont.subarray(0, 200),
  'its first half': goodFont.subarray(0, goodFont.length / 2),
  'all but its last 2,000 bytes': goodFont.subarray(0, -2000),
  'a WOFF2': woff2,
  'a WOFF that breaks off': goodWoff.subarray(0, 5000),
  'a WOFF with flipped bits': flipped(3, 200, goodWoff),
  'a collection': Buffer.concat([Buffer.from('747463660001000000000001', 'hex'), goodFont]),
  'no table listed': spoilt(font => font.writeUInt16BE(0, 4)),
  '65,535 tables listed': spoilt(font => font.writeUInt16BE(0xffff, 4)),
  'no cmap': without('cmap'),
  'no head': without('head'),
  'no glyf': without('glyf'),
  'no hmtx': without('hmtx'),
  'a table beyond the file’s end': spoilt(font => font.writeUInt32BE(0xfffffff0, glyfOf(font).at + 8)),
  'a table longer than the file': spoilt(font => font.writeUInt32BE(0x7fffffff, glyfOf(font).at + 12)),
  'no glyphs': rewritten('maxp', table => table.writeUInt16BE(0, 4)),
  'empty outlines': rewritten('loca', table => table.fill(0)),
  'outlines that are noise': rewritten('glyf', noise),
  'outlines that are noise, with their old sum': spoilt(font => {
    const { start, length } = glyfOf(font)
    noise(font.subarray(start, start + length))
  }),
  'outlines at places that are noise': rewritten('loca', noise),
  'a cmap of noise': rewritten('cmap', noise),
  'a cmap without tables': rewritten('cmap', table => table.writeUInt16BE(0, 2)),
  'no size of its em': rewritten('head', table => table.writeUInt16BE(0, 18)),
  'an em of 16 units': rewritten('head', table => table.writeUInt16BE(16, 18)),
  'letters of no width': rewritten('hmtx', table => table.fill(0)),
  'flipped bits': flipped(1, 40),
}
