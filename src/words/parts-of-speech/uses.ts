/** Every use that a word may have, with what speaks for it: of its own lemma, and as a form of another's. */
import { join } from '../endings/adding.js'
import { irregularVerbs } from '../endings/irregular-verbs.js'
import { type Base, classOfForm, type InflectedForm, irregularForms, regularBases } from './bases.js'
import { type OpenClass, readJoinedSenses, readSenses, type WordNetSense } from './wordnet.js'

export interface Use {
  readonly part: OpenClass
  /** How often tagged texts met the lemma in this use. */
  readonly count: number
  /** How much of that belongs to this form of the lemma, beside its base form: the texts do not tell. */
  readonly share: number
  /** How many senses are listed. */
  readonly senses: number
  /** The part of a noun's senses that are things to see or touch, weighed by their counts; persons are half a thing. */
  readonly thing: number
  /** The part that is done or happens. */
  readonly deed: number
  /**
   * How common in speech, beside the word, the other form is by which a base form shows this use: dives the noun, diving
   * the verb. A logarithm, 0 where nothing shows it.
   */
  readonly shown: number
  /** How common an adjective in -ed or -ing is beside the verb that it comes from: a logarithm, 0 for others. */
  readonly apart: number
  /** How common the past of a verb is beside its base form; 0 for other uses. */
  readonly past: number
}

/** Occurrences of a word in a corpus of speech. */
export type Familiarity = (word: string) => number

/** Rough shares. */
const shareOfForm: Readonly<Record<InflectedForm, number>> = {
  plural: 0.33,
  'verb in s': 0.23,
  past: 1,
  ing: 0.57,
  comparison: 0.1,
}

/** Numbers of WordNet's lexicographers' files. */
const topics = {
  /** animal, artifact, body, food, group, location, object, plant, quantity, substance, time */
  thing: new Set([5, 6, 8, 13, 14, 15, 17, 20, 23, 27, 28]),
  person: new Set([18]),
  /** act, event, process */
  deed: new Set([4, 11, 22]),
} as const

const openClasses: readonly OpenClass[] = ['noun', 'verb', 'adjective', 'adverb']

/** A function that tells the uses of a word in small letters. */
export function readUses(familiarity: Familiarity): (word: string) => readonly Use[] {
  /** Words that the source writes apart (lawn mower) are met as one as well. */
  const joined = [...readJoinedSenses()].filter(([word]) => familiarity(word) > 0)
  const listed = new Map([...joined, ...readSenses()])
  const irregular = irregularForms()
  const sensesOf = (lemma: string, part: OpenClass) =>
    (listed.get(lemma) ?? []).filter(sense => sense.partOfSpeech === part)
  const heard = (forms: readonly string[]) => Math.max(...forms.map(familiarity))
  const beside = (word: string, forms: readonly string[]) =>
    Math.log((heard(forms) + 1) / (familiarity(word) + 5))
  const shareOfForms = (lemma: string, forms: readonly string[]) =>
    heard(forms) / Math.max(1, familiarity(lemma))
  /** A verb that the tagged texts never met and speech hardly: to frog, to gull. */
  const isBookVerb = (lemma: string) =>
    sensesOf(lemma, 'noun').length > 0 &&
    sensesOf(lemma, 'verb').every(({ count }) => count === 0) &&
    shareOfForms(lemma, pastForms(lemma)) + shareOfForms(lemma, withEnding(lemma, 'ing')) < 0.025

  const ownUse = (word: string, part: OpenClass, verbs: readonly string[]): Use | undefined => {
    const senses = sensesOf(word, part)
    if (senses.length === 0 || (part === 'verb' && isBookVerb(word))) return undefined
    const shown =
      part === 'noun'
        ? beside(word, [withS(word)])
        : part === 'verb'
          ? beside(word, withEnding(word, 'ing'))
          : 0
    const apart = part === 'adjective' && verbs.length > 0 ? -beside(word, verbs) : 0
    const past = part === 'verb' ? shareOfForms(word, pastForms(word)) : 0
    return { part, share: 1, ...weighed(senses), shown, apart, past }
  }
  const inflectedUse = ({ base, form }: Base): Use | undefined => {
    const part = classOfForm[form]
    const senses = sensesOf(base, part)
    if (senses.length === 0 || (part === 'verb' && isBookVerb(base))) return undefined
    return { part, share: shareOfForm[form], ...weighed(senses), shown: 0, apart: 0, past: 0 }
  }
  /** A noun in -er is a comparison as well where -est is heard too: a cooler and cooler, coolest; a skewer, but no skewest. */
  const isCompared = (word: string, { base, form }: Base) =>
    form !== 'comparison' || sensesOf(word, 'noun').length === 0 || heard(withEnding(base, 'est')) > 0
  return word => {
    const bases = [...(irregular.get(word) ?? []), ...regularBases(word)].filter(base =>
      isCompared(word, base),
    )
    const verbs = bases
      .filter(({ base, form }) => (form === 'past' || form === 'ing') && sensesOf(base, 'verb').length > 0)
      .map(({ base }) => base)
    return [...openClasses.map(part => ownUse(word, part, verbs)), ...bases.map(inflectedUse)].filter(
      use => use !== undefined,
    )
  }
}

function weighed(senses: readonly WordNetSense[]): Pick<Use, 'count' | 'senses' | 'thing' | 'deed'> {
  const count = senses.reduce((sum, sense) => sum + sense.count, 0)
  /** A sense never met counts for something too. */
  const partIn = (wanted: ReadonlySet<number>) =>
    senses.reduce((sum, sense) => sum + (wanted.has(sense.topic) ? sense.count + 0.5 : 0), 0) /
    (count + 0.5 * senses.length)
  return {
    count,
    senses: senses.length,
    thing: partIn(topics.thing) + 0.5 * partIn(topics.person),
    deed: partIn(topics.deed),
  }
}

function withS(word: string): string {
  if (/(?:s|x|z|ch|sh)$/.test(word)) return `${word}es`
  return /[^aeiou]y$/.test(word) ? `${word.slice(0, -1)}ies` : `${word}s`
}

/** Both ways where the stress decides whether the last letter doubles. */
function withEnding(word: string, ending: string): readonly string[] {
  const joined = join(word, ending).form
  return /[^aeiou][aeiou][^aeiouwxy]$/.test(word) ? [joined, word + word.slice(-1) + ending] : [joined]
}

function pastForms(verb: string): readonly string[] {
  const irregular = irregularVerbs().get(verb)
  return irregular ? [...irregular.past, ...irregular.participle] : withEnding(verb, 'ed')
}
