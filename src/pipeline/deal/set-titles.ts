import { itemInWords } from '../../plan/items/item-title.js'
import type { Plan, PlanGroup, PrintItem } from '../../plan/plan.js'

/** What is told of an item for one group of children, or for the class. */
export interface TitledSet {
  readonly item: PrintItem
  readonly group: PlanGroup | null
}

/**
 * Short titles of every set of a plan, the fullest first: `Along the marsh · letter tiles`, `letter tiles`, `tiles`, `#1`. None of
 * them is the title of two sets, so that whichever a small piece has room for tells its set apart.
 */
export function shortSetTitles(plan: Plan, sets: readonly TitledSet[]): readonly (readonly string[])[] {
  const wished = sets.map(set => titlesOf(plan, set))
  const uses = new Map<string, number>()
  for (const titles of wished)
    for (const title of new Set(titles.map(folded))) uses.set(title, (uses.get(title) ?? 0) + 1)
  return wished.map(titles => titles.filter(title => uses.get(folded(title)) === 1))
}

function titlesOf(plan: Plan, { item, group }: TitledSet): readonly string[] {
  const what = itemInWords(item)
  // What it is for short; two sets of cards are told apart by more of their names.
  const kind = what.split(' ').at(-1)!
  const number = `#${plan.print.indexOf(item) + 1}`
  if (group === null) return [`${plan.title} · ${what}`, what, kind, number]
  // Letters for groups, so that #2b is no other item's number.
  const ofGroup = [`${group.name} · ${what}`, `${group.name} · ${kind}`]
  return [...ofGroup, `${number}${String.fromCharCode(97 + plan.groups.indexOf(group))}`]
}

function folded(title: string): string {
  return title.toLowerCase().replaceAll(/\s+/g, ' ')
}
