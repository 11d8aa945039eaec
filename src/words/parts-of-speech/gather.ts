/** Which parts of speech a word has, the commonest use first. Build time; the lexicon keeps the result. */
import { join } from '../endings/adding.js'
import { irregularPlurals } from '../endings/irregular-plurals.js'
import { irregularVerbs } from '../endings/irregular-verbs.js'
import type { PartOfSpeech } from '../word.js'
import { closedClasses, corrections, neverNouns } from './listed-parts.js'
import { type OpenClass, readJoinedSenses, readSenses, type WordNetSense } from './wordnet.js'

type Weights = Partial<Record<PartOfSpeech, number>>

/**
 * How much of a lemma's count belongs to one of its forms: a noun stands mostly in the singular, a verb mostly in
 * another form than its base. Rough shares, tuned on the familiar words; corrections.tsv has the last word.
 */
const shareOf = {
  singular: 0.75,
  plural: 0.25,
  verbBase: 0.35,
  verbS: 0.08,
  past: 0.35,
  ing: 0.2,
  comparison: 0.1,
}
/** What a listed use counts for that the tagged texts never met. */
const unmet = 0.3
/** A use rarer than this share of the word's uses is left out. */
const rarest = 0.02

/**
 * @param words lower case
 * @param familiarity occurrences of a word in a corpus of speech; the forms of a verb tell how much of a verb it is
 */
export function gatherPartsOfSpeech(
  words: Iterable<string>,
  familiarity: (word: string) => number,
): Map<string, readonly PartOfSpeech[]> {
  const counts = new Map<string, Weights>()
  for (const [joined, senses] of readJoinedSenses())
    if (familiarity(joined) > 0) counts.set(joined, countsOf(senses))
  for (const [lemma, senses] of readSenses()) counts.set(lemma, countsOf(senses))
  const irregular = irregularForms()
  const found = new Map<string, readonly PartOfSpeech[]>()
  for (const word of words) {
    const fixed = closedClasses().get(word) ?? corrections().get(word)
    const parts = fixed ?? partsByWeight(weightsOf(word, counts, irregular, familiarity))
    const met = isNeverNoun(word) ? parts.filter(part => part !== 'noun') : parts
    if (parts.length > 0) found.set(word, met.length > 0 ? met : parts)
  }
  return found
}

/** Nor with an s: the knows, the carries. */
function isNeverNoun(word: string): boolean {
  const bases = [word, word.replace(/s$/, ''), word.replace(/es$/, ''), word.replace(/ies$/, 'y')]
  return bases.some(base => neverNouns().has(base))
}

function countsOf(senses: readonly WordNetSense[]): Weights {
  const weights: Weights = {}
  for (const { partOfSpeech, count } of senses)
    weights[partOfSpeech] = (weights[partOfSpeech] ?? unmet) + count
  return weights
}

function weightsOf(
  word: string,
  counts: ReadonlyMap<string, Weights>,
  irregular: ReadonlyMap<string, readonly (readonly [string, number, PartOfSpeech])[]>,
  familiarity: (word: string) => number,
): Weights {
  const weights: Weights = {}
  const add = (part: PartOfSpeech, weight: number) => {
    weights[part] = (weights[part] ?? 0) + weight
  }
  const own = counts.get(word)
  if (own) {
    for (const part of ['adjective', 'adverb'] as const) if (own[part]) add(part, own[part])
    const { noun, verb } = nounAgainstVerb(word, own, familiarity)
    if (noun > 0) add('noun', noun)
    if (verb > 0) add('verb', verb)
  }
  for (const [base, share, part] of irregular.get(word) ?? [])
    add(part, share * (counts.get(base)?.[part] ?? unmet))
  for (const { base, share, part } of regularBases(word)) {
    const ofBase = counts.get(base)
    if (ofBase === undefined || (part === 'verb' && isBookVerb(base, ofBase, familiarity))) continue
    const weight = ofBase[part]
    // owner, cooler, cleaner are things first, though own, cool and clean are adjectives.
    const isThing = part === 'adjective' && own?.noun !== undefined && own.adjective === undefined
    if (weight !== undefined && !isThing) add(part, share * weight)
  }
  return weights
}

/** How much of a base form's occurrences are verb, by how common its past and -ing forms are in speech: 0 to 0.95. */
function verbShareByForms(word: string, familiarity: (word: string) => number): number {
  const occurrences = familiarity(word)
  if (occurrences === 0) return 0
  const past = familiarity(irregularVerbs().get(word)?.past[0] ?? join(word, 'ed').form)
  const ing = familiarity(join(word, 'ing').form)
  return Math.min(0.95, (1.2 * (past + Math.min(ing, 2 * past))) / occurrences)
}

/** A verb that the tagged texts never met and speech hardly: to frog, to gull. */
function isBookVerb(word: string, own: Weights, familiarity: (word: string) => number): boolean {
  return own.noun !== undefined && (own.verb ?? 0) < 1 && verbShareByForms(word, familiarity) < 0.03
}

/** The tagged texts count lemmas; how common a verb's other forms are in speech tells how much of the base is verb. */
function nounAgainstVerb(
  word: string,
  own: Weights,
  familiarity: (word: string) => number,
): { noun: number; verb: number } {
  const noun = (own.noun ?? 0) * shareOf.singular
  const verb = isBookVerb(word, own, familiarity) ? 0 : (own.verb ?? 0) * shareOf.verbBase
  if (noun === 0 || verb === 0 || familiarity(word) === 0) return { noun, verb }
  const byCounts = verb / (noun + verb)
  const trust = noun + verb > 8 ? 0.5 : 0.2
  const share = trust * byCounts + (1 - trust) * verbShareByForms(word, familiarity)
  return { noun: (noun + verb) * (1 - share), verb: (noun + verb) * share }
}

interface Base {
  readonly base: string
  readonly share: number
  readonly part: OpenClass
}

/** Every base that a regular ending could have been joined to; the caller knows which are words. */
function regularBases(word: string): readonly Base[] {
  const bases: Base[] = []
  const add = (ending: string, share: number, part: OpenClass) => {
    if (!word.endsWith(ending) || word.length < ending.length + 2) return
    const stem = word.slice(0, -ending.length)
    const candidates = [stem, `${stem}e`]
    if (/([^aeiou])\1$/.test(stem)) candidates.push(stem.slice(0, -1))
    if (stem.endsWith('i')) candidates.push(`${stem.slice(0, -1)}y`)
    if (stem.endsWith('y')) candidates.push(`${stem.slice(0, -1)}ie`)
    for (const base of new Set(candidates)) {
      const doubled = base.length < stem.length && stem.startsWith(base)
      if (doubled || join(base, ending).form === word || base === stem) bases.push({ base, share, part })
    }
  }
  add('ed', shareOf.past, 'verb')
  add('ing', shareOf.ing, 'verb')
  add('er', shareOf.comparison, 'adjective')
  add('est', shareOf.comparison, 'adjective')
  if (word.endsWith('s') && !word.endsWith('ss')) {
    const stems = [word.slice(0, -1)]
    if (/(?:s|x|z|ch|sh|o)es$/.test(word)) stems.push(word.slice(0, -2))
    if (/ies$/.test(word)) stems.push(`${word.slice(0, -3)}y`)
    if (/ves$/.test(word)) stems.push(`${word.slice(0, -3)}f`, `${word.slice(0, -3)}fe`)
    for (const base of stems)
      bases.push({ base, share: shareOf.plural, part: 'noun' }, { base, share: shareOf.verbS, part: 'verb' })
  }
  return bases
}

function irregularForms(): Map<string, (readonly [string, number, PartOfSpeech])[]> {
  const forms = new Map<string, (readonly [string, number, PartOfSpeech])[]>()
  const add = (form: string, base: string, share: number, part: PartOfSpeech) => {
    if (form === base) return
    const known = forms.get(form) ?? []
    known.push([base, share, part])
    forms.set(form, known)
  }
  for (const [base, { past, participle }] of irregularVerbs())
    for (const form of new Set([...past, ...participle])) add(form, base, shareOf.past, 'verb')
  for (const [base, { forms: plurals }] of irregularPlurals())
    for (const form of plurals) add(form, base, shareOf.plural, 'noun')
  return forms
}

function partsByWeight(weights: Weights): readonly PartOfSpeech[] {
  const entries = Object.entries(weights) as [PartOfSpeech, number][]
  const total = entries.reduce((sum, [, weight]) => sum + weight, 0)
  return entries
    .filter(([, weight]) => weight >= rarest * total)
    .sort((first, second) => second[1] - first[1])
    .map(([part]) => part)
}
