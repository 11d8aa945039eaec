import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { linesOn, marshWithClues, printItem } from '../print-item.js'

const plan = marshWithClues.replace(
  '  - pattern: consonant-digraph\n',
  '  - pattern: consonant-digraph\n  - {pattern: three-letter-blend, outline: box}\n  - {letters: zz, label: never}\n',
)

/** The texts of the item's pages with the em of each, in mm, from top to bottom. */
const texts = (item: PrintedItem) =>
  item.sheets.flatMap(sheet =>
    sheet.furniture.flatMap(({ art, yMm }) =>
      art.text.map(run => ({ text: run.text, sizeMm: run.sizeMm, yMm: yMm + run.baselineMm })),
    ),
  )
const sampleOf = (item: PrintedItem, letters: string) => texts(item).find(run => run.text === letters)!

describe('the key', () => {
  it('shows the marks that the words use, each on letters that have it, with its name and words', async () => {
    const lines = linesOn(await printItem('{layout: key}', plan), 'key').join(' ')
    expect(lines).toContain('consonant digraph')
    expect(lines).toContain('three-letter blend')
    expect(lines).toContain('stream, spring')
    expect(lines).not.toContain('never')
  })

  it('for the wall is one page, as large as fills it, every sample of one size', async () => {
    const item = await printItem('{layout: key}', plan)
    expect(item.sheets).toHaveLength(1)
    expect(sampleOf(item, 'sh').sizeMm).toBeGreaterThan(18)
    expect(sampleOf(item, 'str').sizeMm).toBeCloseTo(sampleOf(item, 'sh').sizeMm, 6)
  })

  it('for the wall breaks no name that a line holds at a size to be read from afar', async () => {
    const item = await printItem('{layout: key}')
    const name = sampleOf(item, 'consonant digraph')
    expect(name.sizeMm).toBeGreaterThan(10)
  })

  it('is as near to its samples where a mark is a tag in the corner, whatever the word’s length', async () => {
    const tagged = marshWithClues.replace('print:', '  - {part of speech: noun}\nprint:')
    const leftOf = async (text: string) => {
      const { sheets } = await printItem('{layout: key}', text)
      const lines = sheets[0]!.furniture.flatMap(({ art, xMm }) =>
        art.text.map(run => ({ text: run.text, xMm: xMm + run.xMm })),
      )
      return lines.find(run => run.text === 'consonant digraph')!.xMm
    }
    const long = tagged.replace('word: reed', 'word: kingfisher')
    expect(await leftOf(long)).toBeCloseTo(await leftOf(tagged), 1)
  })

  it('beside a list keeps its names clear of its samples in very large print', async () => {
    const item = await printItem('{layout: marked-list, size: x-height 12 mm, words: [marsh, perch]}')
    const runs = item.sheets
      .at(-1)!
      .furniture.flatMap(({ art, xMm }) => art.text.map(run => ({ ...run, xMm: xMm + run.xMm })))
    const sample = runs.find(run => /^(sh|ch)$/.test(run.text))!
    const name = runs.find(run => run.text.startsWith('consonant'))!
    expect(name.xMm - sample.xMm - sample.widthMm).toBeGreaterThan(4)
  })

  it('for the wall has smaller samples where there are more marks, never under 13 mm', async () => {
    const many = [...'marshifewtn'].map(letter => `  - {letters: ${letter}}\n`).join('')
    const item = await printItem('{layout: key}', plan.replace('print:', `${many}print:`))
    expect(sampleOf(item, 'sh').sizeMm).toBeLessThan(20)
    expect(sampleOf(item, 'sh').sizeMm).toBeGreaterThanOrEqual(13)
  })

  it('for the desk stands on a page as often as it fits, to cut apart', async () => {
    const item = await printItem('{layout: key, for: desk}', plan)
    expect(item.sheets).toHaveLength(1)
    const names = texts(item).filter(run => run.text === 'consonant digraph')
    expect(names.length).toBeGreaterThanOrEqual(3)
    expect(texts(item).filter(run => run.text === 'sh')).toHaveLength(names.length)
    expect(Math.max(...texts(item).map(run => run.yMm))).toBeLessThan(item.sheets[0]!.heightMm - 6)
  })
})

describe('a key for the desk', () => {
  it('stands side by side too, and says how many a page holds', async () => {
    const item = await printItem('{layout: key, for: desk}', plan)
    const samples = item.sheets[0]!.furniture.filter(({ art }) => art.text.some(({ text }) => text === 'sh'))
    expect(new Set(samples.map(({ xMm }) => xMm.toFixed(0))).size).toBe(2)
    expect(item.notes).toEqual([
      `${samples.length} keys to a page, to cut apart: print as many pages as the class needs.`,
    ])
  })

  it.each(['28 pt', 'x-height 12 mm', 'x-height 20 mm'])(
    'of size %s stays on its page, whatever has to give way',
    async size => {
      for (const use of ['wall', 'desk'])
        expect(
          (await printItem(`{layout: key, for: ${use}, size: ${size}}`, plan)).sheets.length,
        ).toBeLessThan(4)
    },
  )
})

describe('the key of cards with sound marks', () => {
  it('says what one mark means, and what two mean only where a word has them', async () => {
    const cover = linesOn(
      await printItem('{layout: word-cards, sounds: bars, marks: none}', plan),
      'cover',
    ).join(' ')
    expect(cover).toContain('a mark for each sound you hear')
    expect(cover).not.toContain('two sounds')
    expect(cover).not.toContain('consonant digraph')
  })

  it('says nothing of sounds where they are not shown', async () => {
    expect(linesOn(await printItem('{layout: word-cards}', plan), 'cover')).not.toContain('one sound')
  })
})
