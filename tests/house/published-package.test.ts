/** What `npm pack` would hold: all that runs, README and licences, and nothing else. */
import { spawnSync } from 'node:child_process'
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { isBuiltin } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join, posix } from 'node:path'
import { describe, expect, test } from 'vitest'
import { installationFolder } from '../../src/installation.js'

const manifest: {
  readonly dependencies: Readonly<Record<string, string>>
  readonly private?: boolean
} = JSON.parse(readFileSync(`${installationFolder}/package.json`, 'utf8'))

const packed = filesOfThePackage()
const modules = packed.filter(file => /\.(?:c?js|d\.c?ts)$/.test(file))

describe('the published package', () => {
  test('can be published', () => expect(manifest.private).toBeUndefined())

  test('holds compiled modules, the bundled command, the packed word data, README and licences alone', () => {
    const others = packed.filter(file => !modules.includes(file))
    expect(others.sort()).toEqual([
      '.build/command/LICENSES.txt',
      '.build/command/harfbuzz.wasm',
      '.build/command/layout.wasm',
      '.build/command/waiting.json',
      '.build/desk/LICENSES.txt',
      '.build/desk/page.css',
      '.build/desk/page.html',
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
    expect(modules.filter(file => !/^\.build\/(?:src|layouts|fonts|command|desk)\//.test(file))).toEqual([])
  })

  test('holds every module that one of its modules imports', () => {
    const missing = modules.flatMap(file =>
      importsOf(file)
        .filter(name => name.startsWith('.'))
        .map(name => posix.join(dirname(file), name))
        .map(name => (/\.d\.c?ts$/.test(file) ? name.replace(/\.(c?)js$/, '.d.$1ts') : name))
        .filter(name => !packed.includes(name)),
    )
    expect(missing).toEqual([])
  })

  test('imports nothing but Node and its declared packages', () => {
    const packages = modules.flatMap(importsOf).filter(name => !name.startsWith('.') && !isBuiltin(name))
    const undeclared = packages.map(nameOfPackage).filter(name => !(name in manifest.dependencies))
    expect([...new Set(undeclared)]).toEqual([])
  })

  test('holds no module that only the building uses', () => {
    const reached = reachedFrom([...started, '.build/src/oaktag.js'])
    const unused = modules.filter(
      file => /\.c?js$/.test(file) && !reached.has(file) && !holdsTypesAlone(file),
    )
    expect(unused).toEqual([])
  })
})

/** The command, the chunks that its loader is given by name, what runs in a thread, and the script of the desk's page. */
const started = [
  '.build/src/start.cjs',
  '.build/command/cli.cjs',
  '.build/command/shaper.cjs',
  '.build/src/files/thread/thread-worker.js',
  '.build/desk/page.js',
]

/**
 * npm packs all that it lists, though nothing is kept of it: half of its time. So it is asked in a folder that holds the
 * same names, and whole only what it reads to choose among them.
 */
function filesOfThePackage(): readonly string[] {
  const names = mkdtempSync(join(tmpdir(), 'oaktag-names-'))
  try {
    copyNames(installationFolder, names)
    const { stdout } = spawnSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
      cwd: names,
      encoding: 'utf8',
    })
    const [listed]: readonly { readonly files: readonly { readonly path: string }[] }[] = JSON.parse(stdout)
    return listed!.files.map(({ path }) => path)
  } finally {
    rmSync(names, { recursive: true })
  }
}

function copyNames(from: string, to: string): void {
  for (const entry of readdirSync(from, { withFileTypes: true })) {
    if (entry.name === 'node_modules' || entry.name === '.git') continue
    const [path, copy] = [join(from, entry.name), join(to, entry.name)]
    if (entry.isDirectory()) {
      mkdirSync(copy)
      copyNames(path, copy)
    } else if (/^(?:package\.json|\.(?:git|npm)ignore)$/.test(entry.name)) copyFileSync(path, copy)
    else if (entry.isFile()) writeFileSync(copy, '')
  }
}

function importsOf(file: string): readonly string[] {
  const text = readFileSync(`${installationFolder}/${file}`, 'utf8')
  // What is bundled holds text of packages, in which these words are words; there `require` and the loader's own call count.
  const form = file.startsWith('.build/command/')
    ? /\b(?:require|importChunk)\("([^"\n]+)"\)/g
    : /(?:from\s*|import\s*\(\s*|import\s+|require\(\s*)['"]([^'"\n]+)['"]/g
  return [...text.matchAll(form)].map(([, name]) => name!)
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
