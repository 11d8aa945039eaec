/** What the sheets with columns of a sort have in common. */
import type { Size } from '../../src/geometry.js'
import { andThen, succeed } from '../../src/outcomes.js'
import type { CardFace } from '../../src/pieces/faces/face.js'
import type { Outcome } from '../../src/problems.js'
import type { CardSet } from '../../src/sets/card-set.js'
import type { SortHeading } from '../../src/sets/sorts/sort-heading.js'
import { sortSheetSet } from '../../src/sets/sorts/sort-sheet-set.js'
import { type ChosenHeadings, chooseHeadings, type SortRequest } from './chosen-headings.js'
import { sortSheetFaces } from './columns-face.js'
import type { SortSheet } from './sheet-rows.js'

/** The sheet for each copy, with what a teacher should know of its sort. */
export function sheetSet(
  request: SortRequest,
  more: (chosen: ChosenHeadings) => Partial<CardSet> = () => ({}),
): Outcome<CardSet> {
  const { words, item } = request
  return andThen(chooseHeadings(request), chosen => {
    const { sort, headings } = chosen
    const set = sortSheetSet(headings, words, item.copies)
    return succeed({ ...set, notes: [`The sort is "${sort.name}". ${sort.why}`], ...more(chosen) })
  })
}

export function sheetFaces(
  request: SortRequest,
  set: CardSet,
  size: Size,
  sheetOf: (headings: readonly SortHeading[]) => Omit<SortSheet, 'headings'>,
): Outcome<readonly CardFace[]> {
  return andThen(chooseHeadings(request), ({ headings }) => {
    const sheet = { headings, ...sheetOf(headings) }
    return sortSheetFaces(request, set, { size, sheet })
  })
}

/** One more than the longest column has words, so that no column tells how many belong in it. */
export function linesFor(headings: readonly SortHeading[]): number {
  return Math.max(3, ...headings.map(({ words }) => words.length + 1))
}
