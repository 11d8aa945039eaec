/** The sorts that studied words support, the best first. */
export { leftoversInWords, openSortNote, rankSorts } from '../sets/sorts/rank-sorts.js'
export type { Sort } from '../sets/sorts/sort.js'
