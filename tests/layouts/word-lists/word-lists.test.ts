import { describe, expect, it } from 'vitest'
import { linesOn, printItem } from '../print-item.js'

const stacked = `title: Along the marsh
words: [crate, whale, lighthouse, stretch]
marks:
  - {pattern: beginning-blend, line: dashed}
  - {pattern: silent-e, outline: oval}
  - {pattern: long-vowel, line: bracket, tag: lng}
  - {pattern: short-vowel, line: arc, tag: s}
  - {pattern: three-letter-blend, line: wavy}
print:
`

describe('a list of words', () => {
  it.each(['marked-list', 'blank-list'])('has rows as high as its marks need: %s', async layout => {
    for (const size of ['normal', 'large', '24 pt'])
      await expect(printItem(`{layout: ${layout}, size: ${size}}`, stacked)).resolves.toBeDefined()
  })

  it('has columns that keep every word whole, or none on paper too narrow for them', async () => {
    const wide = linesOn(await printItem('{layout: marked-list}', stacked), 'list')
    expect(wide.join(' | ')).toMatch(/sounds \| .*plural \| clue/)
    const narrow = linesOn(await printItem('{layout: marked-list, paper: index-4x6}', stacked), 'list')
    expect(narrow.join(' | ')).not.toContain('clue')
    for (const said of ['4: c·r·a·t·(e)', 'noun, verb', 'lighthouses', 'add s'])
      expect(narrow.flatMap(line => line.split(' | '))).toContain(said)
  })
})
