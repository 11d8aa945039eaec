/**
 * Whole processes, cold: what a teacher waits before anything happens, in times of Node that starts and does nothing. Each
 * round runs all of them in turn, so that what else the machine does falls on all alike. Run on its own, or by `npm run bench`.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { buildFolder } from '../../src/installation.js'

export interface ColdStartRow {
  readonly command: string
  readonly medianMs: number
  readonly leastMs: number
  /** Of the medians, and of the least. */
  readonly timesNode: string
  /** Mean processor time of user and system; only where the system tells it of processes that have ended (Linux). */
  readonly processorMs?: number
  readonly processorTimesNode?: string
}

const rounds = 12
const cli = join(buildFolder, 'src/start.cjs')
const plain = join(buildFolder, 'src/cli.js')
const tenWords = ['reed', 'marsh', 'shrub', 'thrush', 'stream', 'spring', 'gnat', 'wren', 'leaf', 'moth']

const commands: readonly (readonly [string, readonly string[]])[] = [
  ['node -e 0 (Node alone)', ['-e', '0']],
  ['oaktag help', [cli, 'help']],
  ['oaktag help bingo', [cli, 'help', 'bingo']],
  ['oaktag list papers', [cli, 'list', 'papers']],
  ['oaktag study, ten words', [cli, 'study', ...tenWords]],
  ['the same, not bundled', [plain, 'study', ...tenWords]],
  ['oaktag find, twenty words', [cli, 'find', '--pattern', 'digraph-blend']],
  ['oaktag find, nothing fits', [cli, 'find', '--pattern', 'digraph-blend', '--sounds', '2']],
  ['oaktag find, like a word', [cli, 'find', '--like', 'reed']],
  ['oaktag check, one sheet of cards', [cli, 'check', 'one.yaml']],
  ['oaktag make, one sheet of cards and its cover', [cli, 'make', 'one.yaml']],
  ['the same, not bundled', [plain, 'make', 'one.yaml']],
]

interface Run {
  readonly ms: number
  readonly processorMs: number
}

export function benchColdStarts(): readonly ColdStartRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  try {
    writeFileSync(join(folder, 'one.yaml'), `words: [${tenWords.join(', ')}]\nprint: [word-cards]\n`)
    const runs = commands.map((): Run[] => [])
    for (let round = 0; round <= rounds; round++)
      for (const [index, [, args]] of commands.entries()) {
        const run = timed(args, folder)
        // The first round brings files into the system's memory.
        if (round > 0) runs[index]!.push(run)
      }
    return commands.map(([command], index) => row(command, runs[index]!, runs[0]!))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function timed(args: readonly string[], cwd: string): Run {
  const processor = processorMsOfEnded()
  const start = performance.now()
  const run = spawnSync(process.execPath, args, { cwd, encoding: 'utf8' })
  const ms = performance.now() - start
  if (run.status !== 0) throw new Error(run.stderr)
  return { ms, processorMs: processorMsOfEnded() - processor }
}

function row(command: string, runs: readonly Run[], node: readonly Run[]): ColdStartRow {
  const times = (of: (runs: readonly Run[]) => number): string => (of(runs) / of(node)).toFixed(1)
  const shared = {
    command,
    medianMs: Math.round(medianMs(runs)),
    leastMs: Math.round(leastMs(runs)),
    timesNode: `${times(medianMs)}, ${times(leastMs)}`,
  }
  if (!existsSync(ended)) return shared
  return {
    ...shared,
    processorMs: Math.round(meanProcessorMs(runs)),
    processorTimesNode: times(meanProcessorMs),
  }
}

function medianMs(runs: readonly Run[]): number {
  return runs.map(({ ms }) => ms).sort((a, b) => a - b)[Math.floor(runs.length / 2)]!
}

function leastMs(runs: readonly Run[]): number {
  return Math.min(...runs.map(({ ms }) => ms))
}

function meanProcessorMs(runs: readonly Run[]): number {
  return runs.reduce((sum, { processorMs }) => sum + processorMs, 0) / runs.length
}

/** What Linux counts for this process; of processes that it has waited for, in hundredths of a second: proc(5), cutime and cstime. */
const ended = '/proc/self/stat'

function processorMsOfEnded(): number {
  if (!existsSync(ended)) return 0
  const stat = readFileSync(ended, 'utf8')
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ')
  return (Number(fields[13]) + Number(fields[14])) * 10
}

if (process.argv[1] === import.meta.filename) console.table(benchColdStarts())
