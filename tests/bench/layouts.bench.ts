/** Time per sheet for each layout, warm: from studied words to SVG and PNG files. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { layouts } from '../../layouts/index.js'
import { makePlan } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'

export interface LayoutBenchRow {
  readonly layout: string
  readonly sheets: number
  readonly msPerSheet: number
  readonly msInAll: number
}

const plan = (layout: string) => `title: Along the marsh
words:
${[
  'reed',
  'marsh',
  'shrub',
  'thrush',
  'stream',
  'spring',
  'gnat',
  'wren',
  'leaf',
  'moth',
  'frog',
  'perch',
  'snake',
  'duck',
  'bridge',
  'finch',
  'shell',
  'knot',
]
  .map(word => `  - {word: ${word}, clue: seen by the marsh with a ${word}}`)
  .join('\n')}
marks:
  - pattern: consonant-digraph
  - pattern: silent-letters
  - pattern: vowel-team
print:
  - layout: ${layout}
    name: measured
  # Checklists and labels tell of the plan's other sets.
  - layout: word-cards
    name: another set
`

/** The median of three runs, after one that warms up what every run shares. */
export async function benchLayouts(): Promise<readonly LayoutBenchRow[]> {
  const folder = await mkdtemp(join(tmpdir(), 'oaktag-bench-'))
  try {
    const rows: LayoutBenchRow[] = []
    for (const { name } of layouts) {
      const planFile = join(folder, `${name}.yaml`)
      await writeFile(planFile, plan(name))
      const runs: { ms: number; sheets: number }[] = []
      for (let run = 0; run < 4; run++) {
        const start = performance.now()
        const made = await makePlan({
          planFile,
          outFolder: folder,
          formats: ['svg', 'png'],
          dpi: 300,
          only: ['measured'],
        })
        if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
        const sheets = made.value.manifest.items.find(item => item.name === 'measured')!.pages.length
        runs.push({ ms: performance.now() - start, sheets })
      }
      const [, median] = runs.slice(1).sort((a, b) => a.ms - b.ms) as [
        unknown,
        { ms: number; sheets: number },
      ]
      rows.push({
        layout: name,
        sheets: median.sheets,
        msPerSheet: Math.round(median.ms / median.sheets),
        msInAll: Math.round(median.ms),
      })
    }
    return rows
  } finally {
    await rm(folder, { recursive: true })
  }
}
