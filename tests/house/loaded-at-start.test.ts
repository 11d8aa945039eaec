/** What a command loads before it does anything: a word is studied without what draws, and help without what studies. */
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { installationFolder } from '../../src/installation.js'

const drawing = ['satori', 'harfbuzzjs', 'sharp', '@resvg/resvg-js', 'pdfkit']

test.each([
  ['any command', 'src/cli.js', [...drawing, 'yaml', 'csv-parse']],
  ['make with a slip in its command line', 'src/commands/make.js', drawing],
  ['study', 'src/commands/study.js', drawing],
  ['find', 'src/commands/find.js', drawing],
])('%s loads none of what it does not need', (_, start, unneeded) => {
  const loaded = packagesLoadedBy(join(installationFolder, '.build', start))
  expect(unneeded.filter(name => loaded.has(name))).toEqual([])
})

test('make loads what draws: the check can fail', () => {
  const loaded = packagesLoadedBy(join(installationFolder, '.build/src/commands/make-parts.js'))
  expect([...loaded]).toContain('satori')
})

/** By imports at the head of a module; those in the middle are made when they are come to. */
function packagesLoadedBy(start: string): ReadonlySet<string> {
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
  return packages
}

function nameOfPackage(name: string): string {
  return name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/')
}
