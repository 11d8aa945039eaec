/** The sort of an item, and what stands over its columns. */
import { succeed } from '../../src/outcomes.js'
import { choice, type OptionsOf, option } from '../../src/plan/values/options.js'
import { type Outcome, type Problem, warningAt } from '../../src/problems.js'
import type { Sort } from '../../src/sets/sorts/sort.js'
import type { RatedSort } from '../../src/sets/sorts/sort-by.js'
import { type SortHeading, sortHeadings } from '../../src/sets/sorts/sort-heading.js'
import { chooseRatedSort, sortOption } from '../chosen-sort.js'
import type { RequestWith, RoomierOptions } from '../layout.js'

export const headingOptions = {
  ...sortOption,
  headers: option(
    'what stands over the columns: their titles, or one of their words, which is then not among those to sort',
    choice(['title', 'key word', 'key picture'], undefined),
    { example: 'key word', usual: 'title, and key word where a large title has no room' },
  ),
  leftovers: option(
    'what becomes of words that fit no column: they get one of their own with a question mark, or stay out',
    choice(['own header', 'leave out'], 'own header'),
    { example: 'leave out' },
  ),
}

export type SortRequest = RequestWith<typeof headingOptions>

/** A word is shorter than the title of its column. */
export function roomierHeadings({ options }: SortRequest): readonly RoomierOptions<HeadingOptions>[] {
  if (options.headers === 'key word' || options.headers === 'key picture') return []
  return [
    { options: { headers: 'key word' }, says: 'headers: key word', open: options.headers === undefined },
  ]
}

export interface ChosenHeadings {
  readonly rated: RatedSort
  readonly sort: Sort
  readonly headings: readonly SortHeading[]
}

/** An error where the words support no such sort; a warning where a column has no picture that could stand over it. */
export function chooseHeadings(request: SortRequest): Outcome<ChosenHeadings> {
  const { words, options, pictureOf } = request
  const chosen = chooseRatedSort(request, options.sort)
  if (!chosen.ok) return chosen
  const rated = chosen.value
  const { sort } = rated
  const headings = sortHeadings({
    sort,
    words,
    headedBy: options.headers ?? 'title',
    leftovers: options.leftovers === 'own header' && sort.leftovers.length > 0,
    hasPicture: word => pictureOf(word) !== undefined,
  })
  return succeed({ rated, sort, headings }, [...chosen.problems, ...withoutPicture(request, headings)])
}

function withoutPicture(
  { options, pictureOf, item }: SortRequest,
  headings: readonly SortHeading[],
): readonly Problem[] {
  if (options.headers !== 'key picture') return []
  const without = headings.filter(({ keyWord }) => keyWord !== undefined && pictureOf(keyWord) === undefined)
  if (without.length === 0) return []
  return [
    warningAt(
      item.place,
      `no word with a picture for ${without.map(({ title }) => `"${title}"`).join(', ')}: the key word stands there alone`,
      'Give one word of each column its picture in the plan, or write headers: key word.',
    ),
  ]
}

export type HeadingOptions = OptionsOf<typeof headingOptions>
