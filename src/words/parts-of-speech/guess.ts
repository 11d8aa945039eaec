import type { PartOfSpeech } from '../word.js'

/** Endings that tell a word class; the first that fits decides. Common practice, no source. */
const endings: readonly (readonly [RegExp, readonly PartOfSpeech[]])[] = [
  [/.{3}(?:ness|ment|tion|sion|ship|hood|dom|ism|ist|ology|ance|ence|ity)s?$/, ['noun']],
  [/([bdgpz])\1ly$/, ['adjective']],
  [/.{3}ly$/, ['adverb']],
  [/.{3}(?:ful|less|ous|able|ible|ish|ive|ical|ic|esque)$/, ['adjective']],
  [/.{2}ing$/, ['verb', 'noun', 'adjective']],
  [/.{2}ed$/, ['verb', 'adjective']],
  [/.{2}(?:ize|ise|ify|ified|izes|ized)$/, ['verb']],
  [/.{3}(?:er|or)s?$/, ['noun']],
  [/.{3}est$/, ['adjective']],
  [/.{2}y$/, ['adjective', 'noun']],
  [/.{2}s$/, ['noun', 'verb']],
]

/**
 * For a word that no source lists: by its ending, else a noun, as most new words are. A guess, and to be called one.
 * A word that shows whose something is (heron's) is left without.
 */
export function guessPartsOfSpeech(text: string, isName = false): readonly PartOfSpeech[] {
  const word = text.toLowerCase()
  if (/'s?$/.test(word)) return []
  if (isName || /^[A-Z][a-z]/.test(text)) return ['noun']
  return endings.find(([pattern]) => pattern.test(word))?.[1] ?? ['noun']
}
