/** What a board more costs in each format, whole processes of more and more boards. Run on its own, or by `npm run bench`. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { measured } from './measured-run.js'
import { boardsPlan } from './reference-job.js'

export interface SlopeRow {
  readonly format: string
  readonly boards: number
  readonly processorSeconds: number
  readonly peakMb: number
  /** Of the processor, since the row before. */
  readonly msABoardMore?: string
}

const boards = [30, 100, 300, 1000]

export function benchSlope(): readonly SlopeRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  try {
    for (const count of boards) writeFileSync(join(folder, `${count}.yaml`), boardsPlan(count))
    return ['svg', 'png', 'svg,png', 'pdf'].flatMap(format => {
      const runs = boards.map(count =>
        measured(format, ['make', `${count}.yaml`, '--format', format, '--quiet'], folder),
      )
      return runs.map(({ processorSeconds, peakMb }, index): SlopeRow => {
        const row = { format, boards: boards[index]!, processorSeconds, peakMb }
        if (index === 0) return row
        const more = processorSeconds - runs[index - 1]!.processorSeconds
        return { ...row, msABoardMore: ((1000 * more) / (boards[index]! - boards[index - 1]!)).toFixed(1) }
      })
    })
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
}

if (process.argv[1] === import.meta.filename) console.table(benchSlope())
