/** The tables beside the code, as they lie in src/words. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, test } from 'vitest'
import { installationFolder } from '../../../src/installation.js'
import { formatProblem } from '../../../src/problems.js'
import { groupsOf, rowsOf, tablesBeginning, wordsOf } from '../../../src/words/tables/installed-tables.js'
import { readAllTables, tableFiles } from '../../../src/words/tables/read-all-tables.js'

const words = join(installationFolder, 'src/words')
const files = tableFiles()
const tables = readAllTables()

describe('every table of words', () => {
  it('is found', () => {
    expect(files).toContain('src/words/syllables/exceptions.txt')
  })

  test.each(files)('%s says in its head what it holds and where it comes from', file => {
    const head = readFileSync(join(installationFolder, file), 'utf8')
      .split('\n')
      .filter(line => line.startsWith('#'))
    expect(head[0]).toMatch(/^# \S.{20,}/)
    expect(head.filter(line => /^# Source: \S.{5,}/.test(line))).toHaveLength(1)
  })

  it('has nothing wrong', () => {
    expect(tables.problems.map(formatProblem)).toEqual([])
  })

  it('is packed as it lies there ("npm run build" packs it)', () => {
    for (const [name, rows] of tables.ok ? tables.value : [])
      expect([name, rowsOf(name)]).toEqual([name, rows])
  })

  it('is read by some code', () => {
    const code = readdirSync(words, { recursive: true, encoding: 'utf8' })
      .filter(name => name.endsWith('.ts'))
      .map(name => readFileSync(join(words, name), 'utf8'))
      .join('\n')
    const read = [...code.matchAll(/'([a-z-]+\/[a-z-]+)'/g)].map(([, name = '']) => name)
    const isRead = (table: string) =>
      read.some(name => name === table || (name.endsWith('-') && table.startsWith(name)))
    const unread = [...(tables.ok ? tables.value.keys() : [])].filter(name => !isRead(name))
    expect(unread).toEqual([])
  })
})

describe('the packed tables', () => {
  it('give a list as its words', () => expect(wordsOf('endings/no-ending')).toContain('corner'))

  it('give groups as sets, a word in each of its own', () => {
    const groups = groupsOf('patterns/word-groups')
    expect(groups.get('no ending')?.has('corner')).toBe(true)
    expect(groups.get('no prefix')?.has('corner')).toBe(false)
    expect(groups.get('no prefix')?.has('until')).toBe(true)
    expect(groups.get('no suffix')?.has('holy')).toBe(true)
  })

  it('name all that begin alike', () => {
    expect(tablesBeginning('senses/drafts-')).toContain('senses/drafts-for-naming-words')
    expect(tablesBeginning('senses/drafts-')).not.toContain('senses/helping-verbs')
  })
})
