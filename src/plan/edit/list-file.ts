/** Changes of a list of words in a file of its own, told and held against what was meant as those of a plan are. */
import { dirname, join } from 'node:path'
import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { foldName } from '../values/fold-name.js'
import { csvEntries } from '../words/csv-list.js'
import { plainListEntries } from '../words/plain-list.js'
import { keysOfWord } from '../words/word-entry.js'
import { wordListFileEntries } from '../words/word-list.js'
import type { Entry } from '../yaml/entry.js'
import { csvSplices } from './csv-splices.js'
import { type Splice, spliced } from './lines.js'
import { plainListSplices } from './plain-list-splices.js'
import { isKeys, isList, isSame, meant } from './plan-data.js'
import type { PlanData, PlanEdit } from './plan-edit.js'

export interface ListFile {
  /** As the plan names it. */
  readonly name: string
  readonly text: string
}

/** The key under which a list's entries are told, as if it were a plan. */
const key = 'words'

function isCsv(name: string): boolean {
  return /\.csv$/i.test(name)
}

/** The entries of such a file, each with the line that it begins on; undefined where it cannot be read. */
export function listFileEntries({ name, text }: ListFile): readonly ListFileEntry[] | undefined {
  const body = bodyOf(text)
  if (body === undefined) return undefined
  const entries = isCsv(name) ? csvEntries(name, body, keysOfWord()) : succeed(plainListEntries(name, body))
  return entries.ok
    ? entries.value.map(entry => ({ data: written(entry), line: entry.place.line ?? 1 }))
    : undefined
}

export interface ListFileEntry {
  readonly data: PlanData
  readonly line: number
}

/** Its words under the key `words`, as a plan would hold them. */
export function listFileData(file: ListFile): PlanData | undefined {
  const entries = listFileEntries(file)
  return entries && { [key]: entries.map(({ data }) => data) }
}

/** The file's text after a change under `words`; every byte that the change does not touch stays. */
export function applyListEdit(file: ListFile, edit: PlanEdit): Outcome<string> {
  const { name, text } = file
  const [data, body] = [listFileData(file), bodyOf(text)]
  if (data === undefined || body === undefined)
    return refuse(`${name} cannot be read, so nothing is changed in it`)
  const wanted = meant(data, edit)
  if (wanted === undefined || edit.path[0] !== key)
    return refuse('what was to be changed is not there any more')
  const splices: readonly Splice[] | undefined = isCsv(name)
    ? csvSplices(name, body, edit)
    : plainListSplices(name, body, edit)
  if (splices === undefined) return refuse(unwritable(name))
  const after = spliced(body, splices)
  if (!isSame(listFileData({ name, text: after }), plainWords(wanted))) return refuse(unwritable(name))
  const mark = text.startsWith('\uFEFF') ? '\uFEFF' : ''
  return succeed(`${mark}${text.includes('\r\n') ? after.replaceAll('\n', '\r\n') : after}`)
}

/** A word without anything said of it is a text alone. */
export function plainWords(data: PlanData): PlanData {
  if (!isKeys(data)) return data
  const list = data[key] ?? []
  return { [key]: isList(list) ? list.map(each => plainWord(each)) : list }
}

function plainWord(entry: PlanData): PlanData {
  if (!isKeys(entry)) return entry
  const pairs = Object.entries(entry).filter(([, value]) => value !== '')
  const [only] = pairs
  return pairs.length === 1 && only?.[0] === 'word' ? only[1] : Object.fromEntries(pairs)
}

function unwritable(name: string): string {
  return isCsv(name)
    ? `this cannot be written into a row of ${name}`
    : `${name} holds words alone, one a line`
}

function refuse(message: string): Outcome<string> {
  return fail(errorAt({ file: '' }, message, 'Bring the word into the plan, where more can be said of it.'))
}

/** Without its mark, its lines ended in one way; undefined where they are ended in several, which would all become one. */
function bodyOf(text: string): string | undefined {
  const body = text.replace(/^\uFEFF/, '')
  const plain = body.replaceAll('\r\n', '\n')
  const isOneWay = plain === body || plain.replaceAll('\n', '\r\n') === body
  return isOneWay && !plain.includes('\r') ? plain : undefined
}

export interface ListedIn {
  readonly plan: string
  /** As the plan names it. */
  readonly list: string
  readonly files: FileAccess
}

/** The words of a list's file as they would stand in the plan; undefined where it cannot be read, or holds no word. */
export function listedWords({ plan, list, files }: ListedIn): readonly PlanData[] | undefined {
  const entries = wordListFileEntries(join(dirname(plan), list), files)
  return entries.ok ? entries.value.map(entry => besidePlan(written(entry), dirname(list))) : undefined
}

/** A picture is looked for beside the file that names it. */
function besidePlan(data: PlanData, folder: string): PlanData {
  if (!isKeys(data) || folder === '.') return data
  const pairs = Object.entries(data).map(([name, value]) => [
    name,
    foldName(name) === 'picture' && typeof value === 'string' ? `${folder}/${value}` : value,
  ])
  return Object.fromEntries(pairs)
}

function written(entry: Entry): PlanData {
  if (entry.kind === 'text') return entry.text
  if (entry.kind !== 'map') return ''
  const pairs = entry.pairs.flatMap(({ key: name, value }) =>
    value.kind === 'text' ? [[name.toLowerCase(), value.text] as const] : [],
  )
  return plainWord(Object.fromEntries(pairs))
}
