import { describe, expect, it } from 'vitest'
import { fewestPages } from '../../../src/pieces/text/fewest-pages.js'

/** As many pages as the setting says, each naming it, and what was tried. */
function trying(settings: readonly number[]) {
  const tried: number[] = []
  const pages = fewestPages(settings, setting => {
    tried.push(setting)
    return Array.from({ length: setting }, (_, page) => `${setting}: ${page + 1}`)
  })
  return { pages, tried }
}

describe('the fewest pages', () => {
  it('are those of the setting that takes the fewest, the first of several', () => {
    expect(trying([3, 2, 2, 4]).pages).toEqual(['2: 1', '2: 2'])
    const named = fewestPages(['first', 'second'], setting => [setting, setting])
    expect(named).toEqual(['first', 'first'])
  })

  it('are sought no further than one page', () => {
    expect(trying([2, 1, 1]).tried).toEqual([2, 1])
  })
})
