/** Missing letters: words with a gap where their marked letters were, and letters to choose from. */
import { failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor, shuffle } from '../random.js'

/** Letters of a word that are left out: one range of text indices, or the two ends of a split pattern. */
export interface Gap {
  readonly ranges: readonly { readonly start: number; readonly end: number }[]
}

export interface GapWord {
  readonly word: Word
  /** Undefined where nothing of it is marked. */
  readonly gap: Gap | undefined
  /** Other letters of the same pattern, the commonest first, to choose from where the list's own do not suffice. */
  readonly alike: readonly string[]
}

export interface MissingWanted {
  readonly words: readonly GapWord[]
  /** How many letters to choose from on each card; 0 for none. */
  readonly choices: number
  /** Whether it is a word that children know, lower case. */
  readonly isWord: (text: string) => boolean
  readonly isUnfit: (text: string) => boolean
  /** Whether the card tells the word in another way, so that only one answer is right. */
  readonly isTold: (word: Word) => boolean
  readonly copies: number
  readonly seed: number
  readonly label: string
  readonly place: Place
}

/** So many of the commonest letters of a pattern are offered where the list has too few. */
const COMMON = 6

/** Stands for each letter that is left out. */
const BLANK = '_'

/** The letters that are left out: `sh`, or `a_e` for a split pattern. */
export function lettersOfGap({ text }: Word, { ranges }: Gap): string {
  return ranges.map(({ start, end }) => text.slice(start, end)).join('_')
}

export function withGap({ text }: Word, { ranges }: Gap): string {
  return [...text.split('').keys()]
    .map(index => (ranges.some(({ start, end }) => index >= start && index < end) ? BLANK : text[index]))
    .join('')
}

/** The word with other letters in its gap; undefined where they are of another form (sh for a_e). */
function filled({ text }: Word, { ranges }: Gap, letters: string): string | undefined {
  const parts = letters.split('_')
  if (parts.length !== ranges.length) return undefined
  let [result, at] = ['', 0]
  for (const [index, { start, end }] of ranges.entries()) {
    result += text.slice(at, start) + parts[index]!
    at = end
  }
  return result + text.slice(at)
}

/**
 * A card for each word of which something is marked: its title is the word with its gap, its choices are letters left out
 * of the list's words. A wrong choice never spells what a child should not read, nor a word that could be meant.
 */
export function missingLetters(wanted: MissingWanted): Outcome<CardSet> {
  const { words, copies, seed, label, place } = wanted
  const gapped = words.flatMap(({ word, gap, alike }) => (gap === undefined ? [] : [{ word, gap, alike }]))
  const unmarked = words.flatMap(({ word, gap }) => (gap === undefined ? [word.text] : []))
  const problems: Problem[] = unmarked.length === 0 ? [] : [nothingMarked(unmarked, place)]
  if (gapped.length === 0) return failWith([...problems, noGaps(place)])
  const all = [...new Set(gapped.map(({ word, gap }) => lettersOfGap(word, gap)))]
  const generator = generatorFor(seed, `${label}: choices`)
  const choicesFor = ({ word, gap, alike }: (typeof gapped)[number]): readonly string[] => {
    const right = lettersOfGap(word, gap)
    // Letters of the same pattern ask for a choice; any others can be told apart without reading.
    const listed = shuffle(all, generator)
    const near = listed.filter(letters => alike.includes(letters))
    const others = [...new Set([...near, ...shuffle(alike.slice(0, COMMON), generator), ...listed])]
    const wrong = others.filter(letters => letters !== right && !misleads(word, gap, letters, wanted))
    const chosen = [right, ...wrong.slice(0, Math.max(0, wanted.choices - 1))]
    return chosen.length < 2 || wanted.choices === 0 ? [] : chosen.sort()
  }
  const cards = gapped.map(each => ({
    words: [each.word],
    title: withGap(each.word, each.gap),
    choices: choicesFor(each),
  }))
  const set: CardSet = {
    cards: Array.from({ length: copies }, (_, copy) =>
      cards.map(
        (card, index): Card => ({
          ...card,
          id: cardId({ prefix: 'card', number: index + 1, copy: copy + 1, of: cards.length }),
          kind: 'card',
          number: index + 1,
          copy: copy + 1,
        }),
      ),
    ).flat(),
    answerData: cards.map(({ title, words: [word] }) => ({ prompt: title, answer: word!.text })),
  }
  problems.push(...cards.flatMap(({ words: [word], choices }) => fewChoices(word!, choices, wanted)))
  return succeed(set, problems)
}

function misleads(
  word: Word,
  gap: Gap,
  letters: string,
  { isWord, isUnfit, isTold }: MissingWanted,
): boolean {
  const spelled = filled(word, gap, letters)?.toLowerCase()
  if (spelled === undefined) return true
  return isUnfit(spelled) || (isWord(spelled) && !isTold(word))
}

function nothingMarked(texts: readonly string[], place: Place): Problem {
  const named = texts.map(text => `"${text}"`).join(', ')
  return warningAt(
    place,
    texts.length === 1
      ? `${named} has no letters that the plan marks: it gets no card`
      : `${named} have no letters that the plan marks: they get no card`,
    'Add marks for what they show, or leave them out of this item with words.',
  )
}

function noGaps(place: Place): Problem {
  return errorAt(
    place,
    'no word has letters that the plan marks, so there are none to leave out',
    'Give the plan marks that its words show; oaktag study tells what they show.',
  )
}

function fewChoices(
  { text }: Word,
  given: readonly string[],
  { choices, place }: MissingWanted,
): readonly Problem[] {
  if (choices === 0 || given.length >= choices) return []
  const message =
    given.length === 0
      ? `the card of "${text}" has no letters to choose from: whatever else goes into its gap spells another word`
      : `the card of "${text}" has ${given.length} letters to choose from, not ${choices}: further ones would spell other words`
  return [warningAt(place, message, 'Give the word a clue, which makes only one answer right (hint: clue).')]
}
