import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { matchingPairs, type PairsWanted } from '../../../src/sets/games/matching-pairs.js'
import type { PairSide } from '../../../src/sets/games/pair-sides.js'
import { promptsWith } from '../../../src/sets/games/prompt.js'
import type { Word } from '../../../src/words/word.js'
import { wordByHand, wordsByHand } from '../words-by-hand.js'

const place = { file: 'week.yaml', line: 14, column: 5 }
const plural = (form: string) => ({ form, rule: 'by hand' })
const marsh = wordsByHand(
  { text: 'marsh', plural: plural('marshes'), clue: 'wet, grassy land' },
  { text: 'reed', plural: plural('reeds'), clue: 'a tall water plant' },
  { text: 'leaf', plural: plural('leaves'), clue: 'the flat part of a plant' },
)
const atHand = { promptOf: promptsWith(() => true), hasPicture: () => false, isMarked: () => false }
const sides = (one: PairSide, other: PairSide): Pick<PairsWanted, 'sides'> => ({ sides: [one, other] })
const asked: PairsWanted = {
  words: marsh,
  ...sides('word', 'plural'),
  atHand,
  copies: 1,
  seed: 12,
  label: 'pairs',
  place,
}

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
    expect(pairsFrom({ ...asked, ...sides('word', 'clue') }).pairs[0]).toEqual(['marsh', 'wet, grassy land'])
  })

  it('pairs a word with itself', () => {
    expect(pairsFrom({ ...asked, ...sides('word', 'word') }).pairs[1]).toEqual(['reed', 'reed'])
  })

  it('pairs any two of what there is to show of a word', () => {
    expect(pairsFrom({ ...asked, ...sides('clue', 'plural') }).pairs[1]).toEqual([
      'a tall water plant',
      'reeds',
    ])
  })

  it('pairs a word with its number of sounds, one word for each number', () => {
    const words = wordsByHand(
      { text: 'marsh', sounds: 'm:M ar:AA,R sh:SH' },
      { text: 'ox', sounds: 'o:AA x:K' },
      { text: 'hut', sounds: 'h:HH u:AH t:T' },
    )
    const { pairs, outcome } = pairsFrom({ ...asked, words, ...sides('word', 'sounds') })
    expect(pairs).toEqual([
      ['3 sounds', 'marsh'],
      ['2 sounds', 'ox'],
    ])
    expect(outcome.problems).toMatchObject([
      {
        message: 'the number of sounds "3 sounds" goes with "marsh" and "hut"',
        advice: 'Children could not tell which is meant, so "hut" gets no card.',
      },
    ])
  })

  it('pairs verbs with their past form and their form in -ing, whatever the rule', () => {
    const words = wordsByHand(
      { text: 'hop', sounds: 'h:HH o:AA p:P', partsOfSpeech: ['verb'] },
      { text: 'run', sounds: 'r:R u:AH n:N', partsOfSpeech: ['verb'] },
      'reed',
    )
    const { pairs, outcome } = pairsFrom({ ...asked, words, ...sides('past form', 'ing form') })
    expect(pairs).toEqual([
      ['hopped', 'hopping'],
      ['ran', 'running'],
    ])
    expect(outcome.problems.map(problem => problem.message)).toEqual([
      '"reed" has no past form',
      '"reed" has no ing form',
    ])
  })

  it('takes pictures and marks from what is at hand', () => {
    const { cards, outcome } = pairsFrom({
      ...asked,
      ...sides('picture', 'marked word'),
      atHand: { ...atHand, hasPicture: ({ text }) => text !== 'leaf', isMarked: () => true },
    })
    expect(cards.map(({ shows, words }) => `${words[0]!.text} ${shows}`).toSorted()).toEqual([
      'marsh marks',
      'marsh picture',
      'reed marks',
      'reed picture',
    ])
    expect(outcome.problems.map(problem => problem.message)).toEqual(['"leaf" has no picture'])
  })

  it('has one right partner for every card, whatever words share', () => {
    const texts = fc.constantFrom('fen', 'fens', 'bog', 'bogs', 'a wet place', 'a nest')
    const words = fc.uniqueArray(fc.record({ text: texts, plural: texts.map(plural), clue: texts }), {
      selector: ({ text }) => text,
      minLength: 2,
    })
    const kinds = fc.constantFrom<PairSide>('word', 'plural', 'clue')
    fc.assert(
      fc.property(words, kinds, kinds, fc.integer(), (given, one, other, seed) => {
        const list = given.map(word => wordByHand(word))
        const outcome = matchingPairs({ ...asked, words: list, seed, ...sides(one, other) })
        if (!outcome.ok) return
        const { cards } = outcome.value
        const textOf = (card: (typeof cards)[number]) => card.title ?? card.words[0]!.text
        const said = (word: Word, side: PairSide) =>
          side === 'word' ? word.text : side === 'plural' ? word.plural!.form : word.clue
        const belong = (a: string, b: string) =>
          list.some(word => said(word, one) === a && said(word, other) === b) ||
          list.some(word => said(word, one) === b && said(word, other) === a)
        for (const card of cards) {
          const partners = cards.filter(each => each !== card && belong(textOf(card), textOf(each)))
          expect(partners.length).toBe(1)
        }
      }),
      { numRuns: 1000 },
    )
  })

  it('pairs words of the list that sound alike, whatever their stress marks', () => {
    const words = [
      { ...wordByHand('sea'), pronunciations: ['S IY1'] },
      { ...wordByHand('quay'), pronunciations: ['K IY1'] },
      { ...wordByHand('see'), pronunciations: ['S IY0'] },
      { ...wordByHand('key'), pronunciations: ['K IY1'] },
      { ...wordByHand('mud'), pronunciations: ['M AH1 D'] },
    ]
    const { pairs, outcome } = pairsFrom({ ...asked, words, ...sides('word', 'sound alike') })
    expect(pairs).toEqual([
      ['sea', 'see'],
      ['key', 'quay'],
    ])
    expect(outcome.problems.map(problem => problem.message)).toEqual([
      'no other word of the list sounds like "mud"',
    ])
  })

  it('pairs words that are known to sound the same though the lexicon writes them in two ways', () => {
    const words = ['flower', 'flour', 'sea', 'see', 'mud', 'frog'].map(text => ({
      ...wordByHand(text),
      pronunciations: [text],
    }))
    const { pairs, outcome } = pairsFrom({ ...asked, words, ...sides('word', 'sound alike') })
    expect(pairs).toEqual([
      ['flour', 'flower'],
      ['sea', 'see'],
    ])
    expect(outcome.problems.map(problem => problem.message)).toEqual([
      'no other word of the list sounds like "mud", "frog"',
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
      { numRuns: 1000 },
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
      'the words make one pair of word and plural, and a game needs two or more',
    )
  })

  it('are explained where they share their number of sounds', () => {
    const words = wordsByHand(
      { text: 'marsh', sounds: 'm:M ar:AA,R sh:SH' },
      { text: 'hut', sounds: 'h:HH u:AH t:T' },
    )
    const outcome = matchingPairs({ ...asked, words, ...sides('sounds', 'word') })
    expect(outcome.problems.at(-1)!.advice).toBe(
      'The 2 words have one number of sounds, and each makes one pair. Add words, or choose another kind of pair.',
    )
  })

  it('are named where two share a partner', () => {
    const twin = wordByHand({ text: 'fen', plural: plural('fens'), clue: 'wet, grassy land' })
    const { outcome } = pairsFrom({ ...asked, words: [...marsh, twin], ...sides('word', 'clue') })
    expect(outcome.problems[0]!.message).toBe('the clue "wet, grassy land" goes with "marsh" and "fen"')
  })
})
