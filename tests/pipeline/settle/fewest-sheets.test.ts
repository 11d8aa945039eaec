import { describe, expect, it } from 'vitest'
import { sheetsFor } from '../../../src/pipeline/settle/grids-to-try.js'
import type { SettledItem } from '../../../src/pipeline/settle/settle-plan.js'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { settlePlanInHand } from '../../../src/pipeline.js'
import { loadPlan } from '../../../src/plan/load-plan.js'
import { formatProblem } from '../../../src/problems.js'
import { filesInMemory } from '../../plan/reading.js'
import { sharedWork } from '../shared-work.js'

const lists = {
  short: 'mud pond frog wet reed mat sun pit hop den',
  middling: 'reed marsh thrush stream gnat wren leaf moth frog perch snake duck',
  many: 'reed marsh thrush stream gnat wren leaf moth frog perch snake duck heron otter bulrush spring pond fern nest twig shore tide crab gull',
  long: 'grasshopper dragonfly woodpecker kingfisher watermelon butterfly caterpillar marshland',
} as const
type List = keyof typeof lists

/** Undefined where the item cannot be made as it is written. */
async function settled(list: List, keys: string): Promise<SettledItem | undefined> {
  const text = `words: [${lists[list].replaceAll(' ', ', ')}]\nprint:\n  - {cover: no, ${keys}}\n`
  const files = filesInMemory({ 'week.yaml': text })
  const plan = loadPlan('week.yaml', planVocabulary(), files)
  if (!plan.ok) throw new Error(plan.problems.map(formatProblem).join('\n'))
  const done = await settlePlanInHand(plan.value, { files, kept: sharedWork })
  return done.ok ? done.value.items[0] : undefined
}

async function sheetsAndSize(list: List, keys: string) {
  const item = await settled(list, keys)
  if (item === undefined) return undefined
  const { prepared, set, pieces } = item
  const sheets = sheetsFor(prepared, prepared.grid, set)
  return { sheets, sizeMm: pieces.fronts.fits.get('main')!.sizeMm, cards: set.cards.length, item }
}

/**
 * Every way to divide and to turn the paper on which the cards would take a sheet fewer; of those with as many columns,
 * the one with the highest cards, on which words fit if they fit on any that takes fewer sheets still.
 */
function closer(sheets: number, cards: number): readonly string[] {
  return ['portrait', 'landscape'].flatMap(orientation =>
    [1, 2, 3, 4, 5].flatMap(columns => {
      const rows = Math.ceil(cards / (columns * (sheets - 1)))
      return rows > 20 ? [] : [`orientation: ${orientation}, across: ${columns}, down: ${rows}`]
    }),
  )
}

describe('cards in large print', () => {
  it.each<[List, string]>([
    ['many', 'layout: word-cards, size: x-height 12 mm'],
    ['many', 'layout: open-sort, size: 72 pt'],
    ['long', 'layout: word-cards, size: 60 pt, paper: a4'],
    ['short', 'layout: matching-pairs, pair: plural, size: 60 pt'],
    ['many', 'layout: word-cards, size: {for: {acuity: 20/200, distance: 25 cm}}, paper: 5 x 8 card'],
  ])(
    'of a size that the teacher names stand on the fewest sheets that hold it: %s words, %s',
    async (list, keys) => {
      const chosen = (await sheetsAndSize(list, keys))!
      for (const division of closer(chosen.sheets, chosen.cards)) {
        const other = await sheetsAndSize(list, `${keys}, ${division}`)
        expect([division, other?.sizeMm]).toEqual([division, undefined])
      }
      expect(chosen.sheets).toBeGreaterThan(1)
    },
  )

  it.each<[List, string]>([
    ['short', 'layout: word-cards, size: large'],
    ['short', 'layout: call-cards, size: large, paper: a4'],
    ['middling', 'layout: open-sort, size: large'],
    ['middling', 'layout: matching-pairs, pair: same word, size: large, paper: a4'],
    ['middling', 'layout: word-cards, size: large, paper: 5 x 8 card'],
    ['long', 'layout: chain-cards, ask: plural, size: large'],
    ['long', 'layout: matching-pairs, pair: plural, size: large, paper: legal'],
  ])(
    'as large as on the cards that the layout likes stand on the fewest sheets that hold them so large: %s words, %s',
    async (list, keys) => {
      const chosen = (await sheetsAndSize(list, keys))!
      const { prepared } = chosen.item
      const { perSheetLarge } =
        prepared.layout.kind === 'pieces' ? prepared.layout : { perSheetLarge: { columns: 1, rows: 1 } }
      const liked = await sheetsAndSize(
        list,
        `${keys}, across: ${perSheetLarge.columns}, down: ${perSheetLarge.rows}`,
      )
      expect(chosen.sizeMm).toBeGreaterThanOrEqual((liked?.sizeMm ?? 0) - 1e-6)
      expect(chosen.sheets).toBeLessThanOrEqual(liked?.sheets ?? chosen.sheets)
      for (const division of closer(chosen.sheets, chosen.cards)) {
        const other = await sheetsAndSize(list, `${keys}, ${division}`)
        if (other !== undefined)
          expect([division, other.sizeMm < chosen.sizeMm - 1e-6]).toEqual([division, true])
      }
    },
  )

  it('keep what the plan says of the paper', async () => {
    const { prepared } = (await settled(
      'middling',
      'layout: word-cards, size: 36 pt, orientation: portrait',
    ))!
    expect(prepared.grid.orientation).toBe('portrait')
    const counted = (await settled('middling', 'layout: word-cards, size: large, across: 2, down: 3'))!
    expect([counted.prepared.grid.columns, counted.prepared.grid.rows]).toEqual([2, 3])
  })

  it('say why they are not as the layout has them', async () => {
    const { notes } = (await settled('middling', 'layout: word-cards, size: large, paper: 5 x 8 card'))!
    expect(notes.join(' ')).toContain('as large on fewer sheets')
  })
})

describe('strips in large print', () => {
  it('keep their height, which a child writes in', async () => {
    const { prepared } = (await settled('short', 'layout: word-strips, size: large'))!
    expect(prepared.grid.rows).toBe(5)
  })
})
