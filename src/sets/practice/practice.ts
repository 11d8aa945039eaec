/** What a page of practice asks and what is right: one answer to each prompt, and nothing that is not sure. */
import type { Word } from '../../words/word.js'
import type { AnswerData } from '../answer-data.js'

export interface PracticeItem {
  readonly word: Word
  /** The word of the list that is its answer, where the word itself is none of them: hop, of hopping. */
  readonly from?: Word
  readonly prompt: string
  readonly answer: string
  /** What is done to the word, under whose name it stands where the page is sorted by rule. */
  readonly rule?: string
  /** The same in full, for the teacher: `double the last letter, add ing`. */
  readonly why?: string
  /** It is no word of the list: chosen where the list has too few. */
  readonly added?: true
}

/** A word of the list that nothing is asked of. */
export interface LeftOut {
  readonly word: string
  /** A clause: `a guess`, `not counted`. */
  readonly why: string
}

export interface Practice {
  readonly items: readonly PracticeItem[]
  readonly leftOut: readonly LeftOut[]
}

/** A word of which the analysis is not sure: nothing is asked of it. */
export function isGuessed({ source, partsOfSpeechGuessed }: Word): boolean {
  return source === 'guess' || partsOfSpeechGuessed === true
}

const becauseGuessed = 'what we know of it is a guess'

/** One of a word's forms, or why there is none. */
export type Asked<T> = { readonly asked: T } | { readonly why: string }

/** Each word with what is asked of it, those that nothing is asked of apart. */
export function partedByAsking<T>(
  words: readonly Word[],
  askOf: (word: Word) => Asked<T>,
  isSure: (word: Word) => boolean = word => !isGuessed(word),
) {
  const asked: { readonly word: Word; readonly asked: T }[] = []
  const leftOut: LeftOut[] = []
  for (const word of words) {
    const answer: Asked<T> = isSure(word) ? askOf(word) : { why: becauseGuessed }
    if ('asked' in answer) asked.push({ word, asked: answer.asked })
    else leftOut.push({ word: word.text, why: answer.why })
  }
  return { asked, leftOut }
}

/** Items that ask something twice ask it once: hop and hopping in one list are one thing to ask. */
export function askedOnce<T extends Pick<PracticeItem, 'prompt'>>(items: readonly T[]): readonly T[] {
  const prompts = new Set<string>()
  return items.filter(({ prompt }) => !prompts.has(prompt) && prompts.add(prompt))
}

/** In the order of the rules, the words of one rule in their own. */
export function sortedByRule(
  items: readonly PracticeItem[],
  rules: readonly string[],
): readonly PracticeItem[] {
  const placeOf = ({ rule }: PracticeItem) => {
    const place = rules.indexOf(rule ?? '')
    return place < 0 ? rules.length : place
  }
  return items.toSorted((a, b) => placeOf(a) - placeOf(b))
}

/** A list of `{"prompt", "answer"}` for the manifest. */
export function practiceAnswers({ items }: Practice): AnswerData {
  return items.map(({ prompt, answer }) => ({ prompt, answer }))
}
