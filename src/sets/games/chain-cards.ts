/** Chain cards: each card answers one prompt and asks the next, round in one closed loop. */
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { CardSet } from '../card-set.js'
import { generatorFor, shuffle } from '../random.js'
import { shuffleApart } from './keep-apart.js'
import { type PromptKind, promptFor, sharedPrompts } from './prompt.js'

export interface ChainWanted {
  readonly words: readonly Word[]
  /** What a card asks for the next word by. */
  readonly ask: PromptKind
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/**
 * A card's word answers the card before it, its `title` is the prompt of the card after it, and the last leads back
 * to the first, so that a class may begin anywhere. Numbers follow another order, in which no card lies beside the
 * one that it asks for. Words without a prompt are left out with a warning; two words of one prompt would break the
 * loop into two, and are an error.
 */
export function chainCards(wanted: ChainWanted): Outcome<CardSet> {
  const { words, ask, copies, seed, label } = wanted
  const asked = words.filter(word => promptFor(word, ask) !== undefined)
  const problems = [
    ...words.filter(word => !asked.includes(word)).map(word => noPrompt(word, wanted)),
    ...broken(wanted),
    ...(asked.length < 3 ? [tooShort(wanted, asked.length)] : []),
  ]
  if (problems.some(problem => problem.severity === 'error')) return failWith(problems)

  const generator = generatorFor(seed, `${label}: chain`)
  const loop = shuffle(asked, generator).map((word, step, round) => {
    const next = round[(step + 1) % round.length]!
    return { step, word, title: promptFor(next, ask)!, nextStep: (step + 1) % round.length }
  })
  const laid = shuffleApart(loop, (a, b) => a.nextStep === b.step, generator)
  const numberOf = new Map(laid.map((link, index) => [link.step, index + 1]))
  const set: CardSet = {
    cards: Array.from({ length: copies }, (_, copy) =>
      laid.map(({ word, title }, index) => ({
        id: cardId({ prefix: 'card', number: index + 1, copy: copy + 1, of: laid.length }),
        kind: 'card' as const,
        number: index + 1,
        copy: copy + 1,
        words: [word],
        title,
      })),
    ).flat(),
    answerData: loop.map(({ word }) => word.text),
    answers: loop.map(({ step, word, title, nextStep }) => ({
      text: `${word.text}, then ${title}: ${loop[nextStep]!.word.text}`,
      numbers: [numberOf.get(step)!, numberOf.get(nextStep)!],
    })),
  }
  return succeed(set, problems)
}

function noPrompt(word: Word, { ask, place }: ChainWanted): Problem {
  return warningAt(place, `"${word.text}" has no ${ask}`, `It gets no card; give it a ${ask} in the words.`)
}

function broken({ words, ask, place }: ChainWanted): readonly Problem[] {
  return [...sharedPrompts(words, ask)].map(([prompt, sharers]) =>
    errorAt(
      place,
      `the ${ask} "${prompt}" goes with ${sharers.map(word => `"${word.text}"`).join(' and ')}, which breaks the chain`,
      `Give each its own ${ask}, or leave one of them out.`,
    ),
  )
}

function tooShort({ ask, place }: ChainWanted, count: number): Problem {
  return errorAt(
    place,
    `a chain needs three words with a ${ask}, and there ${count === 1 ? 'is one' : `are ${count}`}`,
    `Give more words a ${ask}.`,
  )
}
