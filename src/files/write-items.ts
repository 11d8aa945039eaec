import { join } from 'node:path'
import type { FileSystem } from './folder/file-system.js'
import { runInTurn } from './folder/in-turn.js'
import { type Format, itemPdfPath, planPdfPath, printRunPath, sheetPath } from './folder/item-paths.js'
import { sheetToSvg } from './page/svg.js'
import { printRuns } from './print-runs.js'
import type { PrintedPlan } from './printed-plan.js'

export interface ItemWriting {
  readonly printed: PrintedPlan
  /** Whether a PDF of the whole plan is to be written too; not so when only some of its items are made. */
  readonly whole: boolean
  readonly folder: string
  readonly formats: readonly Format[]
  readonly dpi: number
  /** How many files may be under way at once. */
  readonly jobs: number
  readonly files: FileSystem
  /** Told of each item whose files are all written, and how many are. */
  readonly writtenOne?: ((item: string, done: number) => Promise<void>) | undefined
}

/** A file still to be made; its path is from the plan's folder. */
interface FileToMake {
  readonly path: string
  make(): Promise<string | Uint8Array>
}

/** Writes every item's sheets in the formats asked for. The code of PNG and PDF is loaded only for them. */
export async function writeItems(writing: ItemWriting): Promise<void> {
  const { printed, folder, formats, jobs, files: disk, writtenOne = async () => {} } = writing
  for (const item of printed.items) await disk.makeFolder(join(folder, item.name))
  const files: FileToMake[] = []
  if (formats.includes('svg')) files.push(...svgFiles(writing))
  if (formats.includes('png')) files.push(...(await pngFiles(writing)))
  if (formats.includes('pdf')) files.push(...(await pdfFiles(writing)))
  const left = new Map<string, number>()
  for (const { path } of files) left.set(itemOf(path), (left.get(itemOf(path)) ?? 0) + 1)
  let done = 0
  const tasks = files.map(file => async () => {
    await disk.write(join(folder, file.path), await file.make())
    const item = itemOf(file.path)
    left.set(item, left.get(item)! - 1)
    if (left.get(item) === 0 && file.path.includes('/')) await writtenOne(item, ++done)
  })
  await runInTurn(tasks, jobs)
}

/** Its folder; a PDF of the whole plan stands in none. */
function itemOf(path: string): string {
  return path.split('/', 1)[0]!
}

function svgFiles({ printed }: ItemWriting): readonly FileToMake[] {
  return printed.items.flatMap(item =>
    item.sheets.map((sheet, index) => ({
      path: sheetPath(item, index + 1, 'svg'),
      make: async () => sheetToSvg(sheet),
    })),
  )
}

async function pngFiles({ printed, dpi }: ItemWriting): Promise<readonly FileToMake[]> {
  const { createPngWriter } = await import('./png/png-writer.js')
  const writer = createPngWriter(dpi)
  return printed.items.flatMap(item =>
    item.sheets.map((sheet, index) => ({
      path: sheetPath(item, index + 1, 'png'),
      make: () => writer.write(sheet),
    })),
  )
}

async function pdfFiles({ printed, whole }: ItemWriting): Promise<readonly FileToMake[]> {
  const { sheetsToPdf } = await import('./pdf/pdf.js')
  const { stem, title } = printed
  const parts = printed.items.map(item => ({ title: item.name, sheets: item.sheets }))
  const files = printed.items.map((item, index) => ({
    path: itemPdfPath(item),
    make: () => sheetsToPdf({ title: `${title}: ${item.name}`, parts: [parts[index]!] }),
  }))
  if (!whole) return files
  const runs = printRuns(printed).map(run => ({
    path: printRunPath(stem, run.name),
    make: () =>
      sheetsToPdf({
        title: `${title}: ${run.name}`,
        parts: run.parts.map(({ item, sheets }) => ({ title: item, sheets })),
      }),
  }))
  return [...files, { path: planPdfPath(stem), make: () => sheetsToPdf({ title, parts }) }, ...runs]
}
