import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { matchingPairs, type PairsWanted } from '../../../src/sets/games/matching-pairs.js'
import { wordByHand, wordsByHand } from '../words-by-hand.js'

const place = { file: 'week.yaml', line: 14, column: 5 }
const plural = (form: string) => ({ form, rule: 'by hand' })
const marsh = wordsByHand(
  { text: 'marsh', plural: plural('marshes'), clue: 'wet, grassy land' },
  { text: 'reed', plural: plural('reeds'), clue: 'a tall water plant' },
  { text: 'leaf', plural: plural('leaves'), clue: 'the flat part of a plant' },
)
const asked: PairsWanted = { words: marsh, pair: 'plural', copies: 1, seed: 12, label: 'pairs', place }

function pairsFrom(wanted: PairsWanted) {
  const outcome = matchingPairs(wanted)
  if (!outcome.ok) throw new Error(outcome.problems.map(problem => problem.message).join('; '))
  const { cards, answers } = outcome.value
  const textOf = (number: number) => {
    const card = cards[number - 1]!
    return card.title ?? card.words[0]!.text
  }
  return { cards, pairs: answers!.map(answer => answer.numbers.map(textOf).sort()), outcome }
}

describe('matching pairs', () => {
  it('pairs a word with its plural', () => {
    expect(pairsFrom(asked).pairs).toEqual([
      ['marsh', 'marshes'],
      ['reed', 'reeds'],
      ['leaf', 'leaves'],
    ])
  })

  it('tells a machine the pairs', () => {
    expect(pairsFrom(asked).outcome.value.answerData).toEqual([
      ['marsh', 'marshes'],
      ['reed', 'reeds'],
      ['leaf', 'leaves'],
    ])
  })

  it('pairs a word with its clue', () => {
    expect(pairsFrom({ ...asked, pair: 'clue' }).pairs[0]).toEqual(['marsh', 'wet, grassy land'])
  })

  it('pairs a word with itself', () => {
    expect(pairsFrom({ ...asked, pair: 'same word' }).pairs[1]).toEqual(['reed', 'reed'])
  })

  it('pairs words of the list that sound alike, whatever their stress marks', () => {
    const words = [
      { ...wordByHand('sea'), pronunciations: ['S IY1'] },
      { ...wordByHand('quay'), pronunciations: ['K IY1'] },
      { ...wordByHand('see'), pronunciations: ['S IY0'] },
      { ...wordByHand('key'), pronunciations: ['K IY1'] },
      { ...wordByHand('mud'), pronunciations: ['M AH1 D'] },
    ]
    const { pairs, outcome } = pairsFrom({ ...asked, words, pair: 'sound alike' })
    expect(pairs).toEqual([
      ['sea', 'see'],
      ['key', 'quay'],
    ])
    expect(outcome.problems.map(problem => problem.message)).toEqual([
      'no other word of the list sounds like "mud"',
    ])
  })

  it('lays no pair side by side, so that neither place nor number tells it', () => {
    fc.assert(
      fc.property(fc.integer(), seed => {
        const outcome = matchingPairs({ ...asked, seed })
        if (!outcome.ok) throw new Error('three words make three pairs')
        for (const { numbers } of outcome.value.answers!) {
          expect(Math.abs(numbers[0]! - numbers[1]!)).toBeGreaterThan(1)
        }
      }),
    )
  })

  it('copies the whole set', () => {
    const { cards } = pairsFrom({ ...asked, copies: 2 })
    expect(cards.map(card => card.copy)).toEqual([1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2])
    expect(new Set(cards.map(card => card.id)).size).toBe(12)
  })
})

describe('words that make no pair', () => {
  it('are left out with a warning', () => {
    const { cards, outcome } = pairsFrom({ ...asked, words: [...marsh, wordByHand('damp')] })
    expect(cards).toHaveLength(6)
    expect(outcome.problems).toEqual([
      {
        severity: 'warning',
        place,
        message: '"damp" has no plural',
        advice: expect.stringContaining('no card'),
      },
    ])
  })

  it('count among them nouns that are not counted', () => {
    const mud = wordByHand({ text: 'mud', plural: { form: 'mud', rule: 'not counted: stays the same' } })
    const { outcome } = pairsFrom({ ...asked, words: [...marsh, mud] })
    expect(outcome.problems.map(problem => problem.message)).toEqual(['"mud" has no plural'])
  })

  it('are an error where no two pairs are left', () => {
    const outcome = matchingPairs({ ...asked, words: marsh.slice(0, 1) })
    expect(outcome.ok).toBe(false)
    expect(outcome.problems.at(-1)!.message).toBe(
      'the words make one pair by "plural", and a game needs two or more',
    )
  })

  it('are named where two share a partner', () => {
    const twin = wordByHand({ text: 'fen', plural: plural('fens'), clue: 'wet, grassy land' })
    const { outcome } = pairsFrom({ ...asked, words: [...marsh, twin], pair: 'clue' })
    expect(outcome.problems[0]!.message).toBe('the clue "wet, grassy land" goes with "marsh" and "fen"')
  })
})
