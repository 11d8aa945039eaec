import { join } from 'node:path'
import type { Problem } from '../problems.js'
import type { Sheet } from '../sheets/sheet.js'
import type { FileSystem } from './folder/file-system.js'
import { type FilesOfLastRun, filesOfLastRun, type WriteFile } from './folder/files-of-last-run.js'
import { runInTurn, type Task } from './folder/in-turn.js'
import { type Format, sheetPath } from './folder/item-paths.js'
import type { SetFiles, WhenLeft } from './folder/set-files.js'
import { type ManifestPage, manifestPage } from './manifest.js'
import { dpiOf } from './page/dpi-of.js'
import { pageShapes } from './page/page-shapes.js'
import { type SheetLooks, sheetLooks } from './page/sheet-looks.js'
import { svgTexts } from './page/svg.js'
import type { KeptPngs } from './png/kept-pngs.js'
import { drawnSheet, type PrintedItem, type PrintedPlan, type PrintedSheet } from './printed-plan.js'
import { drawProof, type ProofParts } from './proof/proof-parts.js'
import type { WritingThread } from './thread/writing-thread.js'
import { type FinishedPdf, noPdfs, type PlanPdfs } from './write-pdfs.js'

export interface ItemWriting {
  readonly printed: PrintedPlan<PrintedSheet>
  /** Whether a PDF of the whole plan is to be written too; not so when only some of its items are made. */
  readonly whole: boolean
  readonly folder: string
  /** The set as it stands; left out where there is none to go by. */
  readonly before?: string
  readonly formats: readonly Format[]
  readonly dpi: number
  /** How many files may be under way at once. */
  readonly jobs: number
  readonly files: Pick<FileSystem, 'look'>
  /** How what is written comes into the folder. */
  readonly setFiles: SetFiles
  /** From run to run, for a program that writes the same plan again. */
  readonly kept?: KeptFiles | undefined
  /** Told of each item whose files are all written, and how many are. */
  readonly writtenOne?: ((item: string, done: number) => Promise<void>) | undefined
}

/** Files of earlier runs, for the sheets that come out as they were. Filled by those who write. */
export interface KeptFiles {
  looks?: SheetLooks
  lastRun?: FilesOfLastRun
  /** Draws and writes files where it is ready. */
  readonly thread: WritingThread | undefined
  pngs?: KeptPngs
  /** The set that the last run replaced is being removed: gives what the next run is to tell of that. */
  removing?: Promise<readonly Problem[]>
}

/** What is known of the sheets that were written, when they are no longer held. */
export interface WrittenItems {
  /** By the item's name. */
  readonly pages: ReadonlyMap<string, readonly ManifestPage[]>
  readonly proof: ProofParts
}

/**
 * Writes every item's sheets in the formats asked for. A sheet is drawn when there is a hand free to write it, goes into
 * its own files, into the PDFs of which it is a page and onto the proof page, and is let go: of a set of thousands of cards
 * no more sheets are held at once than files are under way. The code of PNG and PDF is loaded only for them.
 */
export async function writeItems(writing: ItemWriting): Promise<WrittenItems> {
  const { printed, folder, formats, jobs, setFiles, dpi } = writing
  for (const item of printed.items) await setFiles.makeFolder(join(folder, item.name))
  const writePng = formats.includes('png') ? await pngWriting(writing) : undefined
  const pdfs = formats.includes('pdf') ? await pdfWriting(writing) : noPdfs
  const proof = drawProof()
  const pages = new Map<string, readonly ManifestPage[]>()
  const putAgain = puttingAgain(writing)
  const told = toldWhenWritten(writing)

  /** Each task as soon as somebody is there to do it, so that the sheet of the next is not drawn before. */
  async function* tasks(): AsyncGenerator<Task> {
    const pdf =
      ({ path, contents }: FinishedPdf): Task =>
      async () =>
        setFiles.write(join(folder, path), await contents())
    const sheetFile =
      (path: string, looks: (of: SheetLooks) => string, write: WriteFile): Task =>
      () =>
        putAgain === undefined ? write(join(folder, path)) : putAgain(path, looks, write)
    for (const item of printed.items) {
      const section = proof.begin(item)
      const written: ManifestPage[] = []
      pages.set(item.name, written)
      for (const [index, printedSheet] of item.sheets.entries()) {
        const sheet = drawnSheet(printedSheet)
        const page = index + 1
        written.push(manifestPage(item, page, sheet, writing))
        section.add(sheet)
        await pdfs.add(item.name, printedSheet, sheet)
        if (formats.includes('svg'))
          yield told(
            item,
            sheetFile(
              sheetPath(item, page, 'svg'),
              looks => looks.svg(sheet),
              (to, whenLeft) => setFiles.write(to, svgTexts(sheet), whenLeft),
            ),
          )
        if (writePng !== undefined) {
          const fineness = dpiOf(item.paper, dpi)
          yield told(
            item,
            sheetFile(
              sheetPath(item, page, 'png'),
              looks => `${fineness} ${looks.picture(sheet)}`,
              (to, whenLeft) => writePng(sheet, fineness, to, whenLeft),
            ),
          )
        }
      }
      const own = pdfs.endItem(item.name)
      if (own !== undefined) yield told(item, pdf(own))
    }
    for (const each of pdfs.end()) yield pdf(each)
  }

  await runInTurn(tasks(), jobs)
  writing.kept?.pngs?.letGo()
  return { pages, proof: proof.parts() }
}

/** For a program that writes the same plan again: what would come out as it stands is not made. */
function puttingAgain({ kept, before, folder, files, setFiles }: ItemWriting) {
  if (kept === undefined || before === undefined) return undefined
  kept.lastRun ??= filesOfLastRun()
  const put = kept.lastRun.into(before, folder, files, setFiles)
  const known = looksKept(kept)
  return (path: string, looks: (of: SheetLooks) => string, write: WriteFile) => put(path, looks(known), write)
}

export function looksKept(kept: KeptFiles): SheetLooks {
  kept.looks ??= sheetLooks()
  return kept.looks
}

type WritePng = (sheet: Sheet, dpi: number, path: string, whenLeft?: WhenLeft) => Promise<void>

async function pngWriting({ kept, setFiles }: ItemWriting): Promise<WritePng> {
  const { draw } = setFiles
  if (kept !== undefined && draw !== undefined) {
    const looks = looksKept(kept)
    return (sheet, dpi, path, whenLeft) =>
      draw(path, { dpi, look: looks.picture(sheet), page: () => pageShapes(sheet) }, whenLeft)
  }
  const pngOf = await pngDrawing(kept)
  return async (sheet, dpi, path, whenLeft) => setFiles.write(path, await pngOf(sheet, dpi), whenLeft)
}

async function pngDrawing(kept?: KeptFiles): Promise<(sheet: Sheet, dpi: number) => Promise<Uint8Array>> {
  if (kept !== undefined) {
    kept.pngs ??= (await import('./png/kept-pngs.js')).keptPngs()
    const { pngs } = kept
    const looks = looksKept(kept)
    return (sheet, dpi) => pngs.at(dpi)(looks.picture(sheet), () => pageShapes(sheet))
  }
  const { createPngWriter } = await import('./png/png-writer.js')
  const writers = new Map<number, ReturnType<typeof createPngWriter>>()
  return (sheet, dpi) => {
    const writer = writers.get(dpi) ?? createPngWriter(dpi)
    writers.set(dpi, writer)
    return writer.write(sheet)
  }
}

async function pdfWriting({ printed, whole }: ItemWriting): Promise<PlanPdfs> {
  const { planPdfs } = await import('./pdf/plan-pdfs.js')
  return planPdfs(printed, whole)
}

/** Gives a task of an item back so that, when it is the last of them, the item is told as written. */
function toldWhenWritten({ formats, writtenOne = async () => {} }: ItemWriting) {
  const left = new Map<string, number>()
  let done = 0
  const filesOf = ({ sheets }: PrintedItem<PrintedSheet>): number =>
    formats.reduce((sum, format) => sum + (format === 'pdf' ? 1 : sheets.length), 0)
  return (item: PrintedItem<PrintedSheet>, task: Task): Task =>
    async () => {
      await task()
      const others = (left.get(item.name) ?? filesOf(item)) - 1
      left.set(item.name, others)
      if (others === 0) await writtenOne(item.name, ++done)
    }
}
