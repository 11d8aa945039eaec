/** The patterns of a list of words that a class has not met, each with the words that show it. */
import { andThen, succeed } from '../../outcomes.js'
import type { PlanWord, TaughtEntry } from '../../plan/plan.js'
import type { Outcome } from '../../problems.js'
import type { Lexicon } from '../lexicon/entry.js'
import { type ClassWays, studyWord } from '../study.js'
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
  return andThen(knownBy(taught, lexicon), known => {
    const byPattern = new Map<string, { word: string; letters: string }[]>()
    for (const planWord of words) {
      const studied = studyWord(planWord, lexicon, ways)
      if (!studied.ok) continue
      for (const { pattern, letters } of unmetFindings(offeredWord(studied.value, 0), known)) {
        const shown = byPattern.get(pattern) ?? []
        byPattern.set(pattern, [...shown, { word: planWord.text, letters }])
      }
    }
    return succeed([...byPattern].map(([pattern, shown]) => ({ pattern, words: shown })))
  })
}
