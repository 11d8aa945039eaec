import { describe, expect, it } from 'vitest'
import { changeGraph } from '../../../src/sets/games/change-graph.js'
import { cheapestPath, stepsFrom } from '../../../src/sets/games/change-paths.js'

/** Letters instead of sounds: the puzzle as Lewis Carroll set it (Doublets. A Word-Puzzle, 1879). */
const carrolls = 'head heal teal tell tall tail pig wig wag way say sty four five'.split(' ')
const graph = changeGraph(carrolls.map(word => [...word]))
const indexOf = (word: string) => carrolls.indexOf(word)

function path(
  from: string,
  to: string,
  steps: number,
  wanted: Partial<Parameters<typeof cheapestPath>[1]> = {},
) {
  const found = cheapestPath(graph, {
    from: indexOf(from),
    isEnd: index => index === indexOf(to),
    steps,
    cost: () => 1,
    shortcuts: false,
    ...wanted,
  })
  return found?.map(index => carrolls[index])
}

describe('a graph of changes', () => {
  it('leads from a row to those that differ from it in one unit', () => {
    expect(graph.neighbours(indexOf('tell')).map(index => carrolls[index])).toEqual(['teal', 'tall'])
  })

  it('leaves out changes that are not allowed', () => {
    const only = changeGraph(
      [
        ['a', 'b'],
        ['a', 'c'],
        ['a', 'd'],
      ],
      (from, to) => from !== 'd' && to !== 'd',
    )
    expect(only.neighbours(0)).toEqual([1])
  })

  it('does not lead to a row that is the same', () => {
    expect(changeGraph([['a'], ['a']]).neighbours(0)).toEqual([])
  })
})

describe('a path of changes', () => {
  it.each([
    ['head', 'tail', ['head', 'heal', 'teal', 'tell', 'tall', 'tail']],
    ['pig', 'sty', ['pig', 'wig', 'wag', 'way', 'say', 'sty']],
  ])('leads from %s to %s as Carroll has it', (from, to, chain) => {
    expect(path(from, to, chain.length - 1)).toEqual(chain)
  })

  it('is not found where none leads there, or none of that length', () => {
    expect(path('four', 'five', 6)).toBeUndefined()
    expect(path('head', 'tail', 4)).toBeUndefined()
  })

  it('takes the cheapest words', () => {
    const words = ['cat', 'cot', 'cut', 'dot', 'dut']
    const small = changeGraph(words.map(word => [...word]))
    const by = (dear: string) =>
      cheapestPath(small, {
        from: 0,
        isEnd: index => words[index]!.startsWith('d'),
        steps: 2,
        cost: index => (words[index] === dear ? 5 : 1),
        shortcuts: false,
      })!.map(index => words[index])
    expect(by('cut')).toEqual(['cat', 'cot', 'dot'])
    expect(by('cot')).toEqual(['cat', 'cut', 'dut'])
  })

  it('has no step that could be left out, unless that is allowed', () => {
    const words = ['cat', 'cot', 'cut', 'dut']
    const small = changeGraph(words.map(word => [...word]))
    const wanted = { from: 0, isEnd: (index: number) => index === 3, steps: 3, cost: () => 1 }
    expect(cheapestPath(small, { ...wanted, shortcuts: false })).toBeUndefined()
    expect(cheapestPath(small, { ...wanted, shortcuts: true })).toEqual([0, 1, 2, 3])
  })

  it('is counted in fewest steps', () => {
    const steps = stepsFrom(graph, indexOf('head'), 9)
    expect(['head', 'heal', 'teal', 'tell', 'tall', 'tail'].map(word => steps.get(indexOf(word)))).toEqual([
      0, 1, 2, 3, 4, 5,
    ])
    expect(stepsFrom(graph, indexOf('head'), 2).size).toBe(3)
  })
})
