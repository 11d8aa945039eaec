import { describe, expect, it } from 'vitest'
import { linesOn, marshWithClues, piecesOf, printItem } from './print-item.js'

const longWords = marshWithClues.replace(
  /^words:.*^marks:/ms,
  'words: [blackberry, grasshopper, Madagascar, merry-go-round, woodpecker, think, café, housekeeper, wheelbarrow, chickadee]\nmarks:',
)
const X_12 = 'size: x-height 12 mm'

const sheetsOf = (item: Awaited<ReturnType<typeof printItem>>) =>
  item.sheets.filter(({ kind, side }) => kind === 'pieces' && side === 'front').length

describe('cards of a size named in large print', () => {
  it('are as low as their words allow: a wide card keeps no more white above than its height has to give', async () => {
    const item = await printItem(`{layout: open-sort, ${X_12}}`, longWords)
    expect(sheetsOf(item)).toBe(2)
    expect(Math.min(...piecesOf(item).map(({ xHeightMm }) => xHeightMm!))).toBeGreaterThanOrEqual(12)
  })

  it('ask for no word that is larger than the words that answer', async () => {
    const item = await printItem(`{layout: chain-cards, ask: plural, ${X_12}}`, longWords)
    for (const { art, fontPt } of piecesOf(item)) {
      const sizes = art.flatMap(each => each.art.text.map(({ sizeMm }) => sizeMm))
      expect(Math.max(...sizes)).toBeLessThanOrEqual((fontPt! * 25.4) / 72 + 0.01)
    }
  })
})

describe('chain cards of a size at which their prompt is wider than half a page', () => {
  const shortWords = longWords.replace(
    /words: .*/,
    'words: [reed, moth, duck, leaf, fish, cake, bee, path, chin, pond]',
  )
  const chain = () => printItem(`{layout: chain-cards, ask: plural, ${X_12}}`, shortWords)

  it('stand three to a sheet, with a short prompt that keeps off the cuts', async () => {
    const item = await chain()
    expect(sheetsOf(item)).toBe(4)
    for (const { art, widthMm } of piecesOf(item)) {
      const runs = art.flatMap(each => each.art.text.map(run => ({ ...run, xMm: run.xMm + each.xMm })))
      expect(runs.map(({ text }) => text)).toContain('Next:')
      for (const { xMm, widthMm: runMm } of runs) {
        expect(xMm).toBeGreaterThan(3)
        expect(xMm + runMm).toBeLessThan(widthMm - 3)
      }
    }
  })
})

describe('a path board in large print', () => {
  it('holds as many long words as stand on low spaces', async () => {
    const [board] = piecesOf(await printItem('{layout: path-board, size: large}', longWords))
    expect(board!.text.length).toBeGreaterThan(10)
  })
})

describe('a word strip in large print', () => {
  it('keeps white between its longest word and what to write', async () => {
    const strip = piecesOf(await printItem('{layout: word-strips, size: large}', longWords)).find(
      ({ text }) => text.includes('merry-go-round'),
    )!
    const runs = strip.art.flatMap(({ art, xMm }) => art.text.map(run => ({ ...run, xMm: run.xMm + xMm })))
    const [word, task] = ['merry-go-round', 'sounds'].map(text => runs.find(run => run.text === text)!)
    expect(task!.xMm - word!.xMm - word!.widthMm).toBeGreaterThan(task!.sizeMm * 0.4)
  })
})

describe('lists of a size at which a word fills half the page', () => {
  it.each(['marked-list', 'blank-list'])('are made, several words to a page: %s', async layout => {
    const item = await printItem(`{layout: ${layout}, ${X_12}}`)
    const rows = item.sheets.map(
      ({ bands = [] }) => bands.filter(({ cells }) => cells?.headings === 1).length,
    )
    expect(rows.reduce((sum, count) => sum + count)).toBe(12)
    expect(Math.max(...rows)).toBeGreaterThan(2)
  })
})

describe('the key in print so large that its heading would fill a third of the page', () => {
  it('has the shortest heading, and what each mark is', async () => {
    const lines = linesOn(await printItem(`{layout: key, ${X_12}}`), 'key')
    expect(lines[0]).toBe('Our key')
    expect(lines.join(' ')).toContain('one sound')
  })

  it('has its own title in smaller print', async () => {
    expect(linesOn(await printItem('{layout: key}'), 'key')[0]).toBe('Along the marsh: our key')
  })
})

describe('a clue on the back of a card', () => {
  it('leaves no word alone on its last line', async () => {
    const plan = marshWithClues.replace('a tall grass that stands in water', 'something you know well')
    const { sheets } = await printItem('{layout: word-cards, back: clue}', plan)
    const back = sheets.find(({ side }) => side === 'back')!
    const texts = back.pieces.flatMap(({ piece }) =>
      piece.art.flatMap(({ art }) => art.text.map(run => run.text)),
    )
    expect(texts).toContain('you know well')
  })
})
