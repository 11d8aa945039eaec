import { describe, expect, it } from 'vitest'
import { chancesByCall, meanCall } from '../../../src/sets/bingo/exact-odds.js'
import { kindsOf, linesOn, printAll, printItem } from '../print-item.js'

const sheet = async (item: string) => linesOn(await printItem(item), 'caller').join(' ')

describe('the caller’s sheet', () => {
  it('tells the exact chance of one board, and that of all with its error', async () => {
    const said = await sheet('{layout: bingo, boards: 6, grid: 2x2, win: full board}')
    // Four words of twelve: C(n, 4) / C(12, 4) by call n, and 4 × 13 / 5 calls on average.
    const chances = chancesByCall({ goals: [[0, 1, 2, 3]], needed: 1, words: 12 })!
    expect(meanCall(chances)).toBeCloseTo((4 * 13) / 5, 12)
    expect(said).toContain('by call 8 in 14, by call 11 in 67, by call 12 in 100 of 100 games')
    expect(said).toContain('at call 10.4 on average (exact figures)')
    expect(said).toMatch(
      /With all 6 boards in play they give a single first winner in about \d+ of 100 games \(give or take \d+\)/,
    )
  })

  it('has room for the names of boards that are narrower than their names', async () => {
    const words = 'storm, cloud, rain, snow, thunder, frost, shower, sunny'
    const large = `title: A\nwords: [${words}]\ngroups: [{name: Owls, size: {x-height: 9 mm}}]\nprint:\n`
    const owls = (await printAll(['{layout: bingo, boards: 24}'], large)).problems
    expect(owls.map(({ message }) => message)).toEqual([])
  })

  it('goes with a children’s card that says what wins', async () => {
    const printed = await printItem('{layout: bingo, boards: 2, grid: 3x3, win: corners, free: yes}')
    expect(kindsOf(printed)).toEqual(['pieces', 'caller', 'rules', 'cover'])
    const rules = linesOn(printed, 'rules').join(' ')
    expect(rules).toContain('Have you covered the four corners?')
    expect(rules).toContain('The middle is free: it counts as covered.')
  })
})
