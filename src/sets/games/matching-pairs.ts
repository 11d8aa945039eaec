/** Matching pairs: two cards that belong together, to be found among all of them. */
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor } from '../random.js'
import { shuffleApart } from './keep-apart.js'
import { namedWords } from './named-words.js'
import {
  type PairSide,
  type ShownSide,
  shownSide,
  sideNoun,
  sideWording,
  type WordAtHand,
} from './pair-sides.js'

export interface PairsWanted {
  readonly words: readonly Word[]
  /** What one card of a pair shows, and what the other. */
  readonly sides: readonly [PairSide, PairSide]
  readonly atHand: WordAtHand
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/**
 * Cards in an order in which no pair lies side by side; numbers follow that order, so that they tell no pair. No card
 * has two right partners: a word that makes no pair, or one that another has made already, is left out with a warning.
 * Fewer than two pairs are an error.
 */
export function matchingPairs(wanted: PairsWanted): Outcome<CardSet> {
  const made = wanted.sides.includes('sound alike') ? soundAlikes(wanted) : pairsOfSides(wanted)
  const { pairs, problems: leftOut } = apart(made.pairs, wanted)
  const problems = [...made.problems, ...leftOut]
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

interface Pair {
  /** The word of the list that it is made for. */
  readonly word: Word
  readonly sides: readonly [ShownSide, ShownSide]
}

interface MadePairs {
  readonly pairs: readonly Pair[]
  readonly problems: readonly Problem[]
}

function pairsOfSides({ words, sides, atHand, place }: PairsWanted): MadePairs {
  const [one, other] = sides
  const lacking = new Map<PairSide, Word[]>()
  const shown = (word: Word, side: PairSide): ShownSide | undefined => {
    const found = side === 'sound alike' ? undefined : shownSide(word, side, atHand)
    if (found === undefined) lacking.set(side, [...(lacking.get(side) ?? []), word])
    return found
  }
  const pairs = words.flatMap((word): Pair[] => {
    const first = shown(word, one)
    const second = one === other ? first : shown(word, other)
    return first === undefined || second === undefined ? [] : [{ word, sides: [first, second] }]
  })
  return { pairs, problems: [...lacking].map(([side, without]) => noSide(side, without, place)) }
}

/** Each word with the next of the list that has its first pronunciation, stress apart, no word in two pairs. */
function soundAlikes({ words, place }: PairsWanted): MadePairs {
  const taken = new Set<Word>()
  const heard = (word: Word): string => (word.pronunciations[0] ?? '').replace(/\d/g, '')
  const pairs = words.flatMap((word, index): Pair[] => {
    if (taken.has(word) || heard(word) === '') return []
    const partner = words.slice(index + 1).find(other => !taken.has(other) && heard(other) === heard(word))
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
  const problems = words
    .filter(word => !taken.has(word))
    .map(word =>
      warningAt(
        place,
        `no other word of the list sounds like "${word.text}"`,
        'It gets no card; add its partner to the words.',
      ),
    )
  return { pairs, problems }
}

/**
 * The pairs without those of which a card would be right beside a card of an earlier pair: it reads as that card does, or
 * some word of the list has both.
 */
function apart(made: readonly Pair[], { sides: [one, other], place }: PairsWanted): MadePairs {
  const belongsTo = new Map<string, Map<string, Word>>()
  const link = (from: string, to: string, word: Word) =>
    belongsTo.set(from, (belongsTo.get(from) ?? new Map<string, Word>()).set(to, word))
  for (const { word, sides } of made) {
    link(sides[0].text, sides[1].text, word)
    link(sides[1].text, sides[0].text, word)
  }
  const ownerOf = new Map<string, Word>()
  /** The word whose card stands there already, or by which such a card would belong to this text. */
  const rivals: readonly ((text: string) => Word | undefined)[] = [
    text => ownerOf.get(text),
    text => [...belongsTo.get(text)!].find(([to]) => ownerOf.has(to))?.[1],
  ]
  const shared = new Map<string, { readonly side: PairSide; readonly words: Word[] }>()
  const pairs = made.filter(({ word, sides }) => {
    for (const rival of rivals) {
      const index = sides.findIndex(({ text }) => rival(text) !== undefined)
      if (index === -1) continue
      const { text } = sides[index]!
      const known = shared.get(text) ?? { side: index === 0 ? one : other, words: [rival(text)!] }
      shared.set(text, { ...known, words: [...known.words, word] })
      return false
    }
    for (const { text } of sides) ownerOf.set(text, word)
    return true
  })
  const problems = [...shared].map(([text, { side, words }]) =>
    warningAt(
      place,
      `the ${sideNoun(side)} "${text}" goes with ${namedWords([...new Set(words)])}`,
      `Children could not tell which card is meant, so ${namedWords(words.slice(1))} ${words.length === 2 ? 'gets' : 'get'} no card.`,
    ),
  )
  return { pairs, problems }
}

function noSide(side: PairSide, words: readonly Word[], place: Place): Problem {
  const { lacks, advice } = sideWording(side)
  const [has, gets] = words.length === 1 ? ['has', 'It gets'] : ['have', 'They get']
  return warningAt(place, `${namedWords(words)} ${has} no ${lacks}`, `${gets} no card. ${advice}`)
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
