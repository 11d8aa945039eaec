import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { pageBlocks } from '../../../src/files/pdf/page-blocks.js'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { linesOn, printItem } from '../print-item.js'

const longWords = `title: Along the marsh
words: [hummingbird, grasshopper, caterpillar, beachcomber, woodpecker, butterscotch, housekeeper, leafhopper, wheelbarrow, chickadee]
marks:
  - {pattern: consonant-digraph, outline: box, line: dotted, inside blends: yes}
  - {pattern: vowel-team, outline: oval}
  - {pattern: silent-e, line: wavy}
print:
`
const moreWords =
  'reed, moth, duck, leaf, fish, cake, bee, path, chin, pond, gnat, wren, frog, perch, stream, spring, shrub, thrush, marsh, twig'
const large = (layout: string, plan = longWords) => printItem(`{layout: ${layout}, size: large}`, plan)

/** From the top of the page: the rows of the list, and the lowest of all rows. */
function pagesOf(item: PrintedItem) {
  return item.sheets.map(({ bands = [], heightMm }) => {
    const words = bands.filter(({ cells }) => cells !== undefined && cells.headings !== 'all')
    const last = bands.at(-1)!
    return { rowsMm: words.map(band => band.heightMm), filled: (last.yMm + last.heightMm) / heightMm }
  })
}

describe('a list in large print that takes two pages', () => {
  it.each(['marked-list', 'blank-list'])('has rows that grow until a page is full: %s', async layout => {
    const pages = pagesOf(await large(layout))
    expect(pages).toHaveLength(2)
    expect(Math.max(...pages.map(({ filled }) => filled))).toBeGreaterThan(0.85)
    expect(Math.min(...pages.map(({ filled }) => filled))).toBeGreaterThan(0.45)
  })

  it('has its words in the same places for the teacher and for the children', async () => {
    const [marked, blank] = [await large('marked-list'), await large('blank-list')].map(({ sheets }) =>
      sheets.map(({ bands = [] }) => bands.filter(({ cells }) => cells?.headings === 1)),
    )
    const places = (pages: typeof marked) =>
      pages!.map(bands => bands.map(({ yMm, heightMm }) => [yMm.toFixed(2), heightMm.toFixed(2)]))
    expect(places(marked)).toEqual(places(blank))
  })

  it('leaves no gap above the heads of its columns', async () => {
    const { sheets } = await large('marked-list')
    const runs = sheets[0]!.furniture.flatMap(({ art, yMm }) =>
      art.text.map(({ text, baselineMm }) => ({ text, yMm: yMm + baselineMm })),
    )
    const lineOf = (wanted: string) => runs.find(({ text }) => text.includes(wanted))!.yMm
    expect(lineOf('part of') - lineOf('Along the marsh')).toBeLessThan(20)
  })
})

describe('a list in very large print', () => {
  it('has no white above the teacher’s words, though the children’s task takes half a page', async () => {
    const plan = longWords.replace(/\[hum.*\]/, '[reed, moth, duck, gnat, wren, leaf, frog]')
    const { sheets } = await printItem('{layout: marked-list, size: x-height 12 mm}', plan)
    const [first] = sheets[0]!.bands!.filter(({ cells }) => cells?.headings === 1)
    expect(first!.yMm).toBeLessThan(60)
  })
})

describe('a list that goes on', () => {
  const many = longWords.replace('[humming', `[${moreWords}, humming`)

  it('has the heads of its columns on each page, in a table of its own', async () => {
    const { sheets } = await printItem('{layout: marked-list}', many)
    expect(sheets.length).toBeGreaterThan(1)
    for (const sheet of sheets) {
      const tables = pageBlocks(sheet).filter(block => block.kind === 'table')
      expect(tables).toHaveLength(1)
      const [heads, ...rows] = tables[0]!.rows
      expect(heads!.every(cell => cell.heads === 'Column')).toBe(true)
      expect(heads!.flatMap(cell => cell.runs.map(({ text }) => text))).toContain('sounds')
      expect(rows.length).toBeGreaterThan(2)
      expect(rows.every(cells => cells.length === heads!.length)).toBe(true)
    }
  })

  it('tells the children on each page what to do', async () => {
    const blank = await printItem('{layout: blank-list}', many)
    const told = linesOn(blank, 'list').filter(line => line.startsWith('Mark each word'))
    expect(told).toHaveLength(blank.sheets.length)
  })
})

describe('a long list', () => {
  it('stands on one page with its key where what is said of a word needs one line alone', async () => {
    const bakery = readFileSync('src/demo/plans/bakery.yaml', 'utf8')
    const [head] = bakery.split(/^print:/m)
    const lines = readFileSync('src/demo/plans/bakery.txt', 'utf8').trim().split('\n')
    const words = lines.filter(line => !line.startsWith('#')).join(', ')
    const plan = `${head!.replace(/^words:.*$/m, `words: [${words}]`)}print:\n`
    const printed = await printItem('{layout: marked-list}', plan)
    expect(printed.sheets).toHaveLength(1)
    expect(linesOn(printed, 'list').join('\n')).toContain('loaves (f to v, add es)')
  })

  it('keeps white between the longest word and what stands beside it', async () => {
    const { sheets } = await printItem(
      '{layout: blank-list}',
      longWords.replace('hummingbird', 'merry-go-round'),
    )
    const arts = sheets[0]!.furniture
    const wordsEnd = Math.max(
      ...arts.flatMap(({ art, xMm }) =>
        art.text.filter(({ text }) => text === 'merry-go-round').map(run => xMm + run.xMm + run.widthMm),
      ),
    )
    const linesBegin = Math.min(
      ...arts.filter(({ art }) => art.heightMm < 0.5 && art.widthMm > 60).map(({ xMm }) => xMm),
    )
    expect(linesBegin - wordsEnd).toBeGreaterThan(2.5)
  })
})
