import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { mmToPixels } from '../../../src/geometry.js'
import type { Coverage } from '../../pieces/pixels.js'
import { runProgram } from '../system-program.js'

/** As wide as the page, so far down on it. */
export interface Band {
  readonly topMm: number
  readonly heightMm: number
}

/** The first page of a PDF as poppler shows it, or a band of it, as darkness 0 to 255 a pixel. */
export function pageInGreys(pdf: string, dpi: number, band?: Band): Coverage {
  const px = (mm: number) => `${Math.round(mmToPixels(mm, dpi))}`
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-greys-'))
  try {
    const only = ['-f', '1', '-l', '1', '-singlefile']
    const cut = band === undefined ? [] : ['-y', px(band.topMm), '-H', px(band.heightMm)]
    runProgram('pdftoppm', ['-r', `${dpi}`, ...only, ...cut, '-gray', pdf, join(folder, 'page')])
    return readPgm(readFileSync(join(folder, 'page.pgm')))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** A portable greymap of one byte a pixel (Netpbm's pgm(5)): packing a page of 600 DPI as a PNG takes longer than drawing it. */
function readPgm(file: Uint8Array): Coverage {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(Buffer.from(file.subarray(0, 64)).toString('latin1'))
  if (head === null) throw new Error('not a greymap of one byte a pixel')
  const [width, height] = [Number(head[1]), Number(head[2])]
  if (file.length - head[0].length !== width * height) throw new Error('the greymap is cut short')
  // Turned from light to dark four pixels at a time; a page of 600 DPI has 33 million.
  const fours = new Uint32Array(Math.ceil((width * height) / 4))
  const values = new Uint8Array(fours.buffer, 0, width * height)
  values.set(file.subarray(head[0].length))
  for (let at = 0; at < fours.length; at++) fours[at] = ~fours[at]!
  return { width, height, values }
}
