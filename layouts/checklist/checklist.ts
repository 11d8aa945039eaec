import { fail, succeed } from '../../src/outcomes.js'
import { errorAt, type Problem } from '../../src/problems.js'
import type { Card } from '../../src/sets/card-set.js'
import { firstCopy } from '../../src/sets/set-contents.js'
import { copyLetter } from '../../src/sets/set-mark.js'
import { pageRoom } from '../../src/sheets/grid.js'
import { defineLayout, type LayoutRequest, type PlanSet } from '../layout.js'
import { type ChecklistRequest, checklistsTogether } from './checklist-slips.js'

/** A slip for each bag: every piece of its set with a box to tick. */
export const checklist = defineLayout({
  kind: 'sheets',
  name: 'checklist',
  summary: 'a slip for each bag that lists its pieces, with a box to tick for each',
  inWeek: { day: 'storing', given: 'once' },
  options: {},
  marks: 'none',
  sheets: (request, { grid, lettering, sets: listed }) => {
    const { plan } = request
    if (listed.length === 0) return fail(nothingToList(request))
    const page = { lettering, sheetSize: grid.sheetSize, room: pageRoom(grid) }
    const value = checklistsTogether(
      listed.flatMap(set => slipsOf(set, plan.title)).map(slip => ({ ...slip, ...page })),
    )
    return succeed(value.map(sheet => ({ ...sheet, title: `${plan.title}: ${request.itemTitle}` })))
  },
})

/** One for each copy of the set, which has a bag of its own. */
function slipsOf({ title, group, shortSetTitle, copies, set }: PlanSet, planTitle: string): readonly Slip[] {
  return Array.from({ length: copies }, (_, index) => ({
    title: group === null ? title : `${title}, ${group}`,
    subtitles: [
      planTitle,
      `set mark: ${[shortSetTitle, ...(copies === 1 ? [] : [copyLetter(index + 1)])].join(' · ')}`,
    ],
    entries: firstCopy(set).map(numberAndContent),
    copies: 1,
  }))
}

type Slip = Pick<ChecklistRequest, 'title' | 'subtitles' | 'entries' | 'copies'>

function numberAndContent({ kind, number, words, title }: Card): string {
  if (kind === 'board') return `board ${number}`
  if (kind === 'header') return `${number} header: ${title}`
  return `${number} ${words.map(word => word.text).join(' ') || (title ?? '')}`
}

/** Lists and labels need sets to tell of. */
export function nothingToList({ item }: LayoutRequest): Problem {
  return errorAt(
    item.place,
    `"${item.name}" has no set of cards or boards to tell of`,
    'Print a set in the same plan (word-cards, say), or take this item out.',
  )
}
