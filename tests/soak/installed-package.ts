/**
 * The package as a stranger meets it: packed, installed into an empty folder, tried there; then the demo weeks made by
 * each version of Node that is promised, which must give the same bytes. It needs the package registry.
 */
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import { installationFolder } from '../../src/installation.js'

const versionsOfNode = ['20', '22', '24']
const folder = mkdtempSync(join(tmpdir(), 'oaktag-installed-'))

try {
  const program = installPacked()
  tryCommands(program)
  compareVersionsOfNode()
  tryWithoutDevelopmentParts()
} finally {
  rmSync(folder, { recursive: true, force: true })
}

/** @returns the command that the installation offers. */
function installPacked(): string {
  run('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], installationFolder)
  const archive = readdirSync(folder).find(name => name.endsWith('.tgz'))
  if (archive === undefined) throw new Error('npm pack made no archive')
  const home = emptyFolder('home')
  writeFileSync(join(home, 'package.json'), '{ "private": true }\n')
  run('npm', ['install', '--omit=dev', join(folder, archive)], home)
  say('archive', megabytes(statSync(join(folder, archive)).size))
  say('installed', megabytes(sizeOf(join(home, 'node_modules'))))
  for (const [name, size] of heaviest(join(home, 'node_modules')).slice(0, 6))
    say(`  ${name}`, megabytes(size))
  return join(home, 'node_modules/.bin/oaktag')
}

function tryCommands(program: string): void {
  const home = emptyFolder('teacher')
  mustHold(run(program, ['study', 'otter'], home), 'ot·ter')
  run(program, ['new', 'week.yaml'], home)
  run(program, ['make', 'week.yaml'], home)
  const sheets = filesUnder(home).filter(file => /\.(?:svg|png)$/.test(file)).length
  if (sheets === 0) throw new Error('make wrote no sheet')
  say('study, new and make in an empty folder', `${sheets} sheets`)
}

function compareVersionsOfNode(): void {
  const hashes = versionsOfNode.map(version => {
    const home = emptyFolder(`node-${version}`)
    writeFileSync(join(home, 'package.json'), '{ "private": true }\n')
    run('npm', ['install', `node@${version}`], home)
    const node = join(home, 'node_modules/node/bin/node')
    const out = join(home, 'out')
    for (const week of ['marsh', 'harbour', 'bakery', 'pond'])
      run(node, [
        join(installationFolder, '.build/src/start.cjs'),
        'make',
        join(installationFolder, `src/demo/plans/${week}.yaml`),
        '--out',
        out,
      ])
    const files = filesUnder(out)
    const hash = createHash('sha256')
    for (const file of files) hash.update(relative(out, file)).update(readFileSync(file))
    const digest = hash.digest('hex')
    say(`demo by Node ${run(node, ['--version']).trim()}`, `${files.length} files, ${digest.slice(0, 16)}`)
    return digest
  })
  if (new Set(hashes).size !== 1) throw new Error('the versions of Node give different bytes')
}

/** A copy of the sources with what runs alone: `npm ci --omit=dev` says what to do, and does not fail. */
function tryWithoutDevelopmentParts(): void {
  const home = emptyFolder('sources')
  for (const name of [
    '.config',
    'src',
    'layouts',
    'fonts',
    'package.json',
    'package-lock.json',
    'tsconfig.json',
  ])
    cpSync(join(installationFolder, name), join(home, name), { recursive: true })
  mustHold(run('npm', ['ci', '--omit=dev', '--foreground-scripts'], home), 'Run npm ci without --omit=dev')
  say('npm ci --omit=dev', 'says what to do')
}

function run(command: string, words: readonly string[], place = folder): string {
  return execFileSync(command, words, { cwd: place, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })
}

function mustHold(text: string, part: string): void {
  if (!text.includes(part)) throw new Error(`"${part}" is missing in:\n${text}`)
}

function emptyFolder(name: string): string {
  const made = join(folder, name)
  mkdirSync(made)
  return made
}

function filesUnder(place: string): readonly string[] {
  return readdirSync(place, { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile())
    .map(entry => join(entry.parentPath, entry.name))
    .sort()
}

function sizeOf(place: string): number {
  return filesUnder(place).reduce((sum, file) => sum + statSync(file).size, 0)
}

function heaviest(modules: string): readonly (readonly [string, number])[] {
  const names = readdirSync(modules).flatMap(name =>
    name.startsWith('@') ? readdirSync(join(modules, name)).map(inner => `${name}/${inner}`) : [name],
  )
  return names
    .filter(name => !name.startsWith('.'))
    .map(name => [name, sizeOf(join(modules, name))] as const)
    .sort((one, other) => other[1] - one[1])
}

function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`
}

function say(what: string, result: string): void {
  process.stdout.write(`${what.padEnd(44)} ${result}\n`)
}
