import { describe, expect, it } from 'vitest'
import { keepWork } from '../../../src/pipeline/kept-work.js'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { settlePlanInHand } from '../../../src/pipeline.js'
import { loadPlan } from '../../../src/plan/load-plan.js'
import { filesInMemory } from '../../plan/reading.js'

const words = 'reed marsh thrush stream gnat wren leaf moth frog perch snake duck'.split(' ')
const kept = keepWork()

/** Columns and rows of the item's sheets, and the cards. */
async function divided(keys: string, count = 12) {
  const text = `words: [${words.slice(0, count).join(', ')}]\nprint:\n  - {${keys}}\n`
  const files = filesInMemory({ 'week.yaml': text })
  const plan = loadPlan('week.yaml', planVocabulary(), files)
  if (!plan.ok) throw new Error('the plan cannot be read')
  const settled = await settlePlanInHand(plan.value, { files, kept })
  if (!settled.ok) throw new Error('the plan cannot be made')
  const { grid } = settled.value.items[0]!.prepared
  return { across: grid.columns, down: grid.rows, ...grid.pieceSize }
}

describe('sheets whose division is left to the layout', () => {
  it('are filled: cards are as high as takes no sheet more', async () => {
    // Twelve cards: three across and four down, where the layout has up to six rows.
    expect(await divided('layout: open-sort')).toMatchObject({ across: 3, down: 4 })
    // Twenty-four on two sheets: twelve on each, not fifteen and nine.
    expect(await divided('layout: matching-pairs, pair: same word')).toMatchObject({ across: 3, down: 4 })
    // The same cards twice: 24 in all.
    expect(await divided('layout: open-sort, copies: 2')).toMatchObject({ across: 3, down: 4 })
  })

  it('have no cards that are higher than wide', async () => {
    const { widthMm, heightMm } = await divided('layout: open-sort', 4)
    expect(heightMm).toBeLessThanOrEqual(widthMm)
  })

  it('keep their strips and boards as high as the layout has them', async () => {
    expect(await divided('layout: sound-boxes', 3)).toMatchObject({ down: 5 })
    expect(await divided('layout: word-strips', 5)).toMatchObject({ down: 8 })
  })

  it('have strips lower by up to a fifth where that saves a sheet, but not in large print', async () => {
    expect(await divided('layout: word-strips', 10)).toMatchObject({ across: 1, down: 10 })
    expect(await divided('layout: word-strips', 11)).toMatchObject({ down: 8 })
    expect(await divided('layout: word-strips, size: large', 6)).toMatchObject({ down: 5 })
  })

  it('are left alone where the plan says how they are divided', async () => {
    expect(await divided('layout: open-sort, across: 3, down: 6')).toMatchObject({ across: 3, down: 6 })
  })
})
