/** What a page sends, as far as it has the form that is expected; anything else is nothing. */
import type { Change, Data, Path, SeenSheet, Step } from '../messages.js'

/** A paste of a whole school's words has far less. */
const mostChanges = 2000
const deepest = 6
/** A page shows a dozen at a time; one on a wall some more. */
const mostSeen = 200

type Fields = Readonly<Record<string, unknown>>

export function fieldsOf(value: unknown): Fields {
  return Object.fromEntries(typeof value === 'object' && value !== null ? Object.entries(value) : [])
}

export function readStep(value: unknown): Step | undefined {
  const fields = fieldsOf(value)
  const [from, says, gesture] = [fields.from, fields.says, fields.gesture]
  const changes = readList(fields.changes, readChange, mostChanges)
  if (typeof from !== 'string' || typeof says !== 'string' || changes === undefined) return undefined
  return { from, changes, says: says.slice(0, 120), ...(typeof gesture === 'string' ? { gesture } : {}) }
}

/** Words that are typed, to be studied. */
export function readTypedWords(value: unknown): readonly string[] | undefined {
  return readList(fieldsOf(value).words, each => (typeof each === 'string' ? each : undefined), 40)
}

/** Sheets that a page shows. */
export function readSeenSheets(value: unknown): readonly SeenSheet[] | undefined {
  const readSeen = (each: unknown): SeenSheet | undefined => {
    const { item, sheet } = fieldsOf(each)
    const index = readIndex(sheet)
    return typeof item === 'string' && index !== undefined ? { item, sheet: index } : undefined
  }
  return readList(fieldsOf(value).seen, readSeen, mostSeen)
}

/** An item under `print:` whose picture is wanted. */
export function readItem(text: string): { readonly [key: string]: Data } | undefined {
  try {
    const data = readData(JSON.parse(text))
    return typeof data === 'object' && !isList(data) ? data : undefined
  } catch {
    return undefined
  }
}

function isList(data: Data): data is readonly Data[] {
  return Array.isArray(data)
}

function readChange(value: unknown): Change | undefined {
  const { file } = fieldsOf(value)
  const edit = readEdit(value)
  if (edit === undefined || file === undefined) return edit
  return typeof file === 'string' ? { ...edit, file } : undefined
}

function readEdit(value: unknown): Change | undefined {
  const fields = fieldsOf(value)
  const path = readPath(fields.path)
  if (path === undefined) return undefined
  switch (fields.kind) {
    case 'set': {
      const [data, textAs] = [readData(fields.value), fields.textAs]
      if (data === undefined) return undefined
      return { kind: 'set', path, value: data, ...(typeof textAs === 'string' ? { textAs } : {}) }
    }
    case 'remove':
      return { kind: 'remove', path }
    case 'insert': {
      const [at, values] = [readIndex(fields.at), readList(fields.values, each => readData(each), 10_000)]
      return at === undefined || values === undefined ? undefined : { kind: 'insert', path, at, values }
    }
    case 'move': {
      const [from, to] = [readIndex(fields.from), readIndex(fields.to)]
      return from === undefined || to === undefined ? undefined : { kind: 'move', path, from, to }
    }
    default:
      return undefined
  }
}

function readPath(value: unknown): Path | undefined {
  const path = readList(value, step => (typeof step === 'string' ? step : readIndex(step)), deepest)
  return path?.length === 0 ? undefined : path
}

function readIndex(value: unknown): number | undefined {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0 ? value : undefined
}

function readData(value: unknown, depth = 0): Data | undefined {
  if (typeof value === 'string') return value
  if (depth > deepest || typeof value !== 'object' || value === null) return undefined
  if (Array.isArray(value)) return readList(value, each => readData(each, depth + 1), 10_000)
  const pairs = Object.entries(value).map(([key, each]) => [key, readData(each, depth + 1)] as const)
  const read = pairs.flatMap(([key, each]) => (each === undefined ? [] : [[key, each] as const]))
  return read.length === pairs.length ? Object.fromEntries(read) : undefined
}

function readList<T>(
  value: unknown,
  read: (each: unknown) => T | undefined,
  most: number,
): readonly T[] | undefined {
  if (!Array.isArray(value) || value.length > most) return undefined
  const items = value.flatMap(each => read(each) ?? [])
  return items.length === value.length ? items : undefined
}
