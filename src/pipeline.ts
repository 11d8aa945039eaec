import { cpus } from 'node:os'
import { pageFonts } from '../fonts/page-fonts.js'
import type { Format } from './files/folder/item-paths.js'
import { drawnItem, type PrintedPlan, type PrintedSheet } from './files/printed-plan.js'
import type { WrittenPlan } from './files/write-plan.js'
import { version } from './installation.js'
import {
  failWith,
  inReadingOrder,
  outcomeOf,
  present,
  succeed,
  type WithProblems,
  withProblems,
} from './outcomes.js'
import { beginToLayOut } from './pieces/faces/lay-out-face.js'
import { collectSoonerFor } from './pipeline/collect-sooner.js'
import { dealPlan } from './pipeline/deal/deal-plan.js'
import { type ChosenJobs, chooseJobs, itemJobs } from './pipeline/deal/item-jobs.js'
import { type ImposedItem, imposePlan } from './pipeline/impose/impose-plan.js'
import { itemFingerprints } from './pipeline/item-fingerprints.js'
import { type KeptWork, keepWork } from './pipeline/kept-work.js'
import { tellAndTakeTurns, type Watching } from './pipeline/progress.js'
import { type ProposedGroup, proposedGroups } from './pipeline/report/proposed-groups.js'
import { type LookedAt, toLookAt } from './pipeline/report/to-look-at.js'
import { type SettledPlan, settlePlan } from './pipeline/settle/settle-plan.js'
import { openMaterials } from './pipeline/study/materials.js'
import { type StudiedPlan, studyPlan } from './pipeline/study/study-plan.js'
import { planVocabulary } from './pipeline/vocabulary.js'
import { drawingAhead, placeSoon, type WantedSoon } from './pipeline/wanted-soon.js'
import { disk } from './plan/disk/disk.js'
import type { FileAccess } from './plan/disk/file-access.js'
import { loadPlan, loadReadablePart } from './plan/load-plan.js'
import type { Plan } from './plan/plan.js'
import { aHundredOfAKind, eachOnce, errorAt, hasErrors, type Outcome, type Problem } from './problems.js'
import type { SheetToDraw } from './sheets/sheet.js'

/** Where a plan comes from, and the work of earlier runs. */
export interface PlanRequest {
  readonly planFile: string
  /** Instead of the plan's own seed. */
  readonly seed?: number
  /** Items to make, by name; the others of the last set stay as they are. */
  readonly only?: readonly string[]
  readonly files?: FileAccess
  readonly kept?: KeptWork
  readonly watching?: Watching
  readonly soon?: WantedSoon
}

export interface MakeRequest extends Omit<PlanRequest, 'soon'> {
  readonly outFolder: string
  readonly formats: readonly Format[]
  readonly dpi: number
  /** How many files may be under way at once; the bytes do not depend on it. */
  readonly jobs?: number
}

/** A plan with its items on their sheets, nothing written. */
export interface PlanOnSheets {
  readonly plan: Plan
  readonly items: readonly ImposedItem[]
}

/** A set as it was written, with what is to be looked at before it is printed. */
export interface MadePlan extends WrittenPlan, LookedAt {
  /** Lists that the plan asks to be shown. */
  readonly proposed: readonly ProposedGroup[]
}

/** The whole flow for one plan: read → study → deal → settle → impose → draw and write, sheet by sheet. */
export async function makePlan(request: MakeRequest): Promise<Outcome<MadePlan>> {
  try {
    return await makeSet(request)
  } finally {
    // However it ended: with an error, given up, or with its set, when nothing is left of that.
    request.kept?.files?.thread?.letGoAhead()
  }
}

async function makeSet(request: MakeRequest): Promise<Outcome<MadePlan>> {
  const { outFolder, formats, dpi, only, jobs = cpus().length, watching = {}, kept } = request
  const soon = formats.includes('png') ? drawingAhead(kept?.files, dpi) : undefined
  const onSheets = await putEachOnSheets({ ...request, ...present({ soon }) }, item => item)
  if (!onSheets.ok) return onSheets
  const printed = printedPlan(onSheets.value)
  const of = printed.items.length
  if (!goesOn(kept))
    collectSoonerFor({
      words: onSheets.value.plan.words.length,
      sheets: printed.items.reduce((sum, { sheets }) => sum + sheets.length, 0),
    })
  // Loaded once there is something to write: what is only checked does without.
  const { writePlan } = await import('./files/write-plan.js')
  const written = await writePlan({
    printed,
    outFolder,
    formats,
    dpi,
    jobs,
    version,
    warnings: aHundredOfAKind(onSheets.problems).map(
      ({ message, advice }) => `${inSentences(message)} ${advice}`,
    ),
    pageFonts: pageFonts(),
    kept: kept?.files,
    madeFrom: itemFingerprints(onSheets.value.plan),
    beforeInPlace: watching.beforeInPlace,
    writtenOne: (item, done) =>
      tellAndTakeTurns(watching, { step: 'written', item, done: of + done, of: 2 * of }),
    ...(only === undefined ? {} : { only: printed.items.map(item => item.name) }),
  })
  const problems = [...onSheets.problems, ...written.problems]
  if (!written.ok) return failWith(problems)
  const proposed = await proposedGroups(onSheets.value.plan)
  const value = {
    ...written.value,
    ...toLookAt(onSheets.value),
    proposed: proposed.ok ? proposed.value : [],
  }
  return succeed(value, [...problems, ...proposed.problems])
}

/** The flow up to the sheets, all of them drawn. */
export function putPlanOnSheets(request: PlanRequest): Promise<Outcome<PlanOnSheets>> {
  return putEachOnSheets(request, item => ({ ...item, printed: drawnItem(item.printed) }))
}

/**
 * The same before the sheets are drawn, with what is taken of each item in turn. A plan that cannot be read is taken as far
 * as it can, for its problems.
 */
export async function putEachOnSheets<T>(
  request: PlanRequest,
  take: (item: ImposedItem<SheetToDraw>) => T | Promise<T>,
): Promise<Outcome<{ readonly plan: Plan; readonly items: readonly T[] }>> {
  const { files = disk, kept = keepWork(), watching = {}, soon } = request
  const work = { files, kept, watching }
  const studied = studyPlanFile({ ...request, ...work })
  if (!studied.ok) {
    const problems = [...studied.problems, ...(await laterProblems(request.planFile, work))]
    return failWith(inReadingOrder(problems, request.planFile))
  }
  const { plan } = studied.value
  if (!goesOn(kept)) collectSoonerFor({ words: plan.words.length })
  const jobs = chooseJobs(plan, request.only)
  if (!jobs.ok) return failWith([...studied.problems, ...jobs.problems])
  await beginToLayOut()
  const imposed = await putOnSheets(studied.value, jobs.value, { ...work, ...present({ soon }) }, take)
  work.kept.endRun()
  const problems = eachOnce([
    ...studied.problems,
    ...jobs.problems,
    ...imposed.problems,
    ...nothingOfWeek(plan, imposed.value),
  ])
  return hasErrors(problems) ? failWith(problems) : succeed({ plan, items: imposed.value }, problems)
}

/** read → study: a plan's text, its words studied, its marks styled, what it uses of other files at hand. */
export function studyPlanFile({
  planFile,
  seed,
  files = disk,
  kept = keepWork(),
}: PlanRequest): Outcome<StudiedPlan> {
  const read = loadPlan(planFile, planVocabulary(), files)
  if (!read.ok) return read
  const plan = seed === undefined ? read.value : { ...read.value, seed }
  const studied = study(plan, { files, kept })
  return { ...studied, problems: [...read.problems, ...studied.problems] }
}

/** study → deal → settle, for a plan in hand. */
export async function settlePlanInHand(
  plan: Plan,
  { only, ...work }: Work & { readonly only?: readonly string[] },
): Promise<Outcome<SettledPlan>> {
  const studied = study(plan, work)
  if (!studied.ok) return studied
  const jobs = chooseJobs(plan, only)
  if (!jobs.ok) return failWith([...studied.problems, ...jobs.problems])
  const settled = await dealAndSettle(studied.value, jobs.value, work)
  return outcomeOf(settled.value, eachOnce([...studied.problems, ...jobs.problems, ...settled.problems]))
}

/** draw → impose, for a plan that is settled. */
export async function drawAndImpose(settled: SettledPlan, kept: KeptWork): Promise<Outcome<PrintedPlan>> {
  const imposed = await imposePlan(settled, kept, item => ({
    ...item,
    printed: drawnItem(item.printed),
  }))
  kept.endRun()
  const printed = printedPlan({ plan: settled.studied.plan, items: imposed.value })
  return outcomeOf(printed, eachOnce(imposed.problems))
}

/** What every step works with: how files are read, and what is kept of earlier runs. */
interface Work {
  readonly files: FileAccess
  readonly kept: KeptWork
  readonly watching?: Watching
  readonly soon?: WantedSoon
}

function study(plan: Plan, { files, kept }: Work): Outcome<StudiedPlan> {
  return studyPlan(plan, { ...kept, materials: openMaterials(plan.file, files, kept.knownPictures) })
}

/** Which word is on which card, and how large every word is. Nothing later deals or fits again. */
async function dealAndSettle(
  studied: StudiedPlan,
  jobs: ChosenJobs,
  { kept, watching = {}, soon }: Pick<Work, 'kept' | 'watching' | 'soon'>,
): Promise<WithProblems<SettledPlan>> {
  const dealt = dealPlan(studied, jobs, kept.sets)
  const of = dealt.value.items.length + jobs.wanted.length
  const isSound = !hasErrors(dealt.problems)
  const settled = await settlePlan(dealt.value, kept, {
    ...(soon === undefined || soon.items === 'all' ? {} : { first: soon.items }),
    settledOne: async ({ prepared: { job } }, done, outcome) => {
      await tellAndTakeTurns(watching, { step: 'laid out', item: job.name, done: done + 1, of })
      if (isSound && outcome.ok) await placeSoon(outcome.value, kept, soon)
    },
  })
  return withProblems(settled.value, [...dealt.problems, ...settled.problems])
}

/** deal → settle → draw → impose, with the problems of all items. */
async function putOnSheets<T>(
  studied: StudiedPlan,
  jobs: ChosenJobs,
  work: Pick<Work, 'kept' | 'watching' | 'soon'>,
  take: (item: ImposedItem<SheetToDraw>) => T | Promise<T>,
): Promise<WithProblems<readonly T[]>> {
  const settled = await dealAndSettle(studied, jobs, work)
  const imposed = await imposePlan(settled.value, work.kept, take)
  return withProblems(imposed.value, [...settled.problems, ...imposed.problems])
}

/** Errors of sets, pieces and sheets in what can be read of a plan that has problems already. */
async function laterProblems(planFile: string, work: Work): Promise<readonly Problem[]> {
  const part = loadReadablePart(planFile, planVocabulary(), work.files)
  const studied = part && study(part.plan, work)
  if (!studied?.ok) return []
  const jobs = { wanted: itemJobs(studied.value.plan).jobs, told: [] }
  const { problems } = await putOnSheets(studied.value, jobs, work, () => undefined)
  return eachOnce(problems).filter(problem => problem.severity === 'error')
}

/** Whether the same plan will be made again: what is held for that is in use, and to go through it often finds no garbage. */
function goesOn(kept: KeptWork | undefined): boolean {
  return kept?.files !== undefined
}

/** A week may go without some of its parts, not without all of them. */
function nothingOfWeek({ week }: Plan, made: readonly unknown[]): readonly Problem[] {
  if (week === undefined || made.length > 0) return []
  return [errorAt(week.place, 'nothing of the week can be made', 'The warnings say what stands in the way.')]
}

/** A problem's message is a clause that begins small. */
function inSentences(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`
}

function printedPlan<S extends PrintedSheet>({
  plan,
  items,
}: {
  readonly plan: Plan
  readonly items: readonly ImposedItem<S>[]
}): PrintedPlan<S> {
  const { stem, title, className, seed } = plan
  const itemNames = itemJobs(plan).jobs.map(job => job.name)
  return { stem, title, className, seed, itemNames, items: items.map(item => item.printed) }
}
