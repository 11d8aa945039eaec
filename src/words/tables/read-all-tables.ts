/** Every table of src/words, checked. */
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { installationFolder } from '../../installation.js'
import { failWith, succeed } from '../../outcomes.js'
import type { Outcome } from '../../problems.js'
import { checkAcross, checkTable } from './check-table.js'
import type { Rows } from './packed-tables.js'
import { readTable } from './table-text.js'

const room = join(installationFolder, 'src/words')

/** Paths from the folder of the installation, in an order of their own. */
export function tableFiles(): readonly string[] {
  return readdirSync(room, { recursive: true, encoding: 'utf8' })
    .filter(name => /\.(?:tsv|txt)$/.test(name))
    .map(name => relative(installationFolder, join(room, name)).replaceAll('\\', '/'))
    .toSorted()
}

/** The rows by name, or every problem of every table. */
export function readAllTables(): Outcome<ReadonlyMap<string, Rows>> {
  const read = tableFiles().map(file => readTable(file, readFileSync(join(installationFolder, file), 'utf8')))
  const tables = read.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  const problems = [
    ...read.flatMap(outcome => outcome.problems),
    ...tables.flatMap(checkTable),
    ...checkAcross(tables),
  ]
  if (problems.length > 0) return failWith(problems)
  return succeed(new Map(tables.map(({ file, rows }) => [nameOf(file), rows.map(({ fields }) => fields)])))
}

/** `src/words/syllables/exceptions.txt` → `syllables/exceptions` */
function nameOf(file: string): string {
  return relative('src/words', file).replace(/\.\w+$/, '')
}
