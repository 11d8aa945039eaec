import { describe, expect, it } from 'vitest'
import { bundledTypefaces } from '../../fonts/index.js'
import { kindsOf, marshWithClues, printItem } from './print-item.js'

describe('a page with a line as long as lying paper is wide', () => {
  it.each(bundledTypefaces.map(({ name }) => name))('is made in %s', async font => {
    const plan = marshWithClues.replace(
      /^words:.*^marks:/ms,
      `font: ${font}\nwords: [x, xx, xxx, xxxx, xxxxx]\nmarks:`,
    )
    const item = '{layout: bingo, boards: 1, grid: 2x2, orientation: landscape}'
    expect(kindsOf(await printItem(item, plan))).toContain('caller')
  })
})
