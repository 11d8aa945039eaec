import { failWith, present, succeed } from '../../outcomes.js'
import type { Plan, PlanWord } from '../../plan/plan.js'
import { hasErrors, type Outcome, type Problem } from '../../problems.js'
import type { Lexicon } from '../../words/lexicon/lexicon.js'
import { findPattern } from '../../words/patterns/find-patterns.js'
import { patternNamed } from '../../words/patterns/index.js'
import { type ClassWays, studyWord } from '../../words/study.js'
import type { Word } from '../../words/word.js'
import type { KeptStore } from '../kept-store.js'

export interface WordStudying {
  readonly lexicon: Lexicon
  /** Words studied before, each kept by what the plan says of it. */
  readonly words: KeptStore<Outcome<Word>>
}

/** Studies every word of a plan, the class's and its groups'. */
export function studyPlanWords(
  plan: Plan,
  { lexicon, words }: WordStudying,
): Outcome<ReadonlyMap<PlanWord, Word>> {
  const problems: Problem[] = []
  const studied = new Map<PlanWord, Word>()
  const named = patternsNamed(plan)
  const { accent, countSounds, cluesFrom } = plan
  const ways: ClassWays = present({ accent, countSounds, cluesFrom })
  for (const planWord of [...plan.words, ...plan.groups.flatMap(group => group.words)]) {
    const { place, overridePlaces = {} } = planWord
    const from = { parts: [planWord, ways, named], places: [place, ...Object.values(overridePlaces)] }
    const outcome = words.once(from, () => {
      const word = studyWord(planWord, lexicon, ways)
      return word.ok ? { ...word, value: withNamedPatterns(word.value, named) } : word
    })
    for (const problem of outcome.problems) problems.push(problem)
    if (outcome.ok) studied.set(planWord, outcome.value)
  }
  return hasErrors(problems) ? failWith(problems) : succeed(studied, problems)
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
