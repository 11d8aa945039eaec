import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { printRuns } from '../../src/files/print-runs.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { writePlan } from '../../src/files/write-plan.js'
import { a4, item, plan, sheet } from './marsh-sheets.js'
import { hasProgram, runProgram } from './system-program.js'

const front = sheet()
const back = sheet({ side: 'back', title: 'back' })
const page = sheet({ kind: 'key', title: 'key', pieces: [], cuts: [] })
const twoSided = { backs: { flip: 'long edge', fedByHand: false } } as const
const names = (items: readonly PrintedItem[]) => printRuns({ items }).map(({ name }) => name)

describe('what goes through the printer in one go', () => {
  const items = [
    item({ name: 'key', sheets: [page] }),
    item({ name: 'cards', sheets: [front, page] }),
    item({ name: 'clues', sheets: [front, back, front, back, page], ...twoSided }),
    item({ name: 'labels', sheets: [{ ...page, kind: 'labels' }] }),
  ]

  it('is of one stock and fed in one way: pieces and labels on card, pages on paper', () => {
    const runs = printRuns({ items }).map(({ name, parts }) => [
      name,
      ...parts.map(part => `${part.item} ${part.sheets.length}`),
    ])
    expect(runs).toEqual([
      ['card, both sides', 'clues 4'],
      ['card, one side', 'cards 1', 'labels 1'],
      ['paper, one side', 'key 1', 'cards 1', 'clues 1'],
    ])
  })

  it('is nothing of what is for the screen', () => {
    const screen = { ...a4, screen: true } as const
    expect(names([item({ sheets: [{ ...page, kind: 'screen' }], paper: screen })])).toEqual([])
  })

  it('is told apart by the edge or the paper only where the plan has several', () => {
    const short = { backs: { flip: 'short edge', fedByHand: false } } as const
    const edges = [
      item({ sheets: [front, back], ...twoSided }),
      item({ name: 'other', sheets: [front, back], ...short }),
    ]
    expect(names(edges)).toEqual([
      'card, both sides, turned on the long edge',
      'card, both sides, turned on the short edge',
    ])
    expect(names([item(), item({ name: 'other', paper: { ...a4, name: 'letter' } })])).toEqual([
      'card, one side, a4',
      'card, one side, letter',
    ])
  })

  it('is apart where sheets are fed twice by hand', () => {
    const byHand = { backs: { flip: 'long edge', fedByHand: true } } as const
    expect(names([item({ sheets: [front, back], ...byHand })])).toEqual(['card, twice by hand'])
  })
})

describe.runIf(hasProgram('pdfinfo') && hasProgram('pdftotext'))('the PDFs of a plan', () => {
  const items = [
    item({ name: 'key', sheets: [page] }),
    item({ name: 'clues', sheets: [front, back, front, back, page], ...twoSided }),
  ]

  async function written() {
    const outFolder = mkdtempSync(join(tmpdir(), 'oaktag-runs-'))
    onTestFinished(() => rmSync(outFolder, { recursive: true, force: true }))
    const made = await writePlan({
      printed: plan({ items }),
      outFolder,
      formats: ['pdf'],
      dpi: 100,
      jobs: 2,
      version: '0',
    })
    if (!made.ok) throw new Error('not written')
    return made.value
  }
  const pagesOf = (file: string) => Number(/Pages:\s+(\d+)/.exec(runProgram('pdfinfo', [file]))![1])
  const textOn = (file: string, number: number) =>
    runProgram('pdftotext', ['-f', String(number), '-l', String(number), file, '-']).trim()

  it('are one for each run, told in the manifest with what is in it and how to feed it', async () => {
    const { folder, manifest } = await written()
    expect(manifest.prints?.map(({ name, pdf, pages, sheets }) => [name, pdf, pages, sheets])).toEqual([
      ['card, both sides', 'marsh-card-both-sides.pdf', 4, 2],
      ['paper, one side', 'marsh-paper-one-side.pdf', 2, 2],
    ])
    for (const { pdf, pages } of manifest.prints!) expect(pagesOf(join(folder, pdf))).toBe(pages)
    expect(manifest.prints![0]!.notes).toEqual([
      'Load card stock. Print on both sides, turned on the long edge.',
    ])
  })

  it('of the whole plan leave a page blank, so that fronts come on odd pages', async () => {
    const { folder, manifest } = await written()
    const file = join(folder, manifest.pdf!)
    expect(pagesOf(file)).toBe(7)
    expect([1, 2, 3].map(number => textOn(file, number) === '')).toEqual([false, true, false])
  })
})
