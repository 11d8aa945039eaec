import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import { pathBox } from '../../src/files/page/path-data.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import type { Box, Size } from '../../src/geometry.js'
import type { PlacedArt } from '../../src/pieces/piece.js'
import { formatProblem } from '../../src/problems.js'
import { examples, itemOf } from './example-items.js'
import { linesOn, piecesOf, printAll, printItem } from './print-item.js'

/** As long as a plan takes them. */
const title = 'The reeds, the herons and the terns along the marsh '.repeat(3).slice(0, 119).trim()
const plan = `title: ${title}
class: ${title}
words:
  - {word: reed, clue: a tall grass that stands in the water of the marsh}
  - {word: marsh, clue: wet land}
  - {word: neighborhood, clue: ${'all the houses and gardens about your own and '.repeat(3).trim()}}
  - {word: gnat, clue: a fly}
  - {word: leaf, clue: on a tree}
  - {word: fish, clue: it swims}
  - {word: shell, clue: a snail has one}
  - {word: stream, clue: a small river}
  - {word: wren, clue: a bird}
marks:
  - {pattern: consonant-digraph, label: ${'two letters and one sound '.repeat(3).slice(0, 60).trim()}}
  - {pattern: silent-letters}
print:
`

describe('with a title and texts as long as a plan takes', () => {
  it.each(layouts.map(layout => layout.name))('%s keeps its ink on its pages and pieces', async layout => {
    const item = itemOf(layout, examples[layout]?.roomForLongTexts ?? '')
    // Labels and checklists tell of the sets of their plan.
    const printed = await printAll([item, '{layout: open-sort, name: set}'], plan)
    if (!printed.ok) throw new Error(printed.problems.map(formatProblem).join('\n'))
    expect(printed.value.flatMap(overflowing)).toEqual([])
  })

  it('the marked list shortens nothing, and the blank list keeps its places', async () => {
    const [marked, blank] = [
      await printItem('{layout: marked-list}', plan),
      await printItem('{layout: blank-list}', plan),
    ]
    const text = linesOn(marked, 'list').join(' ')
    expect(text).not.toContain('…')
    expect(text).toContain('n·eigh·b·or·h·')
    expect(text).toContain('about your own')
    const wordsOf = ({ sheets }: PrintedItem) =>
      sheets.flatMap(sheet =>
        sheet.furniture
          .filter(({ art }) => art.text[0]?.text === 'wren' || art.text[0]?.text === 'neighborhood')
          .map(({ art, xMm, yMm }) => [sheet.number, xMm, yMm + art.text[0]!.baselineMm]),
      )
    expect(wordsOf(marked)).toHaveLength(2)
    expect(wordsOf(blank)).toEqual(wordsOf(marked))
  })

  it('a key names its marks in full, and a call card gives its clue in full', async () => {
    for (const layout of ['key', 'marked-list', 'blank-list']) {
      const text = linesOn(
        await printItem(`{layout: ${layout}, paper: a5}`, plan),
        layout === 'key' ? 'key' : 'list',
      ).join(' ')
      expect(text).not.toContain('…')
    }
    const cards = piecesOf(await printItem('{layout: call-cards}', plan))
    const said = cards.flatMap(card => card.art.flatMap(({ art }) => art.text.map(run => run.text)))
    expect(said.join(' ')).toContain('houses and gardens about your own and all the houses')
    expect(said.filter(line => line.endsWith('…'))).toEqual([])
  })

  it('a page without room for its text is an error that says so', async () => {
    const printed = await printAll(['{layout: key, paper: index-3x5, size: 60 pt}'], plan)
    expect(printed.problems.map(({ message }) => message)).toEqual([
      expect.stringMatching(/would stand beyond the edge of its page or card$/),
    ])
  })

  it.each(['name', 'clue', 'answer'])('a back with the %s keeps its ink on the piece', async back => {
    for (const size of ['normal', 'large']) {
      const item = `{layout: word-cards, across: 2, down: 2, back: ${back}, size: ${size}}`
      expect(overflowing(await printItem(item, plan))).toEqual([])
    }
  })
})

/** Drawings with ink beyond an edge of their piece, or of the paper. */
function overflowing({ sheets }: PrintedItem): readonly string[] {
  return sheets.flatMap(sheet => [
    ...sheet.pieces.flatMap(({ piece }) => outside(piece.art, piece)),
    ...outside(sheet.furniture, sheet),
  ])
}

const ROUNDING_MM = 0.05

function outside(placed: readonly PlacedArt[], { widthMm, heightMm }: Size): readonly string[] {
  const leaves = (box: Box | undefined, xMm: number, yMm: number): boolean =>
    box !== undefined &&
    Math.min(
      box.xMm + xMm,
      box.yMm + yMm,
      widthMm - box.xMm - box.widthMm - xMm,
      heightMm - box.yMm - box.heightMm - yMm,
    ) < -ROUNDING_MM
  return placed
    .filter(({ art, xMm, yMm }) =>
      art.shapes.some(shape => shape.kind === 'path' && leaves(pathBox(shape.d), xMm, yMm)),
    )
    .map(({ art }) => art.text.map(run => run.text).join(' | '))
}
