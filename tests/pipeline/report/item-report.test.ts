import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type ItemReport, reportItem } from '../../../src/pipeline/report/item-report.js'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { folderWith } from '../plan-folder.js'
import { sharedWork } from '../shared-work.js'

const short = 'reed, mud, wren, moth, frog, duck, leaf, fish, pond, gnat, bun, jam, tray'

async function reportOf(words: string, item: string): Promise<ItemReport> {
  const folder = folderWith({ 'week.yaml': `words: [${words}]\nprint:\n  - ${item}\n` })
  const drawn = await putPlanOnSheets({ planFile: join(folder, 'week.yaml'), kept: sharedWork })
  if (!drawn.ok) throw new Error(drawn.problems.map(formatProblem).join('\n'))
  return reportItem(drawn.value.items[0]!, sharedWork)
}

describe('the advice of check', () => {
  it('tells what more cards a sheet would save, and how large the words would then be', async () => {
    const { advice, sheetsOfCard } = await reportOf(short, '{layout: word-cards, across: 3, down: 4}')
    expect(sheetsOfCard).toBe(2)
    expect(advice[0]).toMatch(
      /^4 across would save 1 sheet \(cards of 50\.8 × 64\.9 mm, words of [\d.]+ pt\)\.$/,
    )
  })

  it('gives the size that the words then have', async () => {
    const { advice } = await reportOf(short, '{layout: word-cards, across: 3, down: 4}')
    const [, points] = /words of ([\d.]+) pt/.exec(advice[0]!)!
    const { notes } = await reportOf(short, '{layout: word-cards, orientation: portrait, across: 4, down: 4}')
    expect(notes.join(' ')).toContain(`Words are ${points} pt`)
  })

  it('offers no sheet on which the longest word would fall below the least size', async () => {
    const longest = 'counterrevolutionary'
    const { advice } = await reportOf(`${short}, ${longest}`, '{layout: word-cards, across: 3, down: 4}')
    expect(advice.join(' ')).not.toContain('across')
    await expect(
      reportOf(`${short}, ${longest}`, '{layout: word-cards, orientation: portrait, across: 4, down: 4}'),
    ).rejects.toThrow(longest)
  })
})

describe('the advice for a crossword', () => {
  it('offers no board on which a box would be too small for a letter', async () => {
    const clued =
      'hummingbird grasshopper caterpillar beachcomber woodpecker butterscotch housekeeper leafhopper wheelbarrow chickadee'
        .split(' ')
        .map(word => `{word: ${word}, clue: a clue for ${word}}`)
    const { advice, sheetsOfCard } = await reportOf(clued.join(', '), '{layout: crossword, size: large}')
    expect(sheetsOfCard).toBeGreaterThan(1)
    expect(advice).toEqual([])
  })
})

describe('cards of a named size', () => {
  it('say how they lie on the paper and how much of it is waste', async () => {
    const { notes } = await reportOf(short, '{layout: word-cards, card: 63 x 88 mm}')
    // Letter is 215.9 × 279.4 mm: 9 cards of 63 × 88 mm upright, 1 − 9 · 63 · 88 / (215.9 · 279.4) = 0.173.
    expect(notes[0]).toBe(
      'Cards of 63 × 88 mm go 3 across and 3 down on portrait paper: 17 % of a full sheet is waste.',
    )
  })
})
