/** Names and fragments: in the dictionary of pronunciations, and not words to offer. Build time. */
import { irregularVerbs } from '../endings/irregular-verbs.js'
import { closedClasses } from '../parts-of-speech/listed-parts.js'
import { type OpenClass, readSynsets } from '../parts-of-speech/wordnet.js'
import { wordsOf } from '../tables/installed-tables.js'
import { isSaidByLetters } from './letter-words.js'

export interface NamesTask {
  /** Lower case. */
  readonly words: Iterable<string>
  /** Whether a corpus of speech writes the word with a capital more often than without. */
  readonly isCapitalised: (word: string) => boolean
  /** ARPABET, as it is first listed. */
  readonly pronunciationOf: (word: string) => string | undefined
  /** Parts of speech as gathered; a word without any is a name or a fragment. */
  readonly hasPartOfSpeech: (word: string) => boolean
}

/**
 * Names: WordNet knows them with a capital only, or not at all while speech writes them with one; and a table of
 * first names and places that are also rare words (john, jersey). Fragments: cut off at an apostrophe (isn, didn, ll),
 * single letters, words said letter by letter (atm), and whatever no source calls a word.
 */
export function gatherNames({
  words,
  isCapitalised,
  pronunciationOf,
  hasPartOfSpeech,
}: NamesTask): Set<string> {
  const { small, capital } = lemmas()
  const mostlyNames = new Set(wordsOf('fitness/names'))
  const capitalised = new Set(wordsOf('fitness/capitalised-words'))
  const fragments = new Set(wordsOf('fitness/fragments'))
  const isForm = (word: string) =>
    basesOf(word, { isCapitalised: isCapitalised(word) }).some(
      base => small.has(base) && !mostlyNames.has(base) && !capitalised.has(base),
    )
  const names = new Set<string>()
  for (const word of words) {
    if (closedClasses().has(word) && !mostlyNames.has(word) && !fragments.has(word)) {
      if (word.length === 1 && word !== 'a' && word !== 'i') names.add(word)
      continue
    }
    if (
      mostlyNames.has(word) ||
      capitalised.has(word) ||
      fragments.has(word) ||
      word.length === 1 ||
      !hasPartOfSpeech(word) ||
      isSaidByLetters(word, pronunciationOf(word) ?? '') ||
      (!small.has(word) && !isForm(word) && (capital.has(word) || isCapitalised(word)))
    )
      names.add(word)
  }
  return names
}

/** Lower-case and capitalised lemmas of WordNet. */
function lemmas(): { small: ReadonlySet<string>; capital: ReadonlySet<string> } {
  const small = new Set<string>()
  const capital = new Set<string>()
  for (const partOfSpeech of ['noun', 'verb', 'adjective', 'adverb'] satisfies OpenClass[])
    readSynsets(partOfSpeech, (_offset, { words }) => {
      for (const word of words) {
        const lower = word.toLowerCase()
        if (word === lower) small.add(word)
        else capital.add(lower)
      }
    })
  for (const { past, participle } of irregularVerbs().values())
    for (const form of [...past, ...participle]) small.add(form)
  return { small, capital }
}

/**
 * What an ending could have been joined to. Whoever is more or -er than others has no capital in speech: with one,
 * beecher and rainier are surnames.
 */
function basesOf(word: string, { isCapitalised }: { readonly isCapitalised: boolean }): readonly string[] {
  const bases: string[] = []
  for (const ending of ['s', 'es', 'ed', 'ing', 'd', "'s", ...(isCapitalised ? [] : ['er', 'est'])]) {
    if (!word.endsWith(ending)) continue
    const stem = word.slice(0, -ending.length)
    if (stem.length < 2) continue
    const undoubled = /([^aeiou])\1$/.test(stem) ? stem.slice(0, -1) : stem
    const withY = stem.endsWith('i') ? `${stem.slice(0, -1)}y` : stem
    bases.push(stem, `${stem}e`, undoubled, withY)
  }
  return word.endsWith('men') ? [...bases, `${word.slice(0, -3)}man`] : bases
}
