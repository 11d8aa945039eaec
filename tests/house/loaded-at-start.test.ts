/** What a command loads before it does anything: a word is studied without what draws, and help without what studies. */
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { installationFolder } from '../../src/installation.js'

const rendering = ['satori', 'sharp', '@resvg/resvg-js', 'pdfkit']
const drawing = [...rendering, 'harfbuzzjs']

test.each([
  ['any command', 'src/cli.js', [...drawing, 'yaml', 'csv-parse']],
  ['make with a slip in its command line', 'src/commands/make.js', drawing],
  ['study', 'src/commands/study.js', drawing],
  ['find', 'src/commands/find.js', drawing],
  ['list', 'src/commands/list.js', drawing],
  ['help', 'src/commands/help.js', drawing],
  ['what the shell asks at the tab key', 'src/commands/complete-command.js', [...drawing, 'yaml']],
  ['check and make, before the first face', 'src/commands/make-parts.js', rendering],
  ['make without --watch', 'src/commands/make-parts.js', ['node:worker_threads']],
])('%s loads none of what it does not need', (_, start, unneeded) => {
  const loaded = packagesLoadedBy(join(installationFolder, '.build', start))
  expect(unneeded.filter(name => loaded.has(name))).toEqual([])
})

test.each([
  ['what writes PNG files loads what draws them', 'src/files/png/png-writer.js', '@resvg/resvg-js'],
  [
    'make with --watch loads what starts a thread',
    'src/commands/watch/watch-plans.js',
    'node:worker_threads',
  ],
])('%s: the check can fail', (_, start, needed) => {
  const loaded = packagesLoadedBy(join(installationFolder, '.build', start))
  expect([...loaded]).toContain(needed)
})

test('what checks a plan loads nothing that writes one', () => {
  const write = join(installationFolder, '.build/src/files/write-plan.js')
  const writing = [...loadedBy(write).files].filter(file => /files.folder.|files.proof.|write-/.test(file))
  const checking = loadedBy(join(installationFolder, '.build/src/door/make.js')).files
  expect(writing.filter(file => checking.has(file))).toEqual([])
  expect(writing.length).toBeGreaterThan(20)
})

function packagesLoadedBy(start: string): ReadonlySet<string> {
  return loadedBy(start).packages
}

/** By imports at the head of a module; those in the middle are made when they are come to. */
function loadedBy(start: string): {
  readonly packages: ReadonlySet<string>
  readonly files: ReadonlySet<string>
} {
  const packages = new Set<string>()
  const seen = new Set<string>()
  const waiting = [start]
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (seen.has(file)) continue
    seen.add(file)
    for (const [, name = ''] of readFileSync(file, 'utf8').matchAll(
      /^(?:import|export)\b[^'"\n;]*?(?:from )?['"]([^'"\n]+)['"];$/gm,
    )) {
      if (name.startsWith('./') || name.startsWith('../')) waiting.push(join(dirname(file), name))
      else packages.add(nameOfPackage(name))
    }
  }
  return { packages, files: seen }
}

/** What makes trees of boxes is a small module of its own, which loads nothing of satori's layout. */
function nameOfPackage(name: string): string {
  if (name.startsWith('satori/jsx')) return 'satori/jsx'
  return name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/')
}
