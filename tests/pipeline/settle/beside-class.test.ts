import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import type { Problem } from '../../../src/problems.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

interface Made {
  /** Height of x of the main words of each item, by its name. */
  readonly xHeights: Readonly<Record<string, number>>
  readonly problems: readonly Problem[]
}

async function made(print: string, group: string, only?: readonly string[]): Promise<Made> {
  const text = `words: [reed, marsh, thrush, leaf, moth, frog, snake, duck, pond, heron, gnat, wren]
print:
${print}
groups:
  - {name: Otters, ${group}}
`
  const plan = await putPlanOnSheets({
    planFile: 'week.yaml',
    files: filesInMemory({ 'week.yaml': text }),
    kept: sharedWork,
    ...(only === undefined ? {} : { only }),
  })
  const items = plan.ok ? plan.value.items : []
  const xHeights = items.map(({ printed }) => [
    printed.name,
    printed.sheets[0]?.pieces[0]?.piece.xHeightMm ?? 0,
  ])
  return { xHeights: Object.fromEntries(xHeights), problems: plan.problems }
}

const cards = '  - {layout: word-cards}'

describe('a group’s words', () => {
  it.each([
    'size: 28 pt',
    'size: x-height 3 mm',
    'size: large',
    'size: {for: {acuity: 20/100, distance: 25 cm}}',
  ])('are at least as large as the class’s own: %s', async size => {
    for (const layout of [cards, '  - {layout: open-sort}', '  - {layout: bingo, boards: 2, grid: 3x3}']) {
      const { xHeights, problems } = await made(layout, size)
      const [own, ofGroup] = Object.values(xHeights)
      expect(ofGroup).toBeGreaterThanOrEqual(own! - 0.05)
      expect(problems).toEqual([])
    }
  })

  it('are as large as asked where that is more', async () => {
    expect((await made(cards, 'size: x-height 15 mm')).xHeights['word-cards-otters']).toBeCloseTo(15, 1)
  })

  it('are measured by the class’s own also where only the group’s are made, or from an item of their own', async () => {
    const both = (await made(cards, 'size: 28 pt')).xHeights
    const alone = (await made(cards, 'size: 28 pt', ['word-cards-otters'])).xHeights
    expect(alone).toEqual({ 'word-cards-otters': both['word-cards-otters'] })
    const apart =
      '  - {layout: word-cards, groups: [Otters], name: large, size: 28 pt}\n  - {layout: word-cards, groups: none}'
    const { xHeights } = await made(apart, 'words: [mud, pond]')
    expect(xHeights['large-otters']).toBeGreaterThanOrEqual(xHeights['word-cards']! - 0.05)
  })

  it('hold a size that is asked for exactly, which is said where it is smaller than the class’s own', async () => {
    const { xHeights, problems } = await made(cards, 'size: exactly x-height 5 mm')
    expect(xHeights['word-cards-otters']).toBeCloseTo(5, 1)
    expect(problems).toMatchObject([
      {
        severity: 'warning',
        place: { line: 5 },
        message: expect.stringMatching(
          /^words of "word-cards-otters" are [\d.]+ pt \(x-height 5 mm\), smaller than the class's own, which are [\d.]+ pt \(x-height [\d.]+ mm\)$/,
        ),
        advice: expect.stringContaining('Take "exactly" away'),
      },
    ])
  })

  it('are smaller only where nothing else has room, and then it is said with what to do', async () => {
    const { xHeights, problems } = await made(cards, 'size: 28 pt, words: [mmmmmmmmmmmmmmmmmmm]')
    expect(xHeights['word-cards-otters']).toBeLessThan(xHeights['word-cards']!)
    expect(problems.map(({ message }) => message).join()).toContain('there is no room for as much')
  })

  it('of an item’s own size that is less than the group needs are told', async () => {
    const { problems } = await made('  - {layout: word-cards, size: normal}', 'size: x-height 20 mm')
    expect(problems.map(({ message }) => message)).toEqual([
      expect.stringContaining('smaller than what Otters asks for, an x-height of 20 mm'),
    ])
  })
})
