import { fail, succeed } from '../../src/outcomes.js'
import { errorAt, type Problem } from '../../src/problems.js'
import type { Card } from '../../src/sets/card-set.js'
import { copyLetter } from '../../src/sets/set-mark.js'
import { pageRoom } from '../../src/sheets/grid.js'
import { defineLayout, type LayoutRequest, type PlanSet } from '../layout.js'
import { type ChecklistRequest, checklistsTogether } from './checklist-slips.js'

/** A slip for each bag: every piece of its set with a box to tick. */
export const checklist = defineLayout({
  kind: 'sheets',
  name: 'checklist',
  summary: 'a slip for each bag that lists its pieces, with a box to tick for each',
  options: {},
  marks: 'none',
  sheets: (request, { grid, lettering, sets: listed }) => {
    if (listed.length === 0) return fail(nothingToList(request))
    const page = { lettering, sheetSize: grid.sheetSize, room: pageRoom(grid) }
    const value = checklistsTogether(listed.flatMap(slipsOf).map(slip => ({ ...slip, ...page })))
    return succeed(value.map(sheet => ({ ...sheet, title: `${request.plan.title}: checklists` })))
  },
})

/** One for each copy of the set, which has a bag of its own. */
function slipsOf({ name, setTitle, shortSetTitle, subtitle, copies, set }: PlanSet): readonly Slip[] {
  return Array.from({ length: copies }, (_, index) => ({
    title: `${setTitle}: ${name}`,
    subtitles: [
      ...(subtitle === '' ? [] : [subtitle]),
      `set mark: ${[shortSetTitle, ...(copies === 1 ? [] : [copyLetter(index + 1)])].join(' · ')}`,
    ],
    entries: set.cards
      .filter(card => card.copy === 1)
      .map(card => ({ number: card.number, text: whatStandsOn(card) })),
    copies: 1,
  }))
}

type Slip = Pick<ChecklistRequest, 'title' | 'subtitles' | 'entries' | 'copies'>

function whatStandsOn({ kind, words, title }: Card): string {
  if (kind === 'board') return 'board'
  if (kind === 'header') return `header: ${title}`
  return words.map(word => word.text).join(' ') || (title ?? '')
}

/** Lists and labels need sets to tell of. */
export function nothingToList({ item }: LayoutRequest): Problem {
  return errorAt(
    item.place,
    `"${item.name}" has no set of cards or boards to tell of`,
    'Print a set in the same plan (word-cards, say), or take this item out.',
  )
}
