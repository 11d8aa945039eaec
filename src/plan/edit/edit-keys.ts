/** Changes of keys and their values, on lines of their own or in braces. */

import { foldName } from '../values/fold-name.js'
import { betweenBrackets, keptNotes, removeInBrackets } from './edit-list.js'
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
import type { LocatedMap, LocatedPair, LocatedText } from './located.js'
import { isList } from './plan-data.js'
import type { PlanData } from './plan-edit.js'
import { inBrackets, listLines, pairLines, textWritten } from './written.js'

/** In which order a plan says things where nobody has ordered them yet. */
const usualOrder = [
  'title',
  'class',
  'seed',
  'paper',
  'font',
  'class file',
  'accent',
  'count sounds',
  'clues',
  'review',
  'words',
  'marks',
  'week',
  'children',
  'print',
  'groups',
].map(foldName)

/** Another text, or a value on one line, where a text stands; notes behind it keep their column where there is room. */
export function replaceText(
  text: string,
  node: LocatedText,
  value: PlanData,
  inFlow: boolean,
): readonly Splice[] {
  const source = text.slice(node.start, node.end)
  const written = typeof value === 'string' ? textWritten(value, source, inFlow) : inBrackets(value)
  const isNew = node.start === node.end
  const put = isNew ? ` ${written}` : written
  const gap = /^( {2,})#/.exec(text.slice(node.end, nextLine(text, node.end)))?.[1]?.length ?? 0
  if (gap === 0) return [{ start: node.start, end: node.end, put }]
  const left = Math.max(1, gap - (put.length - source.length))
  return [{ start: node.start, end: node.end + gap, put: `${put}${' '.repeat(left)}` }]
}

/** @param withDashes for a list that others will be put into */
export function addKey(
  text: string,
  map: LocatedMap,
  key: string,
  value: PlanData,
  withDashes = false,
): readonly Splice[] | undefined {
  const last = map.pairs.at(-1)
  if (map.flow) {
    const put = `${key}: ${inBrackets(value)}`
    if (last === undefined) return [betweenBrackets(text, map, ` ${put} `)]
    return [{ start: last.end, end: last.end, put: `, ${put}` }]
  }
  const lines =
    withDashes && isList(value)
      ? [`${key}:`, ...listLines(value).map(line => `  ${line}`)]
      : pairLines(key, value)
  if (last === undefined) return [linesAt(text, text.length, 0, lines)]
  const column = columnOf(text, map.pairs[0]!.start)
  if (column > 0) {
    if (!isLastOnLine(text, last.end)) return undefined
    return [linesAt(text, nextLine(text, last.end), column, lines)]
  }
  const before = pairBefore(map, key) ?? last
  return [linesAt(text, ownLinesEnd(text, before.end, 0), 0, lines)]
}

/** At the top of a plan: the last key that usually stands before it. */
function pairBefore({ pairs }: LocatedMap, key: string): LocatedPair | undefined {
  const rank = usualOrder.indexOf(foldName(key))
  return pairs.findLast(pair => {
    const own = usualOrder.indexOf(foldName(pair.key))
    return own >= 0 && own < rank
  })
}

export function removeKey(text: string, map: LocatedMap, pair: LocatedPair): readonly Splice[] | undefined {
  const index = map.pairs.indexOf(pair)
  if (map.flow) return removeInBrackets(text, { items: map.pairs }, index)
  const next = map.pairs[index + 1]
  if (isFirstOnLine(text, pair.start)) {
    if (!isLastOnLine(text, pair.end)) return undefined
    const column = columnOf(text, pair.start)
    // Notes below that are set in no further than the key stay where they are.
    return [
      keptNotes(text, {
        start: lineStart(text, pair.start),
        end: ownLinesEnd(text, pair.end, column),
        column,
      }),
    ]
  }
  // The first key of an entry stands behind its dash, and the next one moves up to it.
  if (next === undefined || pair.value.kind === 'list' || pair.value.kind === 'map') return undefined
  const isNoted = notesIn(text, pair.start, next.start).length > 0
  return [{ start: pair.start, end: isNoted ? pair.end : next.start, put: '' }]
}

/** An entry that is a text alone is written behind a key, so that another key can stand below it. */
export function textBehindKey(
  text: string,
  node: LocatedText,
  {
    textAs,
    key,
    value,
    dash,
  }: {
    readonly textAs: string
    readonly key: string
    readonly value: PlanData
    readonly dash: number | undefined
  },
): readonly Splice[] | undefined {
  if (dash === undefined) {
    const put = inBrackets({ [textAs]: node.text, [key]: value })
    return [{ start: node.start, end: node.end, put }]
  }
  if (!isFirstOnLine(text, dash) || !isLastOnLine(text, node.end)) return undefined
  const column = columnOf(text, node.start)
  return [
    { start: node.start, end: node.start, put: `${textAs}: ` },
    linesAt(text, nextLine(text, node.end), column, pairLines(key, value)),
  ]
}

export function isOnOneLine(value: PlanData): boolean {
  return typeof value === 'string' || !isList(value) || value.every(each => typeof each === 'string')
}
