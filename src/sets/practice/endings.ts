/** A base and an ending, and the word that they make: only where they make it by a rule, and in one spelling. */
import { formsOf, type WordForm } from '../../words/endings/forms.js'
import type { Lexicon } from '../../words/lexicon/entry.js'
import type { Word } from '../../words/word.js'
import {
  type Asked,
  askedOnce,
  type Practice,
  type PracticeItem,
  partedByAsking,
  sortedByRule,
} from './practice.js'

/** What happens to the base, the plainest first; the order is ours. */
export const endingRules = [
  'just add the ending',
  'add es',
  'double the last letter',
  'drop the e',
  'y to i',
  'ie to y',
  'add k',
] as const

export type EndingRule = (typeof endingRules)[number]

/** Where a list of few words has further forms, the page is filled up to so many: our own judgement, no source. */
export const WANTED_PROMPTS = 12

type Item = PracticeItem & { readonly rule: EndingRule; readonly ending: string }

export interface EndingsWanted {
  readonly words: readonly Word[]
  /** A base that is not on the list, studied; undefined where it cannot be. */
  readonly study: (base: string) => Word | undefined
  readonly lexicon: Pick<Lexicon, 'lookUp'>
  /** Whether children may meet the form in books, lower case. */
  readonly isOffered: (text: string) => boolean
}

/**
 * A form of each word, then a second, and so on up to a page, so that each rule and each ending comes in turn. Of a word
 * with an ending that is the form; of others it is none that the list has itself.
 */
export function endingPractice(wanted: EndingsWanted): Practice {
  const { asked, leftOut } = partedByAsking(wanted.words, (word): Asked<readonly Item[]> => {
    const own = fromForm(word, wanted)
    return own === undefined ? sureForms(word, wanted) : { asked: [own] }
  })
  const listed = new Set(asked.flatMap(({ asked: [first] }) => (first?.from ? [first.prompt] : [])))
  const chosen: Item[] = []
  const met = new Map<string, number>()
  const leftOf = new Map(
    asked.map(({ word, asked: items }) => [
      word,
      items.filter(({ from, prompt }) => from ?? !listed.has(prompt)),
    ]),
  )
  for (let round = 0; [...leftOf.values()].some(items => items.length > 0); round++) {
    for (const [word, items] of leftOf) {
      if (round > 0 && chosen.length >= WANTED_PROMPTS) return { items: sorted(chosen), leftOut }
      const item = leastMet(items, met)
      if (item === undefined) continue
      for (const each of [item.rule, item.ending]) met.set(each, (met.get(each) ?? 0) + 1)
      chosen.push(item)
      leftOf.set(
        word,
        items.filter(each => each !== item),
      )
    }
  }
  return { items: sorted(askedOnce(chosen)), leftOut }
}

function sorted(chosen: readonly PracticeItem[]): readonly PracticeItem[] {
  return sortedByRule(
    chosen.map(({ word, from, prompt, answer, rule, why }) => ({
      word,
      ...(from === undefined ? {} : { from }),
      prompt,
      answer,
      ...(rule === undefined ? {} : { rule }),
      ...(why === undefined ? {} : { why }),
    })),
    endingRules,
  )
}

/** Of the rule that is met least so far, and of these with the ending that is. */
function leastMet(items: readonly Item[], met: ReadonlyMap<string, number>): Item | undefined {
  const times = (each: string) => met.get(each) ?? 0
  return items.toSorted((a, b) => times(a.rule) - times(b.rule) || times(a.ending) - times(b.ending))[0]
}

/** Its base with its ending; undefined where it has none, or is none of the base's sure forms. */
function fromForm(word: Word, wanted: EndingsWanted): Item | undefined {
  const found = word.patterns.find(({ pattern, madeOf }) => pattern.startsWith('ending-') && madeOf)
  const base = found?.madeOf && wanted.study(found.madeOf[0])
  const item = base && allForms(base, wanted).find(({ answer }) => answer === word.text)
  return item && { ...item, from: word }
}

function allForms(word: Word, wanted: EndingsWanted): readonly Item[] {
  const forms = formsOf(word, wanted.lexicon)
  return [...forms, ...pluralInS(word, forms)].flatMap(form => sureForm(word, form, wanted))
}

function sureForms(word: Word, wanted: EndingsWanted): Asked<readonly Item[]> {
  const sure = allForms(word, wanted)
  return sure.length === 0
    ? { why: 'no ending joins it by one of the rules, in one spelling, to a word that children meet' }
    : { asked: sure }
}

/** Of a noun that is no verb; of one that is, its -s as a verb, where both are spelled alike. */
function pluralInS({ plural, partsOfSpeech, text }: Word, forms: readonly WordForm[]): readonly WordForm[] {
  const isPlain = plural !== null && plural.alternatives === undefined && text === text.toLowerCase()
  if (!isPlain || partsOfSpeech[0] !== 'noun' || forms.some(({ ending }) => ending === '-s')) return []
  return [{ ending: '-s', form: plural.form, rule: plural.rule }]
}

function sureForm(word: Word, form: WordForm, wanted: EndingsWanted): readonly Item[] {
  const { text, plural, partsOfSpeech } = word
  const rule = ruleOf(form.rule)
  const answer = form.form
  const known = answer.toLowerCase()
  if (rule === undefined || form.alternatives !== undefined) return []
  // Nearly every noun can be a verb: a form that children do not meet is none for them.
  const isPlural = form.ending === '-s' && plural?.form === answer
  const isCompared = partsOfSpeech[0] === 'adjective' && ['-er', '-est'].includes(form.ending)
  const isMet = isPlural || isCompared || partsOfSpeech[0] === 'verb' || wanted.isOffered(known)
  const isHeard = (wanted.lexicon.lookUp(known)?.familiarity ?? 0) > 0
  // Sunnier, muddier, stormier: rarely printed, and each child can say them.
  const isSayable = isHeard || (isCompared && hasSuffixY(word))
  if (!isMet || !isSayable || hasOtherSpelling(word, form, wanted)) return []
  // Leafs and leaves: which -s is meant, the page does not say.
  if (form.ending === '-s' && plural !== null && plural.form !== answer) return []
  const ending = form.ending.slice(1)
  return [{ word, prompt: `${text} + ${ending}`, answer, rule, why: form.rule, ending }]
}

function hasSuffixY({ patterns }: Word): boolean {
  return patterns.some(({ pattern, letters }) => pattern === 'suffix' && letters === 'y')
}

/** As `verb-endings`, `comparing` and `plural` say it, by what is done to the base. */
function ruleOf(rule: string): EndingRule | undefined {
  if (/^add (?:s|ed|ing|er|est)$/.test(rule)) return 'just add the ending'
  if (rule.startsWith('add es') || rule === 'ends in o: add es') return 'add es'
  if (rule.startsWith('double the last letter')) return 'double the last letter'
  if (rule.startsWith('drop e')) return 'drop the e'
  if (rule.startsWith('y to i')) return 'y to i'
  if (rule.startsWith('ie to y')) return 'ie to y'
  return rule.startsWith('add k') ? 'add k' : undefined
}

/**
 * Traveling and travelling, aging and ageing: both are printed, so neither is wrong. Of a word of one syllable the other
 * spelling is another word (hoping is of hope).
 */
function hasOtherSpelling({ text, syllables }: Word, { ending, form }: WordForm, wanted: EndingsWanted) {
  const base = text.toLowerCase()
  const letters = ending.slice(1)
  const heard = (spelling: string) =>
    spelling !== form.toLowerCase() && (wanted.lexicon.lookUp(spelling)?.familiarity ?? 0) > 0
  if (ending === '-ing' && base.endsWith('e') && heard(base + letters)) return true
  if (syllables.length < 2 || !/[aeiou][bdfgklmnpst]$/.test(base)) return false
  return ending !== '-s' && (heard(base + letters) || heard(base + base.slice(-1) + letters))
}
