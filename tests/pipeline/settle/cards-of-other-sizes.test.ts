import { describe, expect, it } from 'vitest'
import { piecesOf, printItem } from '../../layouts/print-item.js'

const longWords =
  'dragonfly kingfisher caterpillar watercress grasshopper thunderstorm wheelbarrow strawberries understanding woodpecker'
const shortWords = 'reed frog moth knee duck shed wren bee fish snow lamb cave goat'

async function printed(item: string, words: string) {
  const made = await printItem(
    item,
    `title: Along the marsh\nwords: [${words.split(' ').join(', ')}]\nprint:\n`,
  )
  const [piece] = piecesOf(made)
  const sheets = made.sheets.filter(({ kind }) => kind === 'pieces').length
  return { ...piece!, sheets }
}

describe('cards of long words', () => {
  it.each(['word-cards', 'open-sort'])(
    'are wider where that takes no sheet more, so that all words are larger: %s',
    async layout => {
      const [usual, wider] = await Promise.all([
        printed(`{layout: ${layout}, across: 3, down: 4, orientation: portrait}`, longWords),
        printed(`{layout: ${layout}}`, longWords),
      ])
      expect(wider.sheets).toBe(usual.sheets)
      expect(wider.xHeightMm!).toBeGreaterThan(usual.xHeightMm! * 1.3)
      expect(wider.widthMm).toBeLessThan(wider.heightMm * 2.7)
    },
  )

  it('keep the division that the plan names', async () => {
    const held = await printed('{layout: word-cards, across: 3, orientation: portrait}', longWords)
    expect(held.widthMm).toBeLessThan(70)
  })
})

describe('a card left over from a full sheet', () => {
  it('gets its place on it where cards a quarter lower have words as large', async () => {
    const [usual, closer] = await Promise.all([
      printed('{layout: word-cards, across: 3, down: 4}', shortWords),
      printed('{layout: word-cards}', shortWords),
    ])
    expect([usual.sheets, closer.sheets]).toEqual([2, 1])
    expect(closer.xHeightMm!).toBeCloseTo(usual.xHeightMm!, 3)
  })

  it('gets its place where marks below the words leave them a little smaller', async () => {
    const marks = 'marks: [{pattern: vowel-team, line: wavy}, {pattern: silent-letters, line: dotted}]\n'
    const plan = `title: Along the marsh\nwords: [${shortWords.split(' ').join(', ')}]\n${marks}print:\n`
    const sheetsOf = async (item: string) =>
      (await printItem(item, plan)).sheets.filter(({ kind }) => kind === 'pieces').length
    expect(await sheetsOf('{layout: word-cards, sounds: bars, across: 3, down: 4}')).toBe(2)
    expect(await sheetsOf('{layout: word-cards, sounds: bars}')).toBe(1)
  })

  it('has a sheet of its own where the plan names a size', async () => {
    expect((await printed('{layout: word-cards, card: 68 x 64 mm}', shortWords)).sheets).toBe(2)
  })
})
