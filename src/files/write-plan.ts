import { join } from 'node:path'
import { fail, failWith, succeed } from '../outcomes.js'
import { hasErrors, type Outcome, type Problem } from '../problems.js'
import { discardReplaced, stillThere } from './discard-replaced.js'
import { anotherPlanWarning, type GoneFromSet, goneFromSet } from './folder/another-plan.js'
import { carryOver } from './folder/carry-over.js'
import { AnotherRunIsWriting, fileProblem } from './folder/file-problem.js'
import { type FileSystem, machineFiles, systemCode } from './folder/file-system.js'
import { type LockTimes, usualTimes } from './folder/folder-lock.js'
import { itemNameProblems } from './folder/item-names.js'
import { type Format, planPdfPath } from './folder/item-paths.js'
import { longPathWarning } from './folder/long-paths.js'
import { mergedItemNames } from './folder/merge-items.js'
import { patientFiles } from './folder/patient-files.js'
import { readPreviousSet } from './folder/previous-set.js'
import { type Host, thisHost } from './folder/running-process.js'
import { type SetFiles, setFilesAtOnce } from './folder/set-files.js'
import { swapIn } from './folder/swap-in.js'
import { openWorkFolder, type WorkFolder } from './folder/work-folder.js'
import { type Manifest, manifestItem, manifestPrint, manifestText } from './manifest.js'
import { printRuns } from './print-runs.js'
import type { PrintedPlan, PrintedSheet } from './printed-plan.js'
import { keptParts } from './proof/kept-parts.js'
import type { PageFonts } from './proof/page-fonts.js'
import { proofPageText } from './proof/proof-page.js'
import { joinedParts } from './proof/proof-parts.js'
import { type WritingThread, WritingThreadEnded } from './thread/writing-thread.js'
import { type KeptFiles, type WrittenItems, writeItems } from './write-items.js'

export interface WriteRequest {
  readonly printed: PrintedPlan<PrintedSheet>
  readonly outFolder: string
  readonly formats: readonly Format[]
  readonly dpi: number
  /** How many files may be under way at once; the bytes do not depend on it. */
  readonly jobs: number
  readonly version: string
  /** Names of the items to make; the last set's other items stay as they are. Left out: make all, keep none. */
  readonly only?: readonly string[]
  /** For the proof page: what is to be looked at twice, in plain sentences. */
  readonly warnings?: readonly string[]
  /** For the proof page: the typeface of its own text; the browser's where left out. */
  readonly pageFonts?: PageFonts
  /** From run to run, for a program that writes the same plan again. */
  readonly kept?: KeptFiles | undefined
  /** What each item of the plan is made from, in short; for `older`. */
  readonly madeFrom?: ReadonlyMap<string, string>
  /** Told of each item that is written, and how many are. */
  readonly writtenOne?: (item: string, done: number) => Promise<void>
  /** Awaited before the new set takes the place of the last one, which stays where this is rejected. */
  readonly beforeInPlace?: (() => Promise<void>) | undefined
  /** The machine's own where left out. */
  readonly files?: FileSystem
  readonly host?: Host
  readonly lockTimes?: LockTimes
  /** How time passes while another program holds a file open; the clock's where left out. */
  readonly wait?: (ms: number) => Promise<unknown>
}

export interface WrittenPlan {
  /** Items of the last set that stand as they were, though the plan now makes them otherwise; by name. */
  readonly older: readonly string[]
  /** What went with the set that stood there; nothing where none did. */
  readonly gone: GoneFromSet
  readonly folder: string
  readonly indexFile: string
  readonly manifest: Manifest
}

/**
 * Writes a plan's set: everything is built in a hidden folder beside the plan's own and takes its place in one
 * go, so that a run which fails or is interrupted leaves the last good set as it was.
 */
export async function writePlan(request: WriteRequest): Promise<Outcome<WrittenPlan>> {
  const thread = request.kept?.thread
  if (thread?.isReady())
    try {
      return await writeOnce(request, thread)
    } catch (error) {
      // What it has done is not known, and all that was made for it is still at hand.
      if (!(error instanceof WritingThreadEnded)) throw error
    }
  return writeOnce(request)
}

/** @param thread to draw and write files beside this one */
async function writeOnce(request: WriteRequest, thread?: WritingThread): Promise<Outcome<WrittenPlan>> {
  const folder = join(request.outFolder, request.printed.stem)
  const { outFolder, files = machineFiles, host = thisHost, lockTimes = usualTimes } = request
  const { stem } = request.printed
  const problems = itemNameProblems(request.printed, folder, files.kind)
  if (hasErrors(problems)) return failWith(problems)
  const patient = patientFiles(files, request.wait)
  const setFiles = thread?.setFiles() ?? setFilesAtOnce(patient)
  let work: WorkFolder | undefined
  await request.kept?.removing
  try {
    work = await openWorkFolder({ outFolder, stem, host, files, patient, lockTimes })
    return await writeAndSwap({ ...request, folder, work, files: patient, setFiles, thread })
  } catch (error) {
    return fail(fileProblem(error, folder, files.kind))
  } finally {
    // What is under way still would come into a folder that is removed.
    await setFiles.done().catch(() => undefined)
    await removeQuietly(work)
  }
}

/** What cannot be removed now is removed by the next run; it takes nothing from how this one ended. */
async function removeQuietly(work: WorkFolder | undefined): Promise<void> {
  try {
    await work?.remove()
  } catch (error) {
    if (systemCode(error) === undefined) throw error
  }
}

interface Writing extends WriteRequest {
  readonly folder: string
  readonly work: WorkFolder
  readonly files: FileSystem
  readonly setFiles: SetFiles
  readonly thread: WritingThread | undefined
}

async function writeAndSwap(request: Writing): Promise<Outcome<WrittenPlan>> {
  const { folder, work, files } = request
  const printed = itemsToMake(request)
  // A folder that is not ours is refused before any work is done.
  const first = await work.alone(() => readPreviousSet(folder, files))
  if (!first.ok) return first
  const whole = request.only === undefined
  const written = await writeItems({
    ...request,
    printed,
    whole,
    before: folder,
    folder: work.building,
  })
  return work.alone(async held => {
    const previous = await readPreviousSet(folder, files)
    if (!previous.ok) return previous
    const kept = whole ? null : previous.value
    const completed = await completeSet({ ...request, printed }, written, kept)
    if (!completed.ok) return completed
    await request.beforeInPlace?.()
    // A run that was stopped for so long that it was taken for dead no longer has the lock.
    if (!(await held.isOurs())) throw new AnotherRunIsWriting(folder)
    await swapIn(work, folder, files)
    const warnings = [
      ...(await stillThere(request.kept, files)),
      ...(previous.value === null
        ? []
        : anotherPlanWarning(previous.value, request.printed, { folder, whole })),
      ...longPathWarning(completed.value, folder, files.kind),
      ...(await discardReplaced(request)),
    ]
    const manifest = completed.value
    const older = olderItems(manifest, printed, request.madeFrom)
    const gone = goneFromSet(previous.value ?? manifest, manifest)
    const value = { folder, indexFile: join(folder, 'index.html'), manifest, older, gone }
    return succeed(value, warnings)
  })
}

/** Those that this run did not make, and that would come out otherwise now. */
function olderItems(
  { items }: Manifest,
  printed: PrintedPlan<PrintedSheet>,
  madeFrom: ReadonlyMap<string, string> = new Map(),
): readonly string[] {
  const made = new Set(printed.items.map(({ name }) => name))
  const kept = items.filter(item => !made.has(item.name) && item.madeFrom !== undefined)
  return kept.flatMap(({ name, madeFrom: from }) =>
    madeFrom.has(name) && madeFrom.get(name) !== from ? [name] : [],
  )
}

/** Adds to the new items what is kept of the last set, the proof page and the manifest. */
async function completeSet(
  request: Writing,
  { pages, proof }: WrittenItems,
  previous: Manifest | null,
): Promise<Outcome<Manifest>> {
  const { files, printed, folder, work, setFiles } = request
  const made = printed.items.map(item => item.name)
  const kept = (previous?.items ?? []).filter(item => !made.includes(item.name))
  const problems: Problem[] = []
  const planPdf = planPdfPath(printed.stem)
  const hasPlanPdf = request.formats.includes('pdf') && request.only === undefined
  for (const item of kept) problems.push(...(await carryOver(item, folder, work.building, files)))
  if (hasErrors(problems)) return failWith(problems)
  const entries = new Map([
    ...kept.map(item => [item.name, item] as const),
    ...printed.items.map(
      item => [item.name, manifestItem(item, request, pages.get(item.name) ?? [])] as const,
    ),
  ])
  const names = mergedItemNames(
    printed.itemNames,
    made,
    kept.map(item => item.name),
  )
  const manifest: Manifest = {
    oaktag: request.version,
    title: printed.title,
    class: printed.className,
    seed: printed.seed,
    ...(hasPlanPdf && {
      pdf: planPdf,
      prints: printRuns(printed).map(run => manifestPrint(printed.stem, run)),
    }),
    items: names.map(name => entries.get(name)!),
  }
  const manifestPath = join(work.building, 'manifest.json')
  await setFiles.write(manifestPath, manifestText(manifest))
  // A name may reach the disk before what it stands for: after a power cut the plan's folder would hold an empty manifest.
  await setFiles.settle(manifestPath)
  const { warnings = [], pageFonts } = request
  const parts = joinedParts(await keptParts(kept, folder, files), proof)
  const page = proofPageText({ manifest, parts, warnings, pageFonts })
  await setFiles.write(join(work.building, 'index.html'), page)
  await setFiles.settle(work.building)
  await setFiles.done()
  request.kept?.lastRun?.letGo()
  request.thread?.letGo()
  return succeed(manifest, problems)
}

function itemsToMake({ printed, only }: WriteRequest): PrintedPlan<PrintedSheet> {
  if (only === undefined) return printed
  return { ...printed, items: printed.items.filter(item => only.includes(item.name)) }
}
