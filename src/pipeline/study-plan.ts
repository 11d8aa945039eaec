import type { Plan, PlanWord } from '../plan/plan.js'
import type { Outcome, Problem } from '../problems.js'
import type { Lexicon } from '../words/lexicon/lexicon.js'
import { studyWord } from '../words/study.js'
import type { Word } from '../words/word.js'

/** Studies every word of a plan, the class's and its groups'. */
export function studyPlanWords(plan: Plan, lexicon: Lexicon): Outcome<ReadonlyMap<PlanWord, Word>> {
  const problems: Problem[] = []
  const studied = new Map<PlanWord, Word>()
  for (const planWord of [...plan.words, ...plan.groups.flatMap(group => group.words)]) {
    const outcome = studyWord(planWord, lexicon)
    problems.push(...outcome.problems)
    if (outcome.ok) studied.set(planWord, outcome.value)
  }
  if (problems.some(problem => problem.severity === 'error')) return { ok: false, problems }
  return { ok: true, value: studied, problems }
}
