import type { PlanMark } from '../../plan/plan.js'

/** A mark of the plan with its looks decided. */
export interface StyledMark {
  readonly mark: PlanMark
  /** Its place in the plan's list, from 0. */
  readonly index: number
  readonly line?: string
  readonly outline?: string
  /** `#rrggbb`, where the teacher gave one; else the mark is as black as the type. */
  readonly color?: string
  readonly tag?: string
  /** Whether a line hangs clear below descenders or breaks around them. */
  readonly descenders: 'clear' | 'break'
  /** Whether a line hangs as near to its letters as it can, or on one level with others of its kind in the word. */
  readonly level?: 'near' | 'even'
  /** What joins the two ends of a split pattern; a bracket where left out. */
  readonly link?: 'bracket' | 'arc'
  /** Whether oaktag chose the style. */
  readonly assigned: boolean
}

/** Letters of one word that a mark stands on: one range, or the two ends of a split pattern (a_e). */
export interface MarkSpan {
  readonly mark: StyledMark
  /** In reading order; text indices. */
  readonly ranges: readonly [LetterRange] | readonly [LetterRange, LetterRange]
  /** The letters that a line through them crosses, where these are not all: only those that say nothing. */
  readonly struck?: readonly LetterRange[]
  /** The team that the struck letters belong to: what a key shows. */
  readonly team?: MarkSpan['ranges']
  /** It has its place, and is not drawn yet: what is drawn later moves nothing. */
  readonly unseen?: true
}

/** From `start` up to, not including, `end`. */
export interface LetterRange {
  readonly start: number
  readonly end: number
}
