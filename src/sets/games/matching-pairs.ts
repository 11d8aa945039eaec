/** Matching pairs: two cards that belong together, to be found among all of them. */
import { failWith, succeed } from '../../outcomes.js'
import type { Accent } from '../../plan/plan.js'
import { errorAt, type Outcome, type Problem, warningAt } from '../../problems.js'
import { homophonesOf } from '../../words/homophones/homophones.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor } from '../random.js'
import { shuffleApart } from './keep-apart.js'
import type { ShownSide } from './pair-sides.js'
import { apart, type MadePairs, type Pair, pairsOfSides, type SidesWanted } from './pairs-apart.js'

export interface PairsWanted extends Omit<SidesWanted, 'leftOut'> {
  /** As the class speaks; words sound alike in it. */
  readonly accent?: Accent | undefined
  readonly copies: number
  readonly seed: number
  readonly label: string
}

/**
 * Cards in an order in which no pair lies side by side; numbers follow that order, so that they tell no pair. No card
 * has two right partners: a word that makes no pair, or one that another has made already, is left out with a warning.
 * Fewer than two pairs are an error.
 */
export function matchingPairs(wanted: PairsWanted): Outcome<CardSet> {
  const sides = { ...wanted, leftOut: { one: 'gets no card', several: 'get no card' } }
  const made = wanted.sides.includes('sound alike') ? soundAlikes(wanted) : pairsOfSides(sides)
  const { pairs, problems: ambiguous } = apart(made.pairs, sides)
  const problems = [...made.problems, ...ambiguous]
  if (pairs.length < 2) return failWith([...problems, tooFewPairs(wanted, pairs.length)])

  const generator = generatorFor(wanted.seed, `${wanted.label}: pairs`)
  const halves = pairs.flatMap(({ sides }, pair) => sides.map(side => ({ pair, side })))
  const laid = shuffleApart(halves, (a, b) => a.pair === b.pair, generator)
  const cardOf = ({ word, title, shows }: ShownSide, index: number, copy: number): Card => ({
    id: cardId({ prefix: 'card', number: index + 1, copy, of: laid.length }),
    kind: 'card',
    number: index + 1,
    copy,
    words: word === undefined ? [] : [word],
    ...(title === undefined ? {} : { title }),
    ...(shows === undefined ? {} : { shows }),
  })
  const set: CardSet = {
    cards: Array.from({ length: wanted.copies }, (_, copy) =>
      laid.map(({ side }, index) => cardOf(side, index, copy + 1)),
    ).flat(),
    answerData: pairs.map(({ sides }) => sides.map(({ text }) => text)),
    answers: pairs.map(({ sides: [one, other] }, pair) => ({
      text: `${one.text} – ${other.text}`,
      numbers: laid.flatMap((half, index) => (half.pair === pair ? [index + 1] : [])),
    })),
  }
  return succeed(set, problems)
}

/**
 * Each word with the next of the list that is known to sound the same, or has its first pronunciation, stress apart; no
 * word in two pairs.
 */
function soundAlikes({ words, place, accent }: PairsWanted): MadePairs {
  const taken = new Set<Word>()
  const heard = (word: Word): string => (word.pronunciations[0] ?? '').replace(/\d/g, '')
  const pairs = words.flatMap((word, index): Pair[] => {
    if (taken.has(word) || heard(word) === '') return []
    const alike = homophonesOf(word.text.toLowerCase(), accent)
    const partner = words
      .slice(index + 1)
      .find(
        other =>
          !taken.has(other) && (heard(other) === heard(word) || alike.includes(other.text.toLowerCase())),
      )
    if (partner === undefined) return []
    taken.add(word).add(partner)
    return [
      {
        word,
        sides: [
          { text: word.text, word },
          { text: partner.text, word: partner },
        ],
      },
    ]
  })
  const single = words.filter(word => !taken.has(word))
  const isOne = single.length === 1
  const problems =
    single.length === 0
      ? []
      : [
          warningAt(
            place,
            `no other word of the list sounds like ${single.map(({ text }) => `"${text}"`).join(', ')}`,
            isOne
              ? 'It gets no card; add its partner to the words.'
              : 'They get no card; add their partners to the words.',
          ),
        ]
  return { pairs, problems }
}

function tooFewPairs({ place, sides: [one, other], words }: PairsWanted, count: number): Problem {
  const numbers = new Set(words.map(({ soundCount }) => soundCount)).size
  const why =
    (one === 'sounds' || other === 'sounds') && numbers < words.length
      ? `The ${words.length} words have ${numbers === 1 ? 'one number' : `${numbers} different numbers`} of sounds, and each makes one pair. `
      : ''
  return errorAt(
    place,
    `the words make ${count === 0 ? 'no pair' : 'one pair'} of ${one} and ${other}, and a game needs two or more`,
    `${why}Add words, or choose another kind of pair.`,
  )
}
