import { describe, expect, it } from 'vitest'
import { gapsBetween } from '../../layouts/crossword/crossword-art.js'
import {
  kindsOf,
  linesOn,
  marshWithClues,
  marshWords,
  piecesOf,
  printItem,
  problemsOf,
} from './print-item.js'

interface Told {
  readonly grid: readonly string[]
  readonly entries: readonly {
    number: number
    row: number
    column: number
    down: boolean
    word: string
    clue: string
  }[]
}
const toldOf = (data: unknown) => data as Told

/** Numbers and letters that stand in the grid of a board. */
function inGrid(board: ReturnType<typeof piecesOf>[number]): readonly string[] {
  return board.art
    .flatMap(({ art }) => art.text.map(run => run.text))
    .filter(text => /^(\d+|[a-z])$/.test(text))
}

describe('a crossword', () => {
  it('tells each word’s place, and its letters stand there', async () => {
    const { grid, entries } = toldOf((await printItem('{layout: crossword}')).answerData)
    expect(entries.map(({ word }) => word).sort()).toEqual([...marshWords].sort())
    for (const { word, row, column, down } of entries)
      expect(
        [...word].map((_, step) => grid[row + (down ? step : 0)]![column + (down ? 0 : step)]).join(''),
      ).toBe(word)
  })

  it('prints a number where a word begins, no letter, and each clue with how many letters it asks for', async () => {
    const printed = await printItem('{layout: crossword}')
    const [board] = piecesOf(printed)
    const { entries } = toldOf(printed.answerData)
    expect(new Set(inGrid(board!))).toEqual(new Set(entries.map(({ number }) => String(number))))
    const said = board!.art.flatMap(({ art }) => art.text.map(run => run.text)).join(' ')
    for (const { clue, word, number } of entries) expect(said).toContain(`${number} ${clue} (${word.length})`)
  })

  it('gives the first letters away where the teacher wants it', async () => {
    const printed = await printItem('{layout: crossword, help: first letters}')
    const letters = inGrid(piecesOf(printed)[0]!).filter(text => /[a-z]/.test(text))
    const starts = new Map(toldOf(printed.answerData).entries.map(({ number, word }) => [number, word[0]]))
    expect([...letters].sort()).toEqual([...starts.values()].sort())
  })

  it('has its clues on a page of their own in large print', async () => {
    const large = await printItem('{layout: crossword, size: large}')
    expect(kindsOf(large)).toEqual(['pieces', 'list', 'rules', 'answers', 'cover'])
    expect(linesOn(large, 'list').join(' ')).toContain('wet, grassy land (5)')
    expect(kindsOf(await printItem('{layout: crossword}'))).toEqual(['pieces', 'rules', 'answers', 'cover'])
  })

  it('goes into several grids where the cells must be large', async () => {
    const printed = await printItem('{layout: crossword, size: x-height 9 mm}')
    const grids = [printed.answerData].flat().map(toldOf)
    expect(grids.length).toBeGreaterThan(1)
    expect(piecesOf(printed)).toHaveLength(grids.length)
  })

  it('says which words are not in it, and why', async () => {
    const plan = marshWithClues.replace('marks:', "  - pond\n  - {word: can't, clue: is not able to}\nmarks:")
    const told = await problemsOf('{layout: crossword}', plan)
    expect(told).toContain('"pond" is not in the crossword: it has no clue\nGive it a clue')
    expect(told).toContain('"can\'t" is not in the crossword: a grid has no place for an apostrophe')
  })

  it('says of a word without a place whether it shares a letter with the others at all', async () => {
    const plan =
      'title: A\nwords: [{word: cup, clue: to drink from}, {word: cap, clue: for a head}, {word: shed, clue: a hut}]\nprint:\n'
    expect(await problemsOf('{layout: crossword}', plan)).toContain(
      '"shed" is not in the crossword: it shares no letter with the other words',
    )
  })

  it('is grey between cells that face each other, where nobody is to write', () => {
    expect(gapsBetween(['ab.c', 'd...', 'e..f', '....', 'g...'])).toEqual([
      [0, 2],
      [1, 3],
      [3, 0],
    ])
  })

  it.each([9, 10, 11, 12])('keeps a heading with its clues at an x-height of %i mm', async xHeightMm => {
    const words = 'otter heron moth shed goose bridge pond reed'.split(' ')
    const clue = 'what we saw and heard and drew on our walk to the pond'
    const listed = words.map(word => `{word: ${word}, clue: ${clue}}`)
    const plan = `title: A\nseed: 12\nwords: [${listed.join(', ')}]\nprint:\n`
    const printed = await printItem(`{layout: crossword, size: x-height ${xHeightMm} mm}`, plan)
    for (const page of printed.sheets.filter(({ kind }) => kind === 'list'))
      expect(linesOn({ ...printed, sheets: [page] }, 'list').at(-1)).not.toMatch(/(across|down)$/i)
  })

  it('is not made from words that share no letter', async () => {
    const plan = 'title: A\nwords: [{word: cup, clue: to drink from}, {word: shed, clue: a hut}]\nprint:\n'
    expect(await problemsOf('{layout: crossword}', plan)).toContain('no two words with clues cross')
  })

  it('has its clues right below the grid, however few words it has', async () => {
    const [board] = piecesOf(await printItem('{layout: crossword, words: [reed, leaf]}'))
    const runs = board!.art.flatMap(({ art, yMm }) =>
      art.text.map(run => ({ text: run.text, baselineMm: yMm + run.baselineMm })),
    )
    const at = (wanted: RegExp) => runs.filter(run => wanted.test(run.text)).map(run => run.baselineMm)
    const lowestNumberMm = Math.max(...at(/^\d$/))
    const [headingMm] = at(/^Across$/)
    // Four cells of 18 mm hang from the lower number at most.
    expect(headingMm! - lowestNumberMm).toBeLessThan(4 * 18 + 15)
  })

  it('has its answers for several small grids on one page', async () => {
    const plan = `title: Pond
words:
  - {word: bee, clue: it makes honey}
  - {word: we, clue: you and I}
  - {word: ox, clue: it pulls a plough}
  - {word: of, clue: belonging to}
print:
`
    const printed = await printItem('{layout: crossword}', plan)
    expect(piecesOf(printed)).toHaveLength(2)
    expect(printed.sheets.filter(sheet => sheet.kind === 'answers')).toHaveLength(1)
    expect(linesOn(printed, 'answers').join(' ')).toMatch(/Grid 1, across.*Grid 2, across/)
  })

  it.each(['across: 2, down: 2', 'card: 100 x 120 mm'])(
    'is dealt for the board that it has: %s',
    async division => {
      const printed = await printItem(`{layout: crossword, ${division}}`)
      const grids = [printed.answerData].flat().map(toldOf)
      for (const { grid } of grids) {
        // In boxes of 9 mm at least, on boards of 100 by 120 mm or so.
        expect(grid[0]!.length).toBeLessThanOrEqual(11)
        expect(grid.length).toBeLessThanOrEqual(13)
      }
    },
  )
})
