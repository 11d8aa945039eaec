/** Changes of a list, with dashes or in brackets. */

import {
  columnOf,
  isFirstOnLine,
  isLastOnLine,
  lineStart,
  linesAt,
  nextLine,
  notesIn,
  ownLinesEnd,
  type Splice,
} from './lines.js'
import type { LocatedList, LocatedPair } from './located.js'
import type { PlanData } from './plan-edit.js'
import { inBrackets, listLines } from './written.js'

/** Undefined where it cannot be written without losing something. */
export function insertIntoList(
  text: string,
  list: LocatedList,
  at: number,
  values: readonly PlanData[],
): readonly Splice[] | undefined {
  if (list.flow) return insertInBrackets(text, list, at, values)
  if (!hasLinesOfItsOwn(text, list)) return undefined
  const column = columnOf(text, list.dashes[0]!)
  const before = list.items[at - 1]
  const start =
    before === undefined ? lineStart(text, list.dashes[0]!) : ownLinesEnd(text, before.end, column)
  return [linesAt(text, start, column, listLines(values))]
}

function insertInBrackets(
  text: string,
  list: LocatedList,
  at: number,
  values: readonly PlanData[],
): readonly Splice[] {
  const put = values.map(inBrackets).join(', ')
  const [next, last] = [list.items[at], list.items.at(-1)]
  if (next !== undefined) return [{ start: next.start, end: next.start, put: `${put}, ` }]
  if (last !== undefined) return [{ start: last.end, end: last.end, put: `, ${put}` }]
  return [betweenBrackets(text, list, put)]
}

/** Brackets or braces that hold nothing yet but notes are filled; the notes stay. */
export function betweenBrackets(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
  put: string,
): Splice {
  if (notesIn(text, start, end).length === 0) return { start: start + 1, end: end - 1, put }
  // A note ends with its line, so the closing sign stands on a line of its own.
  return linesAt(text, lineStart(text, end - 1), columnOf(text, end - 1) + 2, [put.trim()])
}

/** A key whose value is nothing, or a text alone, is given a list. */
export function beginList(
  text: string,
  { value, start, colonEnd }: LocatedPair,
  values: readonly PlanData[],
): readonly Splice[] | undefined {
  if (!isFirstOnLine(text, start) || !isLastOnLine(text, value.end)) return undefined
  const lines = listLines(values)
  const taken = value.end > value.start ? [{ start: colonEnd, end: value.end, put: '' }] : []
  return [...taken, linesAt(text, nextLine(text, value.end), columnOf(text, start) + 2, lines)]
}

export function removeFromList(
  text: string,
  list: LocatedList,
  index: number,
): readonly Splice[] | undefined {
  if (list.flow) return removeInBrackets(text, list, index)
  if (!hasLinesOfItsOwn(text, list)) return undefined
  const { start, end, column } = linesOfItem(text, list, index)
  return [keptNotes(text, { start, end, column })]
}

/** Lines go, the notes in them stay on lines of their own. */
export function keptNotes(
  text: string,
  { start, end, column }: { readonly start: number; readonly end: number; readonly column: number },
): Splice {
  const notes = notesIn(text, start, end)
  const { put } = linesAt(text, start, column, notes)
  return { start, end, put: notes.length === 0 ? '' : put }
}

export function removeInBrackets(
  text: string,
  { items }: { readonly items: readonly { readonly start: number; readonly end: number }[] },
  index: number,
): readonly Splice[] | undefined {
  const [own, before, next] = [items[index]!, items[index - 1], items[index + 1]]
  const start = next === undefined && before !== undefined ? before.end : own.start
  const end = next === undefined ? own.end : next.start
  return notesIn(text, start, end).length > 0 ? undefined : [{ start, end, put: '' }]
}

export function moveInList(
  text: string,
  list: LocatedList,
  from: number,
  to: number,
): readonly Splice[] | undefined {
  if (list.flow) return moveInBrackets(text, list, from, to)
  if (!hasLinesOfItsOwn(text, list)) return undefined
  const { start, end, column } = linesOfItem(text, list, from)
  const lines = text.slice(start, end).split(/\r?\n/)
  if (lines.at(-1) === '') lines.pop()
  const before = to > from ? to : to - 1
  const at =
    before < 0 ? lineStart(text, list.dashes[0]!) : ownLinesEnd(text, list.items[before]!.end, column)
  return [{ start, end, put: '' }, linesAt(text, at, 0, lines)]
}

/** The places stay, what stands in them changes. */
function moveInBrackets(text: string, { items }: LocatedList, from: number, to: number): readonly Splice[] {
  const sources = items.map(({ start, end }) => text.slice(start, end))
  const inOrder = sources.toSpliced(from, 1).toSpliced(to, 0, sources[from]!)
  return items.map(({ start, end }, index) => ({ start, end, put: inOrder[index]! }))
}

function linesOfItem(text: string, list: LocatedList, index: number) {
  const column = columnOf(text, list.dashes[index]!)
  const end = ownLinesEnd(text, Math.max(list.items[index]!.end, list.dashes[index]! + 1), column)
  return { start: lineStart(text, list.dashes[index]!), end, column }
}

function hasLinesOfItsOwn(text: string, { items, dashes }: LocatedList): boolean {
  return (
    dashes.length === items.length &&
    dashes.length > 0 &&
    dashes.every(dash => isFirstOnLine(text, dash)) &&
    items.every(({ end }) => isLastOnLine(text, end))
  )
}
