/** A plan's text as plain data, and what a change of it means: every change that is written is held against this. */
import { foldName } from '../values/fold-name.js'
import { type Located, located } from './located.js'
import type { PlanData, PlanEdit, PlanPath } from './plan-edit.js'

/** Undefined where the text cannot be read as keys with their values. */
export function planData(text: string): PlanData | undefined {
  const root = located(text)
  return root === undefined ? undefined : dataOf(root)
}

export function dataOf(node: Located): PlanData {
  switch (node.kind) {
    case 'text':
      return node.text
    case 'fixed':
      return node.source
    case 'list':
      return node.items.map(dataOf)
    case 'map':
      return Object.fromEntries(node.pairs.map(({ key, value }) => [key, dataOf(value)]))
  }
}

export function isList(data: PlanData | undefined): data is readonly PlanData[] {
  return Array.isArray(data)
}

export function isKeys(data: PlanData | undefined): data is { readonly [key: string]: PlanData } {
  return typeof data === 'object' && !isList(data)
}

/** The value at a path; keys in any spelling. */
export function dataAt(data: PlanData | undefined, path: PlanPath): PlanData | undefined {
  return path.reduce<PlanData | undefined>((found, step) => {
    if (typeof step === 'number') return isList(found) ? found[step] : undefined
    return isKeys(found) ? found[keyIn(found, step)] : undefined
  }, data)
}

/** The key as it is written there, or as it is given. */
export function keyIn(keys: { readonly [key: string]: PlanData }, key: string): string {
  return Object.keys(keys).find(each => foldName(each) === foldName(key)) ?? key
}

/** What the plan holds after the change; undefined where there is nothing to change. */
export function meant(data: PlanData, edit: PlanEdit): PlanData | undefined {
  switch (edit.kind) {
    case 'set': {
      const { path, value, textAs } = edit
      return changed(data, path, (holder, step) => {
        const keys = typeof holder === 'string' && textAs !== undefined ? { [textAs]: holder } : holder
        if (typeof step === 'string')
          return isKeys(keys) || keys === '' ? withKey(keys, step, value) : undefined
        return isList(keys) && step < keys.length ? keys.with(step, value) : undefined
      })
    }
    case 'remove':
      return changed(data, edit.path, (holder, step) => {
        if (typeof step === 'number')
          return isList(holder) && step < holder.length ? holder.toSpliced(step, 1) : undefined
        if (!isKeys(holder)) return undefined
        const { [keyIn(holder, step)]: gone, ...rest } = holder
        return gone === undefined ? undefined : emptied(rest)
      })
    case 'insert':
      return withList(data, edit.path, list => list.toSpliced(edit.at, 0, ...edit.values))
    case 'move':
      return withList(data, edit.path, list => moved(list, edit))
  }
}

/** A map without keys reads as nothing. */
function emptied(keys: { readonly [key: string]: PlanData }): PlanData {
  return Object.keys(keys).length === 0 ? '' : keys
}

function withKey(keys: PlanData, key: string, value: PlanData): PlanData {
  return isKeys(keys) ? { ...keys, [keyIn(keys, key)]: value } : { [key]: value }
}

function moved(
  list: readonly PlanData[],
  { from, to }: { readonly from: number; readonly to: number },
): readonly PlanData[] | undefined {
  const item = list[from]
  return item === undefined || to >= list.length ? undefined : list.toSpliced(from, 1).toSpliced(to, 0, item)
}

type Change = (holder: PlanData, step: string | number) => PlanData | undefined

/** Changes what holds the last step of the path. */
function changed(data: PlanData, path: PlanPath, change: Change): PlanData | undefined {
  const [step, ...more] = path
  if (step === undefined) return undefined
  if (more.length === 0) return change(data, step)
  const inner = dataAt(data, [step])
  const next = inner === undefined ? undefined : changed(inner, more, change)
  if (next === undefined) return undefined
  if (isList(data) && typeof step === 'number') return data.with(step, next)
  return isKeys(data) && typeof step === 'string' ? withKey(data, step, next) : undefined
}

/** A list that is not there is an empty one; a text alone is a list of one. */
function withList(
  data: PlanData,
  path: PlanPath,
  change: (list: readonly PlanData[]) => readonly PlanData[] | undefined,
): PlanData | undefined {
  return changed(data, path, (holder, step) => {
    const found = dataAt(holder, [step]) ?? ''
    const list = isList(found) ? found : found === '' ? [] : isKeys(found) ? undefined : [found]
    const next = list === undefined ? undefined : change(list)
    if (next === undefined) return undefined
    if (isList(holder) && typeof step === 'number') return holder.with(step, next)
    return typeof step === 'string' && isKeys(holder) ? withKey(holder, step, next) : undefined
  })
}

/** Whether two hold the same; the order of keys does not matter. A list without entries reads as nothing. */
export function isSame(one: PlanData | undefined, other: PlanData | undefined): boolean {
  if (isNothing(one) && isNothing(other)) return true
  if (isList(one) && isList(other))
    return one.length === other.length && one.every((item, index) => isSame(item, other[index]))
  if (isKeys(one) && isKeys(other)) {
    const names = Object.keys(one)
    return names.length === Object.keys(other).length && names.every(name => isSame(one[name], other[name]))
  }
  return one === other
}

function isNothing(data: PlanData | undefined): boolean {
  return data === '' || (isList(data) && data.length === 0)
}
