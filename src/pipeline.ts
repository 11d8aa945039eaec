import { cpus } from 'node:os'
import type { Format } from './files/item-paths.js'
import type { PrintedItem, PrintedPlan } from './files/printed-plan.js'
import { type WrittenPlan, writePlan } from './files/write-plan.js'
import { version } from './installation.js'
import { assignStyles } from './pieces/marks/assign-styles.js'
import { drawItem } from './pipeline/draw-item.js'
import { itemJobs } from './pipeline/item-jobs.js'
import { prepareItem, type StudiedPlan } from './pipeline/prepare-item.js'
import { planVocabulary } from './pipeline/vocabulary.js'
import { loadPlan } from './plan/load-plan.js'
import type { Plan } from './plan/plan.js'
import { hasErrors, type Outcome, type Problem } from './problems.js'
import { openLexicon } from './words/lexicon/lexicon.js'
import { studyPlanWords } from './pipeline/study-plan.js'

export interface MakeRequest {
  readonly planFile: string
  readonly outFolder: string
  readonly formats: readonly Format[]
  readonly dpi: number
  /** How many files may be under way at once; the bytes do not depend on it. */
  readonly jobs?: number
  /** Instead of the plan's own seed. */
  readonly seed?: number
  /** Items to make, by name; the others of the last set stay as they are. */
  readonly only?: readonly string[]
}

/** The whole flow for one plan: plan → words → sets → pieces → sheets → files. */
export async function makePlan(request: MakeRequest): Promise<Outcome<WrittenPlan>> {
  const read = readPlan(request.planFile, request.seed)
  if (!read.ok) return read
  const printed = await printPlan(read.value, request.only)
  const problems = [...read.problems, ...printed.problems]
  if (!printed.ok) return { ok: false, problems }
  const { outFolder, formats, dpi, only, jobs = cpus().length } = request
  const written = await writePlan({
    printed: printed.value,
    outFolder,
    formats,
    dpi,
    jobs,
    version,
    ...(only === undefined ? {} : { only }),
  })
  return { ...written, problems: [...problems, ...written.problems] }
}

/** plan → words: reads a plan, studies its words, gives each mark its style. */
export function readPlan(planFile: string, seed?: number): Outcome<StudiedPlan> {
  const loaded = loadPlan(planFile, planVocabulary())
  if (!loaded.ok) return loaded
  const plan: Plan = seed === undefined ? loaded.value : { ...loaded.value, seed }
  const words = studyPlanWords(plan, openLexicon())
  const styled = assignStyles(plan.marks)
  const problems = [...loaded.problems, ...words.problems, ...styled.problems]
  if (!words.ok) return { ok: false, problems }
  return { ok: true, value: { plan, words: words.value, marks: styled.marks }, problems }
}

/** words → sets → pieces → sheets: every item of a plan on its sheets, nothing written yet. */
export async function printPlan(studied: StudiedPlan, only?: readonly string[]): Promise<Outcome<PrintedPlan>> {
  const { plan } = studied
  const { jobs, problems: jobProblems } = itemJobs(plan)
  const problems: Problem[] = [...jobProblems]
  const items: PrintedItem[] = []
  for (const job of jobs.filter(each => only === undefined || only.includes(each.name))) {
    const prepared = prepareItem(studied, job)
    problems.push(...prepared.problems)
    if (!prepared.ok) continue
    const drawn = await drawItem(prepared.value)
    problems.push(...drawn.problems)
    if (drawn.ok) items.push(drawn.value)
  }
  if (hasErrors(problems)) return { ok: false, problems }
  const { stem, title, className, seed } = plan
  return {
    ok: true,
    value: { stem, title, className, seed, itemNames: jobs.map(job => job.name), items },
    problems,
  }
}
