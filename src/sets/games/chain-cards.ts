/** Chain cards: each card answers the one before it and asks for the next, round in a loop where it can. */
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { answerOfEach } from '../answer-data.js'
import { cardId } from '../card-id.js'
import type { CardSet } from '../card-set.js'
import { type Generator, generatorFor, shuffle } from '../random.js'
import { isPrompt, type LinkKind, linkBetween } from './chain-links.js'
import { shuffleApart } from './keep-apart.js'
import { longestChain } from './longest-chain.js'
import { namedWords } from './named-words.js'
import { type PromptKind, type PromptOf, sharedPrompts } from './prompt.js'

export interface ChainWanted {
  readonly words: readonly Word[]
  /** What a card asks for the next word by. */
  readonly ask: LinkKind
  readonly promptOf: PromptOf
  /** Into how many loops the words are dealt, each for children of its own. */
  readonly loops: number
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/** Cards in the order in which they lead to one another. */
interface Chain {
  readonly words: readonly Word[]
  /** Whether the last leads back to the first, so that a class may begin anywhere. */
  readonly closed: boolean
}

/** A chain of two is over before it has begun. */
const FEWEST = 3
/** What is searched for an order, not merely shuffled. */
const MOST_SEARCHED = 200

/** What the last card of a chain says that does not close. */
export const END_OF_CHAIN = 'the end'

/**
 * A card's word answers the card before it, its `title` leads to the card after it. Numbers follow another order, in
 * which no card lies beside the one that it leads to; those of a loop follow those of the loop before it. Words that
 * cannot be in the chain are left out with a warning; two words of one prompt would break a loop into two, and are an
 * error.
 */
export function chainCards(wanted: ChainWanted): Outcome<CardSet> {
  const { ask, copies, seed, label } = wanted
  const generator = generatorFor(seed, `${label}: chain`)
  const made = isPrompt(ask) ? loopsOfPrompts(wanted, ask, generator) : chainOfLinks(wanted, generator)
  if (!made.ok) return made
  const chains = made.value
  const laid = chains.map(chain => layOut(chain, wanted, generator))
  const of = laid.reduce((sum, { links }) => sum + links.length, 0)
  const firstNumbers = laid.map((_, index) =>
    laid.slice(0, index).reduce((sum, { links }) => sum + links.length, 1),
  )
  const numberOf = (loop: number, step: number) =>
    firstNumbers[loop]! + laid[loop]!.links.findIndex(link => link.step === step)
  const numbered = laid.flatMap(({ links }) => links)
  const set: CardSet = {
    cards: Array.from({ length: copies }, (_, copy) =>
      numbered.map(({ word, title }, index) => ({
        id: cardId({ prefix: 'card', number: index + 1, copy: copy + 1, of }),
        kind: 'card' as const,
        number: index + 1,
        copy: copy + 1,
        words: [word],
        title,
      })),
    ).flat(),
    answerData: answerOfEach(chains.map(({ words }) => words.map(({ text }) => text))),
    answers: laid.flatMap(({ links }, loop) =>
      links
        .toSorted((a, b) => a.step - b.step)
        .map(({ step, word, title, nextStep }) => ({
          text:
            nextStep === undefined
              ? `${word.text}: ${title}`
              : `${word.text}, then ${title}: ${chains[loop]!.words[nextStep]!.text}`,
          numbers: [numberOf(loop, step), ...(nextStep === undefined ? [] : [numberOf(loop, nextStep)])],
        })),
    ),
    notes: [
      ...loopNotes(firstNumbers, of),
      ...(chains.some(({ closed }) => !closed) ? [openNote(chains)] : []),
    ],
  }
  return succeed(set, made.problems)
}

interface Link {
  readonly step: number
  readonly word: Word
  readonly title: string
  readonly nextStep: number | undefined
}

function layOut(
  { words, closed }: Chain,
  { ask, promptOf }: ChainWanted,
  generator: Generator,
): { readonly links: readonly Link[] } {
  const links = words.map((word, step): Link => {
    const isLast = step === words.length - 1
    if (isLast && !closed) return { step, word, title: END_OF_CHAIN, nextStep: undefined }
    const nextStep = isLast ? 0 : step + 1
    const next = words[nextStep]!
    const title = isPrompt(ask) ? promptOf(next, ask) : linkBetween(word, next, ask, words)
    return { step, word, title: title!, nextStep }
  })
  return { links: shuffleApart(links, (a, b) => a.nextStep === b.step, generator) }
}

/** Any order of words with a prompt closes; they are dealt in turn, so that the loops are as long as one another. */
function loopsOfPrompts(
  wanted: ChainWanted,
  ask: PromptKind,
  generator: Generator,
): Outcome<readonly Chain[]> {
  const { words, loops, promptOf } = wanted
  const asked = words.filter(word => promptOf(word, ask) !== undefined)
  const without = words.filter(word => !asked.includes(word))
  const problems = [
    ...(without.length === 0 ? [] : [noPrompt(without, wanted)]),
    ...broken(wanted, ask),
    ...(asked.length < FEWEST * loops ? [tooFew(wanted, asked.length)] : []),
  ]
  if (problems.some(problem => problem.severity === 'error')) return failWith(problems)
  const shuffled = shuffle(asked, generator)
  const chains = Array.from({ length: loops }, (_, loop) => ({
    words: shuffled.filter((_, index) => index % loops === loop),
    closed: true,
  }))
  return succeed(chains, problems)
}

/** The longest chain among the words. */
function chainOfLinks(wanted: ChainWanted, generator: Generator): Outcome<readonly Chain[]> {
  const { words, ask, loops, place } = wanted
  if (isPrompt(ask)) throw new Error('prompts need no search')
  if (loops > 1)
    return failWith([
      errorAt(
        place,
        `a chain by ${ask} is one, not ${loops} loops`,
        'Leave "loops" out, or ask by clue, plural, past form or ing form.',
      ),
    ])
  if (words.length > MOST_SEARCHED)
    return failWith([
      errorAt(
        place,
        `a chain by ${ask} is searched among ${MOST_SEARCHED} words, and there are ${words.length}`,
        'Give the item fewer words, or ask by clue or plural.',
      ),
    ])
  const { order, closed } = longestChain(
    words.length,
    (from, to) => linkBetween(words[from]!, words[to]!, ask) !== undefined,
    generator,
  )
  if (order.length < FEWEST) return failWith([noChain(wanted, order.length)])
  const left = words.filter((_, index) => !order.includes(index))
  const problems = left.length === 0 ? [] : [notInChain(left, wanted)]
  return succeed([{ words: order.map(index => words[index]!), closed }], problems)
}

function loopNotes(firstNumbers: readonly number[], of: number): readonly string[] {
  if (firstNumbers.length === 1) return []
  const spans = firstNumbers.map((first, loop) => `${first} to ${(firstNumbers[loop + 1] ?? of + 1) - 1}`)
  return [`Each loop is played by itself: cards ${spans.join(', cards ')}.`]
}

function openNote([chain]: readonly Chain[]): string {
  const words = chain!.words
  return `The chain begins with “${words[0]!.text}” and ends with “${words.at(-1)!.text}”.`
}

function noPrompt(without: readonly Word[], { ask, place }: ChainWanted): Problem {
  const [has, gets, them] = without.length === 1 ? ['has', 'It gets', 'it'] : ['have', 'They get', 'each']
  const advice =
    ask === 'past form' || ask === 'ing form' ? 'only verbs have one.' : `give ${them} a ${ask} in the words.`
  return warningAt(place, `${namedWords(without)} ${has} no ${ask}`, `${gets} no card; ${advice}`)
}

function broken({ words, place, promptOf }: ChainWanted, ask: PromptKind): readonly Problem[] {
  return [...sharedPrompts(words, ask, promptOf)].map(([prompt, sharers]) =>
    errorAt(
      place,
      `the ${ask} "${prompt}" goes with ${namedWords(sharers)}, which breaks the chain`,
      `Give each its own ${ask}, or leave one of them out.`,
    ),
  )
}

function tooFew({ ask, place, loops }: ChainWanted, count: number): Problem {
  const need = loops === 1 ? 'a chain needs three words' : `${loops} loops need ${FEWEST * loops} words`
  return errorAt(
    place,
    `${need} with ${article(ask)} ${ask}, and there ${count === 1 ? 'is one' : `are ${count}`}`,
    `Give more words ${article(ask)} ${ask}${loops === 1 ? '' : ', or ask for fewer loops'}.`,
  )
}

function article(ask: LinkKind): string {
  return ask === 'ing form' ? 'an' : 'a'
}

function notInChain(left: readonly Word[], { ask, place }: ChainWanted): Problem {
  const how =
    ask === 'last letters'
      ? 'begins with the last letters of one card and ends with the first of another'
      : 'differs from another by one sound'
  return warningAt(
    place,
    `${namedWords(left)} ${left.length === 1 ? 'has' : 'have'} no place in the chain by ${ask}`,
    `${left.length === 1 ? 'It gets' : 'They get'} no card; add a word that ${how}.`,
  )
}

function noChain({ ask, place }: ChainWanted, count: number): Problem {
  return errorAt(
    place,
    `a chain needs three words, and by ${ask} ${count < 2 ? 'no word leads to another' : 'only two of the list follow one another'}`,
    'Add words that fit between them, or ask by clue or plural.',
  )
}
