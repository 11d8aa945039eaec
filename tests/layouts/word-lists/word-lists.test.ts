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
    expect(wide.join(' | ')).toMatch(/sounds \| .*plural/)
    const narrow = linesOn(await printItem('{layout: marked-list, paper: index-3x5}', stacked), 'list')
    expect(narrow.join(' | ')).not.toContain('clue')
    for (const said of ['4: c·r·a·t·(e)', 'noun, verb', 'lighthouses', 'add s'])
      expect(narrow.flatMap(line => line.split(' | '))).toContain(said)
  })
})

describe('the marked list', () => {
  it('gives the room that the plurals do not need to clues that would be broken', async () => {
    const lines = linesOn(await printItem('{layout: marked-list}'), 'list')
    const clue = 'a brown bird with a spotted front'
    expect(lines.flatMap(line => line.split(' | '))).toContain(clue)
  })

  it('leaves out a column in which no word has anything', async () => {
    const headings = async (plan: string) =>
      linesOn(await printItem('{layout: marked-list}', plan), 'list').join(' | ')
    expect(await headings(stacked)).not.toContain('clue')
    const withClue = stacked.replace('[crate,', '[{word: crate, clue: a box of wood},')
    expect(await headings(withClue)).toContain('plural | clue')
    const noNouns = stacked.replace('[crate, whale, lighthouse, stretch]', '[under, because, and]')
    expect(await headings(noNouns)).not.toContain('plural')
  })

  it('is called by its name in plain words, with the plan below', async () => {
    const [title, plan] = linesOn(await printItem('{layout: marked-list}', stacked), 'list')
    expect([title, plan]).toEqual(['Marked list', 'Along the marsh'])
  })
})

describe('the blank list', () => {
  it('tells the child in one line what to do, and of marks only where there are any', async () => {
    const told = async (plan: string) => linesOn(await printItem('{layout: blank-list}', plan), 'list')
    expect(await told(stacked)).toContain('Mark each word and write it. Draw each mark.')
    const plain = stacked.replace(/marks:.*print:/s, 'print:')
    expect(await told(plain)).toContain('Read each word and write it.')
  })

  it('has one line to write on for each word, level with it', async () => {
    const { sheets } = await printItem('{layout: blank-list}', stacked)
    const arts = sheets[0]!.furniture
    const baselines = arts.flatMap(({ art, yMm }) =>
      art.text.filter(run => run.sizeMm > 5).map(run => yMm + run.baselineMm),
    )
    const lines = arts.filter(({ art }) => art.heightMm < 0.5 && art.widthMm > 60)
    expect(lines).toHaveLength(4)
    for (const { art, yMm } of lines)
      expect(baselines.some(baseline => Math.abs(baseline - yMm - art.heightMm) < 0.01)).toBe(true)
  })
})

describe.each(['marked-list', 'blank-list'])('the numbers of a %s', layout => {
  it.each(['normal', 'large'])('stand on the baselines of their words: %s', async size => {
    const lines = linesOn(await printItem(`{layout: ${layout}, size: ${size}}`, stacked), 'list')
    for (const [index, word] of ['crate', 'whale', 'lighthouse', 'stretch'].entries())
      expect(lines.some(line => line.startsWith(`${index + 1} | ${word}`))).toBe(true)
  })
})
