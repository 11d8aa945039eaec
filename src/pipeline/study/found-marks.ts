/** Marks for a week whose plan names none: the patterns that most of its words show, in the usual black styles. */
import type { Plan, PlanMark, PlanWord } from '../../plan/plan.js'
import { patternsToMark } from '../../sets/lesson/lesson-patterns.js'
import type { Word } from '../../words/word.js'

/** So many black styles are easily kept apart on one key: our own judgement, no source. */
const MOST_MARKS = 8

/** The plan with the marks that it leaves to be found; the plan itself where the teacher names hers. */
export function withFoundMarks(plan: Plan, words: ReadonlyMap<PlanWord, Word>): Plan {
  const { week } = plan
  if (week?.findsMarks !== true) return plan
  // The class and its groups share a key, whose first marks are the class's.
  const lists = [plan.words, ...plan.groups.map(group => group.words)]
  const found = lists.flatMap(list => patternsToMark(list.map(word => words.get(word)!)))
  const marks = [...new Set(found)].slice(0, MOST_MARKS).map(
    (pattern): PlanMark => ({
      place: week.place,
      // What is found so must not ask the teacher anything.
      target: { kind: 'pattern', pattern, ...(pattern === 'consonant-digraph' && { insideBlends: false }) },
    }),
  )
  return { ...plan, marks }
}
