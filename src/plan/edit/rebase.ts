/** A change that was made from one state of a plan, for another state of it: two hands on one plan lose nothing. */
import { dataAt, isKeys, isList, isSame } from './plan-data.js'
import type { PlanData, PlanEdit, PlanPath } from './plan-edit.js'

/** The same change for `fresh`; undefined where what it changes is another there. */
export function rebased(edit: PlanEdit, made: PlanData, fresh: PlanData): PlanEdit | undefined {
  switch (edit.kind) {
    case 'set':
    case 'remove': {
      const path = sameTarget(edit.path, made, fresh)
      return path === undefined ? undefined : { ...edit, path }
    }
    case 'insert': {
      const path = samePath(edit.path, made, fresh)
      if (path === undefined) return undefined
      const at = placeIn(listAt(fresh, path), listAt(made, edit.path), edit.at)
      return { ...edit, path, at }
    }
    case 'move': {
      const path = samePath(edit.path, made, fresh)
      const [before, now] = [listAt(made, edit.path), path === undefined ? [] : listAt(fresh, path)]
      const from = indexIn(now, before, edit.from)
      if (path === undefined || from === undefined) return undefined
      const beside = edit.to > edit.from ? edit.to : edit.to - 1
      const anchor = beside < 0 ? -1 : (indexIn(now, before, beside) ?? now.length - 1)
      return { ...edit, path, from, to: anchor < from ? anchor + 1 : anchor }
    }
  }
}

/** Where it stands, if what stands there is still the same. */
function sameTarget(path: PlanPath, made: PlanData, fresh: PlanData): PlanPath | undefined {
  const now = samePath(path, made, fresh)
  return now !== undefined && isSame(dataAt(made, path), dataAt(fresh, now)) ? now : undefined
}

/** Entries of lists are found again by what they are, wherever they have come to stand. */
function samePath(path: PlanPath, made: PlanData, fresh: PlanData): PlanPath | undefined {
  const now: (string | number)[] = []
  for (const [depth, step] of path.entries()) {
    if (typeof step === 'string') {
      now.push(step)
      continue
    }
    const index = indexIn(listAt(fresh, now), listAt(made, path.slice(0, depth)), step)
    if (index === undefined) return undefined
    now.push(index)
  }
  return now
}

/** What was put at the end goes to the end: words that are typed faster than they are written down keep their order. */
function placeIn(fresh: readonly PlanData[], made: readonly PlanData[], at: number): number {
  if (at >= made.length) return fresh.length
  if (at === 0) return 0
  const before = indexIn(fresh, made, at - 1)
  return before === undefined ? fresh.length : before + 1
}

function indexIn(fresh: readonly PlanData[], made: readonly PlanData[], index: number): number | undefined {
  const wanted = made[index]
  if (isSame(fresh[index], wanted)) return index
  const same = indexesOf(fresh, item => isSame(item, wanted))
  if (same.length === 1) return same[0]
  const named = indexesOf(fresh, item => nameOf(item) === nameOf(wanted))
  return named.length === 1 ? named[0] : undefined
}

function indexesOf(list: readonly PlanData[], fits: (item: PlanData) => boolean): readonly number[] {
  return list.flatMap((item, index) => (fits(item) ? [index] : []))
}

const naming = [
  'word',
  'name',
  'layout',
  'pattern',
  'letters',
  'part of speech',
  'plural',
  'sounds',
  'syllables',
]

/** What an entry is called by, whatever else is said of it. */
function nameOf(item: PlanData | undefined): string {
  if (!isKeys(item)) return JSON.stringify(item)
  const key = naming.find(each => item[each] !== undefined)
  return key === undefined
    ? JSON.stringify(item)
    : key === 'word'
      ? JSON.stringify(item[key])
      : `${key} ${JSON.stringify(item[key])}`
}

function listAt(data: PlanData, path: PlanPath): readonly PlanData[] {
  const found = dataAt(data, path)
  return isList(found) ? found : found === undefined || found === '' ? [] : [found]
}
