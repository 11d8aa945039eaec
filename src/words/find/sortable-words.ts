/** Words to sort. Of a long list, those that were studied when oaktag was built are not studied again. */
import { failWith, succeed } from '../../outcomes.js'
import type { PlanWord } from '../../plan/plan.js'
import type { Outcome } from '../../problems.js'
import type { Lexicon } from '../lexicon/entry.js'
import type { SortableWord } from '../sortable-word.js'
import { type ClassWays, studyWord } from '../study.js'
import type { OfferedWord } from './offered-word.js'

export interface SortableWordsTask {
  readonly list: readonly PlanWord[]
  readonly lexicon: Lexicon
  readonly ways: ClassWays
  readonly offered: () => readonly OfferedWord[]
}

/** Fewer are studied sooner than all that is kept is read. */
const longList = 500

/** What was kept is General American, counted as taught: a class with other ways has its words studied. */
export function sortableWords({
  list,
  lexicon,
  ways,
  offered,
}: SortableWordsTask): Outcome<readonly SortableWord[]> {
  const isUsual = isLexicons(ways.accent) && (ways.countSounds ?? 'as taught') === 'as taught'
  const kept =
    isUsual && list.length >= longList ? new Map(offered().map(word => [word.text, word])) : undefined
  const outcomes = list.map((word): Outcome<SortableWord> => {
    const known = isPlain(word) ? kept?.get(word.text) : undefined
    return known === undefined ? studyWord(word, lexicon, ways) : succeed(known.sortable)
  })
  const problems = outcomes.flatMap(outcome => outcome.problems)
  const words = outcomes.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  return words.length < outcomes.length ? failWith(problems) : succeed(words, problems)
}

function isLexicons(accent: ClassWays['accent']): boolean {
  return accent === undefined || (accent.rhotic && accent.cotCaught === 'apart' && accent.wh === 'w')
}

/** She settled nothing of it. */
function isPlain({ overrides }: PlanWord): boolean {
  return Object.keys(overrides).length === 0
}
