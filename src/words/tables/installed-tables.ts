/** The tables of words that `npm run build` checked and packed. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import { lazily } from '../../lazily.js'
import { type PackedTables, type Rows, tablesIn } from './packed-tables.js'

export const tablesPath = join(buildFolder, 'tables.bin')

const installed = lazily(() => openTables(tablesPath))

/** @throws Error with what to do, when the file is missing or made by another version */
export function openTables(path: string): PackedTables {
  if (!existsSync(path))
    throw new Error(`The tables of words are missing (${path}). Run "npm run build" to make them.`)
  return tablesIn(readFileSync(path))
}

/** @param name of the file from src/words, without its ending: `syllables/exceptions` */
export function rowsOf(name: string): Rows {
  return installed().rowsOf(name)
}

/** The row of a table that begins with this field, without reading the others. */
export function rowBeginning(name: string, first: string): readonly string[] | undefined {
  return installed().rowBeginning(name, first)
}

/** The names of all tables that begin so, for one that lies in several files: `senses/drafts-` */
export function tablesBeginning(beginning: string): readonly string[] {
  return installed().names.filter(name => name.startsWith(beginning))
}

/** The first fields of a table, for one that is a list. */
export function wordsOf(name: string): readonly string[] {
  return installed().wordsOf(name)
}

/** The words of a table whose second column names the groups that each is in, by group. */
export function groupsOf(name: string): ReadonlyMap<string, ReadonlySet<string>> {
  const groups = new Map<string, Set<string>>()
  // Most rows name the same few groups.
  const groupsNamed = new Map<string, readonly Set<string>[]>()
  for (const [word = '', named = ''] of rowsOf(name)) {
    const known = groupsNamed.get(named) ?? named.split(', ').map(group => groupIn(groups, group))
    groupsNamed.set(named, known)
    for (const words of known) words.add(word)
  }
  return groups
}

function groupIn(groups: Map<string, Set<string>>, group: string): Set<string> {
  const words = groups.get(group) ?? new Set()
  groups.set(group, words)
  return words
}
