import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, describe, expect, it } from 'vitest'
import { makePlan } from '../../../src/pipeline.js'
import { hasProgram, runProgram } from '../../files/system-program.js'
import { folderWith } from '../plan-folder.js'

/** EXIF 2.32, table 6: the camera was turned, so the picture's top is its right side; shown upright, it turns 90°. */
const TURNED = 6

/** A photograph as a telephone saves it: stored lying, blue above red when shown upright, with a place written beside it. */
async function photograph(): Promise<Buffer> {
  const [width, height] = [2000, 1200]
  // Stored left is shown on top once it is turned a quarter to the right: the stored bottom left is the shown top left.
  const half = (color: string) => ({
    input: { create: { width: width / 2, height, channels: 3 as const, background: color } },
    top: 0,
  })
  return sharp({ create: { width, height, channels: 3, background: '#ffffff' } })
    .composite([
      { ...half('#0000ff'), left: 0 },
      { ...half('#ff0000'), left: width / 2 },
    ])
    .withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 3230/100' } })
    .withMetadata({ orientation: TURNED })
    .jpeg()
    .toBuffer()
}

const folder = mkdtempSync(join(tmpdir(), 'oaktag-photograph-'))
afterAll(() => rmSync(folder, { recursive: true }))

let made: Promise<{ readonly photo: Buffer; readonly set: string }> | undefined

/** The photograph, and the folder of the set that is made of it once. */
function photographed() {
  made ??= setOf()
  return made
}

async function setOf() {
  const photo = await photograph()
  const planFile = join(folder, 'week.yaml')
  writeFileSync(
    planFile,
    'words: [{word: reed, picture: reed.jpg}]\nprint: [{layout: word-cards, back: picture}]\n',
  )
  writeFileSync(join(folder, 'reed.jpg'), photo)
  const outFolder = join(folder, 'out')
  const { problems } = await makePlan({ planFile, outFolder, formats: ['svg', 'png', 'pdf'], dpi: 100 })
  expect(problems).toEqual([])
  return { photo, set: join(outFolder, 'week') }
}

/** The colours of the page's first inked pixel column through its middle, top to bottom, each named once. */
async function coloursDown(page: Uint8Array): Promise<readonly string[]> {
  const { data, info } = await sharp(page).removeAlpha().raw().toBuffer({ resolveWithObject: true })
  const near = (at: number, color: readonly number[]) =>
    color.every((value, channel) => Math.abs(data[at + channel]! - value) < 40)
  const names: string[] = []
  for (let x = 0; x < info.width && names.length === 0; x++) {
    for (let y = 0; y < info.height; y++) {
      const at = (y * info.width + x) * 3
      const name = near(at, [0, 0, 255]) ? 'blue' : near(at, [255, 0, 0]) ? 'red' : undefined
      if (name !== undefined && names.at(-1) !== name) names.push(name)
    }
  }
  return names
}

describe('a photograph from a camera that was held upright', () => {
  it('stands upright in SVG and PNG', async () => {
    const { set } = await photographed()
    const pages = readdirSync(join(set, 'word-cards'))
    const back = pages.find(name => name.endsWith('02.svg'))!
    const svg = readFileSync(join(set, 'word-cards', back), 'utf8')
    const [, data] = /href="data:image\/jpeg;base64,([^"]*)"/.exec(svg)!
    const inside = Buffer.from(data!, 'base64')
    const shown = await sharp(inside).metadata()
    expect(shown.height).toBeGreaterThan(shown.width)
    expect(shown.orientation).toBeUndefined()
    expect(await coloursDown(inside)).toEqual(['blue', 'red'])
    expect(await coloursDown(readFileSync(join(set, 'word-cards', back.replace('.svg', '.png'))))).toEqual([
      'blue',
      'red',
    ])
  })

  it.runIf(hasProgram('pdftoppm'))('stands upright in PDF', async () => {
    const { set } = await photographed()
    const pdf = join(set, 'word-cards/word-cards.pdf')
    runProgram('pdftoppm', [
      '-r',
      '100',
      '-f',
      '2',
      '-l',
      '2',
      '-png',
      '-singlefile',
      pdf,
      join(folder, 'back'),
    ])
    expect(await coloursDown(readFileSync(join(folder, 'back.png')))).toEqual(['blue', 'red'])
  })

  it('is written no finer than it can be printed, and without the place where it was taken', async () => {
    const { photo, set } = await photographed()
    expect((await sharp(photo).metadata()).exif).toBeDefined()
    const svg = readFileSync(join(set, 'word-cards/word-cards-02.svg'), 'utf8')
    const inside = await sharp(Buffer.from(/base64,([^"]*)"/.exec(svg)![1]!, 'base64')).metadata()
    // A card three across on letter is 67.7 mm, 800 pixels at 300 DPI, and 64.9 mm, 766 pixels, high.
    expect(Math.max(inside.width, inside.height)).toBeLessThanOrEqual(800)
    expect(inside.exif).toBeUndefined()
  })
})

describe('a picture that cannot be read', () => {
  it('is told with the word’s place, and nothing is written', async () => {
    const folder = folderWith({
      'week.yaml':
        'words:\n  - {word: reed, picture: reed.jpg}\nprint: [{layout: word-cards, back: picture}]\n',
      'reed.jpg': Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 1, 2, 3]),
    })
    const made = await makePlan({
      planFile: join(folder, 'week.yaml'),
      outFolder: join(folder, 'out'),
      formats: ['svg'],
      dpi: 100,
    })
    expect(made.ok).toBe(false)
    expect(made.problems.map(({ place, message }) => [place.line, message])).toEqual([
      [2, 'the picture of "reed" cannot be read'],
    ])
    expect(readdirSync(folder)).not.toContain('out')
  })
})
