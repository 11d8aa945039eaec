import { andThen, fail, succeed } from '../src/outcomes.js'
import { nearestAdvice } from '../src/plan/values/nearest.js'
import { option, text } from '../src/plan/values/options.js'
import { errorAt, type Outcome } from '../src/problems.js'
import { rankedSorts, sortNamed } from '../src/sets/sorts/rank-sorts.js'
import type { Sort } from '../src/sets/sorts/sort.js'
import type { RatedSort } from '../src/sets/sorts/sort-by.js'
import { wordsForASort } from '../src/sets/sorts/words-for-a-sort.js'
import type { LayoutRequest } from './layout.js'
import { wordsToLay } from './words-to-lay.js'

/** Which sort a layout takes its kinds from. */
export const sortOption = {
  sort: option(
    'the sort to print',
    {
      ...text(undefined),
      takes: {
        kind: 'form',
        what: 'the name of a sort, as "oaktag sorts" shows it',
        samples: ['how the word begins'],
        pattern: String.raw`\S`,
      },
    },
    { usual: 'the first that oaktag sorts shows' },
  ),
}

/** The sorts of an item's words, the best first; what the plan marks is what they are to teach. */
export function ratedSortsFor({
  words,
  marks,
}: Pick<LayoutRequest, 'words' | 'marks'>): readonly RatedSort[] {
  return rankedSorts(words, { marks: marks.map(({ mark }) => mark) })
}

export function sortsFor(request: Pick<LayoutRequest, 'words' | 'marks'>): readonly Sort[] {
  return ratedSortsFor(request).map(({ sort }) => sort)
}

/** The sort that the teacher names, as `oaktag sorts` names it; the best that the words support where she names none. */
export function chooseSort(
  request: Pick<LayoutRequest, 'words' | 'item' | 'marks' | 'plan'>,
  name: string | undefined,
): Outcome<Sort> {
  return andThen(chooseRatedSort(request, name), ({ sort }) => succeed(sort))
}

/** The same, with what is needed to talk it over. */
export function chooseRatedSort(
  request: Pick<LayoutRequest, 'words' | 'item' | 'marks' | 'plan'>,
  name: string | undefined,
): Outcome<RatedSort> {
  const { words, item } = request
  const ranked = ratedSortsFor(request)
  const rated = name === undefined ? ranked[0] : sortNamed(words, name)
  if (rated !== undefined) return succeed(rated)
  const names = ranked.map(({ sort }) => sort.name)
  if (name === undefined || names.length === 0)
    return fail(
      errorAt(
        item.place,
        'the words support no sort: nothing divides them into two fair columns',
        wordsForASort({ words, toAdd: wordsToLay(request) }) ??
          'Add words that share a pattern, so that at least two columns have two words each.',
      ),
    )
  const known = `The words support ${names.map(each => `"${each}"`).join(', ')}.`
  return fail(
    errorAt(
      item.place,
      `the words support no sort named "${name}"`,
      nearestAdvice({ name, known: names, where: known }),
    ),
  )
}
