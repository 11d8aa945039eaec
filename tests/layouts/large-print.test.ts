import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { pointsToMm } from '../../src/geometry.js'
import type { Piece, TextRun } from '../../src/pieces/piece.js'
import { leastEmMm } from '../../src/pieces/text/type-size.js'
import type { TypeSize } from '../../src/plan/plan.js'
import { bundledTypeface } from '../pieces/bundled-typefaces.js'
import { exampleItems, examples, withKeys } from './example-items.js'
import { marshWithClues, piecesOf, printItem } from './print-item.js'

const andika = bundledTypeface('andika')

/** As the teacher writes it, and what it means. */
const usual: readonly (readonly [string, TypeSize])[] = [
  ['large', { kind: 'large' }],
  ['30 pt', { kind: 'points', points: 30 }],
]
const sizes = {
  pieces: [...usual, ['x-height 9 mm', { kind: 'x-height', mm: 9 }]],
  pages: [...usual, ['x-height 7 mm', { kind: 'x-height', mm: 7 }]],
} as const

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
  return sheets
    .filter(({ kind }) => kind !== 'answers')
    .flatMap(page => page.furniture.flatMap(({ art }) => art.text))
}

/** Those that are smaller than the size asked for, with their size. */
function tooSmall(runs: readonly TextRun[], size: TypeSize): readonly string[] {
  const least = leastEmMm(andika, size)
  return runs.filter(run => run.sizeMm < least - 0.03).map(run => `${run.text}: ${run.sizeMm.toFixed(2)} mm`)
}

/** Where the set mark stands on its piece, and its colour. */
function markOf({
  setMark,
  art,
  heightMm,
}: Piece): TextRun & { readonly fill: string; readonly fromFootMm: number } {
  const placed = art.find(each => each.art.text.some(({ text }) => text === setMark))!
  const run = placed.art.text.find(({ text }) => text === setMark)!
  const [shape] = placed.art.shapes
  const fill = shape?.kind === 'path' ? shape.fill : ''
  return { ...run, fill, fromFootMm: heightMm - placed.yMm - run.baselineMm }
}

describe.each(sizes.pieces)('at size %s', (written, size) => {
  describe.each(items)('a piece of %s', item => {
    let made: Promise<PrintedItem> | undefined
    const printed = () => {
      made ??= printItem(withKeys(item, `size: ${written}`, 'paper: tabloid'), plan)
      return made
    }

    it('has nothing smaller', async () => {
      expect(piecesOf(await printed()).length).toBeGreaterThan(0)
      expect(tooSmall(textOnPieces(await printed()), size)).toEqual([])
    })

    it('has a set mark that is small, grey and at the foot', async () => {
      for (const piece of piecesOf(await printed())) {
        const mark = markOf(piece)
        expect(mark.sizeMm).toBeLessThan(pointsToMm(8))
        expect(mark.fill).toBe('#595959')
        expect(mark.fromFootMm).toBeLessThan(8)
        if (piece.xHeightMm !== undefined) expect(mark.sizeMm).toBeLessThan(piece.xHeightMm)
      }
    })
  })
})

describe.each(sizes.pages)('at size %s', (written, size) => {
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
