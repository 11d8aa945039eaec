/**
 * What is said of a teacher's division into syllables. A syllable holds one vowel sound (common practice, no source).
 * A division that any listed way of saying the word allows is hers to choose: fi·re, ev·ery.
 */
import { errorAt, type Place, type Problem, warningAt } from '../../problems.js'
import { isVowelSound } from '../alignment/arpabet.js'
import { alignWord } from '../alignment/graphemes.js'
import { spell } from '../alignment/spelling.js'
import type { Grapheme } from '../word.js'

export interface SyllableQuestion {
  readonly text: string
  readonly place: Place
  /** As she divides it. */
  readonly syllables: readonly string[]
  /** As the tool would. */
  readonly ours: readonly string[]
  readonly graphemes: readonly Grapheme[]
  readonly pronunciations: readonly string[]
  /** The sounds stand in a dictionary: what they forbid cannot be right. Against a guess she is only warned. */
  readonly known: boolean
}

export function syllableProblems(question: SyllableQuestion): readonly Problem[] {
  const { text, place, syllables, ours, graphemes, pronunciations, known } = question
  const ways = [vowelsOf(graphemes), ...pronunciations.map(said => vowelsOf(alignWord(text, said).graphemes))]
  const hers = syllables.join('·')
  const advice = `Each syllable has one vowel sound: syllables: ${ours.join(' ')}.`
  const faults = ways.map(vowels => faultOf(vowels, syllables))
  const [fault] = faults
  if (fault !== undefined && faults.every(other => other !== undefined)) {
    const message = messageFor(fault, hers)
    const cannotBe = known || fault.kind === 'no vowel letter'
    return [cannotBe ? errorAt(place, message, advice) : warningAt(place, message, advice)]
  }
  const fewest = Math.min(...ways.map(vowels => vowels.length))
  if (syllables.length >= Math.min(fewest, ours.length)) return []
  const count = syllables.length === 1 ? 'one syllable' : `${syllables.length} syllables`
  return [warningAt(place, `"${hers}" has ${count}, and the word has ${fewest} vowel sounds`, advice)]
}

/** A vowel sound, by the letters of the word (signs left out) that spell it. */
interface SpelledVowel {
  readonly start: number
  readonly end: number
}

function vowelsOf(graphemes: readonly Grapheme[]): readonly SpelledVowel[] {
  let end = 0
  return graphemes.flatMap(({ letters, sounds }) => {
    const start = end
    end += spell(letters).letters.length
    return sounds.filter(isVowelSound).map(() => ({ start, end }))
  })
}

type Fault =
  | { readonly kind: 'no vowel sound' | 'no vowel letter'; readonly syllables: readonly string[] }
  | { readonly kind: 'too many'; readonly vowels: number; readonly syllables: readonly string[] }

function faultOf(vowels: readonly SpelledVowel[], syllables: readonly string[]): Fault | undefined {
  if (syllables.length < 2) return undefined
  let end = 0
  const empty = syllables.filter(syllable => {
    const start = end
    end += spell(syllable).letters.length
    return !vowels.some(vowel => vowel.start < end && vowel.end > start)
  })
  const bare = empty.filter(syllable => !/[aeiouy]/.test(spell(syllable).letters))
  if (bare.length > 0) return { kind: 'no vowel letter', syllables: bare }
  if (empty.length > 0) return { kind: 'no vowel sound', syllables: empty }
  return syllables.length > vowels.length ? { kind: 'too many', vowels: vowels.length, syllables } : undefined
}

function messageFor(fault: Fault, hers: string): string {
  if (fault.kind === 'too many') {
    const vowels = fault.vowels === 1 ? 'one vowel sound' : `${fault.vowels} vowel sounds`
    return `"${hers}" has ${fault.syllables.length} syllables, and only ${vowels}`
  }
  const [first, ...others] = fault.syllables.map(syllable => `"${syllable}"`)
  if (others.length === 0) return `the syllable ${first} of "${hers}" has no vowel sound`
  return `the syllables ${[first, ...others.slice(0, -1)].join(', ')} and ${others.at(-1)} of "${hers}" have no vowel sound`
}
