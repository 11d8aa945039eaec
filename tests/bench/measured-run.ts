/** What a whole process took: the most memory that it held, its processor time, and how long one waits for it. */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { buildFolder } from '../../src/installation.js'

export interface MeasuredRun {
  readonly what: string
  readonly peakMb: number
  /** Over all cores. */
  readonly processorSeconds: number
  readonly wallSeconds: number
}

const cli = join(buildFolder, 'src/start.cjs')

/** Tells on standard error, when the process ends, what the system has counted. */
const counting =
  'data:text/javascript,process.on("exit",()=>{const{maxRSS,userCPUTime,systemCPUTime}=process.resourceUsage();' +
  'process.stderr.write("\\n"+JSON.stringify({peakKb:maxRSS,microseconds:userCPUTime+systemCPUTime}))})'

export function measured(what: string, args: readonly string[], cwd: string): MeasuredRun {
  const start = performance.now()
  const run = spawnSync(process.execPath, ['--import', counting, cli, ...args], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  })
  const wallMs = performance.now() - start
  if (run.status !== 0) throw new Error(run.stderr)
  const { peakKb, microseconds } = JSON.parse(run.stderr.slice(run.stderr.lastIndexOf('\n')))
  return {
    what,
    peakMb: Math.round(peakKb / 1024),
    processorSeconds: Math.round(microseconds / 1e4) / 100,
    wallSeconds: Math.round(wallMs / 100) / 10,
  }
}
