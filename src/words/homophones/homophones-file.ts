/** The groups that the build found and those listed by hand, in one small file beside the lexicon. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import { packTables, tablesIn } from '../tables/packed-tables.js'
import { type HomophoneGroup, readWhere } from './where.js'

export const homophonesPath = join(buildFolder, 'homophones.bin')

const table = 'homophones'

export function packHomophones(groups: readonly HomophoneGroup[]): Buffer {
  return packTables(new Map([[table, groups.map(({ words, where }) => [words.join(' '), where])]]))
}

/** @throws Error with what to do, when the file is missing or made by another version */
export function readHomophones(path: string = homophonesPath): readonly HomophoneGroup[] {
  if (!existsSync(path))
    throw new Error(`The list of homophones is missing (${path}). Run "npm run build" to make it.`)
  return tablesIn(readFileSync(path))
    .rowsOf(table)
    .map(([words = '', written = '']) => {
      const where = readWhere(written)
      if (where === undefined) throw new Error(`"${written}" is no place where words sound the same`)
      return { words: words.split(' '), where }
    })
}
