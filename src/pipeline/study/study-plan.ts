import { failWith, succeed } from '../../outcomes.js'
import { assignStyles } from '../../pieces/marks/assign-styles.js'
import { missedWords } from '../../pieces/marks/missed-words.js'
import { stackedLines } from '../../pieces/marks/stacked-lines.js'
import type { StyledMark } from '../../pieces/marks/styled-mark.js'
import type { Plan, PlanGroup, PlanWord } from '../../plan/plan.js'
import type { Outcome } from '../../problems.js'
import type { Word } from '../../words/word.js'
import { withFoundMarks } from './found-marks.js'
import type { Materials } from './materials.js'
import { studyPlanWords, type WordStudying } from './study-words.js'

/** What the study step gives: the plan, its words studied, its marks styled, and what it uses from other files. */
export interface StudiedPlan {
  readonly plan: Plan
  readonly words: ReadonlyMap<PlanWord, Word>
  readonly marks: readonly StyledMark[]
  /** Of groups that have marks of their own. */
  readonly groupMarks: ReadonlyMap<PlanGroup, readonly StyledMark[]>
  readonly materials: Materials
}

export interface PlanStudying extends WordStudying {
  readonly materials: Materials
}

/** plan → words: studies each word, gives each mark its style, and says which marks miss their words. */
export function studyPlan(asWritten: Plan, studying: PlanStudying): Outcome<StudiedPlan> {
  const words = studyPlanWords(asWritten, studying)
  const plan = words.ok ? withFoundMarks(asWritten, words.value) : asWritten
  const ownMarks = plan.groups.filter(({ marks }) => marks !== undefined)
  const styled = styledFor(plan, plan.marks)
  const styledOfGroups = ownMarks.map(group => ({ group, ...styledFor(plan, group.marks!) }))
  const problems = [...words.problems, ...styled.problems, ...styledOfGroups.flatMap(each => each.problems)]
  if (!words.ok) return failWith(problems)
  const studied = (list: readonly PlanWord[]) => list.map(word => words.value.get(word)!)
  const others = plan.groups.filter(({ marks }) => marks === undefined)
  const missed = [
    ...missing(studied([...plan.words, ...others.flatMap(group => group.words)]), styled.marks),
    ...styledOfGroups.flatMap(({ group, marks }) =>
      missing(studied(group.words.length === 0 ? plan.words : group.words), marks),
    ),
  ]
  const groupMarks = new Map(styledOfGroups.map(({ group, marks }) => [group, marks]))
  const { materials } = studying
  return succeed({ plan, words: words.value, marks: styled.marks, groupMarks, materials }, [
    ...problems,
    ...missed,
  ])
}

function styledFor({ contrast }: Plan, marks: Plan['marks']) {
  return assignStyles(marks, contrast?.stock ? contrast.ground : undefined)
}

function missing(words: readonly Word[], marks: readonly StyledMark[]) {
  return [...missedWords(words, marks), ...stackedLines(words, marks)]
}
