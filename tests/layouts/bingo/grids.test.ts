import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { formatProblem } from '../../../src/problems.js'
import { sharedWork } from '../../pipeline/shared-work.js'
import { filesInMemory } from '../../plan/reading.js'

/** `aa`, `ab`, …: any run of letters is a word, and short ones fit every grid. */
const shortWords = (count: number) =>
  Array.from({ length: count }, (_, index) =>
    [Math.floor(index / 26), index % 26].map(digit => String.fromCharCode(97 + digit)).join(''),
  )

/** Columns and rows of each item's first board, and what was told. */
async function boards(words: number, options: string, groupWords?: number) {
  const group =
    groupWords === undefined
      ? ''
      : `groups:\n  - {name: Otters, words: [${shortWords(groupWords).join(', ')}]}\n`
  const text = `words: [${shortWords(words).join(', ')}]\nprint:\n  - {layout: bingo, boards: 2, paper: tabloid${options}}\n${group}`
  const files = filesInMemory({ 'week.yaml': text })
  const made = await putPlanOnSheets({ planFile: 'week.yaml', files, kept: sharedWork })
  if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
  const grids = made.value.items.map(({ printed }) => {
    const { cells } = printed.sheets[0]!.pieces[0]!.piece
    return `${cells![0]!.length}x${cells!.length}`
  })
  return { grids, told: made.problems.map(problem => problem.message) }
}

describe('the grid that a plan leaves open', () => {
  // A fifth of the words stay off each board; a grid of odd sides has a free space in its middle.
  it.each([
    [30, '5x5'],
    [29, '4x4'],
    [20, '4x4'],
    [19, '3x3'],
    [12, '3x3'],
  ])('leaves a fifth of %i words off: %s', async (words, grid) => {
    expect((await boards(words, '')).grids).toEqual([grid])
  })
})

describe('the boards of a group with too few words for the class’s grid', () => {
  it.each([
    [24, '5x5'],
    [23, '4x4'],
    [16, '4x4'],
    [15, '3x3'],
    [8, '3x3'],
    [7, '2x2'],
    [4, '2x2'],
  ])('with %i words have the largest grid that they fill, %s', async (words, grid) => {
    expect((await boards(30, ', grid: 5x5', words)).grids).toEqual(['5x5', grid])
  })

  it('are told, with how many words there are and what was taken', async () => {
    const { told } = await boards(30, ', grid: 5x5', 15)
    expect(told).toEqual(['Otters has 15 words, too few for 5x5: its boards are 3x3'])
  })

  it('are not made of three words, and that is told', async () => {
    const { grids, told } = await boards(30, ', grid: 5x5', 3)
    expect(grids).toEqual(['5x5'])
    expect(told[0]).toMatch(/^nothing is made for Otters/)
  })
})
