/** Words of a list that want a word more: exceptions, words said in two ways, words that sound alike, odd plurals. */
import { plainName } from '../../words/patterns/plain-name.js'
import type { Word } from '../../words/word.js'
import type { LeftoverReason } from '../sorts/sort.js'

export interface WordToWatch {
  readonly word: string
  /** Each a part of a sentence that begins with the word. */
  readonly reasons: readonly string[]
}

/** @param oddballs of the sorts that the page tells, with the reason why each breaks its rule */
export function wordsToWatch(
  words: readonly Word[],
  oddballs: readonly LeftoverReason[],
): readonly WordToWatch[] {
  return words.flatMap(word => {
    const odd = oddballs.filter(each => breaksRule(each) && each.word === word.text).map(({ why }) => why)
    const reasons = [
      ...guessed(word),
      ...(word.notes ?? []).map(note => note.replace(new RegExp(`^${word.text} `), '')),
      ...(word.patterns.find(({ pattern }) => pattern === 'homophone') === undefined ? [] : soundsLike(word)),
      ...unlengthening(word),
      ...oddPlural(word),
      ...odd,
    ]
    return reasons.length === 0 ? [] : [{ word: word.text, reasons: [...new Set(reasons)] }]
  })
}

/** A word that stands alone in its column breaks no rule. */
function breaksRule({ oddball, why }: LeftoverReason): boolean {
  return oddball === true && !why.startsWith('is the only one of its kind')
}

function guessed({ source, partsOfSpeechGuessed }: Word): readonly string[] {
  return [
    ...(source === 'guess' ? ['is in no dictionary of ours: its sounds are a guess'] : []),
    ...(partsOfSpeechGuessed === true ? ['has a guessed part of speech'] : []),
  ]
}

function soundsLike({ patterns }: Word): readonly string[] {
  return patterns.filter(({ pattern }) => pattern === 'homophone').map(({ why }) => why)
}

/** have, give: a silent e that lengthens nothing. */
function unlengthening({ patterns }: Word): readonly string[] {
  return patterns
    .filter(({ pattern, letters }) => pattern === 'silent-e' && letters.length === 1)
    .map(({ why }) => `has a ${plainName('silent-e')} that makes no vowel long: ${why}`)
}

const ordinaryPlural = /^(?:add |ch says k|a name keeps|ends in o: |y to i|f to v|fe to ve)/

function oddPlural({ text, plural, partsOfSpeechGuessed }: Word): readonly string[] {
  if (plural === null || partsOfSpeechGuessed === true || ordinaryPlural.test(plural.rule)) return []
  const is = plural.form === text ? '' : ` ${plural.form}`
  return [`plural${is}: ${plural.rule}`]
}

/** Words that a sentence may use in two ways, by the two commonest: `noun and verb` → string, catch. */
export function wordsOfTwoKinds(words: readonly Word[]): ReadonlyMap<string, readonly string[]> {
  const kinds = new Map<string, string[]>()
  for (const {
    text,
    partsOfSpeech: [first, second],
    partsOfSpeechGuessed,
  } of words) {
    if (first === undefined || second === undefined || partsOfSpeechGuessed === true) continue
    const both = [first, second].toSorted().join(' and ')
    kinds.set(both, [...(kinds.get(both) ?? []), text])
  }
  return kinds
}

export interface PluralsByRule {
  readonly rule: string
  /** `marsh, marshes`. */
  readonly pairs: readonly string[]
}

/** The naming words with their plurals, by the rule that makes them. */
export function pluralsByRule(words: readonly Word[]): readonly PluralsByRule[] {
  const rules = new Map<string, string[]>()
  for (const { text, plural, partsOfSpeech, partsOfSpeechGuessed } of words) {
    if (plural === null || partsOfSpeech[0] !== 'noun' || partsOfSpeechGuessed === true) continue
    rules.set(plural.rule, [
      ...(rules.get(plural.rule) ?? []),
      plural.form === text ? text : `${text}, ${plural.form}`,
    ])
  }
  return [...rules].map(([rule, pairs]) => ({ rule, pairs }))
}
