import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import type { TextRun } from '../../src/pieces/piece.js'
import { leastEmMm } from '../../src/pieces/text/type-size.js'
import type { TypeSize } from '../../src/plan/plan.js'
import { bundledTypeface } from '../pieces/bundled-typefaces.js'
import { exampleItems, examples, withKeys } from './example-items.js'
import { marshWithClues, printItem } from './print-item.js'

const andika = bundledTypeface('andika')

/** As the teacher writes it, and what it means. */
const sizes: readonly (readonly [string, TypeSize])[] = [
  ['large', { kind: 'large' }],
  ['30 pt', { kind: 'points', points: 30 }],
  ['x-height 7 mm', { kind: 'x-height', mm: 7 }],
]

/** Every layout of loose pieces, in the ways that change a face most; a tag under a mark on all of them. */
const items = layouts.filter(layout => layout.kind === 'pieces').flatMap(exampleItems)
const pageItems = layouts
  .filter(({ kind, name }) => kind === 'pages' && !examples[name]?.forTeacher)
  .flatMap(exampleItems)
const plan = marshWithClues.replace('  - pattern: consonant-digraph\n', '  - {letters: sh, tag: q}\n')

/** All but the set mark, which is for whoever sorts the pieces and not for the child. */
function textOnPieces({ sheets }: PrintedItem): readonly TextRun[] {
  return sheets.flatMap(sheet =>
    sheet.pieces.flatMap(({ piece }) =>
      piece.art.flatMap(({ art }) => art.text).filter(run => run.text !== piece.setMark),
    ),
  )
}

function textOnPages({ sheets }: PrintedItem): readonly TextRun[] {
  return sheets.flatMap(page => page.furniture.flatMap(({ art }) => art.text))
}

/** Those that are smaller than the size asked for, with their size. */
function tooSmall(runs: readonly TextRun[], size: TypeSize): readonly string[] {
  const least = leastEmMm(andika, size)
  return runs.filter(run => run.sizeMm < least - 0.03).map(run => `${run.text}: ${run.sizeMm.toFixed(2)} mm`)
}

describe.each(sizes)('at size %s', (written, size) => {
  it.each(items)('nothing on a piece of %s is smaller', async item => {
    const printed = await printItem(withKeys(item, `size: ${written}`, 'paper: tabloid'), plan)
    expect(printed.sheets.flatMap(sheet => sheet.pieces).length).toBeGreaterThan(0)
    expect(tooSmall(textOnPieces(printed), size)).toEqual([])
  })

  it.each(pageItems)('nothing on the children’s pages of %s is smaller', async item => {
    const text = textOnPages(await printItem(withKeys(item, `size: ${written}`, 'cover: no'), plan))
    expect(text.length).toBeGreaterThan(3)
    expect(tooSmall(text, size)).toEqual([])
  })
})

describe('a tag under a mark in large print', () => {
  it('is as large as the words', async () => {
    const boxes = async (tag: string) => {
      const marked = plan.replace(', tag: q', tag)
      const item = await printItem('{layout: word-cards, words: [marsh, thrush], size: 30 pt}', marked)
      const art = item.sheets[0]!.pieces[0]!.piece.art.find(placed => placed.art.text[0]?.text === 'marsh')!
      return art.art.heightMm
    }
    // The ink of a q, from the top of its bowl to the end of its stem.
    const { ink } = andika.shape('q').glyphs[0]!.outline
    const heightMm = (ink!.bottom - ink!.top) * leastEmMm(andika, { kind: 'points', points: 30 })
    expect((await boxes(', tag: q')) - (await boxes(''))).toBeGreaterThan(heightMm)
  })
})
