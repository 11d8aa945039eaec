/** How long the files stage takes: thirty boards and their cards, from sheets to files. Run on its own, or by `npm run bench`. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { sheetToSvg } from '../../src/files/page/svg.js'
import { sheetsToPdf } from '../../src/files/pdf/pdf.js'
import { createPngWriter } from '../../src/files/png/png-writer.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { proofParts } from '../../src/files/proof/proof-parts.js'
import { writePlan } from '../../src/files/write-plan.js'
import { putPlanOnSheets } from '../../src/pipeline.js'

export interface FilesBenchRow {
  readonly what: string
  readonly sheets: number
  readonly milliseconds: number
  /** Processor time over all cores: on a busy machine the steadier figure. */
  readonly processorMilliseconds: number
  /** Of what is made; left out where it is written among other files. */
  readonly bytes?: number
}

const words = `reed marsh thread pumpkin knot boat frog pond mud heron shell fish duck nest wing path
  bridge light night stream spring crane snake mouse rain snail leaf tree bank shore`.split(/\s+/)

const planText = `title: Along the marsh
words: [${words.join(', ')}]
marks:
  - pattern: consonant-digraph
  - pattern: silent-letters
  - pattern: vowel-team
print:
  - layout: word-cards
  - layout: bingo
    boards: 30
    grid: 5x5
`

/** Measures each format by itself, each with nothing drawn beforehand, then a whole set written with 1 and 2 jobs. */
export async function benchFiles(): Promise<readonly FilesBenchRow[]> {
  const folder = await mkdtemp(join(tmpdir(), 'oaktag-bench-'))
  try {
    const items = await drawnItems(folder)
    const sheets = items.flatMap(item => item.sheets)
    const rows = [
      await measure('SVG', sheets.length, async () => sum(sheets.map(sheet => sheetToSvg(sheet).length))),
      await measure('PNG, 300 DPI', sheets.length, async () => {
        const writer = createPngWriter(300)
        let bytes = 0
        for (const sheet of sheets) bytes += (await writer.write(sheet)).length
        return bytes
      }),
      await measure('PDF', sheets.length, async () => {
        const parts = items.map(item => ({ title: item.name, sheets: item.sheets }))
        return (await sheetsToPdf({ title: 'Along the marsh', parts })).length
      }),
      await measure('proof page', sheets.length, async () =>
        sum(
          [...proofParts(items).sections.values()].map(section =>
            sum(section.map(text => text.read().length)),
          ),
        ),
      ),
    ]
    for (const jobs of new Set([1, 2, cpus().length])) {
      const printed = {
        stem: 'marsh',
        title: 'Along the marsh',
        className: '',
        seed: 1,
        itemNames: items.map(item => item.name),
        items,
      }
      rows.push(
        await measure(`SVG and PNG written, --jobs ${jobs}`, sheets.length, async () => {
          const formats = ['svg', 'png'] as const
          const written = await writePlan({
            printed,
            outFolder: folder,
            formats,
            dpi: 300,
            jobs,
            version: '0',
          })
          if (!written.ok) throw new Error(JSON.stringify(written.problems))
          return undefined
        }),
      )
    }
    return rows
  } finally {
    await rm(folder, { recursive: true })
  }
}

async function drawnItems(folder: string): Promise<readonly PrintedItem[]> {
  const file = join(folder, 'marsh.yaml')
  await writeFile(file, planText)
  const drawn = await putPlanOnSheets({ planFile: file })
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.problems))
  return drawn.value.items.map(item => item.printed)
}

async function measure(
  what: string,
  sheets: number,
  run: () => Promise<number | undefined>,
): Promise<FilesBenchRow> {
  const cpuStart = process.cpuUsage()
  const start = performance.now()
  const bytes = await run()
  const milliseconds = performance.now() - start
  const cpu = process.cpuUsage(cpuStart)
  return {
    what,
    sheets,
    milliseconds: Math.round(milliseconds),
    processorMilliseconds: Math.round((cpu.user + cpu.system) / 1000),
    ...(bytes === undefined ? {} : { bytes }),
  }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0)

if (process.argv[1] === import.meta.filename) console.table(await benchFiles())
