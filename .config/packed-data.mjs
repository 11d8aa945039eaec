// Whether the packed word data can be kept: what they are made from, as one hash over the modules that pack them with
// all that these import, the tables beside them, the packages that they take data from and Node itself.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, extname, join, relative, sep } from 'node:path'

/** In the order in which they run. */
export const packingModules = [
  'src/words/tables/compile.js',
  'src/words/lexicon/compile.js',
  'src/words/homophones/compile.js',
  'src/words/find/compile.js',
]
/** What they write into the build folder. */
export const packedFiles = [
  'tables.bin',
  'lexicon.bin',
  'guesses.bin',
  'homophones.bin',
  'offered-words.txt',
  'unfit-words.txt',
]
/** Holds the hash of what the packed files were made from; written when all of them are. */
export const fingerprintFile = 'packed-from.txt'

/** The compiled modules lie in `build`, the tables in `root`/src/words. */
export function fingerprintOf({ root, build, modules = packingModules }) {
  const hash = createHash('sha256').update(process.version)
  const { files, packages } = reachedFrom(modules.map(module => join(build, module)))
  for (const file of files) add(hash, relative(build, file), file)
  for (const name of packages) hash.update(`\0${name} ${versionOf(root, name)}`)
  for (const file of tablesIn(join(root, 'src/words'))) add(hash, relative(root, file), file)
  return hash.digest('hex')
}

/** @returns {boolean} whether the packed files are there and were made from the same. */
export function isPacked({ build, fingerprint }) {
  const noted = join(build, fingerprintFile)
  if (!existsSync(noted) || readFileSync(noted, 'utf8') !== fingerprint) return false
  return packedFiles.every(file => existsSync(join(build, file)))
}

/** Takes everything out of the build folder but the packed files, which may still be good. */
export function clearCompiled(build) {
  const kept = [...packedFiles, fingerprintFile]
  if (!existsSync(build)) return
  for (const name of readdirSync(build))
    if (!kept.includes(name)) rmSync(join(build, name), { recursive: true, force: true })
}

export function forgetPacked(build) {
  for (const name of [fingerprintFile, ...packedFiles]) rmSync(join(build, name), { force: true })
}

export function notePacked({ build, fingerprint }) {
  writeFileSync(join(build, fingerprintFile), fingerprint)
}

function add(hash, name, file) {
  hash.update(`\0${name.split(sep).join('/')}\0`).update(readFileSync(file))
}

/** The modules with all that they import, by path, and the packages among that, by name. */
function reachedFrom(starts) {
  const files = new Set()
  const packages = new Set()
  const waiting = [...starts]
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (files.has(file) || !existsSync(file)) continue
    files.add(file)
    const text = readFileSync(file, 'utf8')
    for (const [, name] of text.matchAll(
      /(?:from\s*|import\s*\(\s*|import\s+|require\s*\(\s*|resolve\s*\(\s*)['"]([^'"\n]+)['"]/g,
    )) {
      if (name.startsWith('.')) waiting.push(join(dirname(file), name))
      else if (!name.startsWith('node:')) packages.add(packageOf(name))
    }
  }
  return { files: [...files].sort(), packages: [...packages].sort() }
}

function packageOf(name) {
  return name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/')
}

function versionOf(root, name) {
  const places = createRequire(join(root, 'package.json')).resolve.paths(name) ?? []
  const manifest = places.map(place => join(place, name, 'package.json')).find(existsSync)
  return manifest === undefined ? 'missing' : JSON.parse(readFileSync(manifest, 'utf8')).version
}

function tablesIn(folder) {
  return readdirSync(folder, { recursive: true })
    .filter(name => ['.tsv', '.txt'].includes(extname(name)))
    .sort()
    .map(name => join(folder, name))
}
