import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import type { TextRun } from '../../src/pieces/piece.js'
import { leastEmMm } from '../../src/pieces/text/type-size.js'
import type { TypeSize } from '../../src/plan/plan.js'
import { bundledTypeface } from '../pieces/bundled-typefaces.js'
import { exampleItems, examples, withKeys } from './example-items.js'
import { isSmallGreyAndAtTheFoot, setMarkOf, textOnPieces, tooSmall } from './large-on-pieces.js'
import { marshWithTag, piecesOf, printItem } from './print-item.js'

const andika = bundledTypeface('andika')

/** As the teacher writes it, and what it means. Pieces that are `large` are looked at in card-layouts.test.ts. */
const thirty: readonly [string, TypeSize] = ['30 pt', { kind: 'points', points: 30 }]
const sizes = {
  pieces: [thirty, ['x-height 9 mm', { kind: 'x-height', mm: 9 }]],
  pages: [['large', { kind: 'large' }], thirty, ['x-height 7 mm', { kind: 'x-height', mm: 7 }]],
} as const

/** Every layout of loose pieces, in the ways that change a face most; a tag under a mark on all of them. */
const items = layouts.filter(layout => layout.kind === 'pieces').flatMap(exampleItems)
const pageItems = layouts
  .filter(({ kind, name }) => kind === 'pages' && !examples[name]?.forTeacher)
  .flatMap(exampleItems)
const plan = marshWithTag

function textOnPages({ sheets }: PrintedItem): readonly TextRun[] {
  return sheets
    .filter(({ kind }) => kind !== 'answers')
    .flatMap(page => page.furniture.flatMap(({ art }) => art.text))
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
      const marks = piecesOf(await printed()).map(setMarkOf)
      expect(marks.filter(mark => !isSmallGreyAndAtTheFoot(mark))).toEqual([])
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
