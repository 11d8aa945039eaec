/** Marks that say something of the whole word: which words show them, and what they are called. */
import type { MarkTarget } from '../../plan/plan.js'
import { followsPluralRule } from '../../words/endings/plural-rule-names.js'
import type { Word } from '../../words/word.js'
import type { Typeface } from '../typeface/typeface.js'

export type WordTarget = Extract<MarkTarget, { readonly kind: 'word' }>

/** A word is marked as the part of speech that it most often is; a part of speech that the teacher gives it counts too. */
export function showsFeature(word: Word, { feature, value }: WordTarget): boolean {
  switch (feature) {
    case 'part of speech': {
      const hers = word.overridden?.includes('part of speech') ?? false
      return (hers ? word.partsOfSpeech : word.partsOfSpeech.slice(0, 1)).some(part => part === value)
    }
    case 'plural':
      return word.plural !== null && followsPluralRule(word.plural.rule, value)
    case 'sounds':
      return word.soundCount === Number(value)
    case 'syllables':
      return word.syllables.length === Number(value)
  }
}

/** What a key calls it where she gave no words of her own. */
export function featureName({ feature, value }: WordTarget): string {
  switch (feature) {
    case 'part of speech':
      return value
    case 'plural':
      return `plural: ${value}`
    case 'sounds':
      return value === '1' ? '1 sound' : `${value} sounds`
    case 'syllables':
      return value === '1' ? '1 syllable' : `${value} syllables`
  }
}

/** What each part of speech does, for a child. */
const partSentences: Readonly<Record<string, string>> = {
  noun: 'a word that names someone or something',
  verb: 'a word for what you do',
  adjective: 'a word for what it is like',
  adverb: 'a word for how or when',
  pronoun: 'a word in place of a name',
  preposition: 'a word for where or when',
  conjunction: 'a word that puts two parts together',
  determiner: 'a little word before a name',
  interjection: 'a word you call out',
  number: 'a word for how many',
}

/** The same in words for a child; undefined where the name says all. */
export function featureSentence({ feature, value }: WordTarget): string | undefined {
  switch (feature) {
    case 'part of speech':
      return partSentences[value]
    case 'plural':
      return 'how you write more than one'
    case 'sounds':
      return value === '1' ? 'you hear 1 sound' : `you hear ${value} sounds`
    case 'syllables':
      return value === '1' ? 'you clap it 1 time' : `you clap it ${value} times`
  }
}

/** As dictionaries shorten them (common practice, no source). */
const shortParts: Readonly<Record<string, string>> = {
  noun: 'n',
  verb: 'v',
  adjective: 'adj',
  adverb: 'adv',
  pronoun: 'pron',
  preposition: 'prep',
  conjunction: 'conj',
  determiner: 'det',
  interjection: 'interj',
  number: 'num',
}

/** What the plural ends in. */
const shortRules: readonly (readonly [name: RegExp, tag: string])[] = [
  [/^y to i/, '-ies'],
  [/^fe? to ve?/, '-ves'],
  [/^double the z/, '-zes'],
  [/add es/, '-es'],
  [/add s$/, '-s'],
]

/** A dropped-in face may lack the dot of our own choice; every face has a full stop. */
export function tagIn(tag: string, typeface: Pick<Typeface, 'missing'>): string {
  return typeface.missing(tag).length === 0 ? tag : tag.replaceAll('•', '.')
}

/** So many dots are seen at a glance. */
const mostDots = 4

/** The tag that shows the feature where she gave the mark no look: syllables as dots, so that no two counts are alike. */
export function featureTag({ feature, value }: WordTarget): string {
  switch (feature) {
    case 'part of speech':
      return shortParts[value] ?? value
    case 'plural':
      return shortRules.find(([name]) => name.test(value))?.[1] ?? 'pl'
    case 'sounds':
      return value
    case 'syllables':
      return Number(value) <= mostDots ? '•'.repeat(Number(value)) : `${value}•`
  }
}
