/** From places in a plan's text, as problems name them, to the keys and entries that stand there. */
import { type Located, located } from './located.js'
import type { PlanPath } from './plan-edit.js'

/** Line and column from 1, the column its first where left out. */
export type PathFinder = (line: number, column?: number) => PlanPath | undefined

/** Finds the deepest that holds a place; nothing in a text that cannot be read. */
export function pathFinder(text: string): PathFinder {
  const body = text.replace(/^\uFEFF/, '').replaceAll(/\r\n?/g, '\n')
  const root = located(body)
  const starts = [0, ...[...body.matchAll(/\n/g)].map(({ index }) => index + 1)]
  return (line, column = 1) => {
    const start = starts[line - 1]
    return root === undefined || start === undefined ? undefined : pathIn(root, start + column - 1, [])
  }
}

function pathIn(node: Located, at: number, path: PlanPath): PlanPath | undefined {
  if (node.kind === 'map') {
    const pair = node.pairs.find(({ start, end }) => at >= start && at <= end)
    return pair === undefined ? own(path) : pathIn(pair.value, at, [...path, pair.key])
  }
  if (node.kind === 'list') {
    const index = node.items.findLastIndex(
      ({ start, end }, each) => at >= (node.dashes[each] ?? start) && at <= end,
    )
    return index < 0 ? own(path) : pathIn(node.items[index]!, at, [...path, index])
  }
  return own(path)
}

function own(path: PlanPath): PlanPath | undefined {
  return path.length === 0 ? undefined : path
}
