/** Two spellings that are no two words: gray and grey, worshiped and worshipped, gentleman and gentlemen. */
import { type Base, classOfForm, irregularForms, regularBases } from '../parts-of-speech/bases.js'
import type { WordNetSense } from '../parts-of-speech/wordnet.js'

/**
 * Two spellings said alike are one word where they are forms of one base, or where a sense of one is a sense of the
 * other: WordNet lists variants of a spelling in one synset.
 */
export function oneWordTest(
  senses: ReadonlyMap<string, readonly WordNetSense[]>,
): (first: string, second: string) => boolean {
  const irregular = irregularForms()
  const isLemma = ({ base, form }: Base) =>
    senses.get(base)?.some(({ partOfSpeech }) => partOfSpeech === classOfForm[form])
  const lemmasOf = (word: string) => [
    word,
    ...[...(irregular.get(word) ?? []), ...regularBases(word)].filter(isLemma).map(({ base }) => base),
    ...(word.endsWith('men') ? [word.replace(/men$/, 'man')] : []),
  ]
  const sensesOf = (lemma: string) =>
    (senses.get(lemma) ?? []).map(({ partOfSpeech, offset }) => `${partOfSpeech} ${offset}`)
  return (first, second) => {
    const lemmas = lemmasOf(first)
    const meanings = new Set(lemmas.flatMap(sensesOf))
    return lemmasOf(second).some(
      lemma => lemmas.includes(lemma) || sensesOf(lemma).some(sense => meanings.has(sense)),
    )
  }
}
