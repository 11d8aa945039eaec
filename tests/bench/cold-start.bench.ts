/** Whole processes, cold: what a teacher waits before anything happens. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { buildFolder } from '../../src/installation.js'

export interface ColdStartRow {
  readonly command: string
  readonly medianMs: number
  readonly leastMs: number
}

const cli = join(buildFolder, 'src/cli.js')
const tenWords = ['reed', 'marsh', 'shrub', 'thrush', 'stream', 'spring', 'gnat', 'wren', 'leaf', 'moth']

export function benchColdStarts(): readonly ColdStartRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  try {
    writeFileSync(join(folder, 'one.yaml'), `words: [${tenWords.join(', ')}]\nprint: [word-cards]\n`)
    return [
      timed('node -e 0 (Node alone)', ['-e', '0'], folder),
      timed('oaktag study, ten words', [cli, 'study', ...tenWords], folder),
      timed('oaktag find, twenty words', [cli, 'find', '--pattern', 'digraph-blend'], folder),
      timed(
        'oaktag find, nothing fits',
        [cli, 'find', '--pattern', 'digraph-blend', '--sounds', '2'],
        folder,
      ),
      timed('oaktag find, like a word', [cli, 'find', '--like', 'reed'], folder),
      timed('oaktag make, one sheet of cards and its cover', [cli, 'make', 'one.yaml'], folder),
    ]
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function timed(command: string, args: readonly string[], cwd: string): ColdStartRow {
  const times = Array.from({ length: 8 }, () => {
    const start = performance.now()
    const run = spawnSync(process.execPath, args, { cwd, encoding: 'utf8' })
    if (run.status !== 0) throw new Error(run.stderr)
    return performance.now() - start
  })
  const counted = times.slice(1).sort((a, b) => a - b)
  return { command, medianMs: Math.round(counted[3]!), leastMs: Math.round(counted[0]!) }
}
