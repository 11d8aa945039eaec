/** What the words show that the class has not met, where its class file says what is taught. */
import { offeredWord } from '../../src/words/find/offered-word.js'
import { knownBy } from '../../src/words/find/taught.js'
import { unmetFindings } from '../../src/words/find/unmet.js'
import { installedLexicon } from '../../src/words/lexicon/lexicon.js'
import { plainName } from '../../src/words/patterns/plain-name.js'
import type { LayoutRequest } from '../layout.js'

/** `silent letters: kn (knee, knot)`, one line a pattern. */
export function newToClass({ words, plan }: LayoutRequest): readonly string[] {
  if (plan.taught === undefined) return []
  const known = knownBy(plan.taught, installedLexicon())
  // A mistake in what is taught is told by whoever reads the plan.
  if (!known.ok) return []
  const shown = new Map<string, Map<string, string[]>>()
  for (const word of words)
    for (const { pattern, letters } of unmetFindings(offeredWord(word, 0), known.value)) {
      const byLetters = shown.get(pattern) ?? new Map<string, string[]>()
      const own = byLetters.get(letters) ?? []
      byLetters.set(letters, own.includes(word.text) ? own : [...own, word.text])
      shown.set(pattern, byLetters)
    }
  return [...shown].map(([pattern, byLetters]) => {
    const told = [...byLetters].map(([letters, own]) => `${letters} (${own.join(', ')})`)
    return `${plainName(pattern)}: ${told.join(', ')}`
  })
}
