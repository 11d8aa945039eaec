import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { packedOutlines } from '../../../src/files/pdf/packed-outlines.js'
import { sheetsToPdf } from '../../../src/files/pdf/pdf.js'
import { createRasterizer } from '../../../src/files/raster/raster.js'
import type { ImageShape, PathShape, Shape } from '../../../src/pieces/piece.js'
import { art, blueBar, card, marsh, reed, ring, sheet } from '../marsh-sheets.js'
import { firstOfEach, pixelBytes } from '../page-pixels.js'
import { expectSameInk } from '../same-ink.js'
import { hasProgram, runProgram } from '../system-program.js'

const star: Shape = {
  kind: 'path',
  d: 'M5 0L6.2 3.6L10 3.8L7 6.2L8 10L5 7.8L2 10L3 6.2L0 3.8L3.8 3.6Z',
  fill: '#ffffff',
  stroke: { color: '#000000', widthMm: 0.6 },
}

async function picture(alpha: number): Promise<ImageShape> {
  const background = { r: 0, g: 97, b: 138, alpha }
  const bytes = await sharp({ create: { width: 80, height: 40, channels: 4, background } })
    .png()
    .toBuffer()
  const box = { xMm: 0, yMm: 0, widthMm: 40, heightMm: 40 }
  return { kind: 'image', bytes, mediaType: 'image/png', box, description: 'a barge' }
}

const title = 'Sand & sea: <reeds>'
const sheets = [sheet(), sheet({ number: 2, side: 'back', title: 'Backs', widthMm: 279.4, heightMm: 215.9 })]

function pdf(): Promise<Buffer> {
  return sheetsToPdf({ title, parts: [{ title: 'word-cards', sheets }] })
}

describe('a PDF', () => {
  it('is the same bytes each time, pictures included', async () => {
    const pictures = sheet({
      furniture: [
        { art: art([await picture(1)]), xMm: 10, yMm: 100 },
        { art: art([await picture(0.5)]), xMm: 60, yMm: 100 },
      ],
    })
    const make = () => sheetsToPdf({ title, parts: [{ title: 'a', sheets: [pictures] }] })
    expect((await make()).equals(await make())).toBe(true)
  })

  it('asks for no scaling, shows its title, and says its language', async () => {
    const text = (await pdf()).toString('latin1')
    expect(text).toMatch(/\/PrintScaling \/None/)
    expect(text).toMatch(/\/DisplayDocTitle true/)
    expect(text).toMatch(/\/Lang \(en-US\)/)
    expect(text).toMatch(/\/MarkInfo/)
    expect(text).toContain('<rdf:li xml:lang="x-default">Sand &amp; sea: &lt;reeds&gt;</rdf:li>')
  })

  it('has pages of the sheets’ true sizes', async () => {
    // 210 mm are 210 / 25.4 × 72 = 595.2756 pt, 279.4 mm are 11 in = 792 pt.
    const boxes = [...(await pdf()).toString('latin1').matchAll(/\/MediaBox \[([^\]]*)\]/g)].map(
      match => match[1],
    )
    expect(boxes).toEqual(['0 0 595.275591 841.889764', '0 0 792 612'])
  })

  it('gives each piece a figure whose alternative text is its words', async () => {
    const alternatives = [...(await pdf()).toString('latin1').matchAll(/\/Alt \(([^)]*)\)/g)].map(
      match => match[1],
    )
    expect(alternatives).toEqual(['reed', 'marsh', 'reed', 'marsh'])
  })

  it('bookmarks the items of a whole plan', async () => {
    const parts = ['word-cards', 'bingo'].map(name => ({ title: name, sheets }))
    const text = (await sheetsToPdf({ title, parts })).toString('latin1')
    expect([...text.matchAll(/\/Title \((word-cards|bingo)\)/g)].map(match => match[1])).toEqual([
      'word-cards',
      'bingo',
    ])
  })

  it.each([
    ['one shape', (word: PathShape) => word],
    ['drawn anew each time', (word: PathShape) => ({ ...word })],
  ])('writes a word of lines that differ once, however many sheets it stands on: %s', async (_, drawn) => {
    const shape: PathShape = { kind: 'path', d: 'M0 5Q1 0 2 5Z'.repeat(50), fill: '#000000' }
    const line = (number: number): Shape => {
      const word = drawn(shape)
      const last: PathShape = { kind: 'path', d: `M${number} 0L${number} 5L9 5Z`, fill: '#000000' }
      return {
        kind: 'path',
        d: word.d + last.d,
        fill: '#000000',
        words: [word, last].map(outline => ({ outline, xMm: 0, yMm: 0 })),
      }
    }
    const labelled = Array.from({ length: 20 }, (_, index) =>
      sheet({ pieces: [], furniture: [{ art: art([line(index)], 'Bingo'), xMm: 10, yMm: 280 }] }),
    )
    const file = await sheetsToPdf({ title, parts: [{ title: 'a', sheets: labelled }] })
    expect(file.toString('latin1').match(/\/Subtype \/Form/g)).toHaveLength(1)
  })

  it('packs what stands on a page of rows once for all files in which it stands', async () => {
    const page = sheet({ pieces: [], bands: [{ yMm: 270, heightMm: 20 }] })
    expect(packedOutlines(page)).toBe(packedOutlines(page))
    const file = await sheetsToPdf({ title, parts: [{ title: 'a', sheets: [page] }] })
    expect(file.includes(packedOutlines(page))).toBe(true)
  })

  it('draws an art that stands often once', async () => {
    const many = (count: number) => {
      const pieces = Array.from({ length: count }, (_, index) => ({
        piece: card(index + 1, marsh),
        xMm: 10,
        yMm: index,
        turn: 0 as const,
      }))
      return sheetsToPdf({ title, parts: [{ title: 'a', sheets: [sheet({ pieces })] }] })
    }
    const text = (await many(30)).toString('latin1')
    // The frame and the word.
    expect(text.match(/\/Subtype \/Form/g)).toHaveLength(2)
  })
})

describe('a PDF as other programs read it', () => {
  let folder: string
  let file: string
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'oaktag-pdf-'))
    file = join(folder, 'marsh.pdf')
    await writeFile(file, await pdf())
  })
  afterAll(() => rm(folder, { recursive: true }))

  it.runIf(hasProgram('qpdf'))('is sound to qpdf', () => {
    expect(runProgram('qpdf', ['--check', file])).toContain('No syntax or stream encoding errors found')
  })

  it.runIf(hasProgram('pdfinfo'))('has title, tags and page sizes to poppler', () => {
    const info = runProgram('pdfinfo', ['-f', '1', '-l', '2', file])
    expect(info).toMatch(/Title:\s+Sand & sea: <reeds>/)
    expect(info).toMatch(/Tagged:\s+yes/)
    expect(info).toMatch(/Page\s+1 size:\s+595\.276 x 841\.89 pts \(A4\)/)
    expect(info).toMatch(/Page\s+2 size:\s+792 x 612 pts \(letter\)/)
  })

  it.runIf(hasProgram('pdfinfo') && hasProgram('qpdf'))(
    'keeps a title of any letters, and stays sound',
    async () => {
      const far = 'Café am Meer · “œuvre” · ŋ · 蘆'
      const titled = join(folder, 'titled.pdf')
      await writeFile(
        titled,
        await sheetsToPdf({ title: far, parts: [{ title: far, sheets: [sheet({ title: far })] }] }),
      )
      expect(runProgram('pdfinfo', [titled])).toContain(`Title:           ${far}`)
      expect(runProgram('qpdf', ['--check', titled])).toContain('No syntax or stream encoding errors found')
      const { objects } = JSON.parse(runProgram('qpdf', ['--json=1', titled])) as { objects: object }
      const texts = Object.values(objects).map(object => (object as { '/T'?: string })?.['/T'])
      expect(texts).toContain(far)
    },
  )

  it.runIf(hasProgram('pdfinfo'))(
    'has a figure for each piece in poppler’s tree of tags, in the order on paper',
    () => {
      const tags = runProgram('pdfinfo', ['-struct', file])
      expect(tags.replace(/^ *\/.*\n/gm, '').replaceAll('":', '"')).toBe(
        [
          'Document',
          '  Sect "Word cards, sheet 1 of 1"',
          '    Figure "reed"',
          '    Figure "marsh"',
          '    P (block)',
          '  Sect "Backs"',
          '    Figure "reed"',
          '    Figure "marsh"',
          '    P (block)',
          '',
        ].join('\n'),
      )
    },
  )

  it.runIf(hasProgram('pdfinfo'))(
    'reads a page without pieces as it is set: label by label, a cover column by column under its title',
    async () => {
      const said = (text: string, xMm: number, yMm: number, sizeMm = 4) => {
        const { text: runs, ...drawn } = art([ring], text)
        return { art: { ...drawn, text: runs.map(run => ({ ...run, sizeMm })) }, xMm, yMm }
      }
      const furniture = [
        said('Word cards', 10, 10, 8),
        said('whole class', 10, 30),
        said('Bingo', 110, 10),
        said('Otters', 110, 30),
      ]
      const pages = (['labels', 'cover'] as const).map(kind => sheet({ kind, pieces: [], furniture }))
      const set = join(folder, 'set.pdf')
      await writeFile(set, await sheetsToPdf({ title, parts: [{ title, sheets: pages }] }))
      const told = runProgram('pdfinfo', ['-struct-text', set]).replaceAll(/ \(block\)\n\s*/g, ' ')
      expect([...told.matchAll(/(P|H1) "(.*)"/g)].map(([, type, text]) => `${type} ${text}`)).toEqual([
        ...['P Word cards', 'P whole class', 'P Bingo', 'P Otters'],
        ...['H1 Word cards', 'P whole class', 'P Bingo', 'P Otters'],
      ])
    },
  )

  it.runIf(hasProgram('pdftotext'))('gives its words to a search, each in its place', () => {
    expect(runProgram('pdftotext', ['-raw', '-l', '1', file, '-']).split(/\s+/).filter(Boolean)).toEqual([
      'reed',
      'marsh',
      'Along',
      'the',
      'marsh',
    ])
    const words = runProgram('pdftotext', ['-bbox', '-l', '1', file, '-'])
    const [, left, right] = /xMin="([\d.]+)" yMin="[\d.]+" xMax="([\d.]+)" yMax="[\d.]+">reed</.exec(words)!
    // The run begins 2 mm into the art, which stands 15 mm into the piece at 10.037 mm, and is 26 mm long.
    expect((Number(left) / 72) * 25.4).toBeCloseTo(27.037, 1)
    expect((Number(right) / 72) * 25.4).toBeCloseTo(53.037, 1)
  })

  it.runIf(hasProgram('pdftotext'))(
    'keeps letters that are not Latin, and more of them than one font holds',
    async () => {
      const letters = Array.from({ length: 300 }, (_, index) => String.fromCodePoint(0x4e00 + index)).join('')
      const words = `ŋ ə θ œ 𝒶 ${letters}`
      const odd = join(folder, 'odd.pdf')
      const furniture = [{ art: art([ring], words), xMm: 10, yMm: 50 }]
      await writeFile(
        odd,
        await sheetsToPdf({ title, parts: [{ title: 'a', sheets: [sheet({ pieces: [], furniture })] }] }),
      )
      expect(runProgram('pdftotext', [odd, '-']).replace(/\s+/g, '')).toBe(words.replaceAll(' ', ''))
    },
  )

  it.runIf(hasProgram('pdftoppm'))('looks as our PNG does: no ink is off by more than a pixel', async () => {
    const page = sheet({
      furniture: [
        { art: art([ring, star], 'key'), xMm: 33.33, yMm: 100.01 },
        { art: art([blueBar]), xMm: 33.33, yMm: 150.01 },
        { art: art([await picture(1)]), xMm: 100, yMm: 150 },
      ],
      pieces: [
        { piece: card(1, reed), xMm: 10.037, yMm: 12.711, turn: 0 },
        { piece: card(2, marsh), xMm: 75.037, yMm: 12.711, turn: 180 },
      ],
    })
    const single = join(folder, 'single.pdf')
    await writeFile(single, await sheetsToPdf({ title, parts: [{ title: 'a', sheets: [page] }] }))
    runProgram('pdftoppm', ['-r', '300', '-png', '-singlefile', single, join(folder, 'poppler')])
    const ours = await createRasterizer(300).draw(page)
    const theirs = await sharp(join(folder, 'poppler.png'))
      .removeAlpha()
      .extract({ left: 0, top: 0, width: ours.widthPx, height: ours.heightPx })
      .raw()
      .toBuffer()
    expectSameInk(darkness(pixelBytes(ours)), darkness(theirs), ours.widthPx)
  })
})

/** How dark each pixel of a red, green, blue picture is in its red, 0 to 255; our picture’s blue has no red in it. */
function darkness(rgb: Uint8Array): Uint8Array {
  return firstOfEach(rgb, 3).map(value => 255 - value)
}
