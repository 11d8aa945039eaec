import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import {
  kindsOf,
  linesOn,
  marshWithClues,
  marshWords,
  piecesOf,
  printItem,
  problemsOf,
} from './print-item.js'

const words = (...texts: readonly string[]) => `title: Pond\nwords: [${texts.join(', ')}]\nprint:\n`

/** The letters drawn on a board, row by row, as they stand on the paper. */
function lettersOn(board: ReturnType<typeof piecesOf>[number]): readonly string[] {
  const letters = board.art.flatMap(({ art, yMm, xMm }) =>
    art.text
      .filter(run => run.text.length === 1)
      .map(run => ({ text: run.text, x: xMm + run.xMm + run.widthMm / 2, y: yMm + run.baselineMm })),
  )
  const rows = [...new Set(letters.map(({ y }) => y.toFixed(2)))].map(Number).sort((a, b) => a - b)
  return rows.map(row =>
    letters
      .filter(({ y }) => Math.abs(y - row) < 0.1)
      .sort((a, b) => a.x - b.x)
      .map(({ text }) => text)
      .join(''),
  )
}

/** Its lines as one, wherever they are broken. */
const rulesOf = (printed: PrintedItem) => linesOn(printed, 'rules').join(' ')

describe('a word search', () => {
  it('prints the letters that the manifest tells, and lists every word', async () => {
    const printed = await printItem('{layout: word-search}')
    const [board] = piecesOf(printed)
    expect(board!.text).toEqual(marshWords)
    expect(printed.answerData).toMatchObject({ grid: lettersOn(board!) })
  })

  it('tells for each word where it begins, counted from one', async () => {
    const printed = await printItem('{layout: word-search}')
    const told = linesOn(printed, 'answers').join(' ')
    const { placed } = printed.answerData as unknown as {
      placed: readonly { word: string; row: number; column: number }[]
    }
    expect(placed).toHaveLength(marshWords.length)
    for (const { word, row, column } of placed)
      expect(told).toContain(`${word}: row ${row + 1}, place ${column + 1}`)
  })

  it('goes with a card of rules and with answers', async () => {
    const printed = await printItem('{layout: word-search}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'answers', 'cover'])
    expect(rulesOf(printed)).toContain('from left to right, or from top to')
    const slanting = await printItem('{layout: word-search, ways: slanting too}')
    expect(rulesOf(slanting)).toContain('down, or on a')
  })

  it('has the tag of a marked word beside the word, not over the next one', async () => {
    const plan = marshWithClues.replace('marks:\n', 'marks:\n  - {part of speech: noun, tag: n}\n')
    const [board] = piecesOf(await printItem('{layout: word-search, marks: all}', plan))
    const runs = board!.art.flatMap(({ art, xMm, yMm }) =>
      art.text.map(run => ({ ...run, xMm: xMm + run.xMm, yMm: yMm + run.baselineMm })),
    )
    const word = runs.find(({ text }) => text === 'moth')!
    const gaps = runs
      .filter(({ text, yMm }) => text === 'n' && Math.abs(yMm - word.yMm) < word.sizeMm)
      .map(({ xMm }) => xMm - (word.xMm + word.widthMm))
    expect(Math.min(...gaps.map(Math.abs))).toBeLessThan(word.sizeMm)
  })

  it('has room in its list for words with lines and outlines', async () => {
    const plan = `words: [thrush, marsh, leaf, knot, shell]
marks:
  - {pattern: consonant-digraph, line: double, outline: oval, inside blends: yes}
  - {pattern: silent-letters, line: dotted}
print:
`
    const [board] = piecesOf(await printItem('{layout: word-search, marks: all}', plan))
    expect(board!.marks.map(({ word }) => word)).toContain('thrush')
    const [plain] = piecesOf(await printItem('{layout: word-search}', plan))
    expect(board!.fontPt).toBeGreaterThan(0.8 * plain!.fontPt!)
  })

  it('deals another grid for each board', async () => {
    const boards = piecesOf(await printItem('{layout: word-search, boards: 3}'))
    expect(new Set(boards.map(board => lettersOn(board).join())).size).toBe(3)
  })

  it('has as many letters as the plan asks for', async () => {
    const [board] = piecesOf(await printItem('{layout: word-search, grid: 12x11}'))
    expect(lettersOn(board!).map(row => row.length)).toEqual(Array.from({ length: 11 }, () => 12))
  })

  it('names a grid that has room where the plan’s has none', async () => {
    expect(await problemsOf('{layout: word-search, grid: 6x6}')).toMatch(
      /the 12 words find no room in a grid of 6x6\nWrite grid: (\d+)x\1/,
    )
    const [, side] = /grid: (\d+)x/.exec(await problemsOf('{layout: word-search, grid: 6x6}'))!
    expect(await problemsOf(`{layout: word-search, grid: ${side}x${side}}`)).not.toContain('no room')
  })

  it('leaves out a word that could be read in another, and says so', async () => {
    const plan = words('reed', 'reeds', 'pond', 'ox')
    expect(await problemsOf('{layout: word-search}', plan)).toMatch(
      /"reed" is not hidden in the grid: it can be read in "reeds" as well[\s\S]*"ox" is not hidden in the grid: it has fewer than 3 letters/,
    )
    expect(piecesOf(await printItem('{layout: word-search}', plan))[0]!.text).toEqual(['reeds', 'pond'])
  })

  it('shares the words out over several grids where large letters leave no room for all', async () => {
    const boards = piecesOf(await printItem('{layout: word-search, size: 40 pt}'))
    expect(boards.length).toBeGreaterThan(1)
    expect(boards.flatMap(board => board.text)).toEqual(marshWords)
  })

  it('leaves a word out that is longer than a row of large letters', async () => {
    const plan = words('reed', 'dragonfly', 'pond')
    const item = '{layout: word-search, size: x-height 12 mm}'
    expect(await problemsOf(item, plan)).toMatch(
      /"dragonfly" is not hidden: it has 9 letters, .* room for \d/,
    )
    expect(piecesOf(await printItem(item, plan)).flatMap(board => board.text)).toEqual(['reed', 'pond'])
  })

  it('has its list beside the grid on paper that lies', async () => {
    const [board] = piecesOf(await printItem('{layout: word-search, orientation: landscape}'))
    const runs = board!.art.flatMap(({ art, xMm }) => art.text.map(run => ({ ...run, xMm: xMm + run.xMm })))
    const right = Math.max(...runs.filter(run => run.text.length === 1).map(run => run.xMm))
    for (const run of runs.filter(each => marshWords.includes(each.text)))
      expect(run.xMm).toBeGreaterThan(right)
  })

  it('has its list right below the grid, however few words it has', async () => {
    const [board] = piecesOf(await printItem('{layout: word-search}', words('reed', 'moth', 'bee')))
    const runs = board!.art.flatMap(({ art, yMm }) =>
      art.text.map(run => ({ text: run.text, baselineMm: yMm + run.baselineMm })),
    )
    const lowest = Math.max(...runs.filter(run => run.text.length === 1).map(run => run.baselineMm))
    const list = Math.min(
      ...runs.filter(run => ['reed', 'moth', 'bee'].includes(run.text)).map(run => run.baselineMm),
    )
    expect(list - lowest).toBeLessThan(35)
  })

  it('keeps the words of its list apart in large print', async () => {
    const plan = words(
      'hummingbird',
      'grasshopper',
      'butterscotch',
      'beachcomber',
      'housekeeper',
      'wheelbarrow',
    )
    const [board] = piecesOf(await printItem('{layout: word-search, size: large}', plan))
    const runs = board!.art
      .flatMap(({ art, xMm, yMm }) =>
        art.text.map(run => ({
          text: run.text,
          left: xMm + run.xMm,
          right: xMm + run.xMm + run.widthMm,
          level: Math.round(yMm + run.baselineMm),
        })),
      )
      .filter(run => run.text.length > 10)
    const gaps = runs.flatMap(run =>
      runs
        .filter(next => next.level === run.level && next.left > run.left)
        .map(next => next.left - run.right),
    )
    expect(gaps.length).toBeGreaterThan(0)
    expect(Math.min(...gaps)).toBeGreaterThan(4.5)
  })

  it('says once why several words are not hidden', async () => {
    const told = await problemsOf('{layout: word-search}', words('reed', 'pond', 'a', 'ox'))
    expect(told).toContain('"a", "ox" are not hidden in the grid: each has fewer than 3 letters')
  })

  it('tells the rules with their further lines below their first, not below the number', async () => {
    const printed = await printItem('{layout: word-search, ways: slanting too}')
    const runs = printed.sheets
      .filter(sheet => sheet.kind === 'rules')
      .flatMap(sheet => sheet.furniture)
      .flatMap(({ art, xMm }) => art.text.map(run => ({ text: run.text, xMm: xMm + run.xMm })))
    const first = runs.findIndex(run => run.text.startsWith('Look for its letters'))
    expect(runs[first - 1]!.text).toBe('2')
    expect(runs[first + 1]!.xMm).toBeCloseTo(runs[first]!.xMm, 5)
    expect(runs[first]!.xMm).toBeGreaterThan(runs[first - 1]!.xMm + 4)
  })
})
