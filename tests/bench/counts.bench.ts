/** What the reference job does, counted: no machine and no other work changes that. Run on its own, or by `npm run bench`. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Resvg } from '@resvg/resvg-js'
import { buildFolder } from '../../src/installation.js'
import { keepWork } from '../../src/pipeline/kept-work.js'
import { makePlan } from '../../src/pipeline.js'
import { boardsPlan } from './reference-job.js'

export interface CountRow {
  readonly what: string
  readonly count: number
}

export async function benchCounts(): Promise<readonly CountRow[]> {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  try {
    const planFile = join(folder, 'boards.yaml')
    writeFileSync(planFile, boardsPlan(30))
    const kept = keepWork()
    const made = makePlan({
      planFile,
      outFolder: join(folder, 'out'),
      formats: ['svg', 'png'],
      dpi: 300,
      kept,
    })
    const shapes = await shapesDrawnBy(made)
    const { layouts } = kept.done()
    const { trees, measures } = kept.asked()
    return [
      ...modulesOf(folder, ['make', 'boards.yaml', '--quiet']),
      ...modulesOf(folder, ['study', 'boards.yaml']),
      { what: 'faces laid out, those of one shape once', count: layouts },
      { what: 'satori asked: for a face without its rows, for a row', count: trees },
      { what: 'words measured with their marks', count: measures },
      { what: 'shapes drawn by resvg', count: shapes },
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
}

async function shapesDrawnBy(work: Promise<{ readonly ok: boolean }>): Promise<number> {
  const { render } = Resvg.prototype
  let drawn = 0
  Resvg.prototype.render = function () {
    drawn += 1
    return render.call(this)
  }
  try {
    if (!(await work).ok) throw new Error('the reference job fails')
    return drawn
  } finally {
    Resvg.prototype.render = render
  }
}

/** Tells on standard error, when the process ends, what it has opened. */
const counting = `const vm = require('node:vm')
const { Script } = vm
let chunks = 0
vm.Script = class extends Script {
  constructor(...given) {
    super(...given)
    chunks += 1
  }
}
process.on('exit', () => {
  const own = process.moduleLoadList.filter(name => name.startsWith('NativeModule')).length
  process.stderr.write('\\n' + JSON.stringify([chunks, own]))
})
`

function modulesOf(folder: string, args: readonly string[]): readonly CountRow[] {
  const hook = join(folder, 'counting.cjs')
  writeFileSync(hook, counting)
  const cli = join(buildFolder, 'src/start.cjs')
  const run = spawnSync(process.execPath, ['--require', hook, cli, ...args], {
    cwd: folder,
    encoding: 'utf8',
  })
  const [chunks, own]: readonly number[] = JSON.parse(run.stderr.slice(run.stderr.lastIndexOf('\n')))
  return [
    { what: `${args[0]}: chunks of the command opened`, count: chunks! },
    { what: `${args[0]}: modules of Node itself`, count: own! },
  ]
}

if (process.argv[1] === import.meta.filename) console.table(await benchCounts())
