/** Part of `npm run build`: checks the tables of words and packs them into one file. Stops the build at a bad line. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { formatProblem } from '../../problems.js'
import { tablesPath } from './installed-tables.js'
import { packTables } from './packed-tables.js'
import { readAllTables } from './read-all-tables.js'

const tables = readAllTables()
if (tables.ok) {
  mkdirSync(dirname(tablesPath), { recursive: true })
  writeFileSync(tablesPath, packTables(tables.value))
} else {
  console.error(tables.problems.map(formatProblem).join('\n'))
  process.exitCode = 1
}
