/** What is said of findings that the teacher takes away (`not:`) or adds (`also:`). */
import type { PatternOverride } from '../../plan/plan.js'
import { errorAt, type Place, type Problem, warningAt } from '../../problems.js'
import { isVowelSound } from '../alignment/arpabet.js'
import { findPattern } from '../patterns/find-patterns.js'
import { patternNamed } from '../patterns/index.js'
import type { StudiedLetters } from '../patterns/pattern.js'
import type { Finding, Grapheme } from '../word.js'
import { stretchOf } from './teacher-findings.js'

export interface NotQuestion {
  readonly word: StudiedLetters
  readonly place: Place
  /** What the word shows where she says nothing. */
  readonly found: readonly Finding[]
  readonly notPatterns: readonly PatternOverride[]
}

/** A finding that is not there cannot be taken away. */
export function notProblems({ word, place, found, notPatterns }: NotQuestion): readonly Problem[] {
  return notPatterns.flatMap(({ pattern, letters }) => {
    const own = [...found.filter(finding => finding.pattern === pattern), ...onlyWhenNamed(pattern, word)]
    if (own.some(finding => letters === undefined || finding.letters.toLowerCase() === letters)) return []
    const where =
      own.length === 0 ? '' : ` on "${letters}", but on "${own.map(one => one.letters).join('", "')}"`
    const message = `"${word.text}" does not show ${pattern}${where}: nothing is taken away`
    return [warningAt(place, message, `Take it out; "oaktag study ${word.text}" tells what the word shows.`)]
  })
}

function onlyWhenNamed(pattern: string, word: StudiedLetters): readonly Finding[] {
  return patternNamed(pattern)?.scope === 'syllable' ? findPattern(pattern, word) : []
}

export interface AlsoQuestion {
  readonly text: string
  readonly place: Place
  readonly graphemes: readonly Grapheme[]
  readonly alsoPatterns: readonly (PatternOverride & { readonly letters: string })[]
}

/** Letters that cannot be what the pattern is called after are an error; sounds that speak against it a warning. */
export function alsoProblems({ text, place, graphemes, alsoPatterns }: AlsoQuestion): readonly Problem[] {
  return alsoPatterns.flatMap(({ pattern, letters }): readonly Problem[] => {
    const { definition, example } = patternNamed(pattern)!
    const advice = `${pattern} is ${definition}; for example ${example.letters} in ${example.word}.`
    if (!mayBeCalled(pattern, letters))
      return [errorAt(place, `the letters "${letters}" of "${text}" cannot be ${pattern}`, advice)]
    const against = heardOtherwise(pattern, soundsUnder(letters, text, graphemes))
    if (against === undefined) return []
    return [warningAt(place, `"${letters}" of "${text}" is called ${pattern}, and ${against}`, advice)]
  })
}

/** What the letters must be, by the meaning of the name alone; a pattern that is left out may stand on any letters. */
export const lettersNeeded: Readonly<Record<string, RegExp>> = {
  'short-vowel': /[aeiouyw]/,
  'long-vowel': /[aeiouyw]/,
  'vowel-team': /[aeiouyw].*[a-z]/,
  diphthong: /[aeiouyw].*[a-z]/,
  schwa: /[aeiouy]/,
  'r-controlled': /[aeiouy].*r/,
  'y-as-vowel': /y/,
  'silent-e': /e$/,
  'consonant-le': /le[sd]?$/,
  'consonant-digraph': /^[^aeiou]{2}$/,
  'beginning-blend': /^(?:[^aeiou]{2,}|squ)$/,
  'ending-blend': /^[^aeiou]{2,}$/,
  'three-letter-blend': /^(?:[^aeiou]{3,}|squ)$/,
  'digraph-blend': /^[^aeiou]{3,}$/,
  trigraph: /^[a-z]{3}$/,
  'double-consonant': /([^aeiou])\1/,
  'hard-c': /c/,
  'soft-c': /c/,
  'hard-g': /g/,
  'soft-g': /g/,
  qu: /qu/,
  x: /x/,
  'ending-s': /s$/,
  'ending-es': /es$/,
  'ending-ed': /ed$/,
  'ending-ing': /ing$/,
  'ending-er': /er$/,
  'ending-est': /est$/,
  contraction: /'/,
}

function mayBeCalled(pattern: string, letters: string): boolean {
  return lettersNeeded[pattern]?.test(letters.replaceAll('_', '')) ?? true
}

/** The graphemes that the letters touch; only the ends of letters that stand apart. */
function soundsUnder(letters: string, text: string, graphemes: readonly Grapheme[]): readonly Grapheme[] {
  const [from, to] = stretchOf(letters, text.toLowerCase()) ?? [0, 0]
  const touched = graphemes.filter(({ start, letters: own }) => start < to && start + own.length > from)
  return letters.includes('_') ? [touched[0]!, touched.at(-1)!] : touched
}

const heardAsVowels: ReadonlySet<string> = new Set([
  'short-vowel',
  'long-vowel',
  'vowel-team',
  'diphthong',
  'r-controlled',
  'schwa',
  'consonant-le',
])

function heardOtherwise(pattern: string, touched: readonly Grapheme[]): string | undefined {
  const isHeard = ({ letters, sounds }: Grapheme) => sounds.length > 0 && letters.length === 1
  if (pattern === 'silent-letters' && touched.every(isHeard)) return 'every letter of it is heard'
  if (pattern === 'silent-e' && touched.length > 0 && isHeard(touched.at(-1)!)) return 'its e is heard'
  const isVowel = touched.some(({ sounds }) => sounds.some(isVowelSound))
  if (heardAsVowels.has(pattern) && !isVowel) return 'no vowel is heard in it'
  return undefined
}
