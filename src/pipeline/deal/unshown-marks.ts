/** What an item's words do not show: told once for all items, not once for each. */
import { keyEntries } from '../../pieces/marks/key-entries.js'
import { markName } from '../../pieces/marks/mark-problems.js'
import type { StyledMark } from '../../pieces/marks/styled-mark.js'
import { inWords } from '../../plan/values/in-words.js'
import { type Problem, warningAt } from '../../problems.js'
import type { ItemJob } from './item-jobs.js'
import type { PreparedItem } from './prepare-item.js'

/** Whether the item is a key, with nothing to tell. */
export function isBlankKey({ layout, request }: PreparedItem): boolean {
  return layout.kind === 'pages' && layout.isKey === true && shownBy(request).length === 0
}

/** The keys that are not printed, in one warning; none where all are. */
export function blankKeys(keys: readonly PreparedItem[]): readonly Problem[] {
  const [first] = keys
  if (first === undefined) return []
  const names = inWords(keys.map(({ job }) => job.name)).replace(/ or (?=[^ ]*$)/, ' and ')
  const words = first.request.marks.length === 0 ? 'the plan has no marks' : 'no mark stands on their words'
  return [
    warningAt(
      first.job.item.place,
      `${words}, so no key is printed: ${names}`,
      'Add marks: to the plan that its words show, or take the key out.',
    ),
  ]
}

/** Marks that the plan's words show, and the words of some items do not. */
export function unshownMarks(items: readonly PreparedItem[]): readonly Problem[] {
  const shown = items
    .filter(({ layout, request }) => layout.kind !== 'sheets' && request.marked)
    .map(({ job, request }): ShownMarks => ({ job, marks: new Set(shownBy(request)) }))
  const marks = items[0]?.request.marks ?? []
  const missing = marks.flatMap(mark => {
    const without = shown.filter(item => !item.marks.has(mark.index))
    const nowhere = without.length === shown.length
    return without.length === 0 || nowhere ? [] : [{ mark, where: whereMissing(without, shown) }]
  })
  const [first] = missing
  if (first === undefined) return []
  const told = missing.map(({ mark, where }) => `${markName(mark)} (${where.join(', ')})`)
  return [
    warningAt(
      first.mark.mark.place,
      `some marks stand on no word of some sets: ${told.join(', ')}`,
      'Their keys leave these marks out; add words that show them if the children are to look for them.',
    ),
  ]
}

interface ShownMarks {
  readonly job: ItemJob
  readonly marks: ReadonlySet<StyledMark['index']>
}

/** A group by its name where none of its items shows the mark; else the items. */
function whereMissing(without: readonly ShownMarks[], all: readonly ShownMarks[]): readonly string[] {
  const isWhole = (group: ItemJob['group']): boolean =>
    all.filter(({ job }) => job.group === group).every(item => without.includes(item))
  const names = without.map(({ job: { group, name } }) =>
    group !== null && isWhole(group) ? group.name : name,
  )
  return [...new Set(names)]
}

function shownBy({ words, marks }: PreparedItem['request']): readonly StyledMark['index'][] {
  return keyEntries(words, marks).map(({ mark }) => mark.index)
}
