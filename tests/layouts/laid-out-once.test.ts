import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import { countLayouts, layoutsNeeded } from './count-layouts.js'
import { exampleItems } from './example-items.js'

/** Layouts of loose pieces are asked in card-layouts.test.ts, which prints them all. */
const pages = layouts.filter(({ kind }) => kind === 'pages').flatMap(exampleItems)

describe('what is of one shape', () => {
  it.each(pages)('is laid out once: %s', async item => {
    const { printed, count } = await countLayouts([item])
    expect(count).toBe(layoutsNeeded(printed[0]!, item))
  })

  it.each(layouts.filter(({ kind }) => kind === 'sheets').flatMap(exampleItems))(
    'is laid out once where labels and lists tell of them: %s',
    async item => {
      const { count } = await countLayouts(['{layout: word-cards}', item])
      expect(count).toBe(1)
    },
  )

  it('is laid out once for thirty boards, and each page of the caller’s sheet', async () => {
    const { printed, count } = await countLayouts(['{layout: bingo, boards: 30, grid: 3x3}'])
    expect(printed[0]!.sheets.filter(({ kind }) => kind === 'pieces')).toHaveLength(30)
    expect(count).toBe(layoutsNeeded(printed[0]!, ''))
  })
})
