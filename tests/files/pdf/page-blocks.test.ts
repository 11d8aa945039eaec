import { describe, expect, it } from 'vitest'
import { pageBlocks } from '../../../src/files/pdf/page-blocks.js'
import type { Art, Band, TextRun } from '../../../src/pieces/piece.js'
import { sheet } from '../marsh-sheets.js'

const run = (text: string, xMm: number, baselineMm: number, sizeMm = 4): TextRun => ({
  text,
  xMm,
  baselineMm,
  widthMm: text.length * 2,
  sizeMm,
})
const artOf = (...text: readonly TextRun[]): Art => ({ widthMm: 100, heightMm: 100, shapes: [], text })
const cells = (headings: 'all' | number) => ({ leftsMm: [10, 20, 60], headings })

/** What each block says, a cell in brackets, a heading's with a star. */
function told(bands: readonly Band[] | undefined, ...arts: readonly Art[]): readonly string[] {
  const furniture = arts.map(art => ({ art, xMm: 10, yMm: 0 }))
  const page = sheet({ pieces: [], furniture, ...(bands === undefined ? {} : { bands }) })
  const words = (runs: readonly TextRun[]) => runs.map(({ text }) => text).join(' ')
  return pageBlocks(page).map(block =>
    block.kind === 'table'
      ? block.rows
          .map(row =>
            row.map(({ heads, runs }) => `[${words(runs)}${heads === undefined ? '' : '*'}]`).join(''),
          )
          .join(' / ')
      : `${block.kind}: ${words(block.runs)}`,
  )
}

describe('a page of rows, as it is read aloud', () => {
  it('has its largest letters for a heading, and what else stands above its rows for a paragraph', () => {
    const page = artOf(run('Room 7', 0, 16), run('Marked list', 0, 8, 7), run('1 of 2', 40, 16))
    expect(told([{ yMm: 20, heightMm: 10 }], page)).toEqual([
      'heading: Marked list',
      'paragraph: Room 7 1 of 2',
    ])
  })

  it('has a table of the rows with cells that follow one another, whatever art their words stand in', () => {
    const bands: Band[] = [
      { yMm: 20, heightMm: 10, cells: cells('all') },
      { yMm: 30, heightMm: 10, cells: cells(1) },
      { yMm: 40, heightMm: 10, cells: cells(1) },
    ]
    const facts = artOf(run('plural', 50, 26), run('reeds', 50, 36), run('newts', 50, 46))
    const words = artOf(run('newt', 10, 47), run('reed', 10, 37), run('1', 0, 37), run('2', 0, 47))
    expect(told(bands, facts, words)).toEqual(['[*][*][plural*] / [1][reed*][reeds] / [2][newt*][newts]'])
  })

  it('reads the lines of a cell one after the other, not across the cells', () => {
    const bands = [{ yMm: 20, heightMm: 14, cells: cells(1) }]
    const row = artOf(run('marshes', 50, 25), run('add es', 50, 31), run('marsh', 10, 28))
    expect(told(bands, row)).toEqual(['[][marsh*][marshes add es]'])
  })

  it('begins another table with headings, or with other columns', () => {
    const bands: Band[] = [
      { yMm: 20, heightMm: 10, cells: cells(0) },
      { yMm: 30, heightMm: 10, cells: cells('all') },
      { yMm: 40, heightMm: 10, cells: { leftsMm: [10], headings: 0 } },
    ]
    expect(told(bands, artOf(run('a', 0, 26), run('b', 0, 36), run('c', 0, 46)))).toEqual([
      '[a*][][]',
      '[b*][*][*]',
      '[c*]',
    ])
  })

  it('is nothing where a sheet has no rows', () => {
    expect(told(undefined, artOf(run('reed', 0, 26)))).toEqual([])
  })
})
