/** When the build packs the word data anew: whenever something that they are made from is another, and only then. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { fingerprintOf, forgetPacked, isPacked, notePacked, packedFiles } from '../../.config/packed-data.mjs'
import { folderWith } from '../pipeline/plan-folder.js'

/** A project of one packing module, which imports another and a package, and one table. */
const project = {
  '.build/src/words/compile.js': "import './rules.js'\nimport { words } from 'word-data'\n",
  '.build/src/words/rules.js': 'export const rule = 1\n',
  '.build/src/sheets/grid.js': 'export const columns = 3\n',
  'src/words/listed/birds.tsv': 'wren\n',
  'src/words/listed/fish.txt': 'perch\n',
  'node_modules/word-data/package.json': '{ "version": "1.0.0" }',
  'package.json': '{}',
}

/** The fingerprint of the project where these files are others. */
function fingerprintWith(changed: Readonly<Record<string, string>> = {}): string {
  const root = folderWith({})
  for (const [name, text] of Object.entries({ ...project, ...changed })) {
    mkdirSync(dirname(join(root, name)), { recursive: true })
    writeFileSync(join(root, name), text)
  }
  return fingerprintOf({ root, build: join(root, '.build'), modules: ['src/words/compile.js'] })
}

describe('what the word data are packed from', () => {
  it('is the same wherever the project lies', () => expect(fingerprintWith()).toBe(fingerprintWith()))

  it.each([
    ['the packing module', '.build/src/words/compile.js', "import './rules.js'\n"],
    ['a module that it imports', '.build/src/words/rules.js', 'export const rule = 2\n'],
    ['a table', 'src/words/listed/birds.tsv', 'finch\n'],
    ['a list of words', 'src/words/listed/fish.txt', 'eel\n'],
    ['a new table', 'src/words/listed/trees.tsv', 'elm\n'],
    ['the version of a package', 'node_modules/word-data/package.json', '{ "version": "1.0.1" }'],
  ])('is another where %s is', (_what, file, text) => {
    expect(fingerprintWith({ [file]: text })).not.toBe(fingerprintWith())
  })

  it('is the same where a module is another that has no part in it', () => {
    expect(fingerprintWith({ '.build/src/sheets/grid.js': 'export const columns = 4\n' })).toBe(
      fingerprintWith(),
    )
  })
})

describe('packed word data', () => {
  const packed = () => {
    const build = folderWith(Object.fromEntries(packedFiles.map(name => [name, 'packed'])))
    notePacked({ build, fingerprint: 'of these' })
    return build
  }

  it('are kept where they were made from the same', () =>
    expect(isPacked({ build: packed(), fingerprint: 'of these' })).toBe(true))

  it('are made anew where they were made from others', () =>
    expect(isPacked({ build: packed(), fingerprint: 'of others' })).toBe(false))

  it('are made anew where a run that packed did not come to its end', () => {
    const build = packed()
    forgetPacked(build)
    for (const name of packedFiles) writeFileSync(join(build, name), 'half of it')
    expect(isPacked({ build, fingerprint: 'of these' })).toBe(false)
  })

  it.each(packedFiles)('are made anew where %s is missing', name => {
    const build = folderWith(
      Object.fromEntries(packedFiles.filter(each => each !== name).map(each => [each, 'packed'])),
    )
    notePacked({ build, fingerprint: 'of these' })
    expect(isPacked({ build, fingerprint: 'of these' })).toBe(false)
  })
})
