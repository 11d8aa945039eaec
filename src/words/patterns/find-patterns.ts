/** All that a word shows. */
import type { Finding } from '../word.js'
import { patternNamed, patterns } from './index.js'
import type { StudiedLetters } from './pattern.js'

const ordinary = patterns.filter(pattern => pattern.scope !== 'syllable')
const teachingOrder = new Map(patterns.map((pattern, index) => [pattern.name, index]))

/** The word's findings from left to right; those that start together in teaching order. Kinds of syllable are left out. */
export function findPatterns(word: StudiedLetters): readonly Finding[] {
  const text = word.text.toLowerCase()
  return ordinary
    .flatMap(({ spelledWith, find }) => (spelledWith?.test(text) === false ? [] : find(word)))
    .sort((a, b) => a.start - b.start || order(a) - order(b))
}

/** The findings of one pattern, of any scope. A name that no pattern has is a mistake of the caller. */
export function findPattern(name: string, word: StudiedLetters): readonly Finding[] {
  const pattern = patternNamed(name)
  if (pattern === undefined) throw new Error(`there is no pattern named ${name}`)
  return pattern.find(word)
}

function order(finding: Finding): number {
  return teachingOrder.get(finding.pattern) ?? patterns.length
}
