/** One and more than one: a word's plural where there is a single right one, which its rule gives. */
import { isInGroup } from '../../words/endings/plural-groups.js'
import { pluralRuleName } from '../../words/endings/plural-rule-names.js'
import type { Word } from '../../words/word.js'
import {
  type Asked,
  askedOnce,
  isGuessed,
  type Practice,
  type PracticeItem,
  partedByAsking,
  sortedByRule,
} from './practice.js'

/** Rules as a child meets them, the plainest first; the order and the wording are ours. */
export const pluralRules = [
  'add s',
  'add es',
  'y to i, add es',
  'f to v, es at the end',
  'double the z, add es',
  'changes inside',
  'irregular ending',
  'stays the same',
  'as the teacher writes it',
] as const

export type PluralRule = (typeof pluralRules)[number]

/** Those that a page on all the rules has words of. */
export const rulesToMeet: readonly PluralRule[] = [
  'add s',
  'add es',
  'y to i, add es',
  'f to v, es at the end',
  'changes inside',
  'stays the same',
]

/** A page of fewer prompts is hardly worth copying: our own judgement, no source. */
export const LEAST_PROMPTS = 8

export type AddWords = 'too few' | 'every rule' | 'nothing'

export interface PluralsWanted {
  readonly words: readonly Word[]
  readonly add: AddWords
  /** A noun that may be offered, whose plural is of the rule; each call the next one. Undefined when there are no more. */
  /** A noun that is not on the list, studied; undefined where it cannot be. */
  readonly study: (noun: string) => Word | undefined
  readonly nounOf: (rule: PluralRule, taken: ReadonlySet<string>) => Word | undefined
}

export function pluralPractice({ words, add, study, nounOf }: PluralsWanted): Practice {
  const { asked, leftOut } = partedByAsking(
    words,
    word => fromPlural(word, study) ?? inList(pluralAsked(word), word),
    word => isHers(word) || !isGuessed(word),
  )
  const own = askedOnce(asked.map(({ asked: item }) => item))
  // Without a noun of hers the page would not be of her list at all.
  const more = own.length === 0 ? [] : addedNouns(own, { words, add, nounOf })
  return { items: sortedByRule([...own, ...more], pluralRules), leftOut }
}

function inList(asked: Asked<Omit<PracticeItem, 'word' | 'added'>>, word: Word): Asked<PracticeItem> {
  return 'asked' in asked ? { asked: { ...asked.asked, word } } : asked
}

/** Of a word that is a plural already its noun is asked: foot, of feet. Undefined where that has no such plural alone. */
function fromPlural(word: Word, study: PluralsWanted['study']): Asked<PracticeItem> | undefined {
  const one = /^already plural: one (.+)$/.exec(word.plural?.rule ?? '')?.[1]
  const noun = one === undefined ? undefined : study(one)
  const found = noun && pluralAsked(noun)
  if (found === undefined || !('asked' in found) || found.asked.answer !== word.text) return undefined
  return { asked: { ...found.asked, word: noun!, from: word } }
}

/** In turn a word of each rule that has fewest. */
function addedNouns(
  own: readonly PracticeItem[],
  { words, add, nounOf }: Omit<PluralsWanted, 'study'>,
): readonly PracticeItem[] {
  const added: PracticeItem[] = []
  const taken = new Set([...words, ...own.map(({ word }) => word)].map(({ text }) => text.toLowerCase()))
  const rules = new Set<PluralRule>(rulesToMeet)
  const countOf = (rule: PluralRule) => [...own, ...added].filter(item => item.rule === rule).length
  const isEnough = () =>
    add === 'nothing' ||
    rules.size === 0 ||
    (add === 'too few'
      ? own.length + added.length >= LEAST_PROMPTS
      : [...rules].every(rule => countOf(rule) >= 2))
  while (!isEnough()) {
    const [rule] = [...rules].toSorted((a, b) => countOf(a) - countOf(b))
    const noun = nounOf(rule!, taken)
    const found = noun && pluralAsked(noun)
    if (noun !== undefined) taken.add(noun.text)
    if (noun === undefined) rules.delete(rule!)
    else if (found !== undefined && 'asked' in found) added.push({ ...found.asked, word: noun, added: true })
  }
  return added
}

/** The plural to write; why there is none where nobody counts the word, or where two are in use. */
export function pluralAsked(word: Word): Asked<Omit<PracticeItem, 'word' | 'added'>> {
  const { text, plural, partsOfSpeech } = word
  if (plural === null) return { why: 'no noun' }
  if (partsOfSpeech[0] !== 'noun' && !isHers(word)) return { why: `most often ${aOrAn(partsOfSpeech[0])}` }
  if (text !== text.toLowerCase()) return { why: 'a name, or written as one' }
  // Of two letters before its s a word is as likely a plural itself: ads, pas.
  if (/^..s$/.test(text) && !isInGroup(text, 'one thing in s'))
    return { why: 'not sure whether it is a plural already' }
  if (plural.alternatives !== undefined)
    return { why: `two plurals in use, ${[plural.form, ...plural.alternatives].join(' and ')}` }
  const rule = ruleToMeet(plural.rule)
  return rule === undefined
    ? { why: plural.rule.replace(': stays the same', '') }
    : { asked: { prompt: text, answer: plural.form, rule, why: plural.rule } }
}

/** She wrote the plural herself: whatever else is guessed, it is right. */
function isHers({ overridden = [] }: Word): boolean {
  return overridden.includes('plural')
}

function aOrAn(part = 'another part of speech'): string {
  return `${/^[aeiou]/.test(part) ? 'an' : 'a'} ${part}`.replace(/^an? (?=another)/, '')
}

/** A rule of `pluralOf` as it is named here; undefined for words that have no plural of their own to write. */
export function ruleToMeet(rule: string): PluralRule | undefined {
  const name = pluralRuleName(rule)
  return pluralRules.find(each => each === name || each.startsWith(`${name}, `))
}
