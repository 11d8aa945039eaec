import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { keepWork } from '../../../src/pipeline/kept-work.js'
import { makePlan } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'

/** Its name is of letters that are as high as x, so that its rows of ink are the x-height. */
const plan = (paper: string) => `title: Along the marsh
words: [reed, marsh, leaf]
marks:
  - {pattern: vowel-team, label: xxx}
print:
  - {layout: board-pages, each word: none, parts of speech: no, plurals: no, paper: "${paper}"}
  - {layout: key}
`

describe.each([
  ['screen 16:9', 1920],
  ['screen 4:3', 1440],
])('the files of %s', (paper, wide) => {
  let folder: string
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'oaktag-board-'))
    writeFileSync(join(folder, 'marsh.yaml'), plan(paper))
    const made = await makePlan({
      planFile: join(folder, 'marsh.yaml'),
      outFolder: folder,
      formats: ['svg', 'png', 'pdf'],
      dpi: 150,
      kept: keepWork(),
    })
    if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  })
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  const page = (name: string) => join(folder, 'marsh', name)

  it('are as many pixels as the screen, at 96 an inch, while other pages keep the resolution asked for', async () => {
    const file = readFileSync(page('board-pages/board-pages-03.png'))
    const { width, height } = await sharp(file).metadata()
    expect([width, height]).toEqual([wide, 1080])
    // 96 / 0.0254 = 3779.5 pixels a metre.
    expect(file.readUInt32BE(file.indexOf('pHYs', 0, 'latin1') + 4)).toBe(3780)
    expect((await sharp(page('key/key-01.png')).metadata()).width).toBe(Math.round(8.5 * 150))
  })

  it('are so large as SVG too: a millimetre is 96 / 25.4 CSS pixels', () => {
    const svg = readFileSync(page('board-pages/board-pages-01.svg'), 'utf8')
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!.map(Number)
    expect((width! * 96) / 25.4).toBeCloseTo(wide, 2)
    expect((height! * 96) / 25.4).toBeCloseTo(1080, 2)
  })

  it('are told with their own resolution in the manifest', () => {
    const { items } = JSON.parse(readFileSync(page('manifest.json'), 'utf8'))
    const told = items.map(({ name, dpi }: { name: string; dpi: number }) => `${name} ${dpi}`)
    expect(told).toEqual(['board-pages 96', 'key 150'])
  })

  it('have an x-height of 21 pixels and more in the smallest of their text, measured', async () => {
    // The key in the corner is the smallest text of the page; its name is the last ink before the margin.
    const { data, info } = await sharp(page('board-pages/board-pages-03.png'))
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true })
    const isInk = (x: number, y: number) => y > info.height / 2 && data[y * info.width + x]! < 128
    const from = Math.round(info.width * 0.78)
    const columns = Array.from({ length: info.width - from }, (_, x) => from + x).filter(x =>
      Array.from({ length: info.height }, (_, y) => isInk(x, y)).includes(true),
    )
    // Of the corner's ink the last three letters, each about as wide as it is high, without the sample before them.
    const last = columns.at(-1)!
    const rows = Array.from({ length: info.height }, (_, y) => y).filter(y =>
      columns.filter(x => x > last - 40).some(x => isInk(x, y)),
    )
    const heightPx = rows.at(-1)! - rows[0]! + 1
    expect(heightPx).toBeGreaterThanOrEqual(21)
    expect(heightPx).toBeLessThan(30)
  })
})
