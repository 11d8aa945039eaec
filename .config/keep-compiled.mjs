// Runs the bundled command on a bit of everything and writes beside each chunk what V8 compiled of it, those functions
// that ran: `node .config/keep-compiled.mjs`, in a process of its own, since the commands print and set the exit code,
// which is 0 where all of them did what they were asked.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'

const build = join(dirname(import.meta.dirname), '.build')
const load = createRequire(import.meta.url)
const { cacheFile, chunkLoader } = load(join(build, 'src/chunk-loader.cjs'))
load(join(build, 'src/compile-later.cjs')).compileLater()
const bundle = join(build, 'command')

const plan = `title: Along the marsh
words:
  - {word: reed, clue: a tall grass}
  - marsh
  - thrush
  - wren
  - gnat
  - stream
  - spring
  - leaf
  - moth
marks:
  - pattern: consonant-digraph
  - {pattern: silent-letters, line: wavy}
  - {pattern: vowel-team, outline: rounded}
print: [word-cards, key, {layout: bingo, boards: 4, grid: 3x3}]
`
const commands = [
  'study reed marsh thrush spring gnat wren leaf moth running zorpish',
  'study reed --why',
  'study reed --json',
  'find --pattern digraph-blend',
  'find --like reed',
  'sorts week.yaml',
  'check week.yaml',
  'list',
  'list keys',
  'help bingo',
  'help size',
  'complete help si',
  'make week.yaml --only word-cards --dpi 72',
  'make week.yaml --format svg,png,pdf --dpi 72',
  // The last, for it ends the process.
  'help',
].map(line => line.split(' '))

const folder = mkdtempSync(join(tmpdir(), 'oaktag-compiled-'))
writeFileSync(join(folder, 'week.yaml'), plan)
process.chdir(folder)

const scripts = new Map()
process.on('beforeExit', next)
process.on('exit', keep)
next()

/** A command has come to its end when nothing is left to be waited for. */
function next() {
  const command = commands.shift()
  if (command === undefined) return
  process.argv = [process.argv[0], join(build, 'src/start.cjs'), ...command]
  // Told to the event loop, which would end where all that a command does is done at once.
  setImmediate(() => void chunkLoader(bundle, scripts).load('cli.cjs'))
}

function keep() {
  process.chdir(build)
  rmSync(folder, { recursive: true, force: true })
  for (const [name, script] of scripts)
    writeFileSync(cacheFile(join(bundle, name)), script.createCachedData())
  process.exitCode ||= commands.length
}
