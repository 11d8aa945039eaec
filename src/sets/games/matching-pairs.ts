/** Matching pairs: two cards that belong together, to be found among all of them. */
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor } from '../random.js'
import { shuffleApart } from './keep-apart.js'
import { type PromptKind, promptFor, sharedPrompts } from './prompt.js'

/** What makes a pair: the word twice, the word and its plural or clue, or two words of the list that sound alike. */
export type PairKind = 'same word' | 'sound alike' | PromptKind

export interface PairsWanted {
  readonly words: readonly Word[]
  readonly pair: PairKind
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/**
 * Cards in an order in which no pair lies side by side; numbers follow that order, so that they tell no pair. A word
 * that makes no pair is left out with a warning; fewer than two pairs are an error.
 */
export function matchingPairs(wanted: PairsWanted): Outcome<CardSet> {
  const pairs = pairsOf(wanted)
  const paired = new Set(
    pairs.flatMap(pair => [pair.word, ...(pair.partner === undefined ? [] : [pair.partner])]),
  )
  const unpaired = wanted.words.filter(word => !paired.has(word))
  const problems = [...unpaired.map(word => noPair(word, wanted)), ...ambiguities(wanted)]
  if (pairs.length < 2) return failWith([...problems, tooFewPairs(wanted, pairs.length)])

  const generator = generatorFor(wanted.seed, `${wanted.label}: pairs`)
  const halves = pairs.flatMap((pair, index): Half[] => [
    { pair: index, words: [pair.word] },
    pair.partner === undefined
      ? { pair: index, words: [], title: pair.title }
      : { pair: index, words: [pair.partner] },
  ])
  const laid = shuffleApart(halves, (a, b) => a.pair === b.pair, generator)
  const cardOf = ({ words, title }: Half, index: number, copy: number): Card => ({
    id: cardId({ prefix: 'card', number: index + 1, copy, of: laid.length }),
    kind: 'card',
    number: index + 1,
    copy,
    words,
    ...(title === undefined ? {} : { title }),
  })
  const set: CardSet = {
    cards: Array.from({ length: wanted.copies }, (_, copy) =>
      laid.map((half, index) => cardOf(half, index, copy + 1)),
    ).flat(),
    answerData: pairs.map(({ word, partner, title }) => [word.text, partner?.text ?? title]),
    answers: pairs.map(({ word, partner, title }, pair) => ({
      text: `${word.text} – ${partner?.text ?? title}`,
      numbers: laid.flatMap((half, index) => (half.pair === pair ? [index + 1] : [])),
    })),
  }
  return succeed(set, problems)
}

/** A word with another word, or with a text. */
interface Pair {
  readonly word: Word
  readonly partner?: Word
  readonly title: string
}

interface Half {
  readonly pair: number
  readonly words: readonly Word[]
  readonly title?: string
}

function pairsOf({ words, pair }: PairsWanted): readonly Pair[] {
  switch (pair) {
    case 'same word':
      return words.map(word => ({ word, partner: word, title: word.text }))
    case 'sound alike':
      return soundAlikes(words)
    default:
      return words.flatMap(word => {
        const title = promptFor(word, pair)
        return title === undefined ? [] : [{ word, title }]
      })
  }
}

/** Each word with the next of the list that has its first pronunciation, stress apart, no word in two pairs. */
function soundAlikes(words: readonly Word[]): readonly Pair[] {
  const taken = new Set<Word>()
  const heard = (word: Word): string => (word.pronunciations[0] ?? '').replace(/\d/g, '')
  return words.flatMap((word, index): Pair[] => {
    if (taken.has(word) || heard(word) === '') return []
    const partner = words.slice(index + 1).find(other => !taken.has(other) && heard(other) === heard(word))
    if (partner === undefined) return []
    taken.add(word).add(partner)
    return [{ word, partner, title: partner.text }]
  })
}

function noPair(word: Word, { pair, place }: PairsWanted): Problem {
  return pair === 'sound alike'
    ? warningAt(
        place,
        `no other word of the list sounds like "${word.text}"`,
        'It gets no card; add its partner to the words.',
      )
    : warningAt(place, `"${word.text}" has no ${pair}`, `It gets no card; give it a ${pair} in the words.`)
}

function ambiguities({ words, pair, place }: PairsWanted): readonly Problem[] {
  if (pair === 'same word' || pair === 'sound alike') return []
  return [...sharedPrompts(words, pair)].map(([prompt, sharers]) =>
    warningAt(
      place,
      `the ${pair} "${prompt}" goes with ${sharers.map(word => `"${word.text}"`).join(' and ')}`,
      `Children cannot tell which card is meant; give each its own ${pair}.`,
    ),
  )
}

function tooFewPairs({ place, pair }: PairsWanted, count: number): Problem {
  return errorAt(
    place,
    `the words make ${count === 0 ? 'no pair' : 'one pair'} by "${pair}", and a game needs two or more`,
    'Add words, or choose another kind of pair.',
  )
}
