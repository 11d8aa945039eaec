/** What an item's words do not show: told once for all items, not once for each. */
import { keyEntries } from '../../pieces/marks/key-entries.js'
import { markName } from '../../pieces/marks/mark-problems.js'
import type { StyledMark } from '../../pieces/marks/styled-mark.js'
import { inWords } from '../../plan/values/names.js'
import { type Problem, warningAt } from '../../problems.js'
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
  const marked = items.filter(({ layout, request }) => layout.kind !== 'sheets' && request.marked)
  const shown = marked.map(item => ({ name: item.job.name, marks: new Set(shownBy(item.request)) }))
  const marks = marked[0]?.request.marks ?? []
  const missing = marks.flatMap(mark => {
    const without = shown.filter(item => !item.marks.has(mark.index))
    return without.length === 0 || without.length === shown.length ? [] : [{ mark, without }]
  })
  const [first] = missing
  if (first === undefined) return []
  const told = missing.map(
    ({ mark, without }) => `${markName(mark)} on none of ${without.map(({ name }) => name).join(', ')}`,
  )
  return [
    warningAt(
      first.mark.mark.place,
      `some marks stand on words of other items alone: ${told.join('; ')}`,
      'The keys of these items leave them out; add words that show them if the children are to look for them.',
    ),
  ]
}

function shownBy({ words, marks }: PreparedItem['request']): readonly StyledMark['index'][] {
  return keyEntries(words, marks).map(({ mark }) => mark.index)
}
