import { join } from 'node:path'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { bundledTypefaces } from '../../fonts/index.js'
import { mmToPixels } from '../../src/geometry.js'
import { makePlan } from '../../src/pipeline.js'
import { folderWith } from './plan-folder.js'
import { sharedWork } from './shared-work.js'

/** Words of the letter whose height is in question, so that every letter on a piece can be measured. */
const words = Array.from({ length: 8 }, (_, index) => 'x'.repeat(index + 1))

const items = [
  '{layout: word-cards, across: 2, down: 3, marks: none, cover: no, cut: none}',
  '{layout: bingo, boards: 1, grid: 2x2, marks: none, cover: no, cut: none}',
  '{layout: word-cards, size: x-height 6 mm, marks: none, cover: no, cut: none}',
]

/** How many rows high every joined area of black ink on the page is; set marks are grey. */
async function inkHeights(png: string): Promise<readonly number[]> {
  const { data, info } = await sharp(png).toColourspace('b-w').raw().toBuffer({ resolveWithObject: true })
  const { width, height } = info
  const dark = (pixel: number) => data[pixel]! < 128
  const seen = new Uint8Array(width * height)
  const heights: number[] = []
  for (let start = 0; start < width * height; start++) {
    if (seen[start] === 1 || !dark(start)) continue
    let [top, bottom, darkest] = [height, 0, 255]
    const open = [start]
    seen[start] = 1
    for (let pixel = open.pop(); pixel !== undefined; pixel = open.pop()) {
      const y = Math.floor(pixel / width)
      top = Math.min(top, y)
      bottom = Math.max(bottom, y)
      darkest = Math.min(darkest, data[pixel]!)
      for (const next of [pixel - 1, pixel + 1, pixel - width, pixel + width])
        if (next >= 0 && next < seen.length && seen[next] === 0 && dark(next)) {
          seen[next] = 1
          open.push(next)
        }
    }
    if (darkest < 40) heights.push(bottom - top + 1)
  }
  return heights
}

describe.each(bundledTypefaces)('x in $family on the PNG at 300 DPI', ({ name }) => {
  it('is as high as the manifest says, within a pixel, on cards and boards', async () => {
    const plan = `title: x\nfont: ${name}\nwords: [${words.join(', ')}]\nprint:\n${items.map((item, index) => `  - ${item.replace('{', `{name: item ${index}, `)}\n`).join('')}`
    const folder = folderWith({ 'x.yaml': plan })
    const made = await makePlan({
      planFile: join(folder, 'x.yaml'),
      outFolder: join(folder, 'out'),
      formats: ['png'],
      dpi: 300,
      kept: sharedWork,
    })
    if (!made.ok) throw new Error(made.problems.map(problem => problem.message).join('\n'))
    for (const item of made.value.manifest.items) {
      const page = item.pages.find(each => each.pieces.length > 0)!
      const said = mmToPixels(page.pieces[0]!.xHeightMm!, 300)
      const heights = await inkHeights(join(folder, 'out/x', page.png!))
      // The lines of a board are larger, the sheet's label smaller.
      const letters = heights.filter(height => height > said * 0.7 && height < said * 1.4)
      const most = page.pieces.reduce((sum, piece) => sum + piece.text.join('').length, 0)
      expect(letters.length).toBeGreaterThanOrEqual(
        page.pieces.reduce((sum, { text }) => sum + text.length, 0),
      )
      expect(letters.length).toBeLessThanOrEqual(most)
      for (const height of letters) expect(Math.abs(height - said)).toBeLessThanOrEqual(1)
    }
  })
})
