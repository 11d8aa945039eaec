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

/** Marks that the plan's words show, and the words of some items, which are to show all, do not. */
export function unshownMarks(items: readonly PreparedItem[]): readonly Problem[] {
  const shown = shownByItems(items)
  const marks = shownMarksOf(items)
  const missing = marks.flatMap(mark => {
    const without = itemsWithout(mark, shown).filter(({ job }) => !isGroupWithout(mark, job.group, shown))
    return without.length === 0 ? [] : [{ mark, where: whereMissing(without, shown) }]
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

/**
 * What to tell of a group whose own words show none of some marks, as words of another level may well: no warning, once
 * with the first of its items.
 */
export function groupsWithoutMarks(items: readonly PreparedItem[]): ReadonlyMap<ItemJob, string> {
  const shown = shownByItems(items)
  const marks = shownMarksOf(items)
  const notes = new Map<ItemJob, string>()
  const groups = new Set(shown.map(({ job }) => job.group))
  for (const group of groups) {
    const missing = marks.filter(
      mark => itemsWithout(mark, shown).length > 0 && isGroupWithout(mark, group, shown),
    )
    const first = shown.find(({ job }) => job.group === group)
    if (group === null || first === undefined || missing.length === 0) continue
    const named = inWords(missing.map(markName))
    notes.set(
      first.job,
      `No word of ${group.name} shows ${named}: the key for ${group.name} leaves out what it has no word for.`,
    )
  }
  return notes
}

/** The marks of the plan. */
function shownMarksOf(items: readonly PreparedItem[]): readonly StyledMark[] {
  return items[0]?.studied.marks ?? []
}

function shownByItems(items: readonly PreparedItem[]): readonly ShownMarks[] {
  return (
    items
      // Marks of a group's own are held against its own words where these are studied.
      .filter(
        ({ job, layout, request }) =>
          layout.kind !== 'sheets' && request.marked && job.group?.marks === undefined,
      )
      .map(({ job, request }): ShownMarks => ({ job, marks: new Set(shownBy(request)) }))
  )
}

/** None for a mark that no item shows: that is told of the mark by itself. */
function itemsWithout(mark: StyledMark, shown: readonly ShownMarks[]): readonly ShownMarks[] {
  const without = shown.filter(item => !item.marks.has(mark.index))
  return without.length === shown.length ? [] : without
}

/** Whether it is a group with words of its own, none of which shows the mark. */
function isGroupWithout(mark: StyledMark, group: ItemJob['group'], shown: readonly ShownMarks[]): boolean {
  if (group === null || group.words.length === 0) return false
  return shown.every(({ job, marks }) => job.group !== group || !marks.has(mark.index))
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
