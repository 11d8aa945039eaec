/** Words that could be laid beside those of a sort. */
import { succeed } from '../src/outcomes.js'
import type { TaughtEntry } from '../src/plan/plan.js'
import { openOfferedWords } from '../src/words/find/offered-file.js'
import { readableWords } from '../src/words/find/taught.js'
import { wordsLike } from '../src/words/find/words-like.js'
import { installedLexicon } from '../src/words/lexicon/lexicon.js'
import type { LayoutRequest } from './layout.js'

/** As hard as the list's own, and such as the class can read where its class file says what is taught. */
export function wordsToLay({ words, plan, marks }: Pick<LayoutRequest, 'words' | 'plan' | 'marks'>) {
  const lexicon = installedLexicon()
  // A mistake in what is taught is told by whoever reads the plan.
  const readable =
    plan.taught === undefined
      ? succeed(undefined)
      : readableWords([...plan.taught, ...taughtBy(marks)], lexicon)
  return wordsLike({
    words,
    offered: openOfferedWords,
    lexicon,
    readable: readable.ok ? readable.value : undefined,
  })
}

/** What the plan marks is what she teaches with it. */
function taughtBy(marks: LayoutRequest['marks']): readonly TaughtEntry[] {
  return marks.flatMap(({ mark: { target, place } }): readonly TaughtEntry[] => {
    if (target.kind === 'word') return []
    return [
      target.kind === 'pattern'
        ? { kind: 'pattern', pattern: target.pattern, place }
        : { kind: 'letters', letters: target.letters, place },
    ]
  })
}
