/** Marks for a week whose plan names none: the patterns that most of its words show, in the usual black styles. */
import type { Plan, PlanMark, PlanWord } from '../../plan/plan.js'
import { patternsToMark } from '../../sets/lesson/lesson-patterns.js'
import type { Word } from '../../words/word.js'

/** The plan with the marks that it leaves to be found; the plan itself where the teacher names hers. */
export function withFoundMarks(plan: Plan, words: ReadonlyMap<PlanWord, Word>): Plan {
  const { week } = plan
  if (week?.findsMarks !== true) return plan
  const all = [...plan.words, ...plan.groups.flatMap(group => group.words)]
  const studied = new Map(all.map(word => [word.text.toLowerCase(), words.get(word)!]))
  const marks = patternsToMark([...studied.values()]).map(
    (pattern): PlanMark => ({
      place: week.place,
      // What is found so must not ask the teacher anything.
      target: { kind: 'pattern', pattern, ...(pattern === 'consonant-digraph' && { insideBlends: false }) },
    }),
  )
  return { ...plan, marks }
}
