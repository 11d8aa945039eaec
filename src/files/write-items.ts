import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { runInTurn } from './in-turn.js'
import { type Format, sheetPath } from './item-paths.js'
import type { PrintedItem } from './printed-plan.js'
import { sheetToSvg } from './svg.js'

export interface ItemWriting {
  /** The plan's title. */
  readonly title: string
  readonly items: readonly PrintedItem[]
  readonly folder: string
  readonly formats: readonly Format[]
  readonly dpi: number
  /** How many files may be under way at once. */
  readonly jobs: number
}

/** A file still to be made; its path is from the plan's folder. */
interface FileToMake {
  readonly path: string
  make(): Promise<string | Uint8Array>
}

/** Writes every item's sheets in the formats asked for. The code of PNG and PDF is loaded only for them. */
export async function writeItems(writing: ItemWriting): Promise<void> {
  const { items, folder, formats, jobs } = writing
  for (const item of items) await mkdir(join(folder, item.name))
  const files: FileToMake[] = []
  if (formats.includes('svg')) files.push(...svgFiles(writing))
  if (formats.includes('png')) files.push(...(await pngFiles(writing)))
  const tasks = files.map(file => async () => writeFile(join(folder, file.path), await file.make()))
  await runInTurn(tasks, jobs)
}

function svgFiles({ items }: ItemWriting): readonly FileToMake[] {
  return items.flatMap(item =>
    item.sheets.map((sheet, index) => ({
      path: sheetPath(item, index + 1, 'svg'),
      make: async () => sheetToSvg(sheet),
    })),
  )
}

async function pngFiles({ items, dpi }: ItemWriting): Promise<readonly FileToMake[]> {
  const [{ createRasterizer }, { encodePng }] = await Promise.all([
    import('./raster.js'),
    import('./png/encode-png.js'),
  ])
  const rasterizer = createRasterizer(dpi)
  return items.flatMap(item =>
    item.sheets.map((sheet, index) => ({
      path: sheetPath(item, index + 1, 'png'),
      make: async () => encodePng(await rasterizer.draw(sheet), dpi),
    })),
  )
}
