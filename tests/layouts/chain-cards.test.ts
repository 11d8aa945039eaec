import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, marshWords, piecesOf, printItem, problemsOf } from './print-item.js'

describe('chain cards', () => {
  it('have a word and the clue of another', async () => {
    const pieces = piecesOf(await printItem('{layout: chain-cards}'))
    expect(pieces.map(piece => piece.text[0]).toSorted()).toEqual(marshWords.toSorted())
    for (const { text } of pieces) expect(text).toHaveLength(2)
    expect(pieces.find(piece => piece.text[0] === 'leaf')!.text[1]).not.toBe('it grows on a twig')
  })

  it('say on the card whether a clue or a plural follows', async () => {
    const leadIns = async (item: string) =>
      new Set(
        piecesOf(await printItem(item)).flatMap(({ art }) =>
          art.flatMap(each => each.art.text.map(run => run.text)).filter(text => text.endsWith(':')),
        ),
      )
    expect(await leadIns('{layout: chain-cards}')).toEqual(new Set(['Next clue:']))
    expect(await leadIns('{layout: chain-cards, ask: plural}')).toEqual(new Set(['Next plural:']))
  })

  it('have each of several loops under its own heading, with white above it', async () => {
    const printed = await printItem('{layout: chain-cards, loops: 2}')
    const page = printed.sheets.find(({ kind }) => kind === 'answers')!
    const runs = page.furniture.flatMap(({ art, yMm }) =>
      art.text.map(({ text, baselineMm, sizeMm }) => ({ text, sizeMm, yMm: yMm + baselineMm })),
    )
    const second = runs.find(({ text }) => text === 'Loop 2')!
    const above = Math.max(...runs.filter(({ yMm }) => yMm < second.yMm - 1).map(({ yMm }) => yMm))
    expect(second.yMm - above).toBeGreaterThan(second.sizeMm * 2.4)
  })

  it('have their loop on a page of its own: every card once, the last leading back to the first', async () => {
    const printed = await printItem('{layout: chain-cards}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'answers', 'cover'])
    const steps = linesOn(printed, 'answers')
      .map(line => /^(\d+ \w+) \| .* \| (\d+ \w+)$/.exec(line))
      .filter(match => match !== null)
      .map(([, from, to]) => [from!, to!])
    expect(steps).toHaveLength(marshWords.length)
    for (const [index, [, to]] of steps.entries()) expect(to).toBe(steps[(index + 1) % steps.length]![0])
    for (const { number, text } of piecesOf(printed))
      expect(steps.map(([from]) => from)).toContain(`${number} ${text[0]}`)
  })

  it('keep a clue of two lines clear of the set mark in large print', async () => {
    const plan = `title: Pond
words:
  - {word: grasshopper, clue: it leaps in the meadow and sings with its legs}
  - {word: leafhopper, clue: it leaps in the hedge and never sings a note}
  - {word: beachcomber, clue: somebody who looks for things on the shore}
print:
`
    const card = piecesOf(await printItem('{layout: chain-cards, size: large}', plan))[0]
    const inkOf = (wanted: RegExp) =>
      card!.art
        .filter(({ art }) => art.text.some(run => wanted.test(run.text)))
        .flatMap(({ art, yMm }) => {
          const ys = art.shapes.flatMap(shape => (shape.kind === 'path' ? upAndDown(shape.d) : []))
          return ys.map(y => yMm + y)
        })
    expect(Math.min(...inkOf(/ 1 of 3$/)) - Math.max(...inkOf(/(legs|note|shore)$/))).toBeGreaterThan(2.8)
  })

  it('say which clue has no room on its card', async () => {
    expect(await problemsOf('{layout: chain-cards, across: 4, down: 8}')).toMatch(
      /"[a-z ]+" on card \d+ needs more room/,
    )
  })
})

/** The y of every point of a path of absolute M L Q C Z. */
function upAndDown(path: string): readonly number[] {
  return [...path.matchAll(/-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => Number(y))
}
