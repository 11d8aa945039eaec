import { describe, expect, it } from 'vitest'
import { keepWork } from '../../../src/pipeline/kept-work.js'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory } from '../../plan/reading.js'

const thirty =
  'reed marsh gnat wren leaf moth frog perch otter heron newt toad swan duck pike eel sedge rush mud pond ' +
  'bank bridge ferry island kayak ripple puddle dragonfly kingfisher waterfall'
const words = `words: [${thirty.split(' ').join(', ')}]`

async function printed(print: string, more = '', only?: readonly string[]) {
  const text = `title: Along the marsh\n${words}\nprint:\n${print}\n${more}`
  const kept = keepWork()
  const files = filesInMemory({ 'week.yaml': text })
  const made = await putPlanOnSheets({
    planFile: 'week.yaml',
    files,
    kept,
    ...(only === undefined ? {} : { only }),
  })
  if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  const items = new Map(made.value.items.map(item => [item.printed.name, item.printed]))
  return { items, done: kept.done() }
}

const textOf = (
  item: Awaited<ReturnType<typeof printed>>['items'] extends Map<string, infer I> ? I : never,
) =>
  item.sheets.flatMap(sheet => sheet.furniture.flatMap(({ art }) => art.text.map(run => run.text))).join(' ')

describe('labels and checklists', () => {
  it('name the words that are on the board, also where it was dealt again with larger cells', async () => {
    const { items } = await printed(
      '  - {layout: bingo, boards: 1, size: large}\n  - {layout: bag-labels, size: normal}',
    )
    const board = items.get('bingo')!.sheets[0]!.pieces[0]!.piece
    const label = textOf(items.get('bag-labels')!)
    const named = thirty.split(' ').filter(word => new RegExp(`\\b${word}\\b`).test(label))
    expect(board.text.length).toBeLessThan(23)
    expect(named.toSorted()).toEqual([...board.text].toSorted())
  })

  it('count the pieces that are printed', async () => {
    const { items } = await printed('  - {layout: bingo, boards: 3, grid: 3x3}\n  - {layout: checklist}')
    expect(textOf(items.get('checklist')!).match(/board/g)).toHaveLength(3)
  })

  it('deal nothing of their own: one deal for the class and one for each group', async () => {
    const print =
      '  - {layout: bingo, boards: 2, grid: 3x3}\n  - {layout: checklist}\n  - {layout: bag-labels}'
    const groups =
      'groups:\n  - {name: Otters, words: [mud, pond, frog, reed, newt, toad, wren, moth, leaf]}\n  - {name: Terns}'
    const { done } = await printed(print, groups)
    expect(done.sets).toBe(3)
  })

  it('tell of sets that are not made in this run', async () => {
    const print = '  - {layout: bingo, boards: 2, grid: 3x3}\n  - {layout: bag-labels}'
    const { items, done } = await printed(print, '', ['bag-labels'])
    expect([...items.keys()]).toEqual(['bag-labels'])
    expect(textOf(items.get('bag-labels')!)).toContain('2 boards')
    expect(done.faces).toBe(1)
  })
})
