/** The patterns of a list of words that a class has not met, each with the words that show it. */
import { andThen, succeed } from '../../outcomes.js'
import type { PlanWord, TaughtEntry } from '../../plan/plan.js'
import type { Outcome } from '../../problems.js'
import type { Lexicon } from '../lexicon/entry.js'
import { type ClassWays, studyWord } from '../study.js'
import type { Word } from '../word.js'
import { offeredWord } from './offered-word.js'
import { knownBy } from './taught.js'
import { unmetFindings } from './unmet.js'

export interface UnmetPattern {
  readonly pattern: string
  readonly words: readonly { readonly word: string; readonly letters: string }[]
}

export interface UnmetRequest {
  readonly taught: readonly TaughtEntry[]
  readonly words: readonly PlanWord[]
  readonly lexicon: Lexicon
  readonly ways: ClassWays
}

/** In the order in which the words show them. Words with problems of their own are passed over: these are told elsewhere. */
export function unmetIn({ taught, words, lexicon, ways }: UnmetRequest): Outcome<readonly UnmetPattern[]> {
  const studied = words.flatMap(word => {
    const outcome = studyWord(word, lexicon, ways)
    return outcome.ok ? [outcome.value] : []
  })
  return unmetInStudied({ taught, words: studied, lexicon })
}

/** The same of words that are studied already. */
export function unmetInStudied({
  taught,
  words,
  lexicon,
}: Pick<UnmetRequest, 'taught' | 'lexicon'> & { readonly words: readonly Word[] }): Outcome<
  readonly UnmetPattern[]
> {
  return andThen(knownBy(taught, lexicon), known => {
    const byPattern = new Map<string, { word: string; letters: string }[]>()
    for (const word of words)
      for (const { pattern, letters } of unmetFindings(offeredWord(word, 0), known)) {
        const shown = byPattern.get(pattern) ?? []
        byPattern.set(pattern, [...shown, { word: word.text, letters }])
      }
    return succeed([...byPattern].map(([pattern, shown]) => ({ pattern, words: shown })))
  })
}
