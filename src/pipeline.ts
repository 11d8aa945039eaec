import { cpus } from 'node:os'
import type { Format } from './files/item-paths.js'
import type { PrintedPlan } from './files/printed-plan.js'
import { type WrittenPlan, writePlan } from './files/write-plan.js'
import { version } from './installation.js'
import { assignStyles } from './pieces/marks/assign-styles.js'
import { type DrawnItem, drawItem } from './pipeline/draw-item.js'
import { chooseJobs, type ItemJob, itemJobs } from './pipeline/item-jobs.js'
import { prepareItem, type StudiedPlan } from './pipeline/prepare-item.js'
import { settlePictures } from './pipeline/settle-pictures.js'
import { studyPlanWords } from './pipeline/study-plan.js'
import { planVocabulary } from './pipeline/vocabulary.js'
import { loadPlan } from './plan/load-plan.js'
import type { Plan } from './plan/plan.js'
import { eachOnce, hasErrors, type Outcome, type Problem } from './problems.js'
import { openLexicon } from './words/lexicon/lexicon.js'

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
  const studied = readPlan(request.planFile, request.seed)
  if (!studied.ok) return studied
  const jobs = chooseJobs(studied.value.plan, request.only)
  const drawn = jobs.ok ? await drawItems(studied.value, jobs.value) : jobs
  const problems = [...studied.problems, ...jobs.problems, ...(jobs.ok ? drawn.problems : [])]
  if (!jobs.ok || !drawn.ok) return { ok: false, problems }
  const { outFolder, formats, dpi, only, jobs: atOnce = cpus().length } = request
  const written = await writePlan({
    printed: printedPlan(studied.value.plan, drawn.value),
    outFolder,
    formats,
    dpi,
    jobs: atOnce,
    version,
    ...(only === undefined ? {} : { only: jobs.value.map(job => job.name) }),
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

/** words → sets → pieces → sheets: items on their sheets, nothing written; the problems of all of them. */
export async function drawItems(
  studied: StudiedPlan,
  jobs: readonly ItemJob[],
): Promise<Outcome<readonly DrawnItem[]>> {
  const problems: Problem[] = []
  const items: DrawnItem[] = []
  for (const job of jobs) {
    const prepared = prepareItem(studied, job)
    const drawn = prepared.ok ? await drawItem(prepared.value) : prepared
    const settled = drawn.ok ? await settlePictures(drawn.value) : undefined
    problems.push(
      ...(prepared.ok ? prepared.problems : []),
      ...drawn.problems,
      ...(settled === undefined ? [] : settled.problems),
    )
    if (settled?.ok) items.push(settled.value)
  }
  const told = eachOnce(problems)
  return hasErrors(told) ? { ok: false, problems: told } : { ok: true, value: items, problems: told }
}

function printedPlan(plan: Plan, drawn: readonly DrawnItem[]): PrintedPlan {
  const { stem, title, className, seed } = plan
  const itemNames = itemJobs(plan).jobs.map(job => job.name)
  return { stem, title, className, seed, itemNames, items: drawn.map(item => item.printed) }
}
