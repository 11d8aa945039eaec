/** What `npm pack` would hold: all that runs, README and licences, and nothing else. */
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { dirname, posix } from 'node:path'
import { describe, expect, test } from 'vitest'
import { installationFolder } from '../../src/installation.js'

const manifest: {
  readonly dependencies: Readonly<Record<string, string>>
  readonly private?: boolean
} = JSON.parse(readFileSync(`${installationFolder}/package.json`, 'utf8'))

const packed = filesOfThePackage()
const modules = packed.filter(file => /\.(?:js|d\.ts)$/.test(file))

describe('the published package', () => {
  test('can be published', () => expect(manifest.private).toBeUndefined())

  test('holds compiled modules, the packed word data, README and licences alone', () => {
    const others = packed.filter(file => !modules.includes(file))
    expect(others.sort()).toEqual([
      '.build/guesses.bin',
      '.build/homophones.bin',
      '.build/lexicon.bin',
      '.build/offered-words.txt',
      '.build/tables.bin',
      '.build/unfit-words.txt',
      'LICENSE',
      'NOTICE',
      'README.md',
      'package.json',
    ])
    expect(modules.filter(file => !/^\.build\/(?:src|layouts|fonts)\//.test(file))).toEqual([])
  })

  test('holds every module that one of its modules imports', () => {
    const missing = modules.flatMap(file =>
      importsOf(file)
        .filter(name => name.startsWith('.'))
        .map(name => posix.join(dirname(file), name))
        .map(name => (file.endsWith('.d.ts') ? name.replace(/\.js$/, '.d.ts') : name))
        .filter(name => !packed.includes(name)),
    )
    expect(missing).toEqual([])
  })

  test('imports nothing but Node and its declared packages', () => {
    const packages = modules.flatMap(importsOf).filter(name => !/^(?:\.|node:)/.test(name))
    const undeclared = packages.map(nameOfPackage).filter(name => !(name in manifest.dependencies))
    expect([...new Set(undeclared)]).toEqual([])
  })

  test('holds no module that only the building uses', () => {
    const reached = reachedFrom(['.build/src/cli.js', '.build/src/oaktag.js'])
    const unused = modules.filter(
      file => file.endsWith('.js') && !reached.has(file) && !holdsTypesAlone(file),
    )
    // Parts of the games' odds that no command shows yet.
    expect(unused).toEqual(['.build/src/sets/bingo/fraction.js', '.build/src/sets/bingo/replay.js'])
  })
})

function filesOfThePackage(): readonly string[] {
  const { stdout } = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    cwd: installationFolder,
    encoding: 'utf8',
  })
  const [listed]: readonly { readonly files: readonly { readonly path: string }[] }[] = JSON.parse(stdout)
  return listed!.files.map(({ path }) => path)
}

function importsOf(file: string): readonly string[] {
  const text = readFileSync(`${installationFolder}/${file}`, 'utf8')
  return [...text.matchAll(/(?:from\s*|import\s*\(\s*|import\s+)['"]([^'"\n]+)['"]/g)].map(
    ([, name]) => name!,
  )
}

function nameOfPackage(name: string): string {
  return name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/')
}

function reachedFrom(starts: readonly string[]): ReadonlySet<string> {
  const reached = new Set<string>()
  const waiting = [...starts]
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (reached.has(file)) continue
    reached.add(file)
    for (const name of importsOf(file))
      if (name.startsWith('.')) waiting.push(posix.join(dirname(file), name))
  }
  return reached
}

function holdsTypesAlone(file: string): boolean {
  return /^(?:\/\*\*[\s\S]*?\*\/\s*)?export \{\};\s*$/.test(
    readFileSync(`${installationFolder}/${file}`, 'utf8'),
  )
}
