import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { linesOn, marshWithClues, piecesOf, printAll } from '../print-item.js'

const withGroups = (groups: string) => marshWithClues.replace('marks:\n', `groups:\n${groups}marks:\n`)

const otters = '  - {name: Otters, words: [frog, moth, leaf, wren, nest, pond, mud, log, fin, web]}\n'
const largePrint = '  - {name: Large print, size: large}\n'

async function gameOf(options: string, groups = otters + largePrint): Promise<readonly PrintedItem[]> {
  const printed = await printAll(
    [`{layout: bingo, boards: 4, cover: no, caller: for all${options}}`],
    withGroups(groups),
  )
  if (!printed.ok) throw new Error(printed.problems.map(({ message }) => message).join('\n'))
  return printed.value
}

const marsh = 'reed marsh shrub thrush stream spring gnat wren leaf moth frog perch'.split(' ')
const ofOtters = 'frog moth leaf wren nest pond mud log fin web'.split(' ')

describe('bingo with one caller for all', () => {
  it('has one order of calls, of the words of all', async () => {
    const orders = (await gameOf('')).map(({ deal }) => deal!.callOrder)
    expect(orders[1]).toEqual(orders[0])
    expect(orders[2]).toEqual(orders[0])
    expect(orders[0]!.toSorted()).toEqual([...new Set([...marsh, ...ofOtters])].toSorted())
  })

  it('deals each child’s board of the words of its own group', async () => {
    const words = (await gameOf('')).map(item => new Set(piecesOf(item).flatMap(({ text }) => text)))
    expect([...words[1]!].filter(word => !ofOtters.includes(word))).toEqual([])
    expect([...words[0]!, ...words[2]!].filter(word => !marsh.includes(word))).toEqual([])
  })

  it('numbers the boards of all through, and tells in each set when its own win', async () => {
    const items = await gameOf('')
    expect(items.map(item => piecesOf(item).map(({ id }) => id))).toEqual([
      ['board-01', 'board-02', 'board-03', 'board-04'],
      ['board-05', 'board-06', 'board-07', 'board-08'],
      ['board-09', 'board-10', 'board-11', 'board-12'],
    ])
    for (const item of items)
      expect(item.deal!.wins.map(({ board }) => board)).toEqual(piecesOf(item).map(({ id }) => id))
  })

  it('has one winner of all boards alone, after the middle of the calls', async () => {
    const items = await gameOf(', win: line')
    const { callOrder } = items[0]!.deal!
    const wins = items
      .flatMap(item => piecesOf(item).map(({ cells }) => firstLine(cells!, callOrder)))
      .toSorted((a, b) => a - b)
    expect(wins[0]).toBeGreaterThan(callOrder.length / 2)
    expect(wins[1]).toBeGreaterThan(wins[0]!)
  })

  it('prints the caller’s sheet once, with the boards of all and whose they are', async () => {
    const items = await gameOf(', say: clue', '  - {name: Large print, size: large}\n')
    const [sheet, other] = items.map(item => linesOn(item, 'caller').join(' '))
    for (let board = 1; board <= 8; board++) expect(sheet).toContain(`board ${board}`)
    expect(sheet).toContain('boards 5 to 8 are for Large print')
    expect(sheet).toContain('it was a tadpole once')
    expect(other).toBe('')
    expect(items[1]!.notes.join(' ')).toContain(
      'The caller’s sheet is printed with the boards for the class.',
    )
  })

  it('says how many words the groups share', async () => {
    expect((await gameOf(''))[1]!.notes.join(' ')).toContain('They share 4 of the 18 words')
    expect((await gameOf('', largePrint))[0]!.notes.join(' ')).toContain('All play with the same words.')
  })

  it('gives large words more sheets and never another grid, which would be another game', async () => {
    const items = await gameOf(', grid: 3x3', '  - {name: Large print, size: x-height 16 mm}\n')
    const [board, part] = items.map(item => piecesOf(item)[0]!)
    expect(board!.cells).toHaveLength(3)
    expect(part!.id).toBe('board-05-part-1')
    expect(items[1]!.notes.join(' ')).toMatch(/Laid out with sheets: [24]/)
  })

  it('is refused where a group has too few words for the boards of all', async () => {
    const few = '  - {name: Otters, words: [frog, moth, leaf]}\n'
    const printed = await printAll(['{layout: bingo, boards: 2, caller: for all}'], withGroups(few))
    const told = printed.problems.filter(({ message }) => message.includes('board needs'))
    expect(told.map(({ severity }) => severity)).toContain('error')
    expect([...new Set(told.map(({ message }) => message))]).toEqual([
      expect.stringMatching(/^Otters: a 3x3 board needs/),
    ])
  })

  it('is a game of each group’s own where the plan does not ask for it', async () => {
    const printed = await printAll(['{layout: bingo, boards: 2, cover: no}'], withGroups(otters))
    if (!printed.ok) throw new Error('not printed')
    expect(printed.value.map(({ deal }) => deal!.callOrder.length)).toEqual([12, 10])
    expect(printed.value.map(item => linesOn(item, 'caller').length > 0)).toEqual([true, true])
  })
})

/** The call at which a row, a column or a diagonal is full, from the definition. */
function firstLine(cells: readonly (readonly (string | null)[])[], callOrder: readonly string[]): number {
  const calledAt = (word: string | null) => (word === null ? 0 : callOrder.indexOf(word) + 1)
  const side = cells.map((_, index) => index)
  const lines = [
    ...cells,
    ...side.map(column => cells.map(row => row[column]!)),
    side.map(index => cells[index]![index]!),
    side.map(index => cells[index]![side.length - 1 - index]!),
  ]
  return Math.min(...lines.map(line => Math.max(...line.map(calledAt))))
}
