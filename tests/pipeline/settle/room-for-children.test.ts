import { describe, expect, it } from 'vitest'
import { reportItem } from '../../../src/pipeline/report/item-report.js'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

async function made(words: string, item: string, more = '', layout = 'word-cards') {
  const keys = [`layout: ${layout}`, item].filter(key => key !== '').join(', ')
  const text = `words: [${words}]\nprint:\n  - {${keys}}\n${more}`
  const plan = await putPlanOnSheets({
    planFile: 'week.yaml',
    files: filesInMemory({ 'week.yaml': text }),
    kept: sharedWork,
  })
  if (!plan.ok) throw new Error(plan.problems.map(formatProblem).join('\n'))
  const [first] = plan.value.items
  const report = await reportItem(first!, sharedWork)
  return {
    notes: first!.printed.notes,
    piece: first!.printed.sheets[0]!.pieces[0]!.piece,
    sheets: report.sheetsOfCard,
    advice: report.advice,
    problems: plan.problems,
  }
}

const short = 'reed, marsh, moth, frog, duck, pond, gnat, wren, leaf, nest, fern'

describe('words in ordinary print', () => {
  it('are never under an x-height of 3 mm by themselves: fewer cards a sheet instead, and it is said', async () => {
    const { piece, notes } = await made(`${short}, mmmmmmmmmmmmmmm`, '')
    expect(piece.xHeightMm).toBeGreaterThanOrEqual(3)
    expect(notes[0]).toMatch(/^Laid out with .* so that the words have room\.$/)
  })

  it('are smaller where the teacher chose the cards, which is hers to choose', async () => {
    const { piece, notes } = await made(`${short}, mmmmmmmmm`, 'across: 4, down: 6, orientation: portrait')
    expect(piece.xHeightMm).toBeLessThan(3)
    expect(notes.join(' ')).not.toContain('Laid out with')
  })

  it('get wider cards on as many sheets, before one long word makes all of them smaller', async () => {
    const usual = await made(short, '')
    const long = await made(`${short}, mmmmmmmm`, '')
    expect(long.notes[0]).toMatch(/^Laid out with .*, so that "mmmmmmmm" does not make all words smaller\.$/)
    expect(long.sheets).toBe(usual.sheets)
    expect(long.piece.widthMm).toBeGreaterThan(usual.piece.widthMm)
  })
})

describe('the advice of check', () => {
  it('never offers fewer sheets than those that were just taken for the size asked', async () => {
    for (const size of ['x-height 12 mm', '40 pt']) {
      const { advice } = await made(`${short}, marshmallow, dragonfly, bulrushes`, `size: ${size}`)
      expect(advice.join(' ')).not.toContain('would save')
    }
  })
})

describe('a board that is alone on its sheet', () => {
  const words = short.replace('duck', 'grasshopper')
  const board = (item: string, of = words, layout = 'bingo') =>
    made(
      of,
      [layout === 'bingo' ? 'boards: 1, grid: 3x3' : '', item].filter(key => key !== '').join(', '),
      '',
      layout,
    )

  it('is turned the way that makes its words a good deal larger, and it is said', async () => {
    const [open, upright] = [await board(''), await board('orientation: portrait')]
    expect(open.notes).toContain('Laid out with orientation: landscape, so that its words are larger.')
    expect(open.piece.xHeightMm).toBeGreaterThan(upright.piece.xHeightMm! * 1.15)
  })

  it.each(['bingo', 'path-board'])(
    'has words hardly smaller than on paper turned by hand: %s',
    async layout => {
      const sizes = ['', 'orientation: portrait', 'orientation: landscape'].map(
        async item => (await board(item, words, layout)).piece.xHeightMm!,
      )
      const [open, ...turned] = await Promise.all(sizes)
      expect(open! * 1.15).toBeGreaterThanOrEqual(Math.max(...turned))
    },
  )

  it('has words of 25 pt on a path with one long word, upright or lying', async () => {
    expect((await board('', words, 'path-board')).piece.fontPt).toBeGreaterThan(25)
  })

  it('stays as the plan has it, or as it is where turning it gains little', async () => {
    const isUpright = ({ piece }: Awaited<ReturnType<typeof board>>) => piece.heightMm > piece.widthMm
    expect(isUpright(await board('orientation: portrait'))).toBe(true)
    expect(isUpright(await board('', 'moth, frog, duck, pond, gnat, wren, leaf, nest, fern'))).toBe(true)
  })
})
