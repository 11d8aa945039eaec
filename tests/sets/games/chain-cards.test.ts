import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ChainWanted, chainCards } from '../../../src/sets/games/chain-cards.js'
import { wordByHand, wordsByHand } from '../words-by-hand.js'

const place = { file: 'week.yaml', line: 14, column: 5 }
const clued = (count: number) =>
  Array.from({ length: count }, (_, index) =>
    wordByHand({ text: `word${'abcdefghijklmnop'[index]}`, clue: `clue ${index + 1}` }),
  )
const asked: ChainWanted = { words: clued(8), ask: 'clue', copies: 1, seed: 12, label: 'chain', place }

function chainFrom(wanted: ChainWanted) {
  const outcome = chainCards(wanted)
  if (!outcome.ok) throw new Error(outcome.problems.map(problem => problem.message).join('; '))
  return outcome.value
}

describe('chain cards', () => {
  it('lead from card to card through the whole set and back to the first', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 3, max: 16 }), (seed, count) => {
        const { cards } = chainFrom({ ...asked, words: clued(count), seed })
        const followed = [cards[0]!]
        while (followed.length <= count) {
          const { title } = followed.at(-1)!
          const answers = cards.filter(card => card.words[0]!.clue === title)
          expect(answers).toHaveLength(1)
          followed.push(answers[0]!)
        }
        expect(followed.at(-1)).toBe(cards[0])
        expect(new Set(followed).size).toBe(count)
      }),
    )
  })

  it('do not lie beside the card they ask for', () => {
    const { cards } = chainFrom(asked)
    const asksFor = (one: (typeof cards)[number], other: (typeof cards)[number]) =>
      other.words[0]!.clue === one.title
    for (let index = 1; index < cards.length; index++) {
      expect(asksFor(cards[index]!, cards[index - 1]!)).toBe(false)
      expect(asksFor(cards[index - 1]!, cards[index]!)).toBe(false)
    }
  })

  it('have a key that tells the loop by number', () => {
    const { cards, answers } = chainFrom(asked)
    for (const { numbers } of answers!) {
      const [from, to] = numbers.map(number => cards[number - 1]!)
      expect(to!.words[0]!.clue).toBe(from!.title)
    }
  })

  it('tell a machine the loop in the order in which it is read', () => {
    const { cards, answerData } = chainFrom(asked)
    const loop = [answerData].flat()
    expect(loop).toHaveLength(cards.length)
    for (const [index, text] of loop.entries()) {
      const card = cards.find(each => each.words[0]!.text === text)!
      const next = cards.find(each => each.words[0]!.text === loop[(index + 1) % loop.length])!
      expect(card.title).toBe(next.words[0]!.clue)
    }
  })

  it('may ask by the plural', () => {
    const words = wordsByHand(
      { text: 'loaf', plural: { form: 'loaves', rule: 'by hand' } },
      { text: 'dish', plural: { form: 'dishes', rule: 'by hand' } },
      { text: 'bun', plural: { form: 'buns', rule: 'by hand' } },
    )
    const { cards } = chainFrom({ ...asked, words, ask: 'plural' })
    expect(cards.map(card => card.title).sort()).toEqual(['buns', 'dishes', 'loaves'])
  })
})

describe('a chain that cannot close', () => {
  it('is an error where two words share a prompt', () => {
    const words = [...clued(4), wordByHand({ text: 'twin', clue: 'clue 2' })]
    const outcome = chainCards({ ...asked, words })
    expect(outcome.ok).toBe(false)
    expect(outcome.problems[0]!.message).toBe(
      'the clue "clue 2" goes with "wordb" and "twin", which breaks the chain',
    )
  })

  it('is an error where fewer than three words have a prompt, with a warning for each that has none', () => {
    const outcome = chainCards({ ...asked, words: [...clued(2), wordByHand('mud')] })
    expect(outcome.problems.map(problem => problem.message)).toEqual([
      '"mud" has no clue',
      'a chain needs three words with a clue, and there are 2',
    ])
  })
})
