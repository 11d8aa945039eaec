import { failWith, succeed } from '../../outcomes.js'
import { assignStyles } from '../../pieces/marks/assign-styles.js'
import { missedWords } from '../../pieces/marks/missed-words.js'
import { stackedLines } from '../../pieces/marks/stacked-lines.js'
import type { StyledMark } from '../../pieces/marks/styled-mark.js'
import type { Plan, PlanWord } from '../../plan/plan.js'
import type { Outcome } from '../../problems.js'
import type { Word } from '../../words/word.js'
import type { Materials } from './materials.js'
import { studyPlanWords, type WordStudying } from './study-words.js'

/** What the study step gives: the plan, its words studied, its marks styled, and what it uses from other files. */
export interface StudiedPlan {
  readonly plan: Plan
  readonly words: ReadonlyMap<PlanWord, Word>
  readonly marks: readonly StyledMark[]
  readonly materials: Materials
}

export interface PlanStudying extends WordStudying {
  readonly materials: Materials
}

/** plan → words: studies each word, gives each mark its style, and says which marks miss their words. */
export function studyPlan(plan: Plan, studying: PlanStudying): Outcome<StudiedPlan> {
  const words = studyPlanWords(plan, studying)
  const styled = assignStyles(plan.marks, plan.contrast?.stock ? plan.contrast.ground : undefined)
  const problems = [...words.problems, ...styled.problems]
  if (!words.ok) return failWith(problems)
  const { materials } = studying
  const studied = [...words.value.values()]
  const missed = [...missedWords(studied, styled.marks), ...stackedLines(studied, styled.marks)]
  return succeed({ plan, words: words.value, marks: styled.marks, materials }, [...problems, ...missed])
}
