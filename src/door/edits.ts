/** Changing a plan's text as its teacher would: what a change touches is written anew, every other byte stays. */
export { applyEdit } from '../plan/edit/apply-edit.js'
export {
  applyListEdit,
  type ListFile,
  type ListFileEntry,
  listedWords,
  listFileData,
  listFileEntries,
} from '../plan/edit/list-file.js'
export { type PathFinder, pathFinder } from '../plan/edit/path-at.js'
export { dataAt, isKeys, isList, isSame, keyIn, meant, planData } from '../plan/edit/plan-data.js'
export type { PlanData, PlanEdit, PlanPath } from '../plan/edit/plan-edit.js'
export { rebased } from '../plan/edit/rebase.js'
