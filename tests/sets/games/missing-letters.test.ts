import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type GapWord, type MissingWanted, missingLetters } from '../../../src/sets/games/missing-letters.js'
import { wordsByHand } from '../words-by-hand.js'

/** `mar[sh]` and `c[a]k[e]`: the letters in brackets are left out. */
function gapped(...texts: readonly string[]): readonly GapWord[] {
  return texts.map(text => {
    const [word] = wordsByHand(text.replace(/[[\]]/g, ''))
    const ranges = [...text.matchAll(/\[(\w+)\]/g)].map((match, index) => {
      const start = match.index - 2 * index
      return { start, end: start + match[1]!.length }
    })
    return { word: word!, gap: ranges.length === 0 ? undefined : { ranges }, alike: ['ch', 'th', 'ng'] }
  })
}

const asked: MissingWanted = {
  words: gapped('mar[sh]', '[th]read', 'du[ck]', 'wi[ng]', 'c[a]k[e]'),
  choices: 3,
  isWord: text => ['march', 'with', 'witch', 'wish'].includes(text),
  isUnfit: text => text === 'dung',
  isTold: () => false,
  copies: 1,
  seed: 3,
  label: 'gaps',
  place: { file: 'by hand', line: 1, column: 1 },
}

function cardsFrom(wanted: MissingWanted) {
  const set = missingLetters(wanted)
  if (!set.ok) throw new Error(set.problems.map(({ message }) => message).join())
  return { ...set.value, problems: set.problems }
}

describe('missing letters', () => {
  it('leave a line for each letter, at both ends of a split pattern', () => {
    expect(cardsFrom(asked).cards.map(card => card.title)).toEqual([
      'mar__',
      '__read',
      'du__',
      'wi__',
      'c_k_',
    ])
  })

  it('are told to a machine with the whole word', () => {
    expect(cardsFrom(asked).answerData).toContainEqual({ prompt: 'mar__', answer: 'marsh' })
  })

  it('have the right letters among the choices, in no telling place', () => {
    fc.assert(
      fc.property(fc.integer(), seed => {
        const { cards } = cardsFrom({ ...asked, seed })
        const rights = ['sh', 'th', 'ck', 'ng']
        const isRight = (choices: readonly string[], right: string) =>
          choices.includes(right) && choices.length === 3 && choices.join() === choices.toSorted().join()
        expect(rights.filter((right, index) => !isRight(cards[index]!.choices!, right))).toEqual([])
      }),
      { numRuns: 1000 },
    )
  })

  it('never offer letters that spell another word, or one that a child should not read', () => {
    for (let seed = 0; seed < 200; seed++) {
      const [marsh, , duck, wing] = cardsFrom({ ...asked, seed }).cards
      expect(marsh!.choices).not.toContain('ch')
      expect(duck!.choices).not.toContain('ng')
      for (const letters of ['th', 'ch', 'sh'])
        if (letters !== 'ch') expect(wing!.choices).not.toContain(letters)
    }
  })

  it('offer letters of another word where a clue tells which is meant', () => {
    const alone = { ...asked, words: gapped('mar[sh]') }
    const offered = Array.from(
      { length: 50 },
      (_, seed) => cardsFrom({ ...alone, seed, isTold: () => true }).cards[0]!.choices!,
    )
    expect(offered.flat()).toContain('ch')
  })

  it('offer none to a card for which there are none, and say so', () => {
    const { cards, problems } = cardsFrom(asked)
    expect(cards[4]!.choices).toEqual([])
    expect(problems.map(({ message }) => message)).toEqual([
      'the card of "cake" has no letters to choose from: whatever else goes into its gap spells another word',
    ])
    expect(cardsFrom({ ...asked, choices: 0 }).problems).toEqual([])
  })

  it('leave out a word of which nothing is marked, with a warning', () => {
    const { cards, problems } = cardsFrom({ ...asked, words: gapped('pond', 'mar[sh]', 'fi[sh]') })
    expect(cards).toHaveLength(2)
    expect(problems[0]!.message).toBe('"pond" has no letters that the plan marks: it gets no card')
  })

  it('are not made where nothing is marked at all', () => {
    const set = missingLetters({ ...asked, words: gapped('pond') })
    expect(set.ok).toBe(false)
    expect(set.problems.at(-1)!.message).toMatch(/there are none to leave out/)
  })
})
