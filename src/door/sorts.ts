/** The sorts that studied words support, the best first. */
export { openSortNote, rankSorts } from '../sets/sorts/rank-sorts.js'
export type { Sort } from '../sets/sorts/sort.js'
