/** The command as it is installed, bundled, against the modules that it was bundled from: the same in all that they give. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { Script } from 'node:vm'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildFolder } from '../../src/installation.js'
import { collectSoonerFor } from '../../src/pipeline/collect-sooner.js'
import { commandFile } from '../commands/run-oaktag.js'
import { folderWith, marshPlan } from '../pipeline/plan-folder.js'

const plainFile = join(buildFolder, 'src/cli.js')
const progress = /^\d+ of \d+ \S.*: (?:laid out|written)\n/gm

function answer(program: string, args: readonly string[], folder: string) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    cwd: folder,
    encoding: 'utf8',
  })
  return { status, stdout, stderr: stderr.replace(progress, '') }
}

const weekPlan = `${marshPlan}  - word-cards\n  - {layout: bingo, boards: 3, grid: 3x3}\n  - key\n`
const files = { 'week.yaml': weekPlan, 'wrong.yaml': 'words: [reed, a b]\nprint: [bing]\n' }

const lines = [
  'study reed marsh zorpish --why',
  'find --like reed --count 5',
  'sorts week.yaml',
  'check wrong.yaml',
  'list',
  'help part of speech',
  'complete help si',
]
const makeLine = 'make week.yaml --quiet --format svg,png,pdf --dpi 72 --out'

/**
 * What the plain modules answer to one line after another, in one process: loading them takes each time as long as all the
 * answers. What ends the process at once is asked in one of its own.
 */
function plainAnswers(asked: readonly string[], folder: string): readonly ReturnType<typeof answer>[] {
  const program = `
    const cli = ${JSON.stringify(pathToFileURL(plainFile).href)}
    const answers = []
    const print = process.stdout.write.bind(process.stdout)
    for (const [index, line] of ${JSON.stringify(asked)}.entries()) {
      process.argv = [process.argv[0], ${JSON.stringify(plainFile)}, ...line.split(' ')]
      process.exitCode = undefined
      const told = { stdout: '', stderr: '' }
      for (const name of ['stdout', 'stderr']) process[name].write = text => ((told[name] += text), true)
      await import(cli + '?' + index)
      while (process.exitCode === undefined) await new Promise(resolve => setTimeout(resolve, 2))
      answers.push({ status: process.exitCode, ...told })
    }
    process.exitCode = 0
    print(JSON.stringify(answers))`
  const args = ['--input-type=module', '--no-warnings', '-e', program]
  const run = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' })
  expect([run.status, run.stderr]).toEqual([0, ''])
  const answers: readonly ReturnType<typeof answer>[] = JSON.parse(run.stdout)
  return answers.map(each => ({ ...each, stderr: each.stderr.replace(progress, '') }))
}

describe('the bundled command', () => {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bundled-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  let plain: readonly ReturnType<typeof answer>[] = []
  beforeAll(() => {
    for (const [name, contents] of Object.entries(files)) writeFileSync(join(folder, name), contents)
    plain = plainAnswers([...lines, `${makeLine} plain`], folder)
  })

  it.each(lines)('answers as the plain one does: %s', line => {
    const told = answer(commandFile, line.split(' '), folder)
    expect(told).toEqual(plain[lines.indexOf(line)])
    expect(told.stdout + told.stderr).not.toBe('')
  })

  it.each(['make --help', 'make --frobnicate'])('ends as the plain one does: %s', line => {
    const told = answer(commandFile, line.split(' '), folder)
    expect(told).toEqual(answer(plainFile, line.split(' '), folder))
    expect(told.stdout + told.stderr).not.toBe('')
  })

  it('makes the same sets, byte for byte', () => {
    expect(answer(commandFile, `${makeLine} bundled`.split(' '), folder)).toMatchObject({
      status: 0,
      stderr: '',
    })
    expect(plain.at(-1)).toMatchObject({ status: 0, stderr: '' })
    const [bundled, ofPlain] = ['bundled', 'plain'].map(out => filesIn(join(folder, out)))
    expect(bundled!.size).toBeGreaterThan(10)
    expect(bundled).toEqual(ofPlain)
  })

  it('has beside each chunk of its own what this V8 made of it, and V8 takes it', () => {
    // In a process as the command's is: what V8 keeps depends on how it was started.
    const program = `
      const { readFileSync } = require('node:fs')
      const { Script } = require('node:vm')
      const { cacheFile } = require('./src/chunk-loader.cjs')
      require('./src/compile-later.cjs').compileLater()
      for (const name of process.argv.slice(1)) {
        const cachedData = readFileSync(cacheFile('./command/' + name))
        const script = new Script(readFileSync('./command/' + name, 'utf8'), { cachedData })
        if (script.cachedDataRejected) console.log(name)
      }`
    const names = ['cli', 'make', 'list', 'help', 'check', 'pipeline', 'shaper'].map(name => `${name}.cjs`)
    const run = spawnSync(process.execPath, ['-e', program, ...names], { cwd: buildFolder, encoding: 'utf8' })
    expect([run.status, run.stdout, run.stderr]).toEqual([0, '', ''])
  })

  it('opens what it needs of Node before V8 is told to compile later, for which Node has compiled nothing', () => {
    const program = `
      const v8 = require('node:v8')
      const set = v8.setFlagsFromString
      let opened
      v8.setFlagsFromString = flag => {
        opened ??= new Set(process.moduleLoadList)
        set(flag)
      }
      process.on('exit', () => console.log(process.moduleLoadList.filter(name => !opened.has(name)).join('\\n')))
      require(process.argv[1])`
    for (const line of [
      'make week.yaml --quiet --only key --dpi 72 --out late',
      'study reed',
      'list papers',
    ]) {
      const args = ['-e', program, commandFile, ...line.split(' ')]
      const { stdout, stderr } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' })
      const late = stdout.match(/^NativeModule (?!internal\/).*$/gm) ?? []
      // A bare getter for the process.
      expect([late.filter(name => name !== 'NativeModule process'), stderr]).toEqual([[], ''])
    }
  })

  it('ends when all that it prints is read, however late', () => {
    const late = `"${process.execPath}" "${commandFile}" schema | (sleep 0.3; cat)`
    const [read, whole] = [late, `"${process.execPath}" "${plainFile}" schema`].map(line =>
      spawnSync(line, { shell: true, encoding: 'utf8' }),
    )
    expect(read!.stdout.length).toBeGreaterThan(70_000)
    expect(read!.stdout).toBe(whole!.stdout)
  })
})

describe('the loader of chunks', () => {
  const { chunkLoader, cacheFile, keepCompiled } = createRequire(import.meta.url)(
    join(buildFolder, 'src/chunk-loader.cjs'),
  )
  const chunk = (body: string) =>
    `(function (exports, require, module, __filename, __dirname, importChunk) {${body}\n})`
  const chunks = {
    'waiting.json': '{"shaper": "shaper.cjs", "waiting": {"sheet.cjs": ["shaper.cjs", "sheet.cjs"]}}',
    'shaper.cjs': chunk(
      'exports.ready = new Promise(done => setTimeout(() => { exports.open = true; done() }, 5))',
    ),
    'sheet.cjs': chunk('exports.drawnWith = require("./shaper.cjs").open'),
    'word.cjs': chunk('exports.letters = require("node:path").basename("reeds/reed").length'),
    'list.cjs': chunk('exports.sheet = importChunk("./sheet.cjs")'),
  }

  it('gives what a chunk exports, packages of Node among what it requires', async () => {
    expect(await chunkLoader(folderWith(chunks)).load('word.cjs')).toEqual({ letters: 4 })
  })

  it('reads a chunk that is not ASCII as it was written', async () => {
    const folder = folderWith({ ...chunks, 'word.cjs': chunk('exports.letters = "½ ⅛ ″"') })
    expect(await chunkLoader(folder).load('word.cjs')).toEqual({ letters: '½ ⅛ ″' })
  })

  it('lets a chunk that draws wait for the shaper, and another that asks for one', async () => {
    const { load } = chunkLoader(folderWith(chunks))
    expect(await load('sheet.cjs')).toEqual({ drawnWith: true })
    expect(await (await chunkLoader(folderWith(chunks)).load('list.cjs')).sheet).toEqual({ drawnWith: true })
  })

  it('keeps what it compiled for the next run, and keeps what is there', async () => {
    const folder = folderWith(chunks)
    const scripts = new Map()
    await chunkLoader(folder, scripts).load('word.cjs')
    const kept = cacheFile(join(folder, 'word.cjs'))
    keepCompiled(folder, scripts)
    const first = readFileSync(kept)
    const script = new Script(chunks['word.cjs'], { cachedData: first })
    expect([script.cachedDataRejected, readdirSync(folder).length]).toEqual([false, 6])
    writeFileSync(kept, 'there before')
    keepCompiled(folder, scripts)
    expect(readFileSync(kept, 'utf8')).toBe('there before')
  })

  it('keeps it so that a plain run takes it, after a long one that collects garbage sooner', async () => {
    const folder = folderWith(chunks)
    const scripts = new Map()
    const begunWith = ['--semi-space-growth-factor=1', '--no-parallel-scavenge']
    const asV8HasThem = ['--semi-space-growth-factor=2', '--parallel-scavenge']
    for (const flag of begunWith) setFlagsFromString(flag)
    await chunkLoader(folder, scripts).load('word.cjs')
    collectSoonerFor({ sheets: 1000 })
    keepCompiled(folder, scripts, begunWith)
    // As another process has them.
    for (const flag of ['--heap-growing-percent=0', ...begunWith]) setFlagsFromString(flag)
    const cachedData = readFileSync(cacheFile(join(folder, 'word.cjs')))
    const { cachedDataRejected } = new Script(chunks['word.cjs'], { cachedData })
    for (const flag of asV8HasThem) setFlagsFromString(flag)
    expect(cachedDataRejected).toBe(false)
  })

  it('says nothing where nobody may write', async () => {
    const scripts = new Map()
    await chunkLoader(folderWith(chunks), scripts).load('word.cjs')
    expect(() => keepCompiled('/nowhere/at/all', scripts)).not.toThrow()
  })

  it('passes over in silence what another V8 has made', async () => {
    const folder = folderWith(chunks)
    writeFileSync(cacheFile(join(folder, 'word.cjs')), 'made by a V8 of another kind')
    expect(await chunkLoader(folder).load('word.cjs')).toEqual({ letters: 4 })
  })
})

function filesIn(folder: string): ReadonlyMap<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()
  return new Map(
    names.filter(name => /\.\w+$/.test(name)).map(name => [name, readFileSync(join(folder, name), 'latin1')]),
  )
}

it('asks V8 to compile later by flags that this V8 knows', () => {
  const { laterFlags } = createRequire(import.meta.url)(join(buildFolder, 'src/compile-later.cjs'))
  const { stdout } = spawnSync(process.execPath, ['--v8-options'], { encoding: 'utf8' })
  const names = laterFlags().map((flag: string) => flag.replace('--no-', '--').replace(/=.*/, ''))
  expect(names.length).toBeGreaterThan(0)
  for (const name of names) expect(stdout).toContain(`  ${name} (`)
  expect(laterFlags('99.1.2')).toEqual([])
})
