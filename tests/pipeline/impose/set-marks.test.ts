import { describe, expect, it } from 'vitest'
import { layouts } from '../../../layouts/index.js'
import { putEachOnSheets, putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { exampleItems } from '../../layouts/example-items.js'
import { marshWithClues } from '../../layouts/print-item.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

const requestOf = (text: string) => ({
  planFile: 'week.yaml',
  files: filesInMemory({ 'week.yaml': text }),
  kept: sharedWork,
})

async function piecesOf(text: string) {
  const made = await putPlanOnSheets(requestOf(text))
  if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  return made.value.items.flatMap(({ printed }) =>
    printed.sheets.flatMap(({ side, pieces }) => pieces.map(({ piece }) => ({ side, piece }))),
  )
}

/** What the fronts of a plan are told to show, before any is drawn. */
async function marksOfFronts(text: string): Promise<readonly (string | undefined)[]> {
  const made = await putEachOnSheets(requestOf(text), ({ printed }) =>
    printed.sheets
      .filter(({ side }) => side === 'front')
      .flatMap(({ pieces }) => pieces.map(({ piece }) => piece.setMark)),
  )
  if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  return made.value.items.flat()
}

const everyLayout = layouts
  .filter(({ kind }) => kind === 'pieces')
  .flatMap(exampleItems)
  .map(item => `  - ${item}\n`)
  .join('')
const someLayouts = ['word-cards', 'bingo', 'letter-tiles', 'sound-mat'].map(name => `  - ${name}\n`).join('')
const copies = '  - {layout: word-cards, name: our cards, copies: 3, order: child}\n'
/** A group called as the plan is, so that the two are told apart by the mark alone. */
const namesake = '  - {name: Along the marsh}\n'

describe('the set marks of a plan', () => {
  it.each([
    ['every layout', `${everyLayout}groups:\n${namesake}`, 300],
    [
      'class, groups and copies',
      `${someLayouts}${copies}groups:\n  - {name: Otters, size: large}\n${namesake}`,
      200,
    ],
  ])('are all different, over %s', async (_what, items, least) => {
    const fronts = await marksOfFronts(`${marshWithClues}${items}`)
    expect(fronts.length).toBeGreaterThan(least)
    expect(fronts).not.toContain(undefined)
    expect(fronts.filter((mark, index) => fronts.indexOf(mark) !== index)).toEqual([])
  })

  it('are printed on the fronts as they are told, and not on the backs', async () => {
    const pieces = await piecesOf(`${marshWithClues}  - {layout: word-cards, back: name, copies: 2}\n`)
    for (const { side, piece } of pieces) {
      const text = piece.art.flatMap(({ art }) => art.text.map(run => run.text))
      if (side === 'front') expect(text).toContain(piece.setMark)
      else expect(piece.setMark).toBeUndefined()
    }
  })

  it.each([
    ['{layout: word-cards, across: 2, down: 3}', 'Along the marsh · word cards · 1 of 12'],
    ['{layout: word-cards, card: 40 x 40 mm}', 'word cards · 1 of 12'],
    ['{layout: letter-tiles, words: [reed]}', 'tiles · 1 of 3'],
    ['{layout: letter-tiles, copies: 2, words: [reed]}', 'tiles · A · 1 of 3'],
    ['{layout: word-cards, card: 20 x 30 mm, words: [reed]}', '#1 · 1 of 1'],
  ])('are as full as the piece has room for: %s', async (item, mark) => {
    expect((await piecesOf(`${marshWithClues}  - ${item}\n`))[0]!.piece.setMark).toBe(mark)
  })

  it('are not so short that two sets have the same', async () => {
    const items = ['our cards', 'more cards'].map(
      name => `  - {layout: word-cards, name: ${name}, card: 22 x 40 mm, words: [reed]}\n`,
    )
    const fronts = await marksOfFronts(`${marshWithClues}${items.join('')}`)
    expect(fronts).toContain('#1 · 1 of 1')
    expect(fronts).toContain('#2 · 1 of 1')
  })

  it('stand on covers, labels and checklists too', async () => {
    const plan = `${marshWithClues}  - {layout: word-cards}\n  - {layout: bag-labels}\n  - {layout: checklist}\n`
    const made = await putPlanOnSheets(requestOf(plan))
    if (!made.ok) throw new Error('the plan cannot be made')
    for (const { printed } of made.value.items) {
      const pages = printed.sheets.filter(({ kind }) => kind !== 'pieces')
      const text = pages.flatMap(({ furniture }) =>
        furniture.flatMap(({ art }) => art.text.map(run => run.text)),
      )
      expect(text.join(' ')).toContain('set mark: Along the marsh · word cards')
    }
  })
})
