/** What the words show that the class has not met, where its class file says what is taught. */
import { unmetInStudied } from '../../src/words/find/unmet-in-words.js'
import { installedLexicon } from '../../src/words/lexicon/lexicon.js'
import { plainName } from '../../src/words/patterns/plain-name.js'
import type { LayoutRequest } from '../layout.js'

/** `silent letters: kn (knee, knot)`, one line a pattern. */
export function newToClass({ words, plan: { taught } }: LayoutRequest): readonly string[] {
  if (taught === undefined) return []
  const unmet = unmetInStudied({ taught, words, lexicon: installedLexicon() })
  // A mistake in what is taught is told by whoever reads the plan.
  if (!unmet.ok) return []
  return unmet.value.map(({ pattern, words: shown }) => {
    const told = [...new Set(shown.map(({ letters }) => letters))].map(letters => {
      const own = shown.filter(each => each.letters === letters).map(({ word }) => word)
      return `${letters} (${[...new Set(own)].join(', ')})`
    })
    return `${plainName(pattern)}: ${told.join(', ')}`
  })
}
