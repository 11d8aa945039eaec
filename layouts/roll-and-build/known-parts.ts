import { lazily } from '../../src/lazily.js'
import type { KnownParts } from '../../src/sets/games/roll-and-build.js'
import { threeParts } from '../../src/sets/games/split-words.js'
import { offeredTexts, openOfferedWords } from '../../src/words/find/offered-file.js'
import { unfitWords } from '../../src/words/fitness/unfit-file.js'

/** Words of one syllable fit for children. */
export const knownParts: () => readonly KnownParts[] = lazily(() =>
  openOfferedWords().flatMap(({ graphemes, familiarity, syllableCount }) => {
    const parts = syllableCount === 1 ? threeParts(graphemes) : undefined
    return parts === undefined ? [] : [{ parts, familiarity }]
  }),
)

/** Spelled as a child might: what reads like an unfit word is none the better for another letter. */
function asRead(text: string): string {
  // Most throws hold nothing of the kind, and there are twenty thousand of them.
  if (!/c|ph|(.)\1/.test(text)) return text
  return text
    .replaceAll(/ck|c(?![eiyh])/g, 'k')
    .replaceAll('ph', 'f')
    .replaceAll(/(.)\1/g, '$1')
}

const unfitAsRead = lazily(() => new Set([...unfitWords()].map(asRead)))

/** Whether a throw must not spell it. A word that children may meet is fit, whatever it reads like. */
export function isUnfit(text: string): boolean {
  if (unfitWords().has(text)) return true
  return text.length > 2 && !offeredTexts().has(text) && unfitAsRead().has(asRead(text))
}
