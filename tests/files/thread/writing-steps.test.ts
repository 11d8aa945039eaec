import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, it, onTestFinished } from 'vitest'
import { type PackedPage, pagePacking } from '../../../src/files/page/packed-page.js'
import { pageShapes } from '../../../src/files/page/page-shapes.js'
import { createPngWriter } from '../../../src/files/png/png-writer.js'
import { stepTaker } from '../../../src/files/thread/writing-steps.js'
import type { Sheet } from '../../../src/sheets/sheet.js'
import { art, sheet, unreadable } from '../marsh-sheets.js'

it('a page that is drawn ahead is drawn there and then, behind one that cannot be drawn too', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-steps-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  const [reeds, broken] = [sheet(), sheet({ furniture: [{ art: art([unreadable]), xMm: 40, yMm: 200 }] })]
  const [packing, take] = [pagePacking(), stepTaker(new SharedArrayBuffer(8))]
  const packed = (of: Sheet): PackedPage => packing.pack(pageShapes(of))
  const ahead = { kind: 'draw ahead', dpi: 50 } as const
  const steps = [
    { ...ahead, look: 'broken', page: packed(broken) },
    { ...ahead, look: 'reeds', page: packed(reeds) },
  ]
  expect(await take({ run: 1, steps })).toEqual({ results: [{}, {}] })
  // Another page under its look: what comes to the disk was there before.
  const path = join(folder, 'page.png')
  const page = packed(sheet({ pieces: [] }))
  await take({ run: 2, steps: [{ kind: 'draw', path, dpi: 50, look: 'reeds', page }] })
  expect(readFileSync(path)).toEqual(await createPngWriter(50).write(reeds))
})
