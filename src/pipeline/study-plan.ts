import { failWith, succeed } from '../outcomes.js'
import type { Plan, PlanWord } from '../plan/plan.js'
import type { Outcome, Problem } from '../problems.js'
import type { Lexicon } from '../words/lexicon/lexicon.js'
import { findPattern } from '../words/patterns/find-patterns.js'
import { patternNamed } from '../words/patterns/index.js'
import { studyWord } from '../words/study.js'
import type { Word } from '../words/word.js'

/** Studies every word of a plan, the class's and its groups'. */
export function studyPlanWords(plan: Plan, lexicon: Lexicon): Outcome<ReadonlyMap<PlanWord, Word>> {
  const problems: Problem[] = []
  const studied = new Map<PlanWord, Word>()
  const named = patternsNamed(plan)
  for (const planWord of [...plan.words, ...plan.groups.flatMap(group => group.words)]) {
    const outcome = studyWord(planWord, lexicon, plan)
    problems.push(...outcome.problems)
    if (outcome.ok) studied.set(planWord, withNamedPatterns(outcome.value, named))
  }
  if (problems.some(problem => problem.severity === 'error')) return failWith(problems)
  return succeed(studied, problems)
}

/** Patterns that are looked for only when they are asked for: kinds of syllables that the plan's marks name. */
function patternsNamed({ marks }: Plan): readonly string[] {
  const names = marks.flatMap(({ target }) => (target.kind === 'pattern' ? [target.pattern] : []))
  return names.filter(name => patternNamed(name)?.scope === 'syllable')
}

function withNamedPatterns(word: Word, names: readonly string[]): Word {
  if (names.length === 0) return word
  const letters = { ...word, pronunciation: word.pronunciations[0] ?? '' }
  return { ...word, patterns: [...word.patterns, ...names.flatMap(name => findPattern(name, letters))] }
}
