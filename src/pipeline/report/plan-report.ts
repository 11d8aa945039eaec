import type { Plan } from '../../plan/plan.js'
import { type BackForReview, backForReview } from './back-for-review.js'
import type { ItemReport } from './item-report.js'
import type { ProposedGroup } from './proposed-groups.js'

/** What a plan would take, item by item and in all. */
export interface PlanReport {
  readonly plan: string
  readonly title: string
  readonly items: readonly ItemReport[]
  readonly pages: number
  readonly sheetsOfCard: number
  readonly pieces: number
  readonly cuts: number
  /** Share of the card, 0 to 1, that ends in the bin. */
  readonly wasteShare: number
  /** Words of earlier weeks, where any come back. */
  readonly review?: readonly BackForReview[]
  /** Lists for groups, where the plan asks for some. */
  readonly proposed?: readonly ProposedGroup[]
}

/** @param file the plan file's path, as it was given */
export function reportPlan(file: string, plan: Plan, items: readonly ItemReport[]): PlanReport {
  const review = backForReview(plan)
  const sum = (of: (item: ItemReport) => number) => items.reduce((total, item) => total + of(item), 0)
  const sheetsOfCard = sum(item => item.sheetsOfCard)
  const wasted = sum(item => item.wasteShare * item.sheetsOfCard)
  return {
    plan: file,
    title: plan.title,
    items,
    pages: sum(item => item.pages),
    sheetsOfCard,
    pieces: sum(item => item.pieces),
    cuts: sum(item => item.cuts),
    wasteShare: sheetsOfCard === 0 ? 0 : Math.round((wasted / sheetsOfCard) * 1000) / 1000,
    ...(review.length === 0 ? {} : { review }),
  }
}
