import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { isFreshBuild } from '../../.config/fresh-build.js'

/** A source in a folder of its own and what was built of it, with the times in seconds at which each was last changed. */
function isFresh(times: Readonly<Record<string, number>>): boolean {
  const root = mkdtempSync(join(tmpdir(), 'oaktag-build-'))
  onTestFinished(() => rmSync(root, { recursive: true, force: true }))
  mkdirSync(join(root, 'src/words'), { recursive: true })
  mkdirSync(join(root, '.build'))
  writeFileSync(join(root, 'src/words/word.ts'), '')
  if ('.build/oaktag.js' in times) writeFileSync(join(root, '.build/oaktag.js'), '')
  const old = { src: 10, 'src/words': 10, 'src/words/word.ts': 10 }
  for (const [path, seconds] of Object.entries({ ...old, ...times }))
    utimesSync(join(root, path), seconds, seconds)
  return isFreshBuild({ root, folders: ['src'], built: '.build/oaktag.js' })
}

describe('tests run on the build', () => {
  it('where it is younger than all sources', () => {
    expect(isFresh({ '.build/oaktag.js': 20 })).toBe(true)
  })

  it.each([
    ['a source was changed since', { '.build/oaktag.js': 20, 'src/words/word.ts': 30 }],
    ['a source came or went since', { '.build/oaktag.js': 20, 'src/words': 30 }],
    ['there is none', {}],
  ])('never where %s', (_, times) => {
    expect(isFresh(times)).toBe(false)
  })
})
